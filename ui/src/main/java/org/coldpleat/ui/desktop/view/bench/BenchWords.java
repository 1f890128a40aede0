package org.coldpleat.ui.desktop.view.bench;

import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.service.Problem;

/** What the status line says about the case on the bench. */
public final class BenchWords {
    private BenchWords() {}

    /** Why the case is not understood yet. */
    public static String problems(CaseBench bench) {
        String first = bench.problems().stream().map(Problem::text).findFirst().orElse("");
        return setAside(bench)
                + WindowTexts.get("status.notYet", bench.problems().size() + "", first);
    }

    /** How many lines of the file were set aside, with a blank behind it; empty if none. */
    public static String setAside(CaseBench bench) {
        return bench.setAside().isEmpty()
                ? ""
                : WindowTexts.get("status.setAside", bench.setAside().size() + "") + " ";
    }
}

package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.Pages;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;

/** Writes the report of the case beside the window; the work can be stopped. */
final class ReportDesk {
    private static final String REPORT = "report";

    private final CaseService service;
    private final Consumer<String> said;
    private final Worker worker;
    private boolean running;

    /** @param said told what happened, in words */
    ReportDesk(CaseService service, Consumer<String> said) {
        this.service = service;
        this.said = said;
        worker = new Worker(e -> ended(WindowTexts.get("status.problems", e.toString())));
    }

    /** Writes the report of a case to a file. */
    void write(OpenedCase opened, Path file, UnitSystem units) {
        if (!Pages.isReportName(file)) {
            said.accept(WindowTexts.get("status.reportName", file.toString()));
            return;
        }
        stop();
        running = true;
        said.accept(WindowTexts.get("status.reporting", file.toString()));
        // a report is many runs of very different length, so a share of one would mislead
        worker.watch(
                REPORT,
                progress -> Optional.of(file).filter(to -> written(opened, to, units, progress)),
                done -> ended(WindowTexts.get("status.reported", done.toString())),
                share -> {});
    }

    private boolean written(OpenedCase opened, Path file, UnitSystem units, Progress progress) {
        try {
            return Pages.report(service, opened, file, units, progress);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Gives up the report that is being written; true if there was one. */
    boolean stop() {
        boolean was = running;
        worker.cancel(REPORT);
        if (was) {
            ended(WindowTexts.get("status.reportStopped"));
        }
        return was;
    }

    private void ended(String words) {
        running = false;
        said.accept(words);
    }

    void close() {
        worker.close();
    }
}

package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.CaseReader;
import org.coldpleat.shared.casefile.CaseWriter;
import org.coldpleat.shared.casefile.SheetCsv;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;

/** Takes bench sheets from a table and puts them into one. A table with anything wrong in it changes nothing. */
final class TableDesk {
    private final Consumer<String> said;

    /** @param said told what happened, in words */
    TableDesk(Consumer<String> said) {
        this.said = said;
    }

    /** Takes the filters of a table into the case, in one step; true if anything changed. */
    boolean take(CaseBench bench, Path file) {
        SheetCsv.Reading reading;
        try {
            if (Files.size(file) > CaseReader.LARGEST_FILE) {
                String words = WindowTexts.get("tableTooLarge", CaseReader.LARGEST_FILE + "");
                said.accept(WindowTexts.get("status.notImported", file.toString(), words));
                return false;
            }
            reading = SheetCsv.read(file.toString(), Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            said.accept(WindowTexts.get("status.notImported", file.toString(), e.toString()));
            return false;
        }
        if (!reading.problems().isEmpty()) {
            String words = reading.problems().stream().map(CaseProblem::text).collect(Collectors.joining(" "));
            said.accept(WindowTexts.get("status.notImported", file.toString(), words));
            return false;
        }
        boolean changed = bench.change(draft -> SheetCsv.into(draft, reading.rows()));
        said.accept(WindowTexts.get("status.imported", reading.rows().size() + "", file.toString()));
        return changed;
    }

    /** Writes all filters of the case to a table. */
    void put(CaseBench bench, Path file) {
        try {
            CaseWriter.write(file, SheetCsv.write(bench.draft()));
            said.accept(WindowTexts.get("status.exported", bench.candidates().size() + "", file.toString()));
        } catch (IOException e) {
            said.accept(WindowTexts.get("status.notSaved", file.toString(), e.toString()));
        }
    }
}

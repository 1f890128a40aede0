package org.coldpleat.ui.desktop.view.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.stage.Stage;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.shared.casefile.writing.SheetCsv;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;

/** Takes bench sheets from a table and puts them into one. A table with anything wrong in it changes nothing. */
public final class TableDesk {
    private final Stage stage;
    private final FileQuestions questions;
    private final Supplier<Optional<CaseBench>> bench;
    private final Consumer<String> said;

    /**
     * @param questions asks which file is meant
     * @param bench the case, if there is one
     * @param said told what happened, in words
     */
    public TableDesk(Stage stage, FileQuestions questions, Supplier<Optional<CaseBench>> bench, Consumer<String> said) {
        this.stage = stage;
        this.questions = questions;
        this.bench = bench;
        this.said = said;
    }

    /** Asks for a table and takes its filters into the case, in one step; true if anything changed. */
    public boolean take() {
        return questions
                .open(stage, WindowTexts.get("importSheets"), FileQuestions.Kind.TABLE, beside())
                .flatMap(file -> bench.get().filter(one -> take(one, file)))
                .isPresent();
    }

    /** Asks for a file and writes all filters of the case to it. */
    public void put() {
        questions
                .save(stage, WindowTexts.get("exportSheets"), FileQuestions.Kind.TABLE, beside(), "filters.csv")
                .ifPresent(file -> bench.get().ifPresent(one -> put(one, file)));
    }

    private Optional<Path> beside() {
        return bench.get().flatMap(CaseBench::file);
    }

    private boolean take(CaseBench taken, Path file) {
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
        boolean changed = taken.change(draft -> SheetCsv.into(draft, reading.rows()));
        said.accept(WindowTexts.get("status.imported", reading.rows().size() + "", file.toString()));
        return changed;
    }

    private void put(CaseBench given, Path file) {
        try {
            CaseWriter.write(file, SheetCsv.write(given.draft()));
            said.accept(WindowTexts.get("status.exported", given.candidates().size() + "", file.toString()));
        } catch (IOException e) {
            said.accept(WindowTexts.get("status.notSaved", file.toString(), e.toString()));
        }
    }
}

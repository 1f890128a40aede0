package org.coldpleat.ui.desktop.view.answer;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.stage.Stage;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.bench.BenchWords;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.report.ReportFile;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.service.OpenedCase;

/** Writes the report of the case beside the window; the work can be stopped. */
public final class ReportDesk {
    private static final String REPORT = "report";

    private final Stage stage;
    private final FileQuestions questions;
    private final Supplier<Optional<CaseBench>> bench;
    private final Consumer<String> said;
    private final Worker worker;
    private boolean running;

    /**
     * @param questions asks which file is meant
     * @param bench the case, if there is one
     * @param said told what happened, in words
     */
    public ReportDesk(
            Stage stage, FileQuestions questions, Supplier<Optional<CaseBench>> bench, Consumer<String> said) {
        this.stage = stage;
        this.questions = questions;
        this.bench = bench;
        this.said = said;
        worker = new Worker(e -> ended(WindowTexts.get("status.problems", e.toString())));
    }

    /** Asks for a file and writes the report of the case to it; says why not while the case is not understood. */
    public void write(UnitSystem units) {
        Optional<OpenedCase> opened =
                bench.get().filter(CaseBench::isUnderstood).flatMap(CaseBench::opened);
        if (opened.isEmpty()) {
            said.accept(WindowTexts.get(
                    "status.reportNotYet", bench.get().map(BenchWords::problems).orElse("")));
            return;
        }
        questions
                .save(
                        stage,
                        WindowTexts.get("report"),
                        FileQuestions.Kind.REPORT,
                        bench.get().flatMap(CaseBench::file),
                        "report.html")
                .ifPresent(file -> write(opened.get(), file, units));
    }

    private void write(OpenedCase opened, Path file, UnitSystem units) {
        if (!ReportFile.isNamed(file)) {
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
            return ReportFile.write(opened, file, units, ReportRun.DRAWS, ReportRun.SEED, progress);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Gives up the report that is being written; true if there was one. */
    public boolean stop() {
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

    public void close() {
        worker.close();
    }
}

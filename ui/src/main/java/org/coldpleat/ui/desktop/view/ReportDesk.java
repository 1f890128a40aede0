package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
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
    private Optional<AtomicBoolean> running = Optional.empty();

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
        AtomicBoolean stopped = new AtomicBoolean();
        running = Optional.of(stopped);
        said.accept(WindowTexts.get("status.reporting", file.toString()));
        worker.run(
                REPORT,
                () -> written(opened, file, units, stopped),
                done -> ended(done ? WindowTexts.get("status.reported", file.toString()) : stoppedWords()));
    }

    private boolean written(OpenedCase opened, Path file, UnitSystem units, AtomicBoolean stopped) {
        try {
            return Pages.report(service, opened, file, units, new Progress() {
                @Override
                public void done(long evaluations, long total) {
                    // a report is many runs of very different length, so a share of one would mislead
                }

                @Override
                public boolean cancelled() {
                    return stopped.get();
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Gives up the report that is being written; true if there was one. */
    boolean stop() {
        boolean was = running.isPresent();
        running.ifPresent(one -> one.set(true));
        worker.cancel(REPORT);
        if (was) {
            ended(stoppedWords());
        }
        return was;
    }

    private static String stoppedWords() {
        return WindowTexts.get("status.reportStopped");
    }

    private void ended(String words) {
        running = Optional.empty();
        said.accept(words);
    }

    void close() {
        running.ifPresent(one -> one.set(true));
        worker.close();
    }
}

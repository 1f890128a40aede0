package org.coldpleat.ui.report;

import java.nio.file.Files;
import java.nio.file.Path;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;

/** Reports for tests, made from demo cases. */
final class ReportCases {
    private static final int DRAWS = 16;

    private ReportCases() {}

    static Path demo(String name) {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("demo-cases"))) {
            at = at.getParent();
        }
        return at.resolve("demo-cases").resolve(name).resolve("case.yaml");
    }

    static ReportInput input(String demo) {
        return input(CaseService.standard().open(demo(demo)).opened().orElseThrow());
    }

    static ReportInput input(OpenedCase opened) {
        return ReportRun.of(opened, UnitSystem.METRIC, DRAWS, 1, Progress.NONE).orElseThrow();
    }
}

package org.coldpleat.ui.report;

import java.nio.file.Files;
import java.nio.file.Path;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.report.input.ReportWords;
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
        CaseService service = CaseService.standard();
        return input(service, service.open(demo(demo)).opened().orElseThrow());
    }

    static ReportInput input(CaseService service, OpenedCase opened) {
        return ReportRun.of(service, opened, UnitSystem.METRIC, DRAWS, 1, new PlainWords(), Progress.NONE)
                .orElseThrow();
    }

    /** Words without the command line. */
    private static final class PlainWords implements ReportWords {
        @Override
        public String label(String key, String otherwise) {
            return otherwise;
        }

        @Override
        public String answer(StateResult result, Comparison comparison, UnitSystem units) {
            return result.answer().name();
        }

        @Override
        public String version() {
            return "0 test";
        }
    }
}

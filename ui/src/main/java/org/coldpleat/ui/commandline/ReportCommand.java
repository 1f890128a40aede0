package org.coldpleat.ui.commandline;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.coldpleat.model.run.Comparison;
import org.coldpleat.model.run.StateResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.report.Report;
import org.coldpleat.ui.report.ReportInput;
import org.coldpleat.ui.report.ReportPdf;
import org.coldpleat.ui.report.ReportRun;
import org.coldpleat.ui.report.ReportWords;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code report}: everything about a case in one document. */
@Command(name = "report", mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
final class ReportCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "report.out", required = true)
    private Path out;

    @Mixin
    private WholeCaseArguments whole;

    ReportCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        int draws = whole.draws();
        String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
        boolean pdf = name.endsWith(".pdf");
        if (!pdf && !name.endsWith(".html")) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.reportName", out));
        }
        OpenedCase opened = caseFile.open(service, console);
        ReportInput input = ReportRun.of(service, opened, whole.units(), draws, whole.seed(), words());
        try {
            byte[] document = pdf ? ReportPdf.of(input) : Report.html(input).getBytes(StandardCharsets.UTF_8);
            Files.write(out, document);
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("error.report", e));
        }
        console.message(Texts.get("plots.written", out));
        return ExitCode.DONE;
    }

    private static ReportWords words() {
        return new ReportWords() {
            @Override
            public String label(String key, String otherwise) {
                return Texts.getOr(key, otherwise);
            }

            @Override
            public String answer(StateResult result, Comparison comparison, UnitSystem units) {
                return Pages.answer(result, comparison, units);
            }

            @Override
            public String version() {
                return ProgramVersion.text();
            }
        };
    }
}

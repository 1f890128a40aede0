package org.coldpleat.ui.commandline.evidence;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code evidence}: what the tests say, how sure it is, and what disagrees. */
@Command(name = "evidence", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class EvidenceCommand implements Callable<Integer> {
    /** How evidence can be written. */
    enum Format {
        /** A page for a terminal. */
        TEXT,
        /** JSON in coherent SI. */
        JSON
    }

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "evidence.candidate")
    private String candidate;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "evidence.format", defaultValue = "text")
    private Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    public EvidenceCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        OpenedCase opened = caseFile.open(service, console);
        if (candidate != null) {
            CaseArgument.requireCandidate(opened, candidate);
        }
        List<String> names = candidate == null ? opened.candidates() : List.of(candidate);
        List<EvidenceReport> reports =
                names.stream().map(name -> opened.evidence(name).now()).toList();
        console.result(
                switch (format) {
                    case TEXT -> EvidenceText.of(opened.title(), opened.invented(), reports, units);
                    case JSON -> EvidenceJson.of(opened.title(), opened.invented(), reports);
                });
        if (plots != null) {
            reports.forEach(
                    report -> Pictures.ofEvidence(report, opened.title(), opened.invented(), units, plots, console));
        }
        return ExitCode.DONE;
    }
}

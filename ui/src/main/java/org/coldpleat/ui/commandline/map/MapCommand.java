package org.coldpleat.ui.commandline.map;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.Callable;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.RowsFormat;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code map}: bypass share of one candidate over oil temperature and speed. */
@Command(name = "map", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class MapCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "candidate", required = true)
    private String candidate;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "map.format", defaultValue = "csv")
    private RowsFormat format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    public MapCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        OpenedCase opened = caseFile.open(service, console);
        CaseArgument.requireCandidate(opened, candidate);
        MapResult map = opened.map(candidate).now();
        console.result(
                switch (format) {
                    case CSV -> MapOutput.csv(map, units);
                    case JSON -> MapOutput.json(map);
                });
        if (plots != null) {
            Pictures.ofMap(map, opened.title(), opened.invented(), units, plots, console);
        }
        long missing = Arrays.stream(map.share())
                .flatMapToDouble(Arrays::stream)
                .filter(share -> !Double.isFinite(share))
                .count();
        if (missing > 0) {
            String message = Texts.get("error.mapGaps", missing);
            if (missing == (long) map.temperature().length * map.drive().length) {
                throw new Stop(ExitCode.NO_ANSWER, message);
            }
            console.message(message);
        }
        return ExitCode.DONE;
    }
}

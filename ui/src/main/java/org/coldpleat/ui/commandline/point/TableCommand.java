package org.coldpleat.ui.commandline.point;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CandidatesArgument;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.RowsFormat;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OilRange;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Pages;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code table}: every candidate in every state at evenly spaced oil temperatures, for a spreadsheet. */
@Command(name = "table", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class TableCommand implements Callable<Integer> {
    private static final int FEWEST = 2;
    private static final int MOST = 1000;

    private final CaseService service;
    private final Console console;

    @Mixin
    private CandidatesArgument candidates;

    @Option(names = "--state", paramLabel = "NAME", descriptionKey = "table.state")
    private String state;

    @Option(names = "--from", paramLabel = "T", descriptionKey = "table.from")
    private String from;

    @Option(names = "--to", paramLabel = "T", descriptionKey = "table.to")
    private String to;

    @Option(names = "--temperatures", paramLabel = "N", descriptionKey = "table.temperatures", defaultValue = "40")
    private int count;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "table.format", defaultValue = "csv")
    private RowsFormat format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    /** One row of the table to be. */
    private record Place(String candidate, String state, double temperature) {}

    public TableCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (count < FEWEST || count > MOST) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.tableCount", FEWEST, MOST, count));
        }
        OpenedCase opened = candidates.open(service, console);
        if (state != null) {
            CaseArgument.requireState(opened, state);
        }
        List<String> states = state == null ? opened.states() : List.of(state);
        OilRange range = opened.range();
        double coldest = from == null ? range.from() : ValueArgument.temperature("--from", from);
        double warmest = to == null ? range.to() : ValueArgument.temperature("--to", to);
        if (!(coldest < warmest)) {
            throw new Stop(
                    ExitCode.BAD_INPUT,
                    Texts.get(
                            "error.tableRange", Pages.temperature(coldest, units), Pages.temperature(warmest, units)));
        }
        List<Place> places = opened.candidates().stream()
                .flatMap(candidate -> states.stream()
                        .flatMap(one -> IntStream.range(0, count)
                                .mapToObj(i ->
                                        new Place(candidate, one, coldest + (warmest - coldest) * i / (count - 1.0)))))
                .toList();
        List<PointResult> points = places.parallelStream()
                .map(place -> opened.point(place.candidate(), place.state(), place.temperature())
                        .now())
                .collect(Collectors.toList());
        console.result(
                switch (format) {
                    case CSV -> PointsCsv.of(points, units);
                    case JSON -> PointsJson.of(opened, points);
                });
        return ExitCode.DONE;
    }
}

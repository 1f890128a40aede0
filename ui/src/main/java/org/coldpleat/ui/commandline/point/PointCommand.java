package org.coldpleat.ui.commandline.point;

import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.Callable;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code point}: one candidate at one oil temperature, with the full breakdown. */
@Command(name = "point", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class PointCommand implements Callable<Integer> {
    /** How a point can be written. */
    enum Format {
        /** A page for a terminal. */
        TEXT,
        /** JSON in coherent SI. */
        JSON
    }

    /** Where the flow comes from: one of the two. */
    static final class Drive {
        @Option(names = "--flow", paramLabel = "Q", descriptionKey = "point.flow", required = true)
        private String flow;

        @Option(names = "--state", paramLabel = "NAME", descriptionKey = "point.state", required = true)
        private String state;
    }

    /** Statuses with numbers that may be used. */
    private static final Set<String> ANSWERS = Set.of("CONVERGED", "NO_FLOW", "STARVED_GALLERY", "SUCTION_LIMITED");

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "candidate", required = true)
    private String candidate;

    @Option(names = "--temperature", paramLabel = "T", descriptionKey = "point.temperature", required = true)
    private String temperature;

    @ArgGroup(multiplicity = "1")
    private Drive drive;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "point.format", defaultValue = "text")
    private Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    public PointCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        double kelvin = ValueArgument.temperature("--temperature", temperature);
        double flow = drive.flow == null ? 0 : ValueArgument.positive("--flow", drive.flow, Kind.FLOW_RATE);
        OpenedCase opened = caseFile.open(service, console);
        CaseArgument.requireCandidate(opened, candidate);
        PointResult point = drive.state != null
                ? atState(opened, kelvin)
                : opened.pointAtFlow(candidate, flow, kelvin).now();
        console.result(
                switch (format) {
                    case TEXT -> PointText.of(point, units);
                    case JSON -> PointJson.of(point);
                });
        if (plots != null) {
            Pictures.ofPoint(opened.sheet(candidate), point, units, plots, console);
        }
        if (!ANSWERS.contains(point.status())) {
            throw new Stop(
                    ExitCode.NO_ANSWER,
                    Texts.get("error.noAnswer", Texts.getOr("status." + point.status(), point.status())));
        }
        return ExitCode.DONE;
    }

    private PointResult atState(OpenedCase opened, double kelvin) {
        CaseArgument.requireState(opened, drive.state);
        return opened.point(candidate, drive.state, kelvin).now();
    }
}

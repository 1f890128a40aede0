package org.coldpleat.ui.commandline.evidence;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code plan}: what a test needs, what it would show, and whether it is worth the trouble. */
@Command(name = "plan", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class PlanCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Parameters(index = "0", paramLabel = "TEST", descriptionKey = "plan.test")
    private String test;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "candidate", required = true)
    private String candidate;

    @Option(names = "--resolution", paramLabel = "STEP", descriptionKey = "plan.resolution")
    private String resolution;

    @Option(names = "--format", paramLabel = "FORMAT", descriptionKey = "evidence.format", defaultValue = "text")
    private EvidenceCommand.Format format;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    public PlanCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!service.plannableTests().contains(test)) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.plan", test, String.join(", ", service.plannableTests())));
        }
        OpenedCase opened = caseFile.open(service, console);
        CaseArgument.requireCandidate(opened, candidate);
        TestPlan plan;
        try {
            OptionalDouble step = resolution == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(ValueArgument.positive("--resolution", resolution, kind()));
            plan = opened.plan(candidate, test, step).now();
        } catch (IllegalArgumentException e) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.planNeeds", e.getMessage()));
        }
        console.result(format == EvidenceCommand.Format.JSON ? PlanJson.of(plan) : PlanText.of(plan, units));
        return ExitCode.DONE;
    }

    /** What the reading of the test is. */
    private Kind kind() {
        return switch (test) {
            case "flowBench" -> Kind.PRESSURE_DIFFERENCE;
            case "airTest" -> Kind.FLOW_RATE;
            case "scaleTest" -> Kind.MASS;
            case "bubblePoint" -> Kind.GAUGE_PRESSURE;
            default -> Kind.LENGTH;
        };
    }
}

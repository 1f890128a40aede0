package org.coldpleat.ui.commandline;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.model.run.TestPlan;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code plan}: what a test needs, what it would show, and whether it is worth the trouble. */
@Command(name = "plan", mixinStandardHelpOptions = true, versionProvider = ProgramVersion.class)
final class PlanCommand implements Callable<Integer> {
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

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    PlanCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!service.plannable().contains(test)) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.plan", test, String.join(", ", service.plannable())));
        }
        OpenedCase opened = caseFile.open(service, console);
        CaseArgument.requireCandidate(opened, candidate);
        TestPlan plan;
        try {
            OptionalDouble step = resolution == null
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(ValueArgument.positive("--resolution", resolution, kind()));
            plan = service.plan(opened, candidate, test, step);
        } catch (IllegalArgumentException e) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.planNeeds", e.getMessage()));
        }
        console.result(text(plan));
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

    private String text(TestPlan plan) {
        StringBuilder page = new StringBuilder();
        page.append(Texts.get("plan.header", Texts.get("test." + plan.test()), plan.candidate()))
                .append('\n');
        Table.wrap(Texts.get("plan.prepare." + plan.test()), CompareText.WIDTH - 4)
                .forEach(line -> page.append("  ").append(line).append('\n'));
        Table table = new Table(new int[] {48, 50}, new boolean[] {false, false});
        plan.conditions()
                .forEach(one ->
                        table.row(Texts.get("plan.condition." + one.key()), QuantityFormat.format(one.value(), units)));
        table.row(Texts.get("plan.reading." + plan.test()), shown(plan.reading(), plan.expected()));
        table.row(
                Texts.get("plan.duration"), Texts.get("plan.minutes", Figures.plain3(Math.ceil(plan.duration() / 60))));
        table.row(Texts.get("plan.present", Texts.get("plan.target." + plan.target())), percent(plan.presentLnSigma()));
        table.row(Texts.get("plan.reached", shown(plan.reading(), plan.resolution())), percent(plan.reachedLnSigma()));
        table.row(
                Texts.get("plan.needed"),
                plan.resolutionNeeded().isPresent()
                        ? shown(plan.reading(), plan.resolutionNeeded().getAsDouble())
                        : Texts.get("plan.cannot"));
        table.lines().forEach(line -> page.append(line).append('\n'));
        page.append(Texts.get("plan.cautions")).append('\n');
        for (String caution : plan.cautions()) {
            List<String> lines = Table.wrap(NoticeText.text(caution, List.of()), CompareText.WIDTH - 6);
            for (int i = 0; i < lines.size(); i++) {
                page.append(i == 0 ? "  - " : "    ").append(lines.get(i)).append('\n');
            }
        }
        return page.toString();
    }

    private static String percent(double lnSigma) {
        return Texts.get("plan.percent", Figures.percent(lnSigma));
    }

    private String shown(Kind kind, double value) {
        return QuantityFormat.format(Measured.exact(kind, value, Provenance.MEASURED), units);
    }
}

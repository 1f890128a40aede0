package org.coldpleat.ui.commandline.explain;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.ExplainedLink;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code explain}: the chain of values behind a number. */
@Command(name = "explain", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class ExplainCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "candidate", required = true)
    private String candidate;

    @Option(names = "--state", paramLabel = "NAME", descriptionKey = "explain.state")
    private String state;

    @Option(names = "--quantity", paramLabel = "Q", descriptionKey = "explain.quantity")
    private String quantity;

    @Option(names = "--temperature", paramLabel = "T", descriptionKey = "explain.temperature")
    private String temperature;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    public ExplainCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        OpenedCase opened = caseFile.open(service, console);
        CaseArgument.requireCandidate(opened, candidate);
        if (state != null) {
            CaseArgument.requireState(opened, state);
        }
        if (quantity != null) {
            CaseArgument.requireQuantity(service.explainable(), quantity);
        }
        ExplainRequest request =
                new ExplainRequest(candidate, Optional.ofNullable(state), Optional.ofNullable(quantity), temperature());
        console.result(ExplainedLink.of(opened.explain(request).now(), units).text());
        return ExitCode.DONE;
    }

    private OptionalDouble temperature() {
        if (temperature == null) {
            return OptionalDouble.empty();
        }
        List<String> allowed = service.explainableAtTemperature();
        if (quantity == null || !allowed.contains(quantity)) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.explainTemperature", String.join(", ", allowed)));
        }
        return OptionalDouble.of(ValueArgument.temperature("--temperature", temperature));
    }
}

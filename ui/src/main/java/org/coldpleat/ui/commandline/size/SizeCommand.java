package org.coldpleat.ui.commandline.size;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.sizing.SizingResult.Variable;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.OutputArguments;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.ProgressLine;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.service.SizingOutcome;
import org.coldpleat.ui.service.SizingQuestion;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code size}: what just meets a target. */
@Command(name = "size", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class SizeCommand implements Callable<Integer> {
    private static final int FEWEST_DRAWS = 16;
    private static final int MOST_DRAWS = 1 << 16;
    private static final double LEAST_CHANCE = 0.01;
    private static final double GREATEST_CHANCE = 0.99;

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "candidate", required = true)
    private String candidate;

    @Option(names = "--for", paramLabel = "WHAT", descriptionKey = "size.for", required = true)
    private Variable variable;

    @Option(names = "--target", paramLabel = "WORDS", descriptionKey = "size.target", required = true)
    private String target;

    @Option(names = "--confidence", paramLabel = "CHANCE", descriptionKey = "size.confidence")
    private Double confidence;

    @Option(names = "--loaded", paramLabel = "DIRT", descriptionKey = "size.loaded")
    private String loaded;

    @Option(names = "--draws", paramLabel = "N", descriptionKey = "confidence.draws", defaultValue = "512")
    private int draws;

    @Option(names = "--seed", paramLabel = "S", descriptionKey = "confidence.seed", defaultValue = "1")
    private long seed;

    @Mixin
    private OutputArguments output;

    public SizeCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.draws", FEWEST_DRAWS, MOST_DRAWS, draws));
        }
        if (confidence != null && !(confidence >= LEAST_CHANCE && confidence <= GREATEST_CHANCE)) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.confidence", LEAST_CHANCE, GREATEST_CHANCE, confidence));
        }
        OpenedCase opened = caseFile.open(service, console);
        CaseArgument.requireCandidate(opened, candidate);
        boolean share = loaded != null && loaded.contains("%");
        SizingQuestion question = new SizingQuestion(
                candidate,
                variable,
                target,
                confidence == null ? OptionalDouble.empty() : OptionalDouble.of(confidence),
                loaded == null || share ? OptionalDouble.empty() : dirt(Kind.DURATION),
                share ? dirt(Kind.FRACTION) : OptionalDouble.empty(),
                draws,
                seed);
        Progress progress = ProgressLine.on(console, "confidence.progress");
        SizingOutcome outcome = opened.size(question)
                .with(progress)
                .orElseThrow(() -> new Stop(ExitCode.FAILURE, Texts.get("error.cancelled")));
        outcome.problem().ifPresent(problem -> {
            throw new Stop(ExitCode.BAD_INPUT, Sentences.of(problem, output.units()));
        });
        SizingResult result = outcome.result().orElseThrow();
        console.result(
                switch (output.format()) {
                    case TEXT -> SizeText.of(result, target, opened.candidates(), output.units());
                    case JSON -> SizeJson.of(result, opened.candidates());
                    case CSV -> SizeCsv.of(result, output.units());
                });
        output.plots().ifPresent(folder -> Pictures.ofSize(result, output.units(), folder, console));
        if (!result.isAnswered()) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.noSize"));
        }
        return ExitCode.DONE;
    }

    private OptionalDouble dirt(Kind kind) {
        return OptionalDouble.of(ValueArgument.positive("--loaded", loaded, kind));
    }
}

package org.coldpleat.ui.commandline.explain;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.argument.ValueArgument;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Pictures;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.lesson.Lesson;
import org.coldpleat.ui.lesson.LessonAnswer;
import org.coldpleat.ui.lesson.LessonCase;
import org.coldpleat.ui.lesson.LessonStep;
import org.coldpleat.ui.lesson.Turned;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code lesson}: questions about a case, each with a prediction to make before the answer is shown. */
@Command(name = "lesson", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class LessonCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--step", paramLabel = "N", descriptionKey = "lesson.step")
    private Integer number;

    @Option(names = "--guess", paramLabel = "VALUE", descriptionKey = "lesson.guess")
    private Double guess;

    @Option(names = "--at", paramLabel = "VALUE", descriptionKey = "lesson.turned")
    private String turned;

    @Option(names = "--units", paramLabel = "UNITS", descriptionKey = "units", defaultValue = "metric")
    private UnitSystem units;

    @Option(names = "--plots", paramLabel = "DIR", descriptionKey = "plots")
    private Path plots;

    public LessonCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        List<LessonStep> steps = Lesson.STEPS;
        if (number != null && (number < 1 || number > steps.size())) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.lessonStep", steps.size(), number));
        }
        if (guess != null && number == null) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.lessonGuess"));
        }
        if (turned != null && number == null) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.lessonTurned"));
        }
        OpenedCase opened = caseFile.open(service, console);
        LessonCase one = LessonCase.of(service, caseFile.draft(), opened);
        Optional<java.io.Console> terminal =
                Optional.ofNullable(System.console()).filter(any -> number == null);
        console.result(LessonText.head(opened));
        for (int i = 0; i < steps.size(); i++) {
            if (number == null || number == i + 1) {
                ask(i + 1, steps.get(i), one, terminal);
            }
        }
        console.result(LessonText.foot());
        return ExitCode.DONE;
    }

    private void ask(int place, LessonStep step, LessonCase one, Optional<java.io.Console> terminal) {
        Turned range = step.turned().apply(one);
        double value = turned == null ? range.base() : value(range);
        Optional<LessonAnswer> found = Lesson.ask(step, one, value);
        if (found.isEmpty()) {
            console.result(LessonText.skipped(place, step));
            return;
        }
        Lesson.Told told = Lesson.told(step, found.get(), units);
        console.result(LessonText.question(place, told));
        if (turned != null) {
            console.result(LessonText.turned(step, range, value, units));
        }
        OptionalDouble guessed = guess != null ? OptionalDouble.of(guess) : guessed(terminal, told);
        console.result(LessonText.answer(told, guessed));
        if (plots != null) {
            Lesson.picture(step, one, value)
                    .ifPresent(quickCurves -> Pictures.ofLesson(quickCurves, place, step, units, plots, console));
        }
    }

    /** What is turned in the step, as it was written. */
    private double value(Turned range) {
        double value = switch (range.measure()) {
            case TIMES -> ValueArgument.positive("--at", turned, Kind.RATIO);
            case TEMPERATURE -> ValueArgument.temperature("--at", turned);
            case KELVIN -> ValueArgument.positive("--at", turned, Kind.TEMPERATURE_DIFFERENCE);
        };
        if (!range.holds(value)) {
            throw new Stop(
                    ExitCode.BAD_INPUT,
                    Texts.get(
                            "error.lessonRange",
                            Lesson.amount(range, range.low(), units),
                            Lesson.amount(range, range.high(), units),
                            turned));
        }
        return value;
    }

    /** What is typed at the terminal; nothing if it is no number or nobody is there. */
    private static OptionalDouble guessed(Optional<java.io.Console> terminal, Lesson.Told told) {
        if (terminal.isEmpty()) {
            return OptionalDouble.empty();
        }
        String typed = terminal.get().readLine("%s ", Texts.get("lesson.prompt", told.unit()));
        return typed == null ? OptionalDouble.empty() : Lesson.prediction(typed);
    }
}

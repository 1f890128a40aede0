package org.coldpleat.ui.commandline.coldstart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartOutline;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
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
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code coldstart}: what happens in the minutes after a cold start. */
@Command(name = "coldstart", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class ColdStartCommand implements Callable<Integer> {
    /** What the engine does: at most one of the two. */
    static final class Drive {
        @Option(names = "--state", paramLabel = "NAME", descriptionKey = "coldstart.state", required = true)
        private String state;

        @Option(names = "--schedule", paramLabel = "NAME", descriptionKey = "coldstart.schedule", required = true)
        private String schedule;
    }

    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--candidate", paramLabel = "NAME", descriptionKey = "evidence.candidate")
    private String candidate;

    @ArgGroup
    private Drive drive;

    @Option(names = "--from", paramLabel = "T", descriptionKey = "coldstart.from")
    private String from;

    @Option(names = "--ambient", paramLabel = "T", descriptionKey = "coldstart.ambient")
    private String ambient;

    @Option(names = "--sweep", descriptionKey = "coldstart.sweep")
    private boolean sweep;

    @Option(names = "--bands", descriptionKey = "coldstart.bands")
    private boolean bands;

    @Mixin
    private OutputArguments output;

    public ColdStartCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        OptionalDouble start = temperature("--from", from);
        OptionalDouble air = temperature("--ambient", ambient);
        if (sweep && (from != null || ambient != null)) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.sweepFrom"));
        }
        if (bands && !sweep) {
            throw new Stop(ExitCode.USAGE, Texts.get("error.bandsSweep"));
        }
        OpenedCase opened = caseFile.open(service, console);
        StartOutline outline =
                opened.startOutline().orElseThrow(() -> new Stop(ExitCode.BAD_INPUT, Texts.get("error.noStart")));
        if (candidate != null) {
            CaseArgument.requireCandidate(opened, candidate);
        }
        Optional<String> state = Optional.ofNullable(drive).map(one -> one.state);
        Optional<String> schedule = Optional.ofNullable(drive).map(one -> one.schedule);
        state.ifPresent(name -> CaseArgument.requireEngineState(outline.states(), name));
        schedule.ifPresent(name -> CaseArgument.requireSchedule(outline.schedules(), name));
        if (outline.logged() && (sweep || from != null || ambient != null)) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.loggedStart"));
        }
        if (start.orElse(outline.from()) >= outline.hot()) {
            ShownUnit celsius = ShownUnits.of(output.units()).temperature();
            String hot = Figures.plain(celsius.of(outline.hot())) + " " + celsius.symbol();
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.startHot", from == null ? "" : from, hot));
        }
        ColdStartRequest request = new ColdStartRequest(Optional.ofNullable(candidate), schedule, state, start, air);
        return sweep ? sweep(opened, request) : single(opened, request);
    }

    private static OptionalDouble temperature(String option, String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(ValueArgument.temperature(option, text));
    }

    private int single(OpenedCase opened, ColdStartRequest request) {
        ColdStart start = opened.coldStart(request).map(Run::now).orElseThrow();
        console.result(
                switch (output.format()) {
                    case TEXT -> ColdStartText.of(start, opened.candidates(), output.units());
                    case JSON -> ColdStartJson.of(start, opened.candidates());
                    case CSV -> ColdStartCsv.of(start, output.units());
                });
        output.plots()
                .ifPresent(folder -> Pictures.ofColdStart(start, opened.candidates(), output.units(), folder, console));
        List<String> missing = start.candidates().stream()
                .filter(one -> !one.isComputed())
                .map(ColdStartCandidate::name)
                .toList();
        return done(missing);
    }

    private int sweep(OpenedCase opened, ColdStartRequest request) {
        Progress progress = ProgressLine.on(console, "coldstart.progress");
        ColdStartSweep found = (bands
                        ? opened.bandedColdStartSweep(request).flatMap(run -> run.with(progress))
                        : opened.coldStartSweep(request).map(Run::now))
                .orElseThrow(() -> new Stop(ExitCode.FAILURE, Texts.get("error.cancelled")));
        console.result(
                switch (output.format()) {
                    case TEXT -> ColdStartSweepOutput.text(found, opened.candidates(), output.units());
                    case JSON -> ColdStartSweepOutput.json(found, opened.candidates());
                    case CSV -> ColdStartSweepOutput.csv(found, output.units());
                });
        output.plots()
                .ifPresent(folder ->
                        Pictures.ofColdStartSweep(found, opened.candidates(), output.units(), folder, console));
        List<String> missing = found.candidates().stream()
                .filter(one -> one.rows().stream().anyMatch(row -> !row.computed()))
                .map(ColdStartSweep.Candidate::name)
                .toList();
        return done(missing);
    }

    private static int done(List<String> missing) {
        if (!missing.isEmpty()) {
            throw new Stop(ExitCode.NO_ANSWER, Texts.get("error.startMissing", String.join(", ", missing)));
        }
        return ExitCode.DONE;
    }
}

package org.coldpleat.ui.commandline.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartOutline;
import org.coldpleat.model.progress.Run;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.commandline.argument.CaseArgument;
import org.coldpleat.ui.commandline.coldstart.ColdStartCsv;
import org.coldpleat.ui.commandline.coldstart.ColdStartSweepOutput;
import org.coldpleat.ui.commandline.compare.CompareCsv;
import org.coldpleat.ui.commandline.confidence.ConfidenceCsv;
import org.coldpleat.ui.commandline.map.MapOutput;
import org.coldpleat.ui.commandline.multipass.MultiPassOutput;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.ProgressLine;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.commandline.service.ServiceOutput;
import org.coldpleat.ui.commandline.settings.SettingsCsv;
import org.coldpleat.ui.report.Report;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.UsualSettings;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code export}: every result that has a table, as tables in a folder. */
@Command(name = "export", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class ExportCommand implements Callable<Integer> {
    private final CaseService service;
    private final Console console;

    @Mixin
    private CaseArgument caseFile;

    @Option(names = "--out", paramLabel = "DIR", descriptionKey = "export.out", required = true)
    private Path out;

    @Mixin
    private WholeCaseArguments whole;

    public ExportCommand(CaseService service, Console console) {
        this.service = service;
        this.console = console;
    }

    @Override
    public Integer call() {
        int draws = whole.draws();
        UnitSystem units = whole.units();
        OpenedCase opened = caseFile.open(service, console);
        put("read-me.txt", readMe(opened));
        put("compare", CompareCsv.of(opened.compare().now(), units));
        maps(opened, units);
        start(opened, units);
        opened.service(OptionalDouble.empty())
                .map(Run::now)
                .ifPresent(result -> put("service", ServiceOutput.csv(result, units)));
        opened.settings(Optional.empty(), UsualSettings.from(), UsualSettings.to())
                .with(ProgressLine.on(console, "settings.progress"))
                .ifPresent(result -> put("settings", SettingsCsv.of(result, units)));
        if (draws > 0) {
            opened.confidence(draws, whole.seed())
                    .with(ProgressLine.on(console, "confidence.progress"))
                    .ifPresent(result -> put("confidence", ConfidenceCsv.of(result, units)));
        }
        return ExitCode.DONE;
    }

    private void maps(OpenedCase opened, UnitSystem units) {
        List<String> names = opened.candidates();
        for (int c = 0; c < names.size(); c++) {
            String of = (c + 1) + "-" + ChartFiles.fileName(names.get(c));
            put("map-" + of, MapOutput.csv(opened.map(names.get(c)).now(), units));
            opened.multiPass(names.get(c), 0)
                    .map(Run::now)
                    .ifPresent(report -> put("multipass-" + of, MultiPassOutput.csv(report, units)));
        }
    }

    private void start(OpenedCase opened, UnitSystem units) {
        Optional<StartOutline> outline = opened.startOutline().filter(one -> one.from() < one.hot());
        outline.flatMap(one -> opened.coldStart(ColdStartRequest.AS_STATED).map(Run::now))
                .ifPresent(start -> put("coldstart", ColdStartCsv.of(start, units)));
        outline.filter(one -> !one.logged())
                .flatMap(
                        one -> opened.coldStartSweep(ColdStartRequest.AS_STATED).map(Run::now))
                .ifPresent(sweep -> put("coldstart-sweep", ColdStartSweepOutput.csv(sweep, units)));
    }

    /** What the tables are of, what no result can tell, and what bands and empty cells mean. */
    private String readMe(OpenedCase opened) {
        return Texts.get(opened.invented() ? "export.readMeInvented" : "export.readMe", opened.title()) + "\n\n"
                + String.join("\n- ", Report.limits()) + "\n";
    }

    private void put(String name, String text) {
        Path file = out.resolve(name.endsWith(".txt") ? name : name + ".csv");
        try {
            CaseWriter.write(file, text);
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("sheets.notWritten", file, e));
        }
        console.message(Texts.get("plots.written", file));
    }
}

package org.coldpleat.ui.commandline.output;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.ColdStartCharts;
import org.coldpleat.ui.chart.ConfidenceCharts;
import org.coldpleat.ui.chart.ResidualChart;
import org.coldpleat.ui.chart.ServiceCharts;
import org.coldpleat.ui.chart.SettingsChart;
import org.coldpleat.ui.chart.SizeChart;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.chart.map.ShareGrid;
import org.coldpleat.ui.chart.map.ShareMapChart;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.lesson.LessonStep;
import org.coldpleat.ui.report.LimitsFile;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.Texts;
import org.jfree.chart.JFreeChart;

/** Writes the pictures of a run into a folder. Loaded only when pictures are asked for. */
public final class Pictures {
    private Pictures() {}

    /** Two pictures a state: what the valve sees, and the bypass share. */
    public static void ofComparison(Comparison comparison, UnitSystem units, Path folder, Console console) {
        List<StateSheet> sheets = RunCharts.sheets(comparison);
        for (int s = 0; s < sheets.size(); s++) {
            StateSheet sheet = sheets.get(s);
            String name = (s + 1) + "-" + ChartFiles.fileName(sheet.state());
            write(
                    TemperatureCharts.pressure(sheet, units),
                    TemperatureCharts.pressureDescription(sheet),
                    folder,
                    "pressure-" + name,
                    console);
            write(
                    TemperatureCharts.share(sheet, units),
                    TemperatureCharts.shareDescription(sheet),
                    folder,
                    "share-" + name,
                    console);
        }
    }

    /** One picture: the map. */
    public static void ofMap(
            MapResult map, String title, boolean invented, UnitSystem units, Path folder, Console console) {
        ShareGrid grid = RunCharts.grid(map, title, invented);
        write(
                ShareMapChart.of(grid, units),
                ShareMapChart.description(grid),
                folder,
                "map-" + ChartFiles.fileName(map.candidate()),
                console);
    }

    /** One picture of a step of the lesson. */
    public static void ofLesson(
            QuickCurves quickCurves, int place, LessonStep step, UnitSystem units, Path folder, Console console) {
        StateSheet sheet = RunCharts.sheet(quickCurves);
        write(
                TemperatureCharts.pressure(sheet, units),
                TemperatureCharts.pressureDescription(sheet),
                folder,
                "lesson-" + place + "-" + ChartFiles.fileName(step.key()),
                console);
    }

    /** Everything that is drawn over running time. */
    public static void ofService(ServiceResult result, UnitSystem units, Path folder, Console console) {
        ServiceCharts.all(result, units)
                .forEach(one -> write(one.chart(), one.description(), folder, "service-" + one.name(), console));
    }

    /** One picture over time; {@code names} are those of all candidates of the case. */
    public static void ofColdStart(
            ColdStart start, List<String> names, UnitSystem units, Path folder, Console console) {
        write(
                ColdStartCharts.timeline(start, names, units),
                ColdStartCharts.timelineDescription(start),
                folder,
                "coldstart-" + ChartFiles.fileName(start.schedule()),
                console);
    }

    /** One picture over the temperature of the start; {@code names} are those of all candidates of the case. */
    public static void ofColdStartSweep(
            ColdStartSweep sweep, List<String> names, UnitSystem units, Path folder, Console console) {
        write(
                ColdStartCharts.sweep(sweep, names, units),
                ColdStartCharts.sweepDescription(sweep),
                folder,
                "coldstart-sweep-" + ChartFiles.fileName(sweep.schedule()),
                console);
    }

    /** Everything that is drawn of a run of draws. */
    public static void ofConfidence(
            ConfidenceResult result, boolean invented, UnitSystem units, Path folder, Console console) {
        ConfidenceCharts.all(result, invented, Sentences::measuredThing, units)
                .forEach(one -> write(one.chart(), one.description(), folder, one.name(), console));
    }

    /** Two pictures of a multi-pass test: filtration ratio and pressure drop. */
    public static void ofMultiPass(MultiPassReport report, UnitSystem units, Path folder, Console console) {
        String name = ChartFiles.fileName(report.candidate());
        write(
                ServiceCharts.beta(report),
                ServiceCharts.betaDescription(report),
                folder,
                "multipass-beta-" + name,
                console);
        write(
                ServiceCharts.testDrop(report, units),
                ServiceCharts.testDropDescription(report),
                folder,
                "multipass-drop-" + name,
                console);
    }

    /** One picture for each test with a fitted curve. */
    public static void ofEvidence(
            EvidenceReport report, String title, boolean invented, UnitSystem units, Path folder, Console console) {
        for (TestReport test : report.tests()) {
            if (ResidualChart.fits(test)) {
                write(
                        ResidualChart.of(report, test, title, invented, units),
                        ResidualChart.description(report, test),
                        folder,
                        "residuals-" + ChartFiles.fileName(report.candidate()),
                        console);
            }
        }
    }

    /** One picture: both risks over the valve setting. */
    public static void ofSettings(SettingsResult result, UnitSystem units, Path folder, Console console) {
        write(SettingsChart.of(result, units), SettingsChart.description(result), folder, "settings", console);
    }

    /** One picture: what comes of each value. */
    public static void ofSize(SizingResult result, UnitSystem units, Path folder, Console console) {
        String name = "size-" + result.variable().name().toLowerCase(Locale.ROOT) + "-"
                + ChartFiles.fileName(result.candidate());
        write(SizeChart.of(result, units), SizeChart.description(result), folder, name, console);
    }

    /** One picture: the candidate cut open, as it stands at the point. */
    public static void ofPoint(Section sheet, PointResult point, UnitSystem units, Path folder, Console console) {
        CutawayDrawing drawing = Cutaway.of(sheet, point, point.flow(), units);
        String name = "cutaway-" + ChartFiles.fileName(point.candidate());
        try {
            Path svg = folder.resolve(name + ".svg");
            Path png = folder.resolve(name + ".png");
            ChartFiles.writeSvg(drawing, svg);
            ChartFiles.writePng(drawing, png);
            LimitsFile.in(folder);
            console.message(Texts.get("plots.written", svg));
            console.message(Texts.get("plots.written", png));
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("error.plots", e));
        }
    }

    private static void write(JFreeChart chart, String description, Path folder, String name, Console console) {
        try {
            Path svg = folder.resolve(name + ".svg");
            Path png = folder.resolve(name + ".png");
            ChartFiles.writeSvg(chart, svg, description);
            ChartFiles.writePng(chart, png);
            LimitsFile.in(folder);
            console.message(Texts.get("plots.written", svg));
            console.message(Texts.get("plots.written", png));
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("error.plots", e));
        }
    }
}

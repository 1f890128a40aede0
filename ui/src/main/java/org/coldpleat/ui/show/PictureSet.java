package org.coldpleat.ui.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.ColdStartCharts;
import org.coldpleat.ui.chart.ServiceCharts;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.file.Canvas;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.chart.file.Presentation;
import org.coldpleat.ui.chart.map.ShareGrid;
import org.coldpleat.ui.chart.map.ShareMapChart;
import org.coldpleat.ui.chart.style.UnitWords;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.report.Report;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.service.OpenedCase;
import org.jfree.chart.JFreeChart;

/** The fixed set of pictures of a case. */
public final class PictureSet {
    private static final double LEAST_SHOWN = 0.01;

    private static final Set<String> OVER_TIME = Set.of("opening", "drop");

    private final Canvas canvas;
    private final UnitSystem units;
    private final List<NamedPicture> pictures = new ArrayList<>();

    private PictureSet(Canvas canvas, UnitSystem units) {
        this.canvas = canvas;
        this.units = units;
    }

    /**
     * Runs a case and makes its pictures.
     *
     * @param start its cold start; empty if it has none
     * @param canvas what the pictures will be painted on
     * @param units units of the pictures
     */
    public static List<NamedPicture> of(OpenedCase opened, Optional<ColdStart> start, Canvas canvas, UnitSystem units) {
        PictureSet set = new PictureSet(canvas, units);
        Comparison comparison = opened.compare().now();
        set.overTemperature(comparison);
        opened.candidates().forEach(name -> set.map(opened.map(name).now(), comparison));
        set.cutaways(opened, ReportRun.hardestPoints(opened, comparison));
        start.ifPresent(one -> set.chart(
                "start",
                ColdStartCharts.timeline(one, opened.candidates(), units),
                ColdStartCharts.timelineDescription(one)));
        opened.service(OptionalDouble.empty())
                .map(Run::now)
                .ifPresent(life -> ServiceCharts.all(life, units).stream()
                        .filter(one -> OVER_TIME.contains(one.name()))
                        .forEach(one -> set.chart("service-" + one.name(), one.chart(), one.description())));
        return List.copyOf(set.pictures);
    }

    /** What goes with the pictures in words: each with what it shows, and what no picture can tell. */
    public static String captions(String title, boolean invented, List<NamedPicture> pictures) {
        List<String> lines = new ArrayList<>();
        lines.add(invented ? ShowTexts.get("captions.invented", title) : title);
        for (NamedPicture one : pictures) {
            lines.add("");
            lines.add(one.name());
            lines.add("  " + one.picture().title());
            lines.add("  " + one.picture().description());
        }
        lines.add("");
        lines.add(ShowTexts.get("captions.bands"));
        lines.add("");
        List<String> limits = Report.limits();
        lines.add(limits.get(0));
        limits.stream().skip(1).forEach(limit -> lines.add("  - " + limit));
        return String.join("\n", lines) + "\n";
    }

    private void overTemperature(Comparison comparison) {
        List<StateSheet> sheets = RunCharts.sheets(comparison);
        for (int s = 0; s < sheets.size(); s++) {
            StateSheet sheet = sheets.get(s);
            String name = (s + 1) + "-" + ChartFiles.fileName(sheet.state());
            chart(
                    "pressure-" + name,
                    TemperatureCharts.pressure(sheet, units),
                    TemperatureCharts.pressureDescription(sheet));
            chart("share-" + name, TemperatureCharts.share(sheet, units), TemperatureCharts.shareDescription(sheet));
        }
    }

    private void map(MapResult map, Comparison comparison) {
        boolean blank =
                Arrays.stream(map.share()).flatMapToDouble(Arrays::stream).allMatch(share -> share < LEAST_SHOWN);
        if (!blank) {
            ShareGrid grid = RunCharts.grid(map, comparison.title(), comparison.invented());
            chart(
                    "map-" + ChartFiles.fileName(map.candidate()),
                    ShareMapChart.of(grid, units),
                    ShareMapChart.description(grid));
        }
    }

    private void cutaways(OpenedCase opened, List<PointResult> points) {
        double most = ReportRun.greatestFlow(points);
        for (PointResult point : points) {
            Section sheet = opened.sheet(point.candidate());
            pictures.add(new NamedPicture(
                    "cutaway-" + ChartFiles.fileName(point.candidate()),
                    Stages.picture(
                            Stages.steady(Cutaway.side(sheet, point, most), point, opened, UnitWords.of(units)),
                            !canvas.transparent())));
        }
    }

    private void chart(String name, JFreeChart chart, String description) {
        pictures.add(new NamedPicture(name, Picture.of(Presentation.dress(chart, canvas), description)));
    }
}

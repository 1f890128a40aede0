package org.coldpleat.ui.report.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.chart.map.ShareGrid;
import org.coldpleat.ui.chart.map.ShareMapChart;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.report.input.ReportInput;
import org.jsoup.nodes.Element;

/** The charts of the comparison: what each valve sees, how much oil goes round, and the maps. */
public final class ChartSection implements ReportSection {
    /** Lowest step of the map [1]. */
    private static final double LEAST_SHOWN = 0.01;

    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        Element section = Tags.of("section", "").id("charts");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("charts.title")));
        int number = 0;
        for (Picture picture : pictures(input)) {
            section.appendChild(Figure.of(picture, "chart-" + ++number));
        }
        input.maps().stream()
                .filter(map -> !anyGoesRound(map))
                .forEach(map -> section.appendChild(Tags.of("p", "")
                        .appendChild(Tags.said(map.candidate()))
                        .appendText(": " + ReportTexts.get("charts.noMap"))));
        return Optional.of(section);
    }

    /** False if a map would be blank. */
    static boolean anyGoesRound(MapResult map) {
        return Arrays.stream(map.share()).flatMapToDouble(Arrays::stream).anyMatch(share -> !(share < LEAST_SHOWN));
    }

    /** All charts of this section, one line a kind. */
    static List<Picture> pictures(ReportInput input) {
        List<Picture> pictures = new ArrayList<>();
        for (StateSheet sheet : RunCharts.sheets(input.comparison())) {
            pictures.add(Picture.of(
                    TemperatureCharts.pressure(sheet, input.units()), TemperatureCharts.pressureDescription(sheet)));
            pictures.add(Picture.of(
                    TemperatureCharts.share(sheet, input.units()), TemperatureCharts.shareDescription(sheet)));
        }
        input.maps().stream().filter(ChartSection::anyGoesRound).forEach(map -> {
            ShareGrid grid = RunCharts.grid(
                    map, input.comparison().title(), input.comparison().invented());
            pictures.add(Picture.of(ShareMapChart.of(grid, input.units()), ShareMapChart.description(grid)));
        });
        return pictures;
    }
}

package org.coldpleat.ui.chart.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.quantity.Units;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeriesCollection;

/** The map of the bypass share over oil temperature and engine speed or flow. */
public final class ShareMapChart {
    private static final double RPM = 1 / Units.require(Kind.ROTATION, "rpm").factor();
    private static final int SWATCH = 22;

    private ShareMapChart() {}

    /** The map of one candidate. */
    public static JFreeChart of(ShareGrid grid, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        double scale = grid.engine() ? RPM : units.flow().fromSi(1);
        XYPlot plot = Charts.plot(new XYSeriesCollection(), new XYLineAndShapeRenderer());
        Axes.temperature(plot, grid.temperature()[0], grid.temperature()[grid.temperature().length - 1], units);
        NumberAxis drive = Axes.linear(
                grid.engine()
                        ? ChartTexts.get("axis.speed")
                        : ChartTexts.get("axis.flow", units.flow().symbol()));
        drive.setRange(scale * grid.drive()[0], scale * grid.drive()[grid.drive().length - 1]);
        plot.setRangeAxis(drive);
        if (!grid.engine()) {
            Axes.farFlow(plot, drive, units);
        }
        plot.addAnnotation(new ShareMapAnnotation(grid, scale, units.temperature()));
        plot.setFixedLegendItems(legend(hasGaps(grid)));
        return Charts.chart(
                ChartTexts.get("map.title", grid.candidate()),
                ChartTexts.get(grid.invented() ? "subtitle.mapInvented" : "subtitle.map", grid.title()),
                "",
                plot);
    }

    /** What the map shows, for readers who cannot see it. */
    public static String description(ShareGrid grid) {
        return ChartTexts.get("description.map", grid.candidate());
    }

    private static boolean hasGaps(ShareGrid grid) {
        for (double[] row : grid.share()) {
            for (double share : row) {
                if (!Double.isFinite(share)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static LegendItemCollection legend(boolean gaps) {
        LegendItemCollection legend = new LegendItemCollection();
        List<Double> steps = ChartTheme.SHARE_STEPS;
        for (int step = 0; step <= steps.size(); step++) {
            String text = step == 0
                    ? ChartTexts.get("map.below", Charts.number(100 * steps.get(0)))
                    : step == steps.size()
                            ? ChartTexts.get("map.above", Charts.number(100 * steps.get(step - 1)))
                            : ChartTexts.get(
                                    "map.between",
                                    Charts.number(100 * steps.get(step - 1)),
                                    Charts.number(100 * steps.get(step)));
            legend.add(swatch(text, ChartTheme.shade(step)));
        }
        if (gaps) {
            legend.add(swatch(ChartTexts.get("map.notKnown"), ChartTheme.NOT_KNOWN));
        }
        return legend;
    }

    private static LegendItem swatch(String text, Color color) {
        LegendItem item = new LegendItem(
                text,
                null,
                null,
                null,
                new Rectangle2D.Double(-SWATCH / 2.0, -SWATCH / 3.0, SWATCH, 2 * SWATCH / 3.0),
                color,
                new BasicStroke(1),
                ChartTheme.INK);
        item.setLabelFont(ChartTheme.LEGEND);
        return item;
    }
}

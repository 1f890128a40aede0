package org.coldpleat.ui.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.title.Title;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Dresses charts to be shown: on a wall, in a film, on a phone held upright or across. Type is the same as in any chart,
 * but the canvas has fewer points, so that everything on it is larger.
 */
public final class Presentation {
    /** Points along the shorter side: type of 15 points is then a thirtieth of it. */
    private static final double SHORT_SIDE = 450;

    private static final Color CLEAR = new Color(255, 255, 255, 0);

    private Presentation() {}

    /** A canvas of so many pixels. */
    public static Canvas canvas(int width, int height, boolean transparent) {
        return new Canvas(width, height, Math.min(width, height) / SHORT_SIDE, transparent);
    }

    /**
     * A chart with its axis names in one line over the plot, where there is room to read them, and without the small
     * print below.
     *
     * @param chart fresh from its builder; changed
     */
    public static JFreeChart dress(JFreeChart chart, boolean transparent) {
        for (int i = chart.getSubtitleCount() - 1; i >= 0; i--) {
            Title title = chart.getSubtitle(i);
            boolean smallPrint = title instanceof TextTitle && title.getPosition().equals(RectangleEdge.BOTTOM);
            if (smallPrint) {
                chart.removeSubtitle(title);
            }
        }
        if (chart.getPlot() instanceof XYPlot plot && !(plot instanceof CombinedDomainXYPlot)) {
            axisNames(chart, plot);
        }
        if (transparent) {
            clear(chart);
        }
        return chart;
    }

    private static void axisNames(JFreeChart chart, XYPlot plot) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < plot.getRangeAxisCount(); i++) {
            ValueAxis axis = plot.getRangeAxis(i);
            if (axis != null && axis.getLabel() != null && !axis.getLabel().isEmpty()) {
                names.add(axis.getLabel());
                axis.setLabel(null);
            }
        }
        if (names.isEmpty()) {
            return;
        }
        String words = names.size() == 1 ? names.get(0) : ChartTexts.get("show.axes", names.get(0), names.get(1));
        TextTitle line = new TextTitle(words, ChartTheme.AXIS);
        line.setPaint(ChartTheme.INK);
        line.setPosition(RectangleEdge.TOP);
        line.setHorizontalAlignment(HorizontalAlignment.LEFT);
        line.setPadding(new RectangleInsets(0, 4, 4, 0));
        chart.addSubtitle(line);
    }

    private static void clear(JFreeChart chart) {
        chart.setBackgroundPaint(null);
        chart.getPlot().setBackgroundPaint(null);
        if (chart.getPlot() instanceof CombinedDomainXYPlot combined) {
            combined.getSubplots().forEach(plot -> ((XYPlot) plot).setBackgroundPaint(null));
        }
        for (int i = 0; i < chart.getSubtitleCount(); i++) {
            if (chart.getSubtitle(i) instanceof LegendTitle legend) {
                legend.setBackgroundPaint(CLEAR);
            }
        }
    }
}

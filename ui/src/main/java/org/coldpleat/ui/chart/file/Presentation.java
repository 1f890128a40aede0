package org.coldpleat.ui.chart.file;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYTitleAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.title.Title;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/**
 * Dresses charts to be shown: on a wall, in a film, on a phone held upright or across. Type is the same as in any chart,
 * but the canvas has fewer points, so that everything on it is larger.
 */
public final class Presentation {
    /** Points along the shorter side: type of 15 points is then a thirtieth of it. */
    private static final double SHORT_SIDE = 450;

    private static final double LINE_HEIGHT = 20;
    private static final int LONGEST_BESIDE = 34;
    private static final float SMALLEST = 12.5f;
    private static final Color CLEAR = new Color(255, 255, 255, 0);

    private Presentation() {}

    /** A canvas of so many pixels. */
    public static Canvas canvas(int width, int height, boolean transparent) {
        return new Canvas(width, height, Math.min(width, height) / SHORT_SIDE, transparent);
    }

    /**
     * A chart with its axis names in one line over the plot, where there is room to read them, without the small print,
     * and with its legend beside the plot where the canvas is wide.
     *
     * @param chart fresh from its builder; changed
     * @param canvas what it will be painted on
     */
    public static JFreeChart dress(JFreeChart chart, Canvas canvas) {
        boolean wide = canvas.width() > canvas.height();
        for (int i = chart.getSubtitleCount() - 1; i >= 0; i--) {
            Title title = chart.getSubtitle(i);
            if (title instanceof TextTitle && title.getPosition().equals(RectangleEdge.BOTTOM)) {
                chart.removeSubtitle(title);
            } else if (title instanceof LegendTitle legend && wide && fitsBeside(chart.getXYPlot())) {
                legend.setPosition(RectangleEdge.RIGHT);
                legend.setPadding(new RectangleInsets(0, 10, 0, 0));
                legend.setItemLabelPadding(new RectangleInsets(5, 4, 5, 4));
            }
        }
        if (chart.getPlot() instanceof CombinedDomainXYPlot combined) {
            combined.getDomainAxis().setTickLabelFont(ChartTheme.NOTE.deriveFont(SMALLEST));
            double middle = middle(combined.getDomainAxis());
            combined.getSubplots().forEach(panel -> nameInside(panel, middle));
        } else {
            stagger(chart.getXYPlot());
            domainNames(chart.getXYPlot());
            axisNames(chart, chart.getXYPlot());
        }
        if (canvas.transparent()) {
            clear(chart);
        }
        return chart;
    }

    /** Legends of short words leave enough room for the plot. */
    private static boolean fitsBeside(XYPlot plot) {
        LegendItemCollection items = plot.getLegendItems();
        for (int i = 0; i < items.getItemCount(); i++) {
            if (items.get(i).getLabel().length() > LONGEST_BESIDE) {
                return false;
            }
        }
        return !(plot instanceof CombinedDomainXYPlot);
    }

    /** Names of upright lines at their feet, on two heights in turn, since large type is wider than the way from line to line. */
    private static void stagger(XYPlot plot) {
        Collection<?> markers = plot.getDomainMarkers(Layer.BACKGROUND);
        int place = 0;
        for (Object marker : markers == null ? List.of() : markers) {
            if (marker instanceof Marker line && line.getLabel() != null) {
                line.setLabelAnchor(RectangleAnchor.BOTTOM_RIGHT);
                line.setLabelTextAnchor(TextAnchor.BOTTOM_LEFT);
                line.setLabelOffset(new RectangleInsets(4, 4, LINE_HEIGHT * (0.8 + place % 2), 4));
                place++;
            }
        }
    }

    /** The name of the axis at the top of its plot, where starts leave room for it. */
    private static void nameInside(XYPlot plot, double middle) {
        ValueAxis axis = plot.getRangeAxis();
        if (axis == null || axis.getLabel() == null) {
            return;
        }
        TextTitle name = new TextTitle(axis.getLabel(), ChartTheme.NOTE);
        name.setBackgroundPaint(ChartTheme.LABEL_GROUND);
        name.setPaint(ChartTheme.INK);
        plot.addAnnotation(new XYTitleAnnotation(middle, 0.96, name, RectangleAnchor.TOP));
        axis.setLabel(null);
    }

    /** Where the middle of an axis is, as a part of the difference of its ends [1]. */
    private static double middle(ValueAxis axis) {
        double low = axis.getLowerBound();
        double high = axis.getUpperBound();
        return axis instanceof LogAxis ? (Math.sqrt(low * high) - low) / (high - low) : 0.5;
    }

    /** Both scales of the temperature named in one line below. */
    private static void domainNames(XYPlot plot) {
        ValueAxis first = plot.getDomainAxis(0);
        ValueAxis second = plot.getDomainAxisCount() > 1 ? plot.getDomainAxis(1) : null;
        if (second != null && second.getLabel() != null) {
            first.setLabel(ChartTexts.get("show.scales", first.getLabel(), second.getLabel()));
            second.setLabel(null);
        }
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
        line.setTextAlignment(HorizontalAlignment.LEFT);
        line.setPadding(new RectangleInsets(0, 4, 4, 0));
        chart.addSubtitle(line);
    }

    private static void clear(JFreeChart chart) {
        chart.setBackgroundPaint(null);
        chart.getPlot().setBackgroundPaint(null);
        if (chart.getPlot() instanceof CombinedDomainXYPlot combined) {
            combined.getSubplots().forEach(plot -> plot.setBackgroundPaint(null));
        }
        for (int i = 0; i < chart.getSubtitleCount(); i++) {
            if (chart.getSubtitle(i) instanceof LegendTitle legend) {
                legend.setBackgroundPaint(CLEAR);
            }
        }
    }
}

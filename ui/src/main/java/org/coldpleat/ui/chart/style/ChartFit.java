package org.coldpleat.ui.chart.style;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.title.Title;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** Draws a chart into the room there is: what would leave none for the curves is left out, and axis names keep to their axes. */
public final class ChartFit {
    /** Height below which the small print is left out [points]. */
    private static final double SMALL = 560;

    private static final float SMALLEST_TYPE = 10;
    private static final double EDGE = 4;
    private static final double LINE = 17;

    private ChartFit() {}

    /**
     * Draws a chart.
     *
     * @param legend false if its legend stands elsewhere
     * @param info learns where everything is
     */
    public static void draw(
            JFreeChart chart, Graphics2D g2, Rectangle2D area, boolean legend, ChartRenderingInfo info) {
        show(chart, area.getHeight() >= SMALL, legend);
        chart.draw(g2, area, info);
        if (chart.getPlot() instanceof XYPlot plot && fit(plot, g2, info.getPlotInfo())) {
            chart.draw(g2, area, info);
        }
    }

    /** Shows all of a chart again, as it is kept. */
    public static void whole(JFreeChart chart) {
        show(chart, true, true);
    }

    private static void show(JFreeChart chart, boolean smallPrint, boolean legend) {
        for (int i = 0; i < chart.getSubtitleCount(); i++) {
            Title title = chart.getSubtitle(i);
            if (title instanceof LegendTitle) {
                title.setVisible(legend);
            } else if (title instanceof TextTitle && title.getPosition().equals(RectangleEdge.BOTTOM)) {
                title.setVisible(smallPrint);
            }
        }
    }

    /** Makes names fit their axes and lines; true if one did not. */
    private static boolean fit(XYPlot plot, Graphics2D g2, PlotRenderingInfo info) {
        boolean changed = false;
        if (plot instanceof CombinedDomainXYPlot all) {
            List<XYPlot> panels = all.getSubplots();
            for (int i = 0; i < Math.min(panels.size(), info.getSubplotCount()); i++) {
                changed |= fit(panels.get(i), g2, info.getSubplotInfo(i));
            }
            return changed;
        }
        for (int i = 0; i < plot.getRangeAxisCount(); i++) {
            changed |= shorten(plot.getRangeAxis(i), g2, info.getDataArea().getHeight());
        }
        boolean moved = stagger(plot, g2, info.getDataArea());
        return changed || moved;
    }

    /** Names of upright lines one below the other where they would run into each other. */
    private static boolean stagger(XYPlot plot, Graphics2D g2, Rectangle2D area) {
        Collection<?> markers = plot.getDomainMarkers(Layer.BACKGROUND);
        List<ValueMarker> named = (markers == null ? List.of() : markers)
                .stream()
                        .filter(ValueMarker.class::isInstance)
                        .map(ValueMarker.class::cast)
                        .filter(line -> line.getLabel() != null)
                        .sorted(Comparator.comparingDouble(ValueMarker::getValue))
                        .toList();
        boolean changed = false;
        List<Double> taken = new ArrayList<>();
        for (ValueMarker line : named) {
            double x = plot.getDomainAxis().valueToJava2D(line.getValue(), area, plot.getDomainAxisEdge());
            int row = 0;
            while (row < taken.size() && taken.get(row) > x) {
                row++;
            }
            double end = x + 2 * EDGE + g2.getFontMetrics(line.getLabelFont()).stringWidth(line.getLabel());
            if (row < taken.size()) {
                taken.set(row, end);
            } else {
                taken.add(end);
            }
            RectangleInsets place = new RectangleInsets(EDGE + row * LINE, EDGE, EDGE, EDGE);
            changed |= !place.equals(line.getLabelOffset());
            line.setLabelOffset(place);
        }
        return changed;
    }

    private static boolean shorten(ValueAxis axis, Graphics2D g2, double room) {
        if (axis == null || axis.getLabel() == null) {
            return false;
        }
        Font usual = ChartTheme.AXIS;
        double length = g2.getFontMetrics(usual).stringWidth(axis.getLabel());
        float size = (float) Math.max(SMALLEST_TYPE, usual.getSize2D() * Math.min(1, room / length));
        boolean changes = Math.abs(size - axis.getLabelFont().getSize2D()) > 0.5;
        if (changes) {
            axis.setLabelFont(usual.deriveFont(size));
        }
        return changes;
    }
}

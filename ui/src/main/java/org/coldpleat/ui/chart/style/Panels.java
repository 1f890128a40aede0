package org.coldpleat.ui.chart.style;

import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Panels one below the other over the same values: curves, with rings where things stand now. */
public final class Panels {
    private static final double GAP = 18;
    private static final double RING = 9;
    private static final double HEADROOM = 0.06;

    private final CombinedDomainXYPlot all;
    private final LegendItemCollection legend = new LegendItemCollection();

    public Panels(ValueAxis across) {
        all = new CombinedDomainXYPlot(across);
        all.setGap(GAP);
        all.setBackgroundPaint(ChartTheme.PAPER);
        all.setFixedLegendItems(legend);
    }

    /** Adds a curve to the legend. */
    public void name(int index, String words) {
        legend.add(Charts.legendItem(index, words));
    }

    /**
     * Adds a panel.
     *
     * @param curves one series each, their keys do not matter
     * @param indices which candidate each curve belongs to
     * @param rings points that are marked, one series for each curve, empty where there is none
     */
    public XYPlot add(String label, XYSeriesCollection curves, int[] indices, XYSeriesCollection rings) {
        XYPlot plot = Charts.plot(curves, new CurveRenderer(indices));
        plot.setDataset(1, rings);
        plot.setRenderer(1, rings(indices));
        NumberAxis axis = Axes.linear(label);
        fit(axis, curves);
        plot.setRangeAxis(axis);
        all.add(plot);
        return plot;
    }

    private static void fit(NumberAxis axis, XYSeriesCollection curves) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < curves.getSeriesCount(); s++) {
            for (int i = 0; i < curves.getItemCount(s); i++) {
                double y = curves.getYValue(s, i);
                if (Double.isFinite(y)) {
                    low = Math.min(low, y);
                    high = Math.max(high, y);
                }
            }
        }
        if (low <= high) {
            double room = high > low ? HEADROOM * (high - low) : Math.max(1, Math.abs(high));
            axis.setRange(low - room, high + room);
        }
    }

    private static XYLineAndShapeRenderer rings(int[] indices) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setDefaultCreateEntities(false);
        for (int s = 0; s < indices.length; s++) {
            renderer.setSeriesPaint(s, ChartTheme.color(indices[s]));
            renderer.setSeriesShape(s, new Ellipse2D.Double(-RING, -RING, 2 * RING, 2 * RING));
            renderer.setSeriesShapesFilled(s, false);
            renderer.setSeriesOutlineStroke(s, new BasicStroke(ChartTheme.CURVE_WIDTH));
            renderer.setSeriesStroke(s, new BasicStroke(ChartTheme.CURVE_WIDTH));
        }
        return renderer;
    }

    /** Gives a panel an axis in decades over a range. */
    public static void decades(XYPlot plot, double low, double high) {
        String label = plot.getRangeAxis().getLabel();
        DecadeAxis axis = new DecadeAxis("");
        Axes.dress(axis, label);
        axis.setRange(low, high);
        plot.setRangeAxis(axis);
    }

    /** A level line across a panel. */
    public static void level(XYPlot plot, double value) {
        ValueMarker line = new ValueMarker(value);
        line.setPaint(ChartTheme.INK);
        line.setStroke(ChartTheme.limitLine());
        line.setAlpha(1);
        plot.addRangeMarker(line);
    }

    /** An upright line through a panel, with a name. */
    public static void upright(XYPlot plot, double value, String name) {
        plot.addDomainMarker(Charts.namedLine(value, name));
    }

    public JFreeChart chart(String title, String subtitle, String key) {
        return Charts.chart(title, subtitle, key, all);
    }

    public static void add(XYSeries series, double x, double y) {
        series.add(x, Double.isFinite(y) ? y : Double.NaN);
    }
}

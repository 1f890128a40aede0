package org.coldpleat.ui.chart.style;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.annotations.XYShapeAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * A plot of named rows from top to bottom with bars along them. The name stands above the bars of its row, so that long
 * names need no margin. A row is one high; heights within it count from its middle, upward above 0.
 */
public final class BarRows {
    private static final double NAME = 0.36;
    private static final double CAP = 0.09;

    private final XYPlot plot;
    private final XYSeriesCollection points = new XYSeriesCollection();
    private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    private final NumberAxis down;
    private final NumberAxis across;
    private int rows;

    public BarRows(NumberAxis across) {
        this.across = across;
        renderer.setDefaultCreateEntities(false);
        plot = Charts.plot(points, renderer);
        plot.setDomainAxis(across);
        down = Axes.linear("");
        down.setTickLabelsVisible(false);
        down.setTickMarksVisible(false);
        down.setInverted(true);
        plot.setRangeAxis(down);
        plot.setRangeGridlinesVisible(false);
    }

    public XYPlot plot() {
        return plot;
    }

    /** Begins a row and writes its name. */
    public void row(String name) {
        rows++;
        down.setRange(0.5, rows + 0.5);
        if (!name.isEmpty()) {
            text(across.getLowerBound(), NAME, " " + name, TextAnchor.CENTER_LEFT);
        }
    }

    /** Words in the row. */
    public void text(double at, double height, String words, TextAnchor anchor) {
        XYTextAnnotation text = new XYTextAnnotation(words, at, rows - height);
        text.setFont(ChartTheme.NOTE);
        text.setPaint(ChartTheme.INK);
        text.setTextAnchor(anchor);
        plot.addAnnotation(text);
    }

    /** A bar from one value to another; none where they are one. */
    public void bar(double from, double to, double height, double width, Color fill, Color edge) {
        if (!(to > from)) {
            // the chart library scales a shape by its width
            return;
        }
        Shape shape = new Rectangle2D.Double(from, rows - height - width / 2, to - from, width);
        plot.addAnnotation(new XYShapeAnnotation(shape, new BasicStroke(ChartTheme.THIN_WIDTH), edge, fill));
    }

    /** A thin line from one value to another with caps at its ends: an error. */
    public void error(double from, double to, double height) {
        line(from, rows - height, to, rows - height);
        line(from, rows - height - CAP, from, rows - height + CAP);
        line(to, rows - height - CAP, to, rows - height + CAP);
    }

    private void line(double x1, double y1, double x2, double y2) {
        plot.addAnnotation(
                new XYLineAnnotation(x1, y1, x2, y2, new BasicStroke(ChartTheme.THIN_WIDTH), ChartTheme.INK));
    }

    /** The marker of a candidate at a value. */
    public void marker(double at, double height, int candidate) {
        int series = points.getSeriesCount();
        XYSeries one = new XYSeries(series);
        one.add(at, rows - height);
        points.addSeries(one);
        renderer.setSeriesPaint(series, ChartTheme.color(candidate));
        renderer.setSeriesShape(series, ChartTheme.marker(candidate));
    }
}

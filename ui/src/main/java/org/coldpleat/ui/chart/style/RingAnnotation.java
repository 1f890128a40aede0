package org.coldpleat.ui.chart.style;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** An open circle of fixed size at a point of the plot. */
public final class RingAnnotation extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1;
    private static final double RADIUS = 7;

    private final double x;
    private final double y;
    private final Color color;

    public RingAnnotation(double x, double y, Color color) {
        this.x = x;
        this.y = y;
        this.color = color;
    }

    @Override
    public void draw(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D dataArea,
            ValueAxis domainAxis,
            ValueAxis rangeAxis,
            int rendererIndex,
            PlotRenderingInfo info) {
        double px = domainAxis.valueToJava2D(x, dataArea, plot.getDomainAxisEdge());
        double py = rangeAxis.valueToJava2D(y, dataArea, plot.getRangeAxisEdge());
        Ellipse2D ring = new Ellipse2D.Double(px - RADIUS, py - RADIUS, 2 * RADIUS, 2 * RADIUS);
        g2.setPaint(ChartTheme.PAPER);
        g2.fill(ring);
        g2.setPaint(color);
        g2.setStroke(new BasicStroke(ChartTheme.CURVE_WIDTH));
        g2.draw(ring);
    }
}

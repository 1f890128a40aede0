package org.coldpleat.ui.chart.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.Charts;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;

/** Paints a share grid into a plot: shades in steps, lines of equal share, and a label on each line. */
final class ShareMapAnnotation extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1;
    private static final int PIXEL = 3;
    private static final double LABEL_MARGIN = 3;
    private static final double SHORTEST_LABELED = 60;
    private static final int NOT_KNOWN = -1;

    private final transient ShareGrid grid;
    private final double driveScale;
    private final transient Unit temperature;

    /**
     * A map.
     *
     * @param grid shares
     * @param driveScale axis units per SI unit of the drive
     * @param temperature unit of the temperature axis
     */
    ShareMapAnnotation(ShareGrid grid, double driveScale, Unit temperature) {
        this.grid = grid;
        this.temperature = temperature;
        this.driveScale = driveScale;
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
        Object smooth = g2.getRenderingHint(RenderingHints.KEY_ANTIALIASING);
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        shades(g2, plot, dataArea, domainAxis, rangeAxis);
        g2.setRenderingHint(
                RenderingHints.KEY_ANTIALIASING, smooth == null ? RenderingHints.VALUE_ANTIALIAS_ON : smooth);
        List<Label> labels = new ArrayList<>();
        for (double level : ChartTheme.SHARE_STEPS) {
            for (List<double[]> line : LevelLines.of(grid.temperature(), grid.drive(), grid.share(), level)) {
                levelLine(g2, plot, dataArea, domainAxis, rangeAxis, level, line)
                        .ifPresent(labels::add);
            }
        }
        List<Rectangle2D> taken = new ArrayList<>();
        labels.forEach(label -> label(g2, label, dataArea, taken));
    }

    /** Runs of equal shade along rows a few pixels high: small files, and no seams. */
    private void shades(Graphics2D g2, XYPlot plot, Rectangle2D area, ValueAxis domainAxis, ValueAxis rangeAxis) {
        double bottom = area.getMaxY();
        for (double y = area.getMinY(); y < bottom; y += PIXEL) {
            double height = Math.min(PIXEL, bottom - y);
            double drive = rangeAxis.java2DToValue(y + height / 2, area, plot.getRangeAxisEdge()) / driveScale;
            double runStart = area.getMinX();
            int running = stepAt(plot, area, domainAxis, runStart, drive);
            for (double x = area.getMinX() + PIXEL; x < area.getMaxX(); x += PIXEL) {
                int step = stepAt(plot, area, domainAxis, x, drive);
                if (step != running) {
                    run(g2, running, runStart, x, y, height);
                    runStart = x;
                    running = step;
                }
            }
            run(g2, running, runStart, area.getMaxX(), y, height);
        }
    }

    private int stepAt(XYPlot plot, Rectangle2D area, ValueAxis axis, double x, double drive) {
        double middle = Math.min(x + PIXEL / 2.0, area.getMaxX());
        double shown = axis.java2DToValue(middle, area, plot.getDomainAxisEdge());
        double share = grid.at(temperature.toSi(shown), drive);
        return Double.isFinite(share) ? ChartTheme.step(share) : NOT_KNOWN;
    }

    private static void run(Graphics2D g2, int step, double from, double to, double y, double height) {
        if (step == 0 || to <= from) {
            return;
        }
        Color color = step == NOT_KNOWN ? ChartTheme.NOT_KNOWN : ChartTheme.shade(step);
        g2.setPaint(color);
        g2.fill(new Rectangle2D.Double(from, y, to - from, height));
    }

    private static float width(double level) {
        return level == ChartTheme.SHARE_STEPS.get(0) ? ChartTheme.CURVE_WIDTH : ChartTheme.THIN_WIDTH;
    }

    /** A label that is drawn after all lines, so that none runs through it. */
    private record Label(String text, double x, double y) {}

    private Optional<Label> levelLine(
            Graphics2D g2,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis domainAxis,
            ValueAxis rangeAxis,
            double level,
            List<double[]> line) {
        Path2D path = new Path2D.Double();
        double[] px = new double[line.size()];
        double[] py = new double[line.size()];
        double length = 0;
        for (int i = 0; i < line.size(); i++) {
            px[i] = domainAxis.valueToJava2D(temperature.fromSi(line.get(i)[0]), area, plot.getDomainAxisEdge());
            py[i] = rangeAxis.valueToJava2D(driveScale * line.get(i)[1], area, plot.getRangeAxisEdge());
            if (i == 0) {
                path.moveTo(px[i], py[i]);
            } else {
                path.lineTo(px[i], py[i]);
                length += Math.hypot(px[i] - px[i - 1], py[i] - py[i - 1]);
            }
        }
        g2.setPaint(ChartTheme.PAPER);
        g2.setStroke(new BasicStroke(width(level) + 2));
        g2.draw(path);
        g2.setPaint(ChartTheme.INK);
        g2.setStroke(new BasicStroke(width(level)));
        g2.draw(path);
        if (length < SHORTEST_LABELED) {
            return Optional.empty();
        }
        int middle = halfway(px, py, length * labelShare(level));
        return Optional.of(
                new Label(ChartTexts.get("map.contour", Charts.number(100 * level)), px[middle], py[middle]));
    }

    /** Labels of neighboring levels sit at different places along their lines, so that they do not collide. */
    private static double labelShare(double level) {
        int place = ChartTheme.step(level);
        return 0.3 + 0.13 * (place % 4);
    }

    private static int halfway(double[] px, double[] py, double wanted) {
        double run = 0;
        for (int i = 1; i < px.length; i++) {
            run += Math.hypot(px[i] - px[i - 1], py[i] - py[i - 1]);
            if (run >= wanted) {
                return i;
            }
        }
        return px.length - 1;
    }

    /** Writes a label unless it would cover one that is written already; the shades tell it all the same. */
    private static void label(Graphics2D g2, Label label, Rectangle2D area, List<Rectangle2D> taken) {
        String text = label.text();
        g2.setFont(ChartTheme.NOTE);
        FontMetrics metrics = g2.getFontMetrics();
        double width = metrics.stringWidth(text) + 2 * LABEL_MARGIN;
        double height = metrics.getAscent() + metrics.getDescent();
        double left = Math.max(area.getMinX() + 2, Math.min(label.x() - width / 2, area.getMaxX() - width - 2));
        double top = Math.max(area.getMinY() + 2, Math.min(label.y() - height / 2, area.getMaxY() - height - 2));
        Rectangle2D box = new Rectangle2D.Double(left, top, width, height);
        if (taken.stream().anyMatch(box::intersects)) {
            return;
        }
        taken.add(box);
        g2.setPaint(ChartTheme.PAPER);
        g2.fill(box);
        g2.setPaint(ChartTheme.INK);
        g2.setStroke(new BasicStroke(0.8f));
        g2.draw(box);
        g2.drawString(text, (float) (left + LABEL_MARGIN), (float) (top + metrics.getAscent()));
    }
}

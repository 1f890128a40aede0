package org.coldpleat.ui.chart.cutaway;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.Comparator;
import java.util.List;

/** The words beside and above a drawing: long ones in two lines, none over another. */
final class CutawayWords {
    private static final Font FONT = CutawayPainter.PLAIN;
    private static final double ROW = 1.25 * FONT.getSize2D();
    private static final double MIDDLE = FONT.getSize2D() / 3;
    private static final double ABOVE = 8;

    /** Part of the width that a line of words may take [1]. */
    private static final double WIDEST = 0.3;

    private final List<Label> labels;
    private final Graphics2D g2;
    private final FontMetrics metrics;
    private final double room;

    /** @param width of the sheet [points] */
    CutawayWords(List<Label> labels, Graphics2D g2, double width) {
        this.labels = labels;
        this.g2 = g2;
        metrics = g2.getFontMetrics(FONT);
        room = WIDEST * width;
    }

    /** Width of the widest line on one side [points]. */
    double width(Label.Side side) {
        return labels.stream()
                .filter(label -> label.side() == side)
                .flatMap(label -> lines(label).stream())
                .mapToDouble(metrics::stringWidth)
                .max()
                .orElse(0);
    }

    private List<String> lines(Label label) {
        String text = label.text();
        if (metrics.stringWidth(text) <= room) {
            return List.of(text);
        }
        int middle = text.length() / 2;
        int before = text.lastIndexOf(' ', middle);
        int after = text.indexOf(' ', middle);
        int at = before < 0 || (after >= 0 && after - middle < middle - before) ? after : before;
        return at < 0 ? List.of(text) : List.of(text.substring(0, at), text.substring(at + 1));
    }

    void draw(double scale, double left, double top) {
        for (Label.Side side : Label.Side.values()) {
            double free = 0;
            for (Label label : labels.stream()
                    .filter(one -> one.side() == side)
                    .sorted(Comparator.comparingDouble(Label::y))
                    .toList()) {
                List<String> lines = lines(label);
                double height = ROW * (lines.size() - 1);
                double x = left + scale * label.x();
                double y = top + scale * label.y();
                if (side == Label.Side.HEADING) {
                    write(label, lines, x, y - ABOVE - height, 0.5);
                } else {
                    double middle = Math.max(y, free + height / 2);
                    write(label, lines, x, middle - height / 2 + MIDDLE, side == Label.Side.ENDING ? 1 : 0);
                    line(label, x, middle, left + scale * label.toX(), top + scale * label.toY());
                    free = middle + height / 2 + ROW;
                }
            }
        }
    }

    private void write(Label label, List<String> lines, double x, double y, double part) {
        Color color = label.measured() ? CutawayPainter.INK : CutawayPainter.FAINT;
        double at = y;
        for (String line : lines) {
            CutawayPainter.words(g2, line, FONT, color, x, at, part);
            at += ROW;
        }
    }

    private void line(Label label, double fromX, double fromY, double toX, double toY) {
        double x = CutawayPainter.hundredth(toX);
        double y = CutawayPainter.hundredth(toY);
        Path2D line = new Path2D.Double();
        line.moveTo(
                CutawayPainter.hundredth(fromX + (label.side() == Label.Side.ENDING ? 5 : -5)),
                CutawayPainter.hundredth(fromY));
        line.lineTo(x, y);
        g2.setColor(CutawayPainter.PAPER);
        g2.setStroke(new BasicStroke(2.6f));
        g2.draw(line);
        g2.setColor(CutawayPainter.INK);
        g2.setStroke(label.measured() ? new BasicStroke(0.9f) : CutawayPainter.dashes(0.9f, 4));
        g2.draw(line);
        g2.fill(new Ellipse2D.Double(x - 2.2, y - 2.2, 4.4, 4.4));
    }
}

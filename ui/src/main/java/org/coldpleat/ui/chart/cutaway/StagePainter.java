package org.coldpleat.ui.chart.cutaway;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Paints a filter cut open with a few facts in large type, upright or across. */
public final class StagePainter {
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 26);
    private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 16);
    private static final Font NAME = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    private static final Font VALUE = new Font(Font.SANS_SERIF, Font.BOLD, 21);
    private static final Font STRONG = new Font(Font.SANS_SERIF, Font.BOLD, 36);
    private static final Color INK = new Color(0x1A1A1A);
    private static final Color FAINT = new Color(0x4A4A4A);
    private static final double MARGIN = 16;
    private static final double STRIP = 62;
    private static final double KEY = 56;
    private static final double GAP = 8;

    private StagePainter() {}

    /** Paints the sheet on an area, in points. */
    public static void paint(StageSheet sheet, boolean ground, Graphics2D g2, Rectangle2D area) {
        CutawayPainter.smooth(g2);
        if (ground) {
            g2.setColor(Color.WHITE);
            g2.fill(area);
        }
        double x = area.getX() + MARGIN;
        double y = area.getY() + MARGIN;
        double width = area.getWidth() - 2 * MARGIN;
        y = lines(g2, sheet.title(), TITLE, INK, x, y, width);
        y = lines(g2, sheet.subtitle(), PLAIN, FAINT, x, y, width) + 8;
        double bottom = area.getMaxY() - MARGIN - (sheet.course().length > 0 ? STRIP : 0);
        boolean across = area.getWidth() > area.getHeight();
        if (across) {
            double drawn = 0.46 * width;
            CutawayPainter.pieces(sheet.drawing(), g2, new Rectangle2D.Double(x, y, drawn, bottom - y));
            double right = x + drawn + MARGIN;
            facts(g2, sheet.facts(), right, y, width - drawn - MARGIN);
            key(g2, right, bottom - KEY);
        } else {
            double drawn = Math.min(0.95 * width, 0.5 * (bottom - y));
            CutawayPainter.pieces(sheet.drawing(), g2, new Rectangle2D.Double(x, y, width, drawn));
            facts(g2, sheet.facts(), x, y + drawn + MARGIN, width);
            key(g2, x, bottom - KEY);
        }
        if (sheet.course().length > 0) {
            strip(g2, sheet, new Rectangle2D.Double(x, bottom + 6, width, STRIP - 26));
        }
    }

    /** Strong facts in one row on top, the others two by two below. */
    private static void facts(Graphics2D g2, List<StageSheet.Fact> facts, double x, double y, double width) {
        double column = width / 2;
        double at = y;
        for (boolean strong : new boolean[] {true, false}) {
            List<StageSheet.Fact> some =
                    facts.stream().filter(fact -> fact.strong() == strong).toList();
            for (int i = 0; i < some.size(); i += 2) {
                double next = fact(g2, some.get(i), x, at, column);
                if (i + 1 < some.size()) {
                    next = Math.max(next, fact(g2, some.get(i + 1), x + column, at, column));
                }
                at = next + GAP;
            }
        }
    }

    private static double fact(Graphics2D g2, StageSheet.Fact fact, double x, double y, double width) {
        double room = width - GAP;
        double at = lines(g2, fact.name(), NAME, FAINT, x, y, room);
        return lines(g2, fact.value(), fact.strong() ? STRONG : VALUE, INK, x, at, room);
    }

    /** What the two streams mean, each with its look. */
    private static void key(Graphics2D g2, double x, double y) {
        CutawayPainter.sample(g2, Role.FILTERED_STREAM, x, y + 10);
        word(g2, CutawayTexts.get("legend.filtered"), PLAIN, INK, x + 56, y + 16);
        CutawayPainter.sample(g2, Role.BYPASS_STREAM, x, y + 36);
        word(g2, CutawayTexts.get("legend.bypass"), PLAIN, INK, x + 56, y + 42);
    }

    /** Share over the course so far, with a line where it stands. */
    private static void strip(Graphics2D g2, StageSheet sheet, Rectangle2D box) {
        double[] course = sheet.course();
        Path2D area = new Path2D.Double();
        area.moveTo(box.getX(), box.getMaxY());
        double x = box.getX();
        for (int i = 0; i < course.length; i++) {
            if (Double.isNaN(course[i])) {
                break;
            }
            x = box.getX() + box.getWidth() * i / (course.length - 1.0);
            area.lineTo(x, box.getMaxY() - box.getHeight() * Math.min(1, course[i]));
        }
        area.lineTo(x, box.getMaxY());
        area.closePath();
        g2.setColor(CutawayPainter.color(Role.BYPASS_STREAM));
        g2.fill(area);
        g2.setColor(INK);
        g2.setStroke(new BasicStroke(1));
        g2.draw(box);
        g2.setStroke(new BasicStroke(2.5f));
        g2.draw(new Line2D.Double(x, box.getY() - 3, x, box.getMaxY() + 3));
        for (StageSheet.Mark mark : sheet.marks()) {
            double at = box.getX() + box.getWidth() * mark.at();
            g2.setStroke(new BasicStroke(1));
            g2.draw(new Line2D.Double(at, box.getMaxY(), at, box.getMaxY() + 5));
            g2.setFont(PLAIN);
            double half = g2.getFontMetrics().stringWidth(mark.words()) / 2.0;
            double left = Math.max(box.getX(), Math.min(at - half, box.getMaxX() - 2 * half));
            word(g2, mark.words(), PLAIN, INK, left, box.getMaxY() + 20);
        }
    }

    private static void word(Graphics2D g2, String text, Font font, Color color, double x, double y) {
        g2.setFont(font);
        g2.setColor(color);
        g2.drawString(text, (float) x, (float) y);
    }

    /** Words in lines no wider than the room; returns where the next line begins. */
    private static double lines(Graphics2D g2, String text, Font font, Color color, double x, double y, double width) {
        g2.setFont(font);
        double at = y;
        for (String line : broken(g2, text, width)) {
            at += g2.getFontMetrics().getAscent();
            word(g2, line, font, color, x, at);
            at += g2.getFontMetrics().getDescent() + 2;
        }
        return at;
    }

    private static List<String> broken(Graphics2D g2, String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && g2.getFontMetrics().stringWidth(longer) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}

package org.coldpleat.ui.chart.cutaway;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Paints a cutaway drawing on a sheet of fixed shape; what is not known is dashed. */
public final class CutawayPainter {
    /** Width of the sheet [px]. */
    public static final int WIDTH = 1200;

    /** Height of the sheet [px]. */
    public static final int HEIGHT = 820;

    private static final Color PAPER = Color.WHITE;
    private static final Color INK = new Color(0x222222);
    private static final Color FAINT = new Color(0x5A5A5A);
    private static final Color LOW = new Color(0xFBF3DC);
    private static final Color HIGH = new Color(0xC9A227);
    private static final Color STREAM_LOW = new Color(0xE0B84A);
    private static final Color STREAM_HIGH = new Color(0x5C3B00);
    private static final Color BYPASS = new Color(0xC23B00);
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 22);
    private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    private static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final int HEAD = 74;
    private static final int FOOT = 96;
    private static final int MARGIN = 14;

    private CutawayPainter() {}

    /** Paints the drawing on an area of any size; the sheet keeps its shape. */
    public static void paint(CutawayDrawing drawing, Graphics2D g2, Rectangle2D area) {
        AffineTransform before = g2.getTransform();
        double fit = Math.min(area.getWidth() / WIDTH, area.getHeight() / HEIGHT);
        g2.setColor(PAPER);
        g2.fill(area);
        smooth(g2);
        g2.translate(
                area.getX() + (area.getWidth() - fit * WIDTH) / 2, area.getY() + (area.getHeight() - fit * HEIGHT) / 2);
        g2.scale(fit, fit);
        words(g2, drawing.title(), TITLE, INK, WIDTH / 2.0, 34, 0.5);
        words(g2, drawing.subtitle(), PLAIN, INK, WIDTH / 2.0, 60, 0.5);
        double scale = Math.min((WIDTH - 2.0 * MARGIN) / drawing.width(), (HEIGHT - HEAD - FOOT) / drawing.height());
        double left = (WIDTH - scale * drawing.width()) / 2;
        for (Piece piece : drawing.pieces()) {
            piece(g2, piece, scale, left, HEAD);
        }
        for (Label label : drawing.labels()) {
            label(g2, label, scale, left);
        }
        legend(g2, drawing);
        g2.setTransform(before);
    }

    static void smooth(Graphics2D g2) {
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** Paints the pieces alone, as large as the room allows, in its middle. */
    static void pieces(CutawayDrawing drawing, Graphics2D g2, Rectangle2D room) {
        double scale = Math.min(room.getWidth() / drawing.width(), room.getHeight() / drawing.height());
        double left = room.getX() + (room.getWidth() - scale * drawing.width()) / 2;
        double top = room.getY() + (room.getHeight() - scale * drawing.height()) / 2;
        drawing.pieces().forEach(piece -> piece(g2, piece, scale, left, top));
    }

    /** A short piece of a stream, as a key. */
    static void sample(Graphics2D g2, Role role, double x, double y) {
        g2.setStroke(new BasicStroke(8));
        g2.setColor(color(role));
        g2.draw(new java.awt.geom.Line2D.Double(x, y, x + 44, y));
        if (role == Role.BYPASS_STREAM) {
            g2.setColor(PAPER);
            g2.setStroke(dashes(1.6f, 6));
            g2.draw(new java.awt.geom.Line2D.Double(x, y, x + 44, y));
        }
    }

    static Color color(Role role) {
        return role == Role.BYPASS_STREAM ? BYPASS : between(STREAM_LOW, STREAM_HIGH, 0.6);
    }

    private static void piece(Graphics2D g2, Piece piece, double scale, double left, double top) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < piece.x().length; i++) {
            double x = hundredth(left + scale * piece.x()[i]);
            double y = hundredth(top + scale * piece.y()[i]);
            if (i == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        Color fill = fill(piece);
        if (!piece.closed()) {
            float width = (float) Math.max(0.8, scale * piece.width());
            g2.setColor(fill);
            boolean stream = isStream(piece.role());
            g2.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
            g2.draw(path);
            if (piece.role() == Role.BYPASS_STREAM) {
                g2.setColor(PAPER);
                g2.setStroke(dashes(Math.max(0.7f, width / 5), 6));
                g2.draw(path);
            } else if (!stream && !piece.measured()) {
                g2.setColor(PAPER);
                g2.setStroke(dashes(width, 3));
                g2.draw(path);
            }
            return;
        }
        path.closePath();
        g2.setColor(piece.measured() || piece.role() == Role.OIL ? fill : faded(fill));
        g2.fill(path);
        if (!isStream(piece.role()) && (piece.role() != Role.OIL || !piece.measured())) {
            g2.setColor(piece.role() == Role.MEDIUM ? new Color(0x6B5D3E) : INK);
            g2.setStroke(piece.measured() ? new BasicStroke(0.6f) : dashes(1.1f, 5));
            g2.draw(path);
        }
    }

    private static boolean isStream(Role role) {
        return role == Role.FILTERED_STREAM || role == Role.BYPASS_STREAM;
    }

    private static Stroke dashes(float width, float length) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {length, length}, 0);
    }

    private static Color fill(Piece piece) {
        return switch (piece.role()) {
            case CAN -> new Color(0x8C99A6);
            case PLATE -> new Color(0x6F7C88);
            case RUBBER -> new Color(0x3A3A3A);
            case END_CAP -> new Color(0xA9B4BE);
            case MEDIUM -> new Color(0xEBDDB8);
            case GLUE -> new Color(0xB99B5B);
            case TUBE -> new Color(0xA3ADB6);
            case TUBE_OPENING -> new Color(0xD8CFA8);
            case VALVE -> new Color(0x2E6E9E);
            case OIL -> between(LOW, HIGH, piece.tone());
            case FILTERED_STREAM -> between(STREAM_LOW, STREAM_HIGH, piece.tone());
            case BYPASS_STREAM -> BYPASS;
        };
    }

    private static Color faded(Color color) {
        return between(color, PAPER, 0.55);
    }

    private static Color between(Color from, Color to, double share) {
        return new Color(
                (int) Math.round(from.getRed() + share * (to.getRed() - from.getRed())),
                (int) Math.round(from.getGreen() + share * (to.getGreen() - from.getGreen())),
                (int) Math.round(from.getBlue() + share * (to.getBlue() - from.getBlue())));
    }

    private static double hundredth(double value) {
        return Math.rint(100 * value) / 100;
    }

    private static void label(Graphics2D g2, Label label, double scale, double left) {
        double x = left + scale * label.x();
        double y = HEAD + scale * label.y();
        switch (label.side()) {
            case HEADING -> words(g2, label.text(), PLAIN, label.measured() ? INK : FAINT, x, y + 5, 0.5);
            case ENDING -> words(g2, label.text(), PLAIN, label.measured() ? INK : FAINT, x, y + 5, 1);
            case BEGINNING -> words(g2, label.text(), PLAIN, label.measured() ? INK : FAINT, x, y + 5, 0);
        }
        if (label.hasLine()) {
            double away = label.side() == Label.Side.ENDING ? 5 : -5;
            double tx = hundredth(left + scale * label.toX());
            double ty = hundredth(HEAD + scale * label.toY());
            Path2D line = new Path2D.Double();
            line.moveTo(hundredth(x + away), hundredth(y));
            line.lineTo(tx, ty);
            g2.setColor(PAPER);
            g2.setStroke(new BasicStroke(2.6f));
            g2.draw(line);
            g2.setColor(INK);
            g2.setStroke(label.measured() ? new BasicStroke(0.9f) : dashes(0.9f, 4));
            g2.draw(line);
            g2.fill(new java.awt.geom.Ellipse2D.Double(tx - 2.2, ty - 2.2, 4.4, 4.4));
        }
    }

    private static void legend(Graphics2D g2, CutawayDrawing drawing) {
        double y = HEIGHT - FOOT + 30.0;
        double x = 30;
        sample(g2, Role.FILTERED_STREAM, x, y);
        words(g2, CutawayTexts.get("legend.filtered"), PLAIN, INK, x + 54, y + 5, 0);
        x += 262;
        sample(g2, Role.BYPASS_STREAM, x, y);
        words(g2, CutawayTexts.get("legend.bypass"), PLAIN, INK, x + 54, y + 5, 0);
        x += 248;
        words(g2, CutawayTexts.get("legend.dashed"), PLAIN, INK, x, y + 5, 0);
        x += 205;
        int steps = 5;
        for (int i = 0; i < steps; i++) {
            g2.setColor(between(LOW, HIGH, i / (steps - 1.0)));
            g2.fill(new Rectangle2D.Double(x + 30 * i, y - 8, 30, 8));
            g2.setColor(between(STREAM_LOW, STREAM_HIGH, i / (steps - 1.0)));
            g2.fill(new Rectangle2D.Double(x + 30 * i, y, 30, 8));
        }
        words(g2, "0", SMALL, INK, x, y + 24, 0);
        words(g2, drawing.greatestPressure(), SMALL, INK, x + 30 * steps, y + 24, 1);
        words(g2, drawing.pressureWords(), PLAIN, INK, x + 30 * steps + 10, y + 5, 0);
        double row = HEIGHT - 30;
        for (String note : drawing.notes()) {
            words(g2, note, SMALL, FAINT, WIDTH / 2.0, row, 0.5);
            row += 17;
        }
    }

    /** Writes words; {@code part} says which part of them stands at x: 0 their beginning, 1 their end. */
    private static void words(Graphics2D g2, String text, Font font, Color color, double x, double y, double part) {
        g2.setFont(font);
        g2.setColor(color);
        double width = g2.getFontMetrics().stringWidth(text);
        g2.drawString(text, (float) hundredth(x - part * width), (float) hundredth(y));
    }

    /** What the drawing shows, for readers who cannot see it. */
    public static String description(CutawayDrawing drawing) {
        return CutawayTexts.get("description", drawing.title(), drawing.subtitle());
    }
}

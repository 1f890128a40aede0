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

/** Paints a cutaway drawing on a sheet of any shape; what is not known is dashed. */
public final class CutawayPainter {
    static final Color PAPER = Color.WHITE;
    static final Color INK = new Color(0x222222);
    static final Color FAINT = new Color(0x5A5A5A);
    static final Color LOW = new Color(0xFBF3DC);
    static final Color HIGH = new Color(0xC9A227);
    static final Color STREAM_LOW = new Color(0xE0B84A);
    static final Color STREAM_HIGH = new Color(0x5C3B00);
    private static final Color BYPASS = new Color(0xC23B00);
    private static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 22);
    static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final int HEAD = 84;
    private static final float SMALLEST_TYPE = 6;

    /** Keeps a drawing in the smallest of panes from being turned inside out [points for each mm]. */
    private static final double SMALLEST = 0.01;

    static final int MARGIN = 14;

    private CutawayPainter() {}

    /** Paints the drawing as large as the area and the words beside it allow. */
    public static void paint(CutawayDrawing drawing, Graphics2D g2, Rectangle2D area) {
        AffineTransform before = g2.getTransform();
        g2.setColor(PAPER);
        g2.fill(area);
        smooth(g2);
        g2.translate(area.getX(), area.getY());
        double width = area.getWidth();
        double room = width - 2.0 * MARGIN;
        fitted(g2, drawing.title(), TITLE, INK, width / 2, 34, room);
        fitted(g2, drawing.subtitle(), PLAIN, INK, width / 2, 60, room);
        CutawayLegend legend = new CutawayLegend(drawing, g2, width);
        double foot = area.getHeight() - legend.height();
        CutawayWords labels = new CutawayWords(drawing.labels(), g2, width);
        double leftWords = labels.width(Label.Side.ENDING) + MARGIN;
        double rightWords = labels.width(Label.Side.BEGINNING) + MARGIN;
        double scale = scale(drawing, width, foot - HEAD, leftWords + rightWords);
        double center = between(drawing, width, scale, leftWords, rightWords);
        double left = center - scale * drawing.width() / 2;
        for (Piece piece : drawing.pieces()) {
            piece(g2, piece, scale, left, HEAD);
        }
        labels.draw(scale, left, HEAD);
        legend.draw(foot);
        g2.setTransform(before);
    }

    /** Points for each millimeter of the filter: all of it and all words beside it are inside. */
    private static double scale(CutawayDrawing drawing, double width, double height, double words) {
        double all = Math.min((width - 2.0 * MARGIN) / drawing.width(), height / drawing.height());
        double beside = (width - words) / (2 * reach(drawing));
        return Math.max(SMALLEST, Math.min(all, beside));
    }

    /** How far the words begin from the middle [mm]. */
    private static double reach(CutawayDrawing drawing) {
        return drawing.labels().stream()
                .filter(Label::hasLine)
                .mapToDouble(label -> Math.abs(label.x() - drawing.width() / 2))
                .max()
                .orElse(drawing.width() / 2);
    }

    /** Where the middle of the drawing stands: in the middle, or aside where the words of one side need it. */
    private static double between(
            CutawayDrawing drawing, double width, double scale, double leftWords, double rightWords) {
        double half = scale * drawing.width() / 2;
        double beside = scale * reach(drawing);
        double least = Math.max(MARGIN + half, leftWords + beside);
        double most = Math.min(width - MARGIN - half, width - rightWords - beside);
        return least > most ? (least + most) / 2 : Math.min(most, Math.max(least, width / 2));
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

    static Stroke dashes(float width, float length) {
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

    static Color between(Color from, Color to, double share) {
        return new Color(
                (int) Math.round(from.getRed() + share * (to.getRed() - from.getRed())),
                (int) Math.round(from.getGreen() + share * (to.getGreen() - from.getGreen())),
                (int) Math.round(from.getBlue() + share * (to.getBlue() - from.getBlue())));
    }

    static double hundredth(double value) {
        return Math.rint(100 * value) / 100;
    }

    /** Writes words; {@code part} says which part of them stands at x: 0 their beginning, 1 their end. */
    static void words(Graphics2D g2, String text, Font font, Color color, double x, double y, double part) {
        g2.setFont(font);
        g2.setColor(color);
        double width = g2.getFontMetrics().stringWidth(text);
        g2.drawString(text, (float) hundredth(x - part * width), (float) hundredth(y));
    }

    /** Writes words around a place, smaller where they would not fit. */
    static void fitted(Graphics2D g2, String text, Font font, Color color, double x, double y, double room) {
        Font fitting = font;
        // the width of letters goes in steps, so it is measured anew at each size
        while (fitting.getSize2D() > SMALLEST_TYPE && width(g2, text, fitting) > room) {
            fitting = fitting.deriveFont(fitting.getSize2D() - 0.5f);
        }
        words(g2, text, fitting, color, x, y, 0.5);
    }

    private static double width(Graphics2D g2, String text, Font font) {
        return g2.getFontMetrics(font).getStringBounds(text, g2).getWidth();
    }

    /** What the drawing shows, for readers who cannot see it. */
    public static String description(CutawayDrawing drawing) {
        return CutawayTexts.get("description", drawing.title(), drawing.subtitle());
    }
}

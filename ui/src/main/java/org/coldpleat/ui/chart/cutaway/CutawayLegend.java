package org.coldpleat.ui.chart.cutaway;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What lines and tones of a drawing mean, in as many rows as the width asks for, and its notes. */
final class CutawayLegend {
    private static final Font FONT = CutawayPainter.PLAIN;
    private static final Font SMALL = CutawayPainter.SMALL;
    private static final double SAMPLE = 54;
    private static final double SCALE = 160;
    private static final double GAP = 28;
    private static final double ROW = 26;
    private static final double NOTE = 17;
    private static final double NUMBERS = 16;
    private static final double AROUND = 14;
    private static final int STEPS = 5;

    private final CutawayDrawing drawing;
    private final Graphics2D g2;
    private final double width;
    private final List<List<Key>> rows = new ArrayList<>();

    /** What stands before the words. */
    private enum Kind {
        FILTERED,
        BYPASS,
        NONE,
        TONES
    }

    /** A sample, and what it stands for. */
    private record Key(Kind kind, String words, FontMetrics metrics) {
        double before() {
            return switch (kind) {
                case FILTERED, BYPASS -> SAMPLE;
                case NONE -> 0;
                case TONES -> SCALE;
            };
        }

        double width() {
            return before() + metrics.stringWidth(words);
        }
    }

    CutawayLegend(CutawayDrawing drawing, Graphics2D g2, double width) {
        this.drawing = drawing;
        this.g2 = g2;
        this.width = width;
        FontMetrics metrics = g2.getFontMetrics(FONT);
        double x = 0;
        for (Key key : List.of(
                new Key(Kind.FILTERED, CutawayTexts.get("legend.filtered"), metrics),
                new Key(Kind.BYPASS, CutawayTexts.get("legend.bypass"), metrics),
                new Key(Kind.NONE, CutawayTexts.get("legend.dashed"), metrics),
                new Key(Kind.TONES, drawing.pressureWords(), metrics))) {
            if (rows.isEmpty() || x + GAP + key.width() > width - 2 * AROUND) {
                rows.add(new ArrayList<>());
                x = -GAP;
            }
            rows.get(rows.size() - 1).add(key);
            x += GAP + key.width();
        }
    }

    /** Height of all of it [points]. */
    double height() {
        return 2 * AROUND + ROW * rows.size() + NUMBERS + NOTE * drawing.notes().size();
    }

    void draw(double top) {
        double y = top + AROUND + ROW / 2;
        for (List<Key> row : rows) {
            double length = row.stream().mapToDouble(Key::width).sum() + GAP * (row.size() - 1);
            double x = (width - length) / 2;
            for (Key key : row) {
                key(key, x, y);
                x += key.width() + GAP;
            }
            y += ROW;
        }
        y += NUMBERS;
        for (String note : drawing.notes()) {
            CutawayPainter.fitted(g2, note, SMALL, CutawayPainter.FAINT, width / 2, y, width - 2 * AROUND);
            y += NOTE;
        }
    }

    private void key(Key key, double x, double y) {
        switch (key.kind()) {
            case FILTERED -> CutawayPainter.sample(g2, Role.FILTERED_STREAM, x, y);
            case BYPASS -> CutawayPainter.sample(g2, Role.BYPASS_STREAM, x, y);
            case TONES -> tones(x, y);
            case NONE -> {}
        }
        CutawayPainter.words(g2, key.words(), FONT, CutawayPainter.INK, x + key.before(), y + 5, 0);
    }

    /** Tones of oil from the outlet to the greatest pressure, with their ends in numbers. */
    private void tones(double x, double y) {
        double step = (SCALE - 10) / STEPS;
        for (int i = 0; i < STEPS; i++) {
            double share = i / (STEPS - 1.0);
            g2.setColor(CutawayPainter.between(CutawayPainter.LOW, CutawayPainter.HIGH, share));
            g2.fill(new Rectangle2D.Double(x + step * i, y - 8, step, 8));
            g2.setColor(CutawayPainter.between(CutawayPainter.STREAM_LOW, CutawayPainter.STREAM_HIGH, share));
            g2.fill(new Rectangle2D.Double(x + step * i, y, step, 8));
        }
        double below = y + 9 + SMALL.getSize2D();
        CutawayPainter.words(g2, "0", SMALL, CutawayPainter.INK, x, below, 0);
        CutawayPainter.words(g2, drawing.greatestPressure(), SMALL, CutawayPainter.INK, x + step * STEPS, below, 1);
    }
}

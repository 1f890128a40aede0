package org.coldpleat.ui.chart.style;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.GeneralPath;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.coldpleat.shared.source.Source;

/**
 * Looks of all charts: colors, dashes, markers and type. A candidate has one color, one dash and one marker, given by
 * its index, the same in every chart; the three cycles have different lengths, so that 280 candidates stay apart and
 * each can be told from its neighbors without color.
 */
public final class ChartTheme {
    /**
     * Colors of candidates: each stands out at least 3 to 1 from white, and they are apart for the common kinds of color
     * blindness.
     */
    @Source("M. Okabe and K. Ito 2008, Color Universal Design (blue, vermilion, bluish green, black);"
            + " P. Tol 2021, Colour schemes, SRON/EPS/TN/09-002 (muted purple and wine, medium-contrast dark yellow)")
    private static final List<Color> COLORS = List.of(
            new Color(0x0072B2),
            new Color(0xD55E00),
            new Color(0x009E73),
            new Color(0xAA4499),
            new Color(0x997700),
            new Color(0x882255),
            new Color(0x000000));

    private static final float[][] DASHES = {
        {}, {14, 5}, {3, 4}, {14, 4, 3, 4}, {22, 4}, {8, 3, 3, 3, 3, 3}, {7, 7}, {22, 4, 3, 4}
    };

    private static final List<Shape> MARKERS =
            List.of(circle(), square(), triangle(), diamond(), plus(), hourglass(), cross(), flag());

    /** Steps of the bypass share at which the map changes its shade [1]. */
    public static final List<Double> SHARE_STEPS = List.of(0.01, 0.05, 0.10, 0.20, 0.40, 0.60, 0.80);

    /** Shades between the steps, from untouched to fully bypassed; lightness falls at every step. */
    @Source("derived here: single-hue ramp from white to Okabe and Ito's blue and on to near black")
    private static final List<Color> SHADES = List.of(
            new Color(0xFFFFFF),
            new Color(0xE3EEF6),
            new Color(0xC3DCEC),
            new Color(0x9CC5DF),
            new Color(0x6AA8CF),
            new Color(0x2F86BB),
            new Color(0x0D5C8F),
            new Color(0x0A3352));

    public static final Color PAPER = Color.WHITE;
    public static final Color INK = new Color(0x1A1A1A);
    static final Color GRID = new Color(0xD9D9D9);
    public static final Color LABEL_GROUND = new Color(255, 255, 255, 215);
    public static final Color NOT_KNOWN = new Color(0xB8B8B8);

    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 22);
    static final Font SUBTITLE = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    public static final Font AXIS = new Font(Font.SANS_SERIF, Font.PLAIN, 17);
    public static final Font TICK = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    public static final Font LEGEND = new Font(Font.SANS_SERIF, Font.PLAIN, 16);
    public static final Font NOTE = new Font(Font.SANS_SERIF, Font.PLAIN, 14);

    public static final float CURVE_WIDTH = 2.6f;
    public static final float SPAN_WIDTH = 9;
    /** Wide enough that a faint curve of no dash stands out beside that of its candidate. */
    public static final float TRIED_WIDTH = 4.5f;

    public static final float THIN_WIDTH = 1.4f;

    private static final double MARKER_SIZE = 5.5;
    private static final int BAND_ALPHA = 34;
    private static final int SPAN_ALPHA = 95;

    private ChartTheme() {}

    /** Color of the candidate with this index, counted from 0 in the order of the case. */
    public static Color color(int index) {
        return COLORS.get(Math.floorMod(index, COLORS.size()));
    }

    /** Line of the candidate with this index. */
    public static Stroke line(int index) {
        return dashed(CURVE_WIDTH, DASHES[Math.floorMod(index, DASHES.length)]);
    }

    /** Marker of the candidate with this index, centered on the origin. */
    public static Shape marker(int index) {
        return MARKERS.get(Math.floorMod(index, MARKERS.size()));
    }

    /** Thin short-dashed line of a limit that belongs to a candidate. */
    public static Stroke limitLine() {
        return dashed(THIN_WIDTH, new float[] {6, 4});
    }

    /** The color of a candidate, faint enough to lie under its curve. */
    public static Color band(int index) {
        return faint(index, BAND_ALPHA);
    }

    /** The color of a candidate for a bar that a curve must show through. */
    public static Color span(int index) {
        return faint(index, SPAN_ALPHA);
    }

    private static Color faint(int index, int alpha) {
        Color color = color(index);
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }

    /** Number of the shade for a bypass share [1]. */
    public static int step(double share) {
        int step = 0;
        while (step < SHARE_STEPS.size() && share >= SHARE_STEPS.get(step)) {
            step++;
        }
        return step;
    }

    /** Shade with this number. */
    public static Color shade(int step) {
        return SHADES.get(step);
    }

    private static Stroke dashed(float width, float[] dash) {
        return dash.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
    }

    private static Shape circle() {
        return new Ellipse2D.Double(-MARKER_SIZE, -MARKER_SIZE, 2 * MARKER_SIZE, 2 * MARKER_SIZE);
    }

    private static Shape square() {
        double s = 0.9 * MARKER_SIZE;
        return new Rectangle2D.Double(-s, -s, 2 * s, 2 * s);
    }

    private static Shape triangle() {
        return polygon(0, -1.2, 1.2, 0.9, -1.2, 0.9);
    }

    private static Shape diamond() {
        return polygon(0, -1.35, 1.35, 0, 0, 1.35, -1.35, 0);
    }

    private static Shape plus() {
        return polygon(
                -0.4, -1.3, 0.4, -1.3, 0.4, -0.4, 1.3, -0.4, 1.3, 0.4, 0.4, 0.4, 0.4, 1.3, -0.4, 1.3, -0.4, 0.4, -1.3,
                0.4, -1.3, -0.4, -0.4, -0.4);
    }

    private static Shape cross() {
        return AffineTransform.getRotateInstance(Math.PI / 4).createTransformedShape(plus());
    }

    private static Shape hourglass() {
        return polygon(-1.1, -1.1, 1.1, -1.1, -1.1, 1.1, 1.1, 1.1);
    }

    private static Shape flag() {
        return polygon(0, 1.2, 1.2, -0.9, -1.2, -0.9);
    }

    private static Shape polygon(double... xy) {
        GeneralPath path = new GeneralPath();
        path.moveTo(MARKER_SIZE * xy[0], MARKER_SIZE * xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(MARKER_SIZE * xy[i], MARKER_SIZE * xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}

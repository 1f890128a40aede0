package org.coldpleat.ui.chart.file;

/**
 * What a picture is painted on.
 *
 * @param width of the file [px], at least 100
 * @param height of the file [px], at least 100
 * @param zoom pixels to a point: type and lines grow with it, the room for them shrinks
 * @param transparent true for no ground, so that the picture can lie over something else
 */
public record Canvas(int width, int height, double zoom, boolean transparent) {
    /** Scalable pictures of the usual size. */
    public static final Canvas SVG = new Canvas(1200, 820, 1, false);

    /** The same in pixels, two to a point. */
    public static final Canvas PNG = new Canvas(2400, 1640, 2, false);

    private static final int LEAST = 100;

    public Canvas {
        if (width < LEAST || height < LEAST) {
            throw new IllegalArgumentException(
                    "a canvas must be at least " + LEAST + " px, was " + width + " x " + height + " px");
        }
        if (!(zoom > 0)) {
            throw new IllegalArgumentException("zoom must be above 0, was " + zoom);
        }
    }

    /** Width in points. */
    public double pointWidth() {
        return width / zoom;
    }

    /** Height in points. */
    public double pointHeight() {
        return height / zoom;
    }
}

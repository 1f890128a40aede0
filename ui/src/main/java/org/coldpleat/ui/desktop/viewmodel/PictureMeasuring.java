package org.coldpleat.ui.desktop.viewmodel;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.source.Provenance;

/**
 * Measures widths on one picture. A scale is the length of a bar whose ends are marked, or the width of the whole field;
 * a magnification is none.
 */
public final class PictureMeasuring {
    private static final String PLACE = "fiber sizing";
    private static final Pattern MAGNIFICATION = Pattern.compile("\\s*[x×]?\\s*\\d+([.,]\\d+)?\\s*[x×]?\\s*");

    private final double pictureWidth;
    private final Deque<PictureMarks> before = new ArrayDeque<>();
    private PictureMarks marks = PictureMarks.NONE;

    /** @param pictureWidth [pixel], above 0 */
    public PictureMeasuring(double pictureWidth) {
        this.pictureWidth = pictureWidth;
    }

    /**
     * A length in the picture as the bench sheet takes it.
     *
     * @param typed the length as it was typed
     * @param length [m]
     * @param pixels it spans
     * @param ofField true if it is the width of the field, false for a scale bar
     */
    public record Scale(String typed, double length, double pixels, boolean ofField) {
        /** Size of one pixel [m]. */
        public double pixelSize() {
            return length / pixels;
        }
    }

    /**
     * What is known by now.
     *
     * @param scale empty if there is none yet
     * @param problem why there is no scale; empty if there is one
     * @param count whole pairs
     * @param mean width [pixel]; NaN without a pair
     * @param deviation standard deviation of the widths [pixel]; NaN with fewer than two
     * @param largest width [pixel]; NaN without a pair
     */
    public record Reading(
            Optional<Scale> scale, Optional<Notice> problem, int count, double mean, double deviation, double largest) {
        /** True if the sheet can take it: a scale, and widths enough for a spread. */
        public boolean isUsable() {
            return scale.isPresent() && count >= 2;
        }
    }

    /** What is marked. */
    public PictureMarks marks() {
        return marks;
    }

    /** Sets an end of the scale bar. */
    public void end(double x, double y) {
        step(marks.withEnd(new PictureMarks.Point(x, y)));
    }

    /** Sets a point across what is measured. */
    public void edge(double x, double y) {
        step(marks.withEdge(new PictureMarks.Point(x, y)));
    }

    private void step(PictureMarks next) {
        before.push(marks);
        marks = next;
    }

    /** Takes the last point back; false if there is none. */
    public boolean undo() {
        if (before.isEmpty()) {
            return false;
        }
        marks = before.pop();
        return true;
    }

    /**
     * Reads the marks.
     *
     * @param barLength length of the scale bar as typed; blank if it is not known
     * @param fieldWidth width of the whole field as typed; blank if it is not known
     */
    public Reading read(String barLength, String fieldWidth) {
        Optional<Scale> scale = scale(barLength, marks.barLength(), false)
                .or(() -> scale(fieldWidth, OptionalDouble.of(pictureWidth), true));
        double[] widths = marks.widths();
        double sum = 0;
        double largest = Double.NaN;
        for (double width : widths) {
            sum += width;
            largest = width > largest || Double.isNaN(largest) ? width : largest;
        }
        double mean = sum / widths.length;
        double squares = 0;
        for (double width : widths) {
            squares += (width - mean) * (width - mean);
        }
        double deviation = widths.length < 2 ? Double.NaN : Math.sqrt(squares / (widths.length - 1));
        Optional<Notice> problem = scale.isPresent()
                ? Optional.empty()
                : Optional.of(problem(barLength.isBlank() ? fieldWidth : barLength));
        return new Reading(scale, problem, widths.length, mean, deviation, largest);
    }

    private static Optional<Scale> scale(String typed, OptionalDouble pixels, boolean ofField) {
        // a bare number would be read as millimeters; here it is as likely a magnification
        if (typed.isBlank() || pixels.isEmpty() || MAGNIFICATION.matcher(typed).matches()) {
            return Optional.empty();
        }
        return QuantityText.parse(typed, Kind.LENGTH, Provenance.MEASURED)
                .value()
                .map(Measured::value)
                .filter(length -> length > 0)
                .map(length -> new Scale(typed.strip(), length, pixels.getAsDouble(), ofField));
    }

    private static Notice problem(String typed) {
        boolean magnification = !typed.isBlank() && MAGNIFICATION.matcher(typed).matches();
        String code = magnification ? "bench.fiber.magnificationOnly" : "bench.fiber.noScale";
        return Notice.of(code, Severity.WARNING, PLACE, typed.strip());
    }
}

package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.BenchEstimate.Status;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Fiber diameter from a micrograph with a scale: marked pairs of pixels, weighted by number or by visible length. */
@Source("common practice, no source; surface mean diameter (4 volume/surface) as for cylinders, derived here")
@Validity("fibers in focus, at least 3 pixels wide; the picture shows the surface of the sheet only")
public final class FiberSizing {
    private static final List<String> CAUTIONS = List.of("bench.caution.surfaceOnly");
    private static final String PLACE = "fiber sizing";

    /** Standard uncertainty of the distance of two marked edges [pixel]: one pixel of blur at each edge. */
    @Source("JCGM 100:2008 (GUM), F.2.2.1: sqrt(2) times 1/sqrt(12), doubled for blur; common practice, no source")
    private static final double EDGE_UNCERTAINTY = 2 * Math.sqrt(2.0 / 12);

    private FiberSizing() {}

    /**
     * A known length in the picture.
     *
     * @param length of the scale bar or of the whole field [m]
     * @param pixels it spans
     */
    public record Scale(Measured length, double pixels) {
        public Scale {
            Require.positive("length", length.value(), "m");
            Require.positive("pixels", pixels, "pixel");
        }

        /** Size of one pixel [m]; 1.17 micrometers for 1.5 mm over 1280. */
        public double pixelSize() {
            return length.value() / pixels;
        }
    }

    /**
     * One fiber: two marks across it, and the length of it that is seen.
     *
     * @param x1 first edge, across the picture [pixel]
     * @param y1 first edge, down the picture [pixel]
     * @param x2 second edge [pixel]
     * @param y2 second edge [pixel]
     * @param visibleLength [pixel], above 0
     */
    public record Mark(double x1, double y1, double x2, double y2, double visibleLength) {
        public Mark {
            Require.positive("visibleLength", visibleLength, "pixel");
        }

        double width() {
            return Math.hypot(x2 - x1, y2 - y1);
        }
    }

    /** How fibers count toward the mean. */
    public enum Weight {
        /** Each mark once. */
        NUMBER,
        /** By visible length. */
        LENGTH
    }

    /**
     * What the picture says.
     *
     * @param mean weighted mean diameter [m] with its uncertainty
     * @param standardDeviation of the diameters [m]
     * @param standardError of the mean [m]
     * @param effective surface mean diameter [m], the one that counts for resistance
     * @param count number of fibers
     */
    public record Result(
            BenchEstimate mean, double standardDeviation, double standardError, double effective, int count) {}

    /**
     * Evaluates marks; two at least, since one fiber says nothing of the spread.
     *
     * @param scale a known length; empty if there is none
     * @param magnification what the microscope says, such as {@code 200x}; it gives no scale
     */
    public static Result evaluate(
            Optional<Scale> scale, Optional<String> magnification, List<Mark> marks, Weight weight) {
        List<Notice> notices = new ArrayList<>();
        if (scale.isEmpty() || marks.size() < 2) {
            String code = !scale.isEmpty()
                    ? "bench.fiber.tooFewMarks"
                    : magnification.isPresent() ? "bench.fiber.magnificationOnly" : "bench.fiber.noScale";
            notices.add(Notice.of(code, Severity.WARNING, PLACE, magnification.orElse("")));
            return new Result(BenchEstimate.refused(notices), 0, 0, 0, marks.size());
        }
        double pixel = scale.get().pixelSize();
        double weights = 0;
        double squaredWeights = 0;
        double sum = 0;
        double surface = 0;
        double volume = 0;
        for (Mark mark : marks) {
            double w = weight == Weight.LENGTH ? mark.visibleLength : 1;
            weights += w;
            squaredWeights += w * w;
            sum += w * mark.width();
            surface += mark.visibleLength * mark.width();
            volume += mark.visibleLength * mark.width() * mark.width();
        }
        double mean = sum / weights;
        Require.positive("mean width of the marks", mean, "pixel");
        double effectiveCount = weights * weights / squaredWeights;
        double squares = 0;
        for (Mark mark : marks) {
            double w = weight == Weight.LENGTH ? mark.visibleLength : 1;
            squares += w * Math.pow(mark.width() - mean, 2);
        }
        int count = marks.size();
        double deviation = Math.sqrt(squares / weights * effectiveCount / (effectiveCount - 1));
        double error = deviation / Math.sqrt(effectiveCount);
        if (mean < 3) {
            notices.add(
                    Notice.of("bench.fiber.tooFewPixels", Severity.WARNING, PLACE, new Amount(Look.PLAIN_RATIO, mean)));
        }
        if (count < 20) {
            notices.add(Notice.of("bench.fiber.fewFibers", Severity.WARNING, PLACE, Shown.count(count)));
        }
        notices.add(Notice.of("bench.fiber.surfaceOnly", Severity.INFO, PLACE));
        Measured bar = scale.get().length();
        List<Correction> corrections = List.of(
                new Correction("sample", 0, error / mean),
                new Correction("edges", 0, EDGE_UNCERTAINTY / mean),
                new Correction("scaleBar", 0, bar.standardUncertainty() / bar.value()));
        BenchEstimate estimate = BenchEstimate.ofFactor(
                Status.USABLE, Kind.LENGTH, mean * pixel, count, corrections, List.of(), notices);
        return new Result(estimate, deviation * pixel, error * pixel, volume / surface * pixel, count);
    }

    /**
     * What to expect.
     *
     * @param diameter guessed fiber diameter [m]
     * @param spread of the diameters as a share of the mean [1]
     * @param fibers number to mark
     * @param pixelSize [m]
     * @param presentLnSigma what is known of the diameter now [1]
     * @return expected reading is the diameter; the resolution needed is the size of a pixel
     */
    public static Plan plan(double diameter, double spread, int fibers, double pixelSize, double presentLnSigma) {
        double other = spread / Math.sqrt(fibers);
        // two edges with blur: 2 sqrt(2) scale-step uncertainties
        return Plan.of(
                Kind.LENGTH,
                Require.positive("diameter", diameter, "m"),
                fibers * SECONDS_PER_FIBER,
                2 * Math.sqrt(2),
                pixelSize,
                other,
                presentLnSigma,
                CAUTIONS);
    }

    @Source("common practice, no source")
    private static final double SECONDS_PER_FIBER = 10;
}

package org.coldpleat.model.loading;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * What the ratings of a filter say about its capture: every curve that agrees with them, side by side, and the sizes
 * between which they speak from a rating.
 *
 * @param curves curves that meet the ratings; the first of them is the one to compute with
 * @param smallestRated smallest rated size [m]
 * @param largestRated largest rated size [m]
 * @param slopeAssumed true if only one rating was known and the slope was taken from a band
 */
public record CaptureEstimate(
        List<CaptureCurve> curves, double smallestRated, double largestRated, boolean slopeAssumed) {
    /** Flattest slope of lube media, as a geometric spread [1]. */
    @Source("common practice, no source")
    public static final double FLAT_SPREAD = 1.8;

    /** Steepest slope of lube media, as a geometric spread [1]. */
    @Source("common practice, no source")
    public static final double STEEP_SPREAD = 1.3;

    public CaptureEstimate {
        curves = List.copyOf(curves);
        Require.atLeast("number of curves", curves.size(), 1, "1");
        Require.positive("smallestRated", smallestRated, "m");
        Require.atLeast("largestRated", largestRated, smallestRated, "m");
    }

    /**
     * Efficiency at a size with what the curves leave open.
     *
     * @param likely of the first curve [1]
     * @param low lowest of all curves [1]
     * @param high highest of all curves [1]
     * @param extrapolated true outside the rated sizes
     */
    public record Range(double likely, double low, double high, boolean extrapolated) {}

    /** One curve a family through two ratings; the log-normal one first. */
    public static CaptureEstimate from(RatingPair one, RatingPair other) {
        List<CaptureCurve> curves = new ArrayList<>();
        for (CaptureFamily family : CaptureFamily.values()) {
            curves.add(family.through(one, other));
        }
        return new CaptureEstimate(
                curves, Math.min(one.size(), other.size()), Math.max(one.size(), other.size()), false);
    }

    /** Curves through a single rating with the common band of slopes. */
    public static CaptureEstimate from(RatingPair pair) {
        return from(pair, STEEP_SPREAD, FLAT_SPREAD);
    }

    /**
     * Curves through a single rating: log-normal with the middle slope first, then each family at both ends of the band.
     *
     * @param pair the rating
     * @param steepSpread lowest geometric spread [1], above 1
     * @param flatSpread highest geometric spread [1], at least the lowest
     */
    public static CaptureEstimate from(RatingPair pair, double steepSpread, double flatSpread) {
        Require.above("steepSpread", steepSpread, 1, "1");
        Require.atLeast("flatSpread", flatSpread, steepSpread, "1");
        List<CaptureCurve> curves = new ArrayList<>();
        double middle = Math.exp(Math.sqrt(Math.log(steepSpread) * Math.log(flatSpread)));
        curves.add(CaptureFamily.LOG_NORMAL.through(pair, middle));
        for (CaptureFamily family : CaptureFamily.values()) {
            curves.add(family.through(pair, steepSpread));
            curves.add(family.through(pair, flatSpread));
        }
        return new CaptureEstimate(curves, pair.size(), pair.size(), true);
    }

    /** The curve to compute with. */
    public CaptureCurve likely() {
        return curves.get(0);
    }

    /** True outside the rated sizes, where the families part. */
    public boolean extrapolated(double size) {
        return size < smallestRated || size > largestRated;
    }

    /** Efficiency at a size [m, at least 0] with its range over the curves. */
    public Range at(double size) {
        double low = 1;
        double high = 0;
        for (CaptureCurve curve : curves) {
            double efficiency = curve.efficiency(size);
            low = Math.min(low, efficiency);
            high = Math.max(high, efficiency);
        }
        return new Range(likely().efficiency(size), low, high, extrapolated(size));
    }

    /**
     * Findings that go with the use of this estimate.
     *
     * @param place what the notices are about, such as a candidate name
     * @param smallestUsed smallest particle size that a result rests on [m]
     */
    public List<Notice> notices(String place, double smallestUsed) {
        List<Notice> notices = new ArrayList<>();
        if (slopeAssumed) {
            notices.add(Notice.of("loading.captureSlopeAssumed", Severity.WARNING, place, micrometers(smallestRated)));
        }
        if (smallestUsed < smallestRated) {
            Range range = at(smallestUsed);
            notices.add(Notice.of(
                    "loading.captureExtrapolated",
                    Severity.WARNING,
                    place,
                    micrometers(smallestUsed),
                    micrometers(smallestRated),
                    percent(range.low()),
                    percent(range.high())));
        }
        return List.copyOf(notices);
    }

    private static Amount micrometers(double size) {
        return new Amount(Look.SIZE, size);
    }

    private static Amount percent(double share) {
        return new Amount(Look.PERCENT, share);
    }
}

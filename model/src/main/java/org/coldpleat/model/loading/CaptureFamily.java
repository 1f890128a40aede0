package org.coldpleat.model.loading;

import org.coldpleat.model.numerics.StandardNormal;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/** Families of capture curves, each fitted exactly to two ratings or to one rating and a slope. */
public enum CaptureFamily {
    /** Normal distribution over the logarithm of the size. */
    LOG_NORMAL {
        @Override
        double steepness(RatingPair one, RatingPair other) {
            return (StandardNormal.score(other.efficiency()) - StandardNormal.score(one.efficiency()))
                    / span(one, other);
        }

        @Override
        double steepness(double geometricSpread) {
            return 1 / Math.log(geometricSpread);
        }

        @Override
        CaptureCurve curve(RatingPair pair, double steepness) {
            double median = pair.size() * Math.exp(-StandardNormal.score(pair.efficiency()) / steepness);
            return new CaptureCurve.LogNormal(median, Math.exp(1 / steepness));
        }
    },
    /** Weibull distribution of the size. */
    WEIBULL {
        @Override
        double steepness(RatingPair one, RatingPair other) {
            return Math.log(Math.log1p(-other.efficiency()) / Math.log1p(-one.efficiency())) / span(one, other);
        }

        @Override
        double steepness(double geometricSpread) {
            return 2 / (Math.log(2) * ROOT_TWO_PI * Math.log(geometricSpread));
        }

        @Override
        CaptureCurve curve(RatingPair pair, double steepness) {
            double scale = pair.size() * Math.pow(-Math.log1p(-pair.efficiency()), -1 / steepness);
            return new CaptureCurve.Weibull(scale, steepness);
        }
    },
    /** Filtration ratio less one as a power of the size. */
    POWER_LAW_BETA {
        @Override
        double steepness(RatingPair one, RatingPair other) {
            return (logOdds(other) - logOdds(one)) / span(one, other);
        }

        @Override
        double steepness(double geometricSpread) {
            return 4 / (ROOT_TWO_PI * Math.log(geometricSpread));
        }

        @Override
        CaptureCurve curve(RatingPair pair, double steepness) {
            return new CaptureCurve.PowerLawBeta(pair.size() * Math.exp(-logOdds(pair) / steepness), steepness);
        }

        /** ln(beta - 1). */
        private double logOdds(RatingPair pair) {
            return Math.log(pair.efficiency() / (1 - pair.efficiency()));
        }
    };

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    /** Slope parameter of the family through two ratings. */
    abstract double steepness(RatingPair one, RatingPair other);

    /** Slope parameter that has the slope dE/d(ln d) of a log-normal curve at the half-caught size. */
    abstract double steepness(double geometricSpread);

    /** The curve of that slope parameter through one rating. */
    abstract CaptureCurve curve(RatingPair pair, double steepness);

    /**
     * The curve through two ratings, exact at both.
     *
     * @throws IllegalArgumentException unless the larger size has the higher efficiency
     */
    @Source("derived here")
    public CaptureCurve through(RatingPair one, RatingPair other) {
        RatingPair small = one.size() <= other.size() ? one : other;
        RatingPair large = one.size() <= other.size() ? other : one;
        Require.above("size of the second rating", large.size(), small.size(), "m");
        Require.above("efficiency at the larger size", large.efficiency(), small.efficiency(), "1");
        return curve(small, steepness(small, large));
    }

    /**
     * The curve through one rating with a given slope, expressed as the geometric spread of the log-normal family; the
     * other families get the same dE/d(ln d) at their half-caught size.
     *
     * @param pair the rating
     * @param geometricSpread [1], above 1; 1.3 to 1.8 common practice, no source
     */
    @Source("derived here")
    public CaptureCurve through(RatingPair pair, double geometricSpread) {
        Require.above("geometricSpread", geometricSpread, 1, "1");
        return curve(pair, steepness(geometricSpread));
    }

    private static double span(RatingPair small, RatingPair large) {
        return Math.log(large.size() / small.size());
    }
}

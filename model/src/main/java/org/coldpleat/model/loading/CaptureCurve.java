package org.coldpleat.model.loading;

import org.coldpleat.model.numerics.StandardNormal;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Share of particles caught in one pass, rising with size from 0 to 1. Three families of two parameters stand side by
 * side, since ratings fix at most two: they agree at the rated sizes and part beyond them (by a factor of 20 at 10 um
 * for a medium rated at 23 and 45 um).
 */
@Source("common forms of filtration practice; parameters from ratings derived here")
@Validity("between the rated sizes; outside them extrapolated. Clean medium, steady flow; oil may wash particles off")
public sealed interface CaptureCurve {
    /** Share caught [0..1] at a particle size [m, at least 0]. */
    double efficiency(double size);

    /** Size of which half is caught [m]. */
    double medianSize();

    /** The family this curve belongs to. */
    CaptureFamily family();

    /**
     * Mean efficiency of each class [1], double[classes.count()]: volume spread evenly over the logarithm of the size,
     * eight-panel Simpson rule.
     */
    default double[] efficiencies(SizeClasses classes) {
        double[] mean = new double[classes.count()];
        for (int i = 0; i < mean.length; i++) {
            double span = classes.upper(i) / classes.lower(i);
            double sum = 0;
            for (int k = 0; k <= 8; k++) {
                double weight = k == 0 || k == 8 ? 1 : 2 + 2 * (k % 2);
                sum += weight * efficiency(classes.lower(i) * Math.pow(span, k / 8.0));
            }
            mean[i] = Math.min(1, sum / 24);
        }
        return mean;
    }

    /**
     * {@code E = Phi(ln(d/d50)/ln s)}, Phi the normal distribution.
     *
     * @param medianSize d50 [m], above 0
     * @param geometricSpread s [1], above 1
     */
    record LogNormal(double medianSize, double geometricSpread) implements CaptureCurve {
        public LogNormal {
            Require.positive("medianSize", medianSize, "m");
            Require.above("geometricSpread", geometricSpread, 1, "1");
        }

        @Override
        public double efficiency(double size) {
            Require.notNegative("size", size, "m");
            double z = Math.log(size / medianSize) / Math.log(geometricSpread);
            return StandardNormal.probability(z);
        }

        @Override
        public CaptureFamily family() {
            return CaptureFamily.LOG_NORMAL;
        }
    }

    /**
     * {@code E = 1 - exp(-(d/d0)^w)}.
     *
     * @param scale d0 [m], above 0
     * @param shape w [1], above 0
     */
    record Weibull(double scale, double shape) implements CaptureCurve {
        public Weibull {
            Require.positive("scale", scale, "m");
            Require.positive("shape", shape, "1");
        }

        @Override
        public double efficiency(double size) {
            Require.notNegative("size", size, "m");
            return -Math.expm1(-Math.pow(size / scale, shape));
        }

        @Override
        public double medianSize() {
            return scale * Math.pow(Math.log(2), 1 / shape);
        }

        @Override
        public CaptureFamily family() {
            return CaptureFamily.WEIBULL;
        }
    }

    /**
     * {@code beta - 1 = (d/d50)^p}.
     *
     * @param medianSize d50, where beta is 2 [m], above 0
     * @param power p [1], above 0
     */
    record PowerLawBeta(double medianSize, double power) implements CaptureCurve {
        public PowerLawBeta {
            Require.positive("medianSize", medianSize, "m");
            Require.positive("power", power, "1");
        }

        @Override
        public double efficiency(double size) {
            Require.notNegative("size", size, "m");
            return 1 / (1 + Math.pow(medianSize / size, power));
        }

        @Override
        public CaptureFamily family() {
            return CaptureFamily.POWER_LAW_BETA;
        }
    }
}

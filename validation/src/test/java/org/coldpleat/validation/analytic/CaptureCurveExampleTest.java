package org.coldpleat.validation.analytic;

import org.coldpleat.model.loading.CaptureCurve;
import org.coldpleat.model.loading.CaptureFamily;
import org.coldpleat.model.loading.RatingPair;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Parameters of the curve families from ratings; expected values derived here, six significant digits. */
class CaptureCurveExampleTest {
    private static final String SOURCE = "derived here";

    private static final RatingPair HALF = new RatingPair(23e-6, RatingPair.NOMINAL);
    private static final RatingPair BETA_75 = new RatingPair(45e-6, RatingPair.ABSOLUTE);
    private static final RatingPair BETA_100 = new RatingPair(45e-6, 0.99);

    @Test
    void pairOfHalfAndBeta75() {
        CaptureCurve.LogNormal normal = (CaptureCurve.LogNormal) CaptureFamily.LOG_NORMAL.through(HALF, BETA_75);
        CaptureCurve.Weibull weibull = (CaptureCurve.Weibull) CaptureFamily.WEIBULL.through(HALF, BETA_75);
        CaptureCurve.PowerLawBeta power =
                (CaptureCurve.PowerLawBeta) CaptureFamily.POWER_LAW_BETA.through(HALF, BETA_75);
        external("log-normal spread through half at 23 µm and beta 75 at 45 µm")
                .expected(1.35368, "1")
                .computed(normal.geometricSpread())
                .within(5.1e-6, "half the last digit");
        external("Weibull scale through half at 23 µm and beta 75 at 45 µm")
                .expected(26.3107e-6, "m")
                .computed(weibull.scale())
                .within(5.1e-11, "half the last digit");
        external("Weibull shape through half at 23 µm and beta 75 at 45 µm")
                .expected(2.72538, "1")
                .computed(weibull.shape())
                .within(5.1e-6, "half the last digit");
        external("power of the power law through half at 23 µm and beta 75 at 45 µm")
                .expected(6.41280, "1")
                .computed(power.power())
                .within(5.1e-6, "half the last digit");
        check(normal, 0.0030, 0.3222, 0.8099);
        check(weibull, 0.0691, 0.3772, 0.7607);
        check(power, 0.0048, 0.2898, 0.8460);
    }

    @Test
    void pairOfHalfAndBeta100() {
        CaptureCurve.LogNormal normal = (CaptureCurve.LogNormal) CaptureFamily.LOG_NORMAL.through(HALF, BETA_100);
        CaptureCurve.Weibull weibull = (CaptureCurve.Weibull) CaptureFamily.WEIBULL.through(HALF, BETA_100);
        CaptureCurve.PowerLawBeta power =
                (CaptureCurve.PowerLawBeta) CaptureFamily.POWER_LAW_BETA.through(HALF, BETA_100);
        external("log-normal spread through half at 23 µm and beta 100 at 45 µm")
                .expected(1.33443, "1")
                .computed(normal.geometricSpread())
                .within(5.1e-6, "half the last digit");
        external("Weibull scale through half at 23 µm and beta 100 at 45 µm")
                .expected(26.1904e-6, "m")
                .computed(weibull.scale())
                .within(5.1e-11, "half the last digit");
        external("Weibull shape through half at 23 µm and beta 100 at 45 µm")
                .expected(2.82149, "1")
                .computed(weibull.shape())
                .within(5.1e-6, "half the last digit");
        external("power of the power law through half at 23 µm and beta 100 at 45 µm")
                .expected(6.84645, "1")
                .computed(power.power())
                .within(5.1e-6, "half the last digit");
    }

    @Test
    void singleRatingWithAnAssumedSlope() {
        RatingPair single = new RatingPair(20e-6, 0.965);
        external("median size behind 96.5 % at 20 µm, spread 1.5")
                .expected(9.593e-6, "m")
                .computed(CaptureFamily.LOG_NORMAL.through(single, 1.5).medianSize())
                .within(5.1e-10, "half the last digit");
        external("median size behind 96.5 % at 20 µm, spread 1.3")
                .expected(12.4e-6, "m")
                .computed(CaptureFamily.LOG_NORMAL.through(single, 1.3).medianSize())
                .within(5.1e-8, "half the last digit");
        external("median size behind 96.5 % at 20 µm, spread 1.8")
                .expected(6.9e-6, "m")
                .computed(CaptureFamily.LOG_NORMAL.through(single, 1.8).medianSize())
                .within(5.1e-8, "half the last digit");
        // a Weibull shape of 2.7 is that of a log-normal spread exp(2 / (ln 2 sqrt(2 pi) 2.7)): equal slope at half
        double spread = Math.exp(2 / (Math.log(2) * Math.sqrt(2 * Math.PI) * 2.7));
        CaptureCurve.Weibull weibull = (CaptureCurve.Weibull) CaptureFamily.WEIBULL.through(single, spread);
        external("Weibull shape of equal slope")
                .expected(2.7, "1")
                .computed(weibull.shape())
                .within(1e-12, "arithmetic");
        external("Weibull scale behind 96.5 % at 20 µm")
                .expected(12.778e-6, "m")
                .computed(weibull.scale())
                .within(5.1e-10, "half the last digit");
        external("Weibull median behind 96.5 % at 20 µm")
                .expected(11.156e-6, "m")
                .computed(weibull.medianSize())
                .within(5.1e-10, "half the last digit");
    }

    private static void check(CaptureCurve curve, double at10, double at20, double at30) {
        external("efficiency at 10 µm of the curves through half and beta 75")
                .at(curve.getClass().getSimpleName())
                .expected(at10, "1")
                .computed(curve.efficiency(10e-6))
                .within(5.1e-5, "half the last digit");
        external("efficiency at 20 µm of the curves through half and beta 75")
                .at(curve.getClass().getSimpleName())
                .expected(at20, "1")
                .computed(curve.efficiency(20e-6))
                .within(5.1e-5, "half the last digit");
        external("efficiency at 30 µm of the curves through half and beta 75")
                .at(curve.getClass().getSimpleName())
                .expected(at30, "1")
                .computed(curve.efficiency(30e-6))
                .within(5.1e-5, "half the last digit");
    }

    private static ExternalCheck external(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}

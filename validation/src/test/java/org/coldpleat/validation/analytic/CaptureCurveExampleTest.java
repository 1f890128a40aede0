package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.loading.CaptureCurve;
import org.coldpleat.model.loading.CaptureFamily;
import org.coldpleat.model.loading.RatingPair;
import org.junit.jupiter.api.Test;

/** Parameters of the curve families from ratings; expected values derived here, six significant digits. */
class CaptureCurveExampleTest {
    private static final RatingPair HALF = new RatingPair(23e-6, RatingPair.NOMINAL);
    private static final RatingPair BETA_75 = new RatingPair(45e-6, RatingPair.ABSOLUTE);
    private static final RatingPair BETA_100 = new RatingPair(45e-6, 0.99);

    @Test
    void pairOfHalfAndBeta75() {
        CaptureCurve.LogNormal normal = (CaptureCurve.LogNormal) CaptureFamily.LOG_NORMAL.through(HALF, BETA_75);
        CaptureCurve.Weibull weibull = (CaptureCurve.Weibull) CaptureFamily.WEIBULL.through(HALF, BETA_75);
        CaptureCurve.PowerLawBeta power =
                (CaptureCurve.PowerLawBeta) CaptureFamily.POWER_LAW_BETA.through(HALF, BETA_75);
        assertEquals(1.35368, normal.geometricSpread(), 5.1e-6);
        assertEquals(26.3107e-6, weibull.scale(), 5.1e-11);
        assertEquals(2.72538, weibull.shape(), 5.1e-6);
        assertEquals(6.41280, power.power(), 5.1e-6);
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
        assertEquals(1.33443, normal.geometricSpread(), 5.1e-6);
        assertEquals(26.1904e-6, weibull.scale(), 5.1e-11);
        assertEquals(2.82149, weibull.shape(), 5.1e-6);
        assertEquals(6.84645, power.power(), 5.1e-6);
    }

    @Test
    void singleRatingWithAnAssumedSlope() {
        RatingPair single = new RatingPair(20e-6, 0.965);
        assertEquals(9.593e-6, CaptureFamily.LOG_NORMAL.through(single, 1.5).medianSize(), 5.1e-10);
        assertEquals(12.4e-6, CaptureFamily.LOG_NORMAL.through(single, 1.3).medianSize(), 5.1e-8);
        assertEquals(6.9e-6, CaptureFamily.LOG_NORMAL.through(single, 1.8).medianSize(), 5.1e-8);
        // a Weibull shape of 2.7 is that of a log-normal spread exp(2 / (ln 2 sqrt(2 pi) 2.7)): equal slope at half
        double spread = Math.exp(2 / (Math.log(2) * Math.sqrt(2 * Math.PI) * 2.7));
        CaptureCurve.Weibull weibull = (CaptureCurve.Weibull) CaptureFamily.WEIBULL.through(single, spread);
        assertEquals(2.7, weibull.shape(), 1e-12);
        assertEquals(12.778e-6, weibull.scale(), 5.1e-10);
        assertEquals(11.156e-6, weibull.medianSize(), 5.1e-10);
    }

    private static void check(CaptureCurve curve, double at10, double at20, double at30) {
        assertEquals(at10, curve.efficiency(10e-6), 5.1e-5);
        assertEquals(at20, curve.efficiency(20e-6), 5.1e-5);
        assertEquals(at30, curve.efficiency(30e-6), 5.1e-5);
    }
}

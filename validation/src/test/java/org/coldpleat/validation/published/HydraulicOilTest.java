package org.coldpleat.validation.published;

import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/**
 * Airframe hydraulic oil, maker's data sheet (name withheld): 2450, 495, 13.5, 5.1 mm2/s at -54, -40, 40, 100 C. The
 * hardest case at hand for a curve between a cold point and two warm ones.
 */
class HydraulicOilTest {
    private static final String SOURCE = "maker's data sheet of an airframe hydraulic oil (name withheld)";

    private static final double K = 273.15;
    private static final double MEASURED = 495e-6;

    @Test
    void coldAnchorBringsTheCurveHomeAndTheBandHoldsTheMeasuredPoint() {
        Oil oil = OilResolver.resolve(
                        OilSpec.ofPoints("hydraulic", point(-54, 2450e-6), point(40, 13.5e-6), point(100, 5.1e-6))
                                .withDensity(875, 15 + K))
                .orThrow();

        double predicted = 1e6 * oil.kinematicViscosity(-40 + K);
        check("viscosity at -40 °C from points at -54, 40 and 100 °C")
                .expected(1e6 * MEASURED, "mm2/s")
                .computed(predicted)
                .withinLogarithm(0.05, "three digits on the sheet, test methods good to about 1 %, law 3 %");
        check("viscosity at -40 °C in the band of the curve from points at -54, 40 and 100 °C")
                .expected(1e6 * MEASURED, "mm2/s")
                .computed(predicted)
                .bandOfLogarithm(1.96 * oil.viscositySpread(-40 + K), "95 % band stated with the curve");
    }

    @Test
    void lineFromWarmPointsAloneFallsFarShort() {
        // why the program asks for a cold point: measured over predicted is 2.4 here
        WaltherCurve line = WaltherCurve.through(40 + K, 13.5e-6, 100 + K, 5.1e-6);

        check("viscosity at -40 °C from the points at 40 and 100 °C alone")
                .expected(1e6 * MEASURED, "mm2/s")
                .computed(1e6 * line.kinematicViscosity(-40 + K))
                .knownMiss(-0.5833, 0.0165, "an oil of very high index; why the program asks for a cold point");
    }

    private static Anchor point(double celsius, double viscosity) {
        return Anchor.of(Anchor.Method.KINEMATIC, celsius + K, viscosity, Provenance.MAKER);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

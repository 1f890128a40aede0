package org.coldpleat.validation.published;

import org.coldpleat.model.oil.curve.BlendedCurve;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Two oils poured together, against a chart and against another rule of the same family. */
class BlendedOilTest {
    private static final double AT = 313.15;

    private static double blend(double first, double second, double share) {
        WaltherCurve one = WaltherCurve.through(AT, first * 1e-6, AT + 60, first * 1e-7);
        WaltherCurve other = WaltherCurve.through(AT, second * 1e-6, AT + 60, second * 4e-7);
        return 1e6 * new BlendedCurve(one, other, share).kinematicViscosity(AT);
    }

    @Test
    void thinOilInAThickOne() {
        ExternalCheck.of(
                        Topic.OIL,
                        "3 % of 3.0 mm2/s in oil of 160 mm2/s",
                        "fuel dilution chart of a laboratory page (name withheld), read off")
                .expected(137, "mm2/s")
                .computed(blend(160, 3, 0.03))
                .withinRelative(
                        0.10, "what the rule claims; the chart does not say whether its 3 % are of volume or mass");
    }

    @Test
    void agreesWithTheRuleOfAnotherNumber() {
        // 14.534 ln(ln(n + 0.8)) + 10.975 of 5 and 20 mm2/s: 19.174, 27.111; 60 and 40 %: 22.349, arithmetic checked
        ExternalCheck.of(
                        Topic.OIL,
                        "60 % of 5 and 40 % of 20 mm2/s, against the blending number with ln(ln(n + 0.8))",
                        "Refutas blending number, after Maples 2000; worked out here")
                .expected(8.109, "mm2/s")
                .computed(blend(5, 20, 0.4))
                .withinRelative(0.01, "the two scales differ by 0.1 mm2/s in their shift, 0.4 % here");
    }
}

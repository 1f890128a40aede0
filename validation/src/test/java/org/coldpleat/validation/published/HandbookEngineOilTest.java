package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** "Engine oil (unused)", table A.5 of Incropera and DeWitt, Fundamentals of Heat and Mass Transfer. */
class HandbookEngineOilTest {
    private static final String SOURCE =
            "Incropera, DeWitt, Fundamentals of Heat and Mass Transfer, table A.5 (authorship from memory)";

    private static final String TABLE = "/org/coldpleat/validation/oil/handbook_engine_oil.csv";
    private static final Anchor WARM = point(320, 161e-6);
    private static final Anchor HOT = point(370, 22.0e-6);
    private static final Oil CURVE = oil(WARM, HOT);
    private static final WaltherCurve LINE = WaltherCurve.through(320, 161e-6, 370, 22.0e-6);
    private static final Oil ANCHORED = oil(point(273, 4280e-6), WARM, HOT);

    private static Anchor point(double kelvin, double viscosity) {
        return Anchor.of(Anchor.Method.KINEMATIC, kelvin, viscosity, Provenance.PUBLISHED);
    }

    private static Oil oil(Anchor... anchors) {
        return OilResolver.resolve(OilSpec.ofPoints("handbook", anchors).withDensity(871.8, 320))
                .orThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void curveMeetsTheWarmRowsAndThePlainLineLiesAboveTheColdOnes(double kelvin, double density, double viscosity) {
        if (kelvin >= 300) {
            check("viscosity from 300 K, curve through 320 and 370 K")
                    .at(kelvin + " K")
                    .toleranceSetAfterwards()
                    .expected(viscosity, "mm2/s")
                    .computed(1e6 * CURVE.kinematicViscosity(kelvin))
                    .withinRelative(
                            0.03, "three digits, 0.7 % between the columns of the table; the line errs by up to 2.4 %");
        } else {
            check("ratio of the plain line to the table below 300 K")
                    .at(kelvin + " K")
                    .computed(1e6 * LINE.kinematicViscosity(kelvin) / viscosity, "1")
                    .atLeast(1.05, "sign only: heavy mineral oils lie below their line, why the class has a bias");
        }
    }

    /** Not independent of the bias of heavy oils, for which this table is one of five; so is the fourth power in the band. */
    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void bandHoldsTheColdRowsWithAPointAt273(double kelvin, double density, double viscosity) {
        if (kelvin <= 320) {
            check("viscosity to 320 K in the band of the curve with a point at 273 K")
                    .at(kelvin + " K")
                    .toleranceSetAfterwards()
                    .expected(viscosity, "mm2/s")
                    .computed(1e6 * ANCHORED.kinematicViscosity(kelvin))
                    .bandOfLogarithm(
                            1.96 * ANCHORED.viscositySpread(kelvin) + 1e-9,
                            "95 % band stated with the curve; the table was in view when it was made");
        }
    }

    @Test
    void extrapolationIntoTheColdIsReported() {
        assertTrue(OilNotices.at(CURVE, 280).stream().anyMatch(n -> n.code().equals("oil.extrapolated")));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void densityMeetsTheTable(double kelvin, double density) {
        check("density from its value at 320 K")
                .at(kelvin + " K")
                .toleranceSetAfterwards()
                .expected(density, "kg/m3")
                .computed(CURVE.density(kelvin))
                .withinRelative(
                        0.008,
                        "the table is internally good to 0.7 %; the law misses by 0.4 % at 100 °C, 0.75 % at 140 °C");
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "/org/coldpleat/validation/oil/handbook_engine_oil_heat.csv",
            useHeadersInDisplayName = true)
    void heatLawKeepsItsClaim(double kelvin, double heatCapacity, double conductivity) {
        check("heat capacity")
                .at(kelvin + " K")
                .expected(heatCapacity, "J/(kg K)")
                .computed(CURVE.heatCapacity(kelvin))
                .withinRelative(0.05, "claimed accuracy of the law");
        check("thermal conductivity")
                .at(kelvin + " K")
                .expected(conductivity, "W/(m K)")
                .computed(CURVE.conductivity(kelvin))
                .withinRelative(0.15, "claimed accuracy of the law");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

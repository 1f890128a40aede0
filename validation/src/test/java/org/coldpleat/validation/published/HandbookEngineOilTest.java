package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
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
    private static final Oil LINE = oil(WARM, HOT);
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
    void lineMeetsTheWarmRowsAndLiesAboveTheColdOnes(double kelvin, double density, double viscosity) {
        double ratio = LINE.kinematicViscosity(kelvin) / (viscosity * 1e-6);
        if (kelvin >= 300) {
            check("viscosity from 300 K, line through 320 and 370 K")
                    .at(kelvin + " K")
                    .toleranceSetAfterwards()
                    .expected(viscosity, "mm2/s")
                    .computed(ratio * viscosity)
                    .withinRelative(
                            0.03, "three digits, 0.7 % between the columns of the table; the line errs by up to 2.4 %");
        } else {
            check("ratio of the line to the table below 300 K")
                    .at(kelvin + " K")
                    .computed(ratio, "1")
                    .atLeast(1.05, "sign only: heavy oils are over-predicted in the cold, a known miss");
        }
    }

    /** Not independent of the rule for heavy oils, which was read off this table; so is the fourth power in the band. */
    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void bandsHoldTheColdRows(double kelvin, double density, double viscosity) {
        for (Oil oil : new Oil[] {LINE, ANCHORED}) {

            if (kelvin <= 320) {
                check(
                                oil.equals(LINE)
                                        ? "viscosity to 320 K in the band of the line"
                                        : "viscosity to 320 K in the band of the line with a point at 273 K")
                        .at(kelvin + " K")
                        .toleranceSetAfterwards()
                        .expected(viscosity, "mm2/s")
                        .computed(1e6 * oil.kinematicViscosity(kelvin))
                        .bandOfLogarithm(
                                1.96 * oil.viscositySpread(kelvin) + 1e-9,
                                "95 % band stated with the curve; its rule for heavy oils was read off this table");
            }
        }
    }

    @Test
    void extrapolationIntoTheColdIsReported() {
        check("viscosity at 280 K, line through 320 and 370 K")
                .expected(2430, "mm2/s")
                .computed(1e6 * LINE.kinematicViscosity(280))
                .knownMiss(0.18, 0.02, "heavy oils are over-predicted in the cold; inside the band of the line");
        assertTrue(OilNotices.at(LINE, 280).stream().anyMatch(n -> n.code().equals("oil.extrapolated")));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void densityMeetsTheTable(double kelvin, double density) {
        check("density from its value at 320 K")
                .at(kelvin + " K")
                .toleranceSetAfterwards()
                .expected(density, "kg/m3")
                .computed(LINE.density(kelvin))
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
                .computed(LINE.heatCapacity(kelvin))
                .withinRelative(0.05, "claimed accuracy of the law");
        check("thermal conductivity")
                .at(kelvin + " K")
                .expected(conductivity, "W/(m K)")
                .computed(LINE.conductivity(kelvin))
                .withinRelative(0.15, "claimed accuracy of the law");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** "Engine oil (unused)", table A.5 of Incropera and DeWitt, Fundamentals of Heat and Mass Transfer. */
class HandbookEngineOilTest {
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
            // three digits, and 0.7 % between the columns of the table; the line errs by up to 2.4 %
            assertEquals(1, ratio, 0.03);
        } else {
            assertTrue(ratio > 1.05, "heavy oils are over-predicted in the cold");
        }
    }

    /** Not independent of the rule for heavy oils, which was read off this table; so is the fourth power in the band. */
    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void bandsHoldTheColdRows(double kelvin, double density, double viscosity) {
        for (Oil oil : new Oil[] {LINE, ANCHORED}) {
            double deviation = Math.log(viscosity * 1e-6 / oil.kinematicViscosity(kelvin));
            if (kelvin <= 320) {
                assertTrue(Math.abs(deviation) <= 1.96 * oil.viscositySpread(kelvin) + 1e-9, () -> "" + deviation);
            }
        }
    }

    @Test
    void extrapolationIntoTheColdIsReported() {
        // 2430 mm2/s at 280 K in the table
        assertEquals(1.18, LINE.kinematicViscosity(280) / 2430e-6, 0.02); // two digits of the known miss
        assertTrue(OilNotices.at(LINE, 280).stream().anyMatch(n -> n.code().equals("oil.extrapolated")));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void densityMeetsTheTable(double kelvin, double density) {
        // the table itself is internally good to 0.7 %; known miss of the law 0.4 % at 100 C, 0.75 % at 140 C
        assertEquals(density, LINE.density(kelvin), 0.008 * density);
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "/org/coldpleat/validation/oil/handbook_engine_oil_heat.csv",
            useHeadersInDisplayName = true)
    void heatLawKeepsItsClaim(double kelvin, double heatCapacity, double conductivity) {
        assertEquals(1, LINE.heatCapacity(kelvin) / heatCapacity, 0.05); // claimed accuracy of the law
        assertEquals(1, LINE.conductivity(kelvin) / conductivity, 0.15); // claimed accuracy of the law
    }
}

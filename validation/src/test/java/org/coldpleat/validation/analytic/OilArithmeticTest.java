package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.coldpleat.model.oil.ColdAnchoredCurve;
import org.coldpleat.model.oil.CragoeHeat;
import org.coldpleat.model.oil.MpmsDensity;
import org.coldpleat.model.oil.ViscosityIndex;
import org.coldpleat.model.oil.WaltherCurve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand and spreadsheet values of the oil formulas, derived here: they prove the arithmetic, not nature. */
class OilArithmeticTest {
    private static final double K = 273.15;

    @Test
    void constantsOfTheThinOilLine() {
        // derived here from the simple form of ASTM D341
        WaltherCurve line = WaltherCurve.through(40 + K, 44.8e-6, 100 + K, 8.7e-6);
        assertEquals(7.80600, line.a(), 1e-5);
        assertEquals(3.03973, line.b(), 1e-5);
    }

    @ParameterizedTest
    @CsvSource({
        // kv40, kv100, celsius, expected mm2/s; derived here from the simple form of ASTM D341, four digits
        "44.8, 8.7, -30, 3780",
        "44.8, 8.7, -20, 1462",
        "44.8, 8.7, 0, 324.3",
        "44.8, 8.7, 60, 22.94",
        "44.8, 8.7, 120, 6.066",
        "61.7, 10.6, -30, 7525",
        "61.7, 10.6, -10, 1116",
        "61.7, 10.6, 80, 16.89",
        "95.7, 13.7, -30, 20600",
        "95.7, 13.7, -20, 6484",
        "95.7, 13.7, 120, 9.001"
    })
    void gridOfTheLine(double kv40, double kv100, double celsius, double expected) {
        WaltherCurve line = WaltherCurve.through(40 + K, kv40 * 1e-6, 100 + K, kv100 * 1e-6);
        assertEquals(expected, line.kinematicViscosity(celsius + K) * 1e6, 1e-3 * expected);
    }

    @ParameterizedTest
    @CsvSource({"-40, 35065", "-30, 9114", "-20, 3078", "0, 596", "20, 182.9"})
    void gridOfTheAnchoredCurve(double celsius, double expected) {
        // derived here: 35 065, 75, 13.5 mm2/s at -40, 40, 100 C; a = -2.05308, b = 1037.787, c = 150.247 K
        ColdAnchoredCurve curve = ColdAnchoredCurve.through(-40 + K, 35065e-6, 40 + K, 75e-6, 100 + K, 13.5e-6)
                .orElseThrow();
        assertEquals(-2.05308, curve.cold().a(), 2e-5);
        assertEquals(1037.787, curve.cold().b(), 5e-3);
        assertEquals(150.247, curve.cold().c(), 1e-3);
        assertEquals(expected, curve.kinematicViscosity(celsius + K) * 1e6, 1e-3 * expected);
    }

    @ParameterizedTest
    @CsvSource({
        "850, -40, 1.04008",
        "850, -30, 1.03288",
        "850, 0, 1.01104",
        "850, 100, 0.93619",
        "870, 40, 0.98187",
        "900, 40, 0.98247"
    })
    void expansionFactor(double reference, double celsius, double expected) {
        // derived here from API MPMS 11.1 (2004), five digits
        assertEquals(expected, new MpmsDensity(reference).density(celsius + K) / reference, 1e-5);
    }

    @ParameterizedTest
    @CsvSource({"0, 1817, 0.1363", "100, 2182, 0.1290"})
    void heatOfAnOilOfRelativeDensity086(double celsius, double heatCapacity, double conductivity) {
        // derived here from Cragoe 1929, coefficients from memory
        CragoeHeat heat = new CragoeHeat(0.86);
        assertEquals(heatCapacity, heat.heatCapacity(celsius + K), 1e-3 * heatCapacity);
        assertEquals(conductivity, heat.conductivity(celsius + K), 1e-3 * conductivity);
    }

    @Test
    void indexAboveSeventyUsesTheClosedForm() {
        // ASTM D2270-10(2016) section 5: Y = 100 gives L = 9604, H = 2772; U = H is index 100, U = L is index 0
        assertEquals(100, ViscosityIndex.of(2772e-6, 100e-6).orElseThrow(), 1e-6);
        assertEquals(0, ViscosityIndex.of(9604e-6, 100e-6).orElseThrow(), 1e-6);
    }
}

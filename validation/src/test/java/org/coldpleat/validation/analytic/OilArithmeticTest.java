package org.coldpleat.validation.analytic;

import org.coldpleat.model.oil.CragoeHeat;
import org.coldpleat.model.oil.MpmsDensity;
import org.coldpleat.model.oil.ViscosityIndex;
import org.coldpleat.model.oil.curve.ColdAnchoredCurve;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand and spreadsheet values of the oil formulas, derived here: they prove the arithmetic, not nature. */
class OilArithmeticTest {
    private static final String SOURCE = "derived here from the simple form of ASTM D341";

    private static final double K = 273.15;

    @Test
    void constantsOfTheThinOilLine() {
        // derived here from the simple form of ASTM D341
        WaltherCurve line = WaltherCurve.through(40 + K, 44.8e-6, 100 + K, 8.7e-6);
        check("constant A of the line through 44.8 and 8.7 mm2/s")
                .expected(7.80600, "1")
                .computed(line.a())
                .within(1e-5, "last digit");
        check("constant B of the line through 44.8 and 8.7 mm2/s")
                .expected(3.03973, "1")
                .computed(line.b())
                .within(1e-5, "last digit");
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
        check("viscosity of lines through 40 and 100 °C")
                .at(kv40 + " and " + kv100 + " mm2/s, " + celsius + " °C")
                .expected(expected, "mm2/s")
                .computed(line.kinematicViscosity(celsius + K) * 1e6)
                .withinRelative(1e-3, "four digits");
    }

    @ParameterizedTest
    @CsvSource({"-40, 35065", "-30, 9114", "-20, 3078", "0, 596", "20, 182.9"})
    void gridOfTheAnchoredCurve(double celsius, double expected) {
        // derived here: 35 065, 75, 13.5 mm2/s at -40, 40, 100 C; a = -2.05308, b = 1037.787, c = 150.247 K
        ColdAnchoredCurve curve = ColdAnchoredCurve.through(-40 + K, 35065e-6, 40 + K, 75e-6, 100 + K, 13.5e-6)
                .orElseThrow();
        ExternalCheck.of(Topic.OIL, "constant a of the curve through a cold point", "derived here")
                .expected(-2.05308, "1")
                .computed(curve.cold().a())
                .within(2e-5, "two of the last digit");
        ExternalCheck.of(Topic.OIL, "constant b of the curve through a cold point", "derived here")
                .expected(1037.787, "1")
                .computed(curve.cold().b())
                .within(5e-3, "five of the last digit");
        ExternalCheck.of(Topic.OIL, "constant c of the curve through a cold point", "derived here")
                .expected(150.247, "K")
                .computed(curve.cold().c())
                .within(1e-3, "last digit");
        ExternalCheck.of(Topic.OIL, "viscosity of the curve through a cold point", "derived here")
                .at(celsius + " °C")
                .expected(expected, "mm2/s")
                .computed(curve.kinematicViscosity(celsius + K) * 1e6)
                .withinRelative(1e-3, "four digits");
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
        ExternalCheck.of(Topic.OIL, "density over its reference", "derived here from API MPMS 11.1 (2004)")
                .at(reference + " kg/m3, " + celsius + " °C")
                .expected(expected, "1")
                .computed(new MpmsDensity(reference).density(celsius + K) / reference)
                .within(1e-5, "last digit");
    }

    @ParameterizedTest
    @CsvSource({"0, 1817, 0.1363", "100, 2182, 0.1290"})
    void heatOfAnOilOfRelativeDensity086(double celsius, double heatCapacity, double conductivity) {
        // derived here from Cragoe 1929, coefficients from memory
        CragoeHeat heat = new CragoeHeat(0.86);
        ExternalCheck.of(
                        Topic.OIL,
                        "heat capacity at relative density 0.86",
                        "derived here from Cragoe 1929, coefficients from memory")
                .at(celsius + " °C")
                .expected(heatCapacity, "J/(kg K)")
                .computed(heat.heatCapacity(celsius + K))
                .withinRelative(1e-3, "four digits");
        ExternalCheck.of(
                        Topic.OIL,
                        "conductivity at relative density 0.86",
                        "derived here from Cragoe 1929, coefficients from memory")
                .at(celsius + " °C")
                .expected(conductivity, "W/(m K)")
                .computed(heat.conductivity(celsius + K))
                .withinRelative(1e-3, "four digits");
    }

    @Test
    void indexAboveSeventyUsesTheClosedForm() {
        // ASTM D2270-10(2016) section 5: Y = 100 gives L = 9604, H = 2772; U = H is index 100, U = L is index 0
        ExternalCheck.of(Topic.OIL, "index of an oil with U = H above 70 mm2/s", "ASTM D2270-10(2016), section 5")
                .expected(100, "1")
                .computed(ViscosityIndex.of(2772e-6, 100e-6).orElseThrow())
                .within(1e-6, "arithmetic");
        ExternalCheck.of(Topic.OIL, "index of an oil with U = L above 70 mm2/s", "ASTM D2270-10(2016), section 5")
                .expected(0, "1")
                .computed(ViscosityIndex.of(9604e-6, 100e-6).orElseThrow())
                .within(1e-6, "arithmetic");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.MineralBias;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Mineral oils in the cold from two warm points. Five of them made the law; a line named "held out" has its two coefficients
 * fitted to the other four, but exponent, form and class limits were chosen with all in view.
 */
class MineralColdOilsTest {
    private static final String SOURCE =
            "two heat-transfer textbooks, CoolProp 8.0.0, nominal values of viscosity standards from memory";

    static List<ColdOilRow> fitted() {
        return ColdOilRow.minerals().stream().filter(ColdOilRow::inFit).toList();
    }

    static List<ColdOilRow> others() {
        return ColdOilRow.minerals().stream().filter(row -> !row.inFit()).toList();
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void bandHoldsTheOilsThatMadeTheLaw(ColdOilRow row) {
        inBand("cold viscosity of mineral oils in the band of their class, in sample", row)
                .bandOfLogarithm(row.reach(row.oil()), "95 % band of the class; law read from these oils");
    }

    @ParameterizedTest
    @MethodSource("others")
    void bandHoldsOilsLeftOutOfTheFit(ColdOilRow row) {
        inBand("cold viscosity of thin oils in the band of their class, out of sample", row)
                .bandOfLogarithm(row.reach(row.oil()), "95 % band of the class; nominal values, rounded by 1 to 3 %");
    }

    private static ExternalCheck.Compared inBand(String quantity, ColdOilRow row) {
        Oil oil = row.oil();
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE)
                .at(row.place())
                .expected(row.viscosity(), "mm2/s")
                .computed(1e6 * oil.kinematicViscosity(row.temperature()));
    }

    @ParameterizedTest
    @MethodSource("fitted")
    void coefficientsOfTheOtherOilsPredictEachOne(ColdOilRow row) {
        MineralBias others = ColdOilRow.bias(
                fitted().stream().filter(one -> !one.name().equals(row.name())).toList());
        double growth = MineralBias.growth(row.celsius());
        double beta = others.of(1e6 * row.line().kinematicViscosity(40 + 273.15));
        double predicted = 1e6 * row.line().kinematicViscosity(row.temperature()) * Math.exp(-beta * growth);
        ExternalCheck.of(Topic.OIL, "cold viscosity of mineral oils, coefficients held out", SOURCE)
                .at(row.place())
                .expected(row.viscosity(), "mm2/s")
                .computed(predicted)
                .bandOfLogarithm(0.03 + 0.15 * growth, "95 % half-width of the class; form and exponent saw all oils");
    }

    @Test
    void theCoefficientsComeOutOfTheFiveOils() {
        MineralBias all = ColdOilRow.bias(fitted());
        ExternalCheck.of(Topic.OIL, "bias of a mineral oil of 40 mm2/s, fitted again", "derived here, least squares")
                .expected(-0.073, "1")
                .computed(all.at40())
                .within(0.003, "last digits of the coefficients; rows of an oil may be weighted otherwise");
        ExternalCheck.of(Topic.OIL, "growth of the bias of mineral oils, fitted again", "derived here, least squares")
                .expected(0.230, "1")
                .computed(all.growth())
                .within(0.005, "last digits of the coefficients; rows of an oil may be weighted otherwise");
    }

    @Test
    void heavyOilFrom40And100Alone() {
        // the fit saw this oil
        Oil oil = fitted().stream()
                .filter(row -> row.name().equals("handbook B"))
                .findFirst()
                .orElseThrow()
                .oil();
        heavy(0, 4242, 1e6 * oil.kinematicViscosity(273.15), 0.18);
        heavy(20, 943, 1e6 * oil.kinematicViscosity(293.15), 0.05);
    }

    private static void heavy(double celsius, double table, double computed, double tolerance) {
        ExternalCheck.of(
                        Topic.OIL,
                        "heavy oil of 248.5 and 20.45 mm2/s in the cold, in sample",
                        "second heat-transfer textbook, engine oil (unused), author not recorded")
                .at(celsius + " °C")
                .toleranceSetAfterwards()
                .expected(table, "mm2/s")
                .computed(computed)
                .withinRelative(
                        tolerance, "half-width of the class at this temperature; the plain line misses by 50 and 5 %");
    }

    @Test
    void everyOilIsJudgedOnce() {
        Map<String, List<ColdOilRow>> oils =
                ColdOilRow.minerals().stream().collect(Collectors.groupingBy(ColdOilRow::name));
        assertEquals(8, oils.size());
    }
}

package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.MpmsDensity;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.SaeGrade;
import org.coldpleat.model.oil.TypicalOil;
import org.coldpleat.model.oil.TypicalOils;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Laboratory values of lubricating oils from the NOAA oil library (records compiled from Environment Canada reports). */
class MeasuredLubricantsTest {
    private static final double K = 273.15;

    /** Measured slopes of ln(mu) from 0 to 15 C run from 0.059 to 0.095 1/K; two digits leave +-0.004 [1/K]. */
    private static final double LEAST_SLOPE = 0.055;

    private static final double GREATEST_SLOPE = 0.100;

    @ParameterizedTest
    @CsvFileSource(resources = "/org/coldpleat/validation/oil/measured_densities.csv", useHeadersInDisplayName = true)
    void densityFrom15DegreesMeetsTheMeasuredOne(
            String record, double density15, double celsius, double density, double tolerance) {
        assertEquals(density, new MpmsDensity(density15).density(celsius + K), tolerance, record);
    }

    @Test
    void gearOilExpandsMoreThanTheLawSays() {
        // record EC00710 (ASTM D5002): 913.5 kg/m3 at 15 C, 923.8 at 0 C; a known miss of 0.1 %, stated in the law
        double miss = 923.8 / new MpmsDensity(913.5).density(K) - 1;
        assertEquals(1.0e-3, miss, 1.5e-4);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/org/coldpleat/validation/oil/measured_cold_slopes.csv", useHeadersInDisplayName = true)
    void measuredOilsThickenWithinTheRangeUsedBelow(String record, double viscosity0, double viscosity15) {
        double slope = Math.log(viscosity0 / viscosity15) / 15;
        assertTrue(slope > LEAST_SLOPE && slope < GREATEST_SLOPE, () -> record + ": " + slope);
    }

    static List<TypicalOil> thickerThan0W() {
        return TypicalOils.all().stream()
                .filter(row -> row.grade().matches("(5|10|15|20)W-.*"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("thickerThan0W")
    void typicalOilsThickenInTheColdAsMeasuredOnesDo(TypicalOil row) {
        Oil oil = OilResolver.resolve(
                        OilSpec.ofGrade("typical", SaeGrade.parse(row.grade()).orElseThrow()))
                .orThrow();
        double slope = Math.log(oil.dynamicViscosity(K) / oil.dynamicViscosity(15 + K)) / 15;
        assertTrue(slope > LEAST_SLOPE && slope < GREATEST_SLOPE, () -> row.grade() + ": " + slope);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.727, 0.20", "15, 0.225, 0.08"})
    void virginEngineOilIsPredictedFromItsWarmPoints(double celsius, double measured, double tolerance) {
        // record AD00697: 66 and 10 mm2/s at 40 and 100 C, 877 kg/m3 at 15 C; two digits alone are 10 % at 0 C
        Oil oil = OilResolver.resolve(OilSpec.ofPoints(
                                "AD00697",
                                Anchor.of(Anchor.Method.KINEMATIC, 40 + K, 66e-6, Provenance.PUBLISHED)
                                        .withLnUncertainty(0.5 / 66),
                                Anchor.of(Anchor.Method.KINEMATIC, 100 + K, 10e-6, Provenance.PUBLISHED)
                                        .withLnUncertainty(0.5 / 10 / Math.sqrt(3)))
                        .withDensity(877, 15 + K))
                .orThrow();
        double predicted = oil.dynamicViscosity(celsius + K);
        assertEquals(measured, predicted, tolerance * measured);
        double deviations = Math.log(measured / predicted) / oil.viscositySpread(celsius + K);
        assertTrue(Math.abs(deviations) < 1.96, () -> deviations + " deviations off the curve");
    }
}

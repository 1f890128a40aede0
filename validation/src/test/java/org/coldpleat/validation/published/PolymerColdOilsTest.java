package org.coldpleat.validation.published;

import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilBase;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.grade.ViscosityGrade;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Oils with viscosity improver, of very high index, and synthetic ones, in the cold from 40 and 100 C. Their half-widths are
 * judgement that holds all of these few oils, so no line here is out of sample but those of the grades.
 */
class PolymerColdOilsTest {
    private static final double K = 273.15;

    @ParameterizedTest
    @CsvFileSource(
            resources = "/org/coldpleat/validation/oil/cold_points_of_sheets.csv",
            useHeadersInDisplayName = true)
    void multigradesOfSheets(
            String grade, double kv40, double kv100, double density, double at, double celsius, double measured) {
        Oil oil = oil(kv40, kv100, density, at);
        check(
                        "cold viscosity of multigrades in the band of their class, in sample",
                        "makers' data sheets (names withheld)")
                .at(grade + ", " + celsius + " °C")
                .expected(measured, "mPa s")
                .computed(1e3 * oil.dynamicViscosity(celsius + K))
                .bandOfLogarithm(
                        reach(oil, celsius, measured / 1e3 / oil.density(celsius + K)), "95 % band of the class");
    }

    @ParameterizedTest
    @CsvSource({"15, 256.6", "0, 820"})
    void engineOilOfTheLaboratory(double celsius, double measured) {
        Oil oil = oil(66, 10, 877, 15);
        check(
                        "cold viscosity of engine oil of 66 and 10 mm2/s in the band of its class, in sample",
                        "NOAA oil library, records compiled from Environment Canada reports")
                .at(celsius + " °C")
                .expected(measured, "mm2/s")
                .computed(1e6 * oil.kinematicViscosity(celsius + K))
                .bandOfLogarithm(reach(oil, celsius, measured * 1e-6), "95 % band of the class");
    }

    @ParameterizedTest
    @CsvSource({
        "airframe hydraulic oil, 40, 13.5, 100, 5.1, -40, 495",
        "flat fluid, 37.78, 73.6, 98.89, 29.3, 0, 165.1",
        "flat fluid, 37.78, 73.6, 98.89, 29.3, 25, 93.9"
    })
    void fluidsOfVeryHighIndex(
            String name, double celsius1, double kv1, double celsius2, double kv2, double celsius, double measured) {
        Oil oil = OilResolver.resolve(OilSpec.ofPoints(name, point(celsius1, kv1), point(celsius2, kv2))
                        .withDensity(870, 15 + K))
                .orThrow();
        check(
                        "cold viscosity of fluids of very high index in the band of their class, in sample",
                        "maker's data sheet (name withheld); Bates, Watts 1988, data set Lubricant")
                .at(name + ", " + celsius + " °C")
                .expected(measured, "mm2/s")
                .computed(1e6 * oil.kinematicViscosity(celsius + K))
                .bandOfLogarithm(reach(oil, celsius, measured * 1e-6), "95 % band of the class");
    }

    @ParameterizedTest
    @CsvSource({"PAO 4, 16.8, 3.9, 2500", "PAO 6, 31, 5.9, 7800", "PAO 8, 46.5, 7.8, 18500"})
    void polyalphaolefins(String name, double kv40, double kv100, double measured) {
        Oil oil = OilResolver.resolve(OilSpec.ofPoints(name, point(40, kv40), point(100, kv100))
                        .withDensity(827, 15 + K)
                        .withBase(OilBase.SYNTHETIC))
                .orThrow();
        check("viscosity of synthetic oils at -40 °C in the band of their class, in sample", "from memory")
                .at(name)
                .expected(measured, "mm2/s")
                .computed(1e6 * oil.kinematicViscosity(-40 + K))
                .bandOfLogarithm(reach(oil, -40, measured * 1e-6), "95 % band of the class");
    }

    @ParameterizedTest
    @CsvSource({
        "SAE 30, 20, 239.39, 'measured oil of an instrument maker, secondary copy'",
        "0W-30, 0, 474.65, 'car magazine, no source given'",
        "0W-30, 50, 38.008, 'car magazine, no source given'"
    })
    void typicalOilsOfAGradeHoldOilsTheyWereNotMadeFrom(String grade, double celsius, double measured, String source) {
        Oil oil = OilResolver.resolve(
                        OilSpec.ofGrade(grade, ViscosityGrade.parse(grade).orElseThrow()))
                .orThrow();
        check("viscosity of an oil of which only the grade is known, out of sample", source)
                .at(grade + ", " + celsius + " °C")
                .expected(measured, "mPa s")
                .computed(1e3 * oil.dynamicViscosity(celsius + K))
                .bandOfLogarithm(
                        reach(oil, celsius, measured / 1e3 / oil.density(celsius + K)),
                        "95 % band of an unknown class about the typical oil of the grade");
    }

    private static Oil oil(double kv40, double kv100, double density, double celsius) {
        return OilResolver.resolve(OilSpec.ofPoints("oil", point(40, kv40), point(100, kv100))
                        .withDensity(density, celsius + K))
                .orThrow();
    }

    private static Anchor point(double celsius, double viscosity) {
        return Anchor.of(Anchor.Method.KINEMATIC, celsius + K, viscosity * 1e-6, Provenance.PUBLISHED);
    }

    private static double reach(Oil oil, double celsius, double measured) {
        boolean thicker = measured > oil.kinematicViscosity(celsius + K);
        return 1.96 * (thicker ? oil.band().thicker(celsius + K) : oil.band().thinner(celsius + K));
    }

    private static ExternalCheck check(String quantity, String source) {
        return ExternalCheck.of(Topic.OIL, quantity, source);
    }
}

package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.grade.ColdTest;
import org.coldpleat.model.oil.grade.HotGrade;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.oil.grade.SaeJ300;
import org.coldpleat.model.oil.grade.TypicalOil;
import org.coldpleat.model.oil.grade.TypicalOils;
import org.coldpleat.model.oil.grade.WinterGrade;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Makers' data sheets, names withheld, and SAE J300. */
class ProductSheetOilTest {
    private static final String SOURCE = "makers' data sheets (names withheld)";

    private static final double K = 273.15;

    private static Oil oil(double kv40, double kv100, double density, double densityCelsius) {
        return OilResolver.resolve(OilSpec.ofPoints(
                                "sheet",
                                Anchor.of(Anchor.Method.KINEMATIC, 40 + K, kv40 * 1e-6, Provenance.MAKER),
                                Anchor.of(Anchor.Method.KINEMATIC, 100 + K, kv100 * 1e-6, Provenance.MAKER))
                        .withDensity(density, densityCelsius + K))
                .orThrow();
    }

    @Test
    void thinOilAtMinus40IsPredictedFromItsWarmPoints() {
        // sheet: 9200 mPa s (ASTM D4684); 20 % is the known reach of the line for a 0W-20, see
        // cold_points_of_sheets.csv
        check("viscosity at -40 °C of a 0W-20 from its warm points")
                .toleranceSetAfterwards()
                .expected(9.2, "Pa s")
                .computed(oil(44.8, 8.7, 841, 15.6).dynamicViscosity(-40 + K))
                .withinRelative(0.2, "known reach of the line for this oil");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/org/coldpleat/validation/oil/high_shear_of_sheets.csv", useHeadersInDisplayName = true)
    void lineAt150StandsInTheKnownRatioToTheHighShearViscosity(
            String grade,
            double kv40,
            double kv100,
            double density,
            double densityCelsius,
            double highShear,
            double share) {
        double lowShear = oil(kv40, kv100, density, densityCelsius).dynamicViscosity(150 + K);
        check("viscosity at 150 °C left at high shear, share derived here")
                .at(grade)
                .expected(share, "1")
                .computed(highShear / 1000 / lowShear)
                .within(0.01, "the sheet prints two digits");
    }

    @Test
    void anOilIsClassifiedAsItsSheetSays() {
        // sheet 0W-20: KV100 8.7 mm2/s, high-shear 2.7 mPa s, pumping 9200 mPa s at -40 C; cranking 5900 constructed
        List<ColdTest> tests = List.of(
                new ColdTest(ColdTest.Method.CRANKING, -35 + K, 5.9),
                new ColdTest(ColdTest.Method.PUMPING, -40 + K, 9.2));
        WinterGrade winter = SaeJ300.classifyWinter(8.7e-6, tests).orElseThrow();
        List<HotGrade> hot = SaeJ300.classifyHot(8.7e-6, OptionalDouble.of(2.7e-3), SaeJ300.winter("0W"));
        assertEquals("0W", winter.name());
        assertEquals(List.of("20"), hot.stream().map(HotGrade::name).toList());
    }

    static List<TypicalOil> wintered() {
        return TypicalOils.all().stream()
                .filter(row -> row.grade().contains("W"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("wintered")
    void typicalOilsLieNearTheCrankingLimitOfTheirGrade(TypicalOil row) {
        SaeGrade grade = SaeGrade.parse(row.grade()).orElseThrow();
        Oil oil = OilResolver.resolve(OilSpec.ofGrade("typical", grade)).orThrow();
        ColdTest cranking = SaeJ300.coldLimits(grade).get(0);
        double ratio = oil.dynamicViscosity(cranking.temperature()) / cranking.dynamicViscosity();
        ExternalCheck.of(Topic.OIL, "viscosity of typical oils over the cranking limit of their grade", "SAE J300")
                .at(row.grade())
                .computed(ratio, "1")
                .between(
                        grade.winter().orElseThrow().isColdest() ? 0.4 : 0.6,
                        1.6,
                        "oils are blended close to the limits; data sheets give 0.69 to 1.53; thin 0W oils lie far below,"
                                + " having no colder grade");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

package org.coldpleat.model.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.grade.ColdTest;
import org.coldpleat.model.oil.grade.HotGrade;
import org.coldpleat.model.oil.grade.IsoGrade;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.oil.grade.SaeJ300;
import org.coldpleat.model.oil.grade.TypicalOil;
import org.coldpleat.model.oil.grade.TypicalOils;
import org.coldpleat.model.oil.grade.ViscosityGrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GradeTest {
    @ParameterizedTest
    @CsvSource({
        "5W-30,5W-30",
        "5w30,5W-30",
        "SAE 5W-30,5W-30",
        "SAE 30,30",
        "30,30",
        "10W,10W",
        "15W/40,15W-40",
        "sae 10w,10W",
        "0w16,0W-16"
    })
    void gradesAreReadAsTheTradeWritesThem(String written, String label) {
        assertEquals(label, SaeGrade.parse(written).orElseThrow().label());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "SAE", "7W-30", "5W-35", "thick", "30W30W"})
    void otherTextIsNoGrade(String written) {
        assertTrue(SaeGrade.parse(written).isEmpty());
    }

    @ParameterizedTest
    @CsvSource({
        "ISO VG 46,ISO VG 46",
        "iso vg46,ISO VG 46",
        "ISO-VG 100,ISO VG 100",
        "VG 32,ISO VG 32",
        "ISO 68,ISO VG 68"
    })
    void isoGradesAreReadAsTheTradeWritesThem(String written, String label) {
        assertEquals(label, ViscosityGrade.parse(written).orElseThrow().label());
    }

    @ParameterizedTest
    @ValueSource(strings = {"ISO VG 45", "VG", "ISO VG 46-68", "46"})
    void whatTheSeriesLacksIsNoGrade(String written) {
        assertTrue(ViscosityGrade.parse(written).isEmpty());
    }

    @Test
    void anIsoGradeReachesTenPercentToEitherSide() {
        IsoGrade grade = IsoGrade.parse("ISO VG 46").orElseThrow();
        assertTrue(grade.holds(41.4e-6) && grade.holds(50.6e-6));
        assertTrue(!grade.holds(41.3e-6) && !grade.holds(50.7e-6));
    }

    @Test
    void onlyAGradeOfTwoHalvesIsAMultigrade() {
        assertTrue(ViscosityGrade.parse("5W-30").orElseThrow().isMultigrade());
        for (String single : List.of("5W", "SAE 30", "ISO VG 46")) {
            assertTrue(!ViscosityGrade.parse(single).orElseThrow().isMultigrade(), single);
        }
    }

    @Test
    void everyTypicalOilLiesInsideTheLimitsOfItsGrade() {
        for (TypicalOil row : TypicalOils.all()) {
            ViscosityGrade grade = ViscosityGrade.parse(row.grade()).orElseThrow();
            assertEquals(Optional.of(row), TypicalOils.of(grade));
            if (grade instanceof IsoGrade iso) {
                assertTrue(iso.holds(row.viscosity40()), row.grade());
            } else {
                inside((SaeGrade) grade, row);
            }
        }
    }

    private static void inside(SaeGrade grade, TypicalOil row) {
        assertTrue(grade.hot().stream().allMatch(hot -> hot.holds(row.viscosity100())), row.grade());
        Oil oil = OilResolver.resolve(OilSpec.ofGrade("typical", grade)).orThrow();
        grade.winter().ifPresent(winter -> {
            assertTrue(row.viscosity100() >= winter.minViscosity100(), row.grade());
            assertTrue(oil.dynamicViscosity(winter.pumpingTemperature()) < winter.pumpingLimit(), row.grade());
        });
    }

    @Test
    void twoStandardDeviationsOfATypicalOilReachTheEdgesOfItsHotGradeButNotFarBeyond() {
        for (TypicalOil row : TypicalOils.all()) {
            Optional<HotGrade> hot = SaeGrade.parse(row.grade()).flatMap(SaeGrade::hot);
            if (hot.isPresent()) {
                double range =
                        Math.log(hot.get().limitViscosity100() / hot.get().minViscosity100());
                // an even spread over the range has a standard deviation of the range over 3.46
                assertTrue(row.lnSigma() >= 0.7 * range / Math.sqrt(12), row.grade());
                assertTrue(row.lnSigma() <= 0.6 * range, row.grade());
            }
        }
    }

    @Test
    void bothEdgesOfEachHotGradeAreSharp() {
        for (HotGrade grade : SaeJ300.hotGrades()) {
            assertTrue(names(grade.minViscosity100()).contains(grade.name()));
            assertTrue(!names(Math.nextDown(grade.minViscosity100())).contains(grade.name()));
            assertTrue(names(Math.nextDown(grade.limitViscosity100())).contains(grade.name()));
            assertTrue(!names(grade.limitViscosity100()).contains(grade.name()));
        }
    }

    @Test
    void highShearViscosityDecidesGrade40ByTheWinterHalf() {
        OptionalDouble highShear = OptionalDouble.of(3.6e-3);
        assertEquals(
                1, SaeJ300.classifyHot(14e-6, highShear, SaeJ300.winter("10W")).size());
        assertEquals(
                0, SaeJ300.classifyHot(14e-6, highShear, SaeJ300.winter("15W")).size());
        assertEquals(0, SaeJ300.classifyHot(14e-6, highShear, Optional.empty()).size());
    }

    @Test
    void winterGradeNeedsBothColdTests() {
        ColdTest cranking = new ColdTest(ColdTest.Method.CRANKING, 238.15, 5.9);
        ColdTest pumping = new ColdTest(ColdTest.Method.PUMPING, 233.15, 9.2);
        assertEquals(
                "0W",
                SaeJ300.classifyWinter(8.7e-6, List.of(cranking, pumping))
                        .orElseThrow()
                        .name());
        assertTrue(SaeJ300.classifyWinter(8.7e-6, List.of(cranking)).isEmpty());
        ColdTest failed = new ColdTest(ColdTest.Method.CRANKING, 238.15, 6.201);
        assertTrue(SaeJ300.classifyWinter(8.7e-6, List.of(failed, pumping)).isEmpty());
        assertTrue(SaeJ300.classifyWinter(3.7e-6, List.of(cranking, pumping)).isEmpty());
    }

    @Test
    void coldLimitsLieAtTheTemperaturesOfTheGrade() {
        List<ColdTest> limits = SaeJ300.coldLimits(SaeGrade.parse("10W-30").orElseThrow());
        assertEquals(new ColdTest(ColdTest.Method.CRANKING, 248.14999999999998, 7.0), limits.get(0));
        assertEquals(60.0, limits.get(1).dynamicViscosity());
        assertEquals(List.of(), SaeJ300.coldLimits(SaeGrade.parse("30").orElseThrow()));
    }

    @Test
    void viscosityIndexIsUndefinedForVeryThinOils() {
        assertTrue(ViscosityIndex.of(5e-6, 1.9e-6).isEmpty());
        assertEquals(92, ViscosityIndex.reported(73.30e-6, 8.86e-6).orElseThrow());
    }

    private static List<String> names(double viscosity100) {
        return SaeJ300.classifyHot(viscosity100, OptionalDouble.empty(), Optional.empty()).stream()
                .map(HotGrade::name)
                .toList();
    }
}

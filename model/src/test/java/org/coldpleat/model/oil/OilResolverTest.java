package org.coldpleat.model.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.coldpleat.model.oil.Anchor.Method;
import org.coldpleat.model.oil.OilResult.Refused;
import org.coldpleat.model.oil.OilResult.Resolved;
import org.coldpleat.model.oil.grade.ViscosityGrade;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class OilResolverTest {
    private static final double K = 273.15;
    private static final ResourceBundle TEXTS =
            ResourceBundle.getBundle(Notice.class.getPackageName() + ".notices", Locale.ROOT);
    private static final Anchor WARM = point(Method.KINEMATIC, 40, 75e-6);
    private static final Anchor HOT = point(Method.KINEMATIC, 100, 13.5e-6);
    private static final Anchor PUMPING = point(Method.LOW_SHEAR, -40, 31.0);
    private static final Anchor CRANKING = point(Method.HIGH_SHEAR, -35, 5.9);

    private static Anchor point(Method method, double celsius, double value) {
        return Anchor.of(method, celsius + K, value, Provenance.MAKER);
    }

    private static OilSpec spec(Anchor... anchors) {
        return OilSpec.ofPoints("bench oil", anchors).withDensity(850, 15 + K);
    }

    private static Resolved resolved(OilSpec spec) {
        return assertInstanceOf(Resolved.class, OilResolver.resolve(spec));
    }

    private static Refused refused(OilSpec spec) {
        Refused refused = assertInstanceOf(Refused.class, OilResolver.resolve(spec));
        assertReadable(refused.fault().code(), refused.values());
        return refused;
    }

    /** The text exists, takes every value and leaves no placeholder open. */
    private static void assertReadable(String code, List<String> values) {
        String pattern = TEXTS.getString(code);
        String text = new MessageFormat(pattern, Locale.ROOT).format(values.toArray());
        assertFalse(text.contains("{"), text);
        values.forEach(value -> assertTrue(text.contains(value), () -> value + " is missing in: " + text));
    }

    private static List<String> codes(List<Notice> notices) {
        notices.forEach(notice -> assertReadable(
                notice.code(), notice.values().stream().map(Shown::text).toList()));
        return notices.stream().map(Notice::code).toList();
    }

    @Test
    void pointsMayComeInAnyOrder() {
        Oil oil = resolved(spec(HOT, PUMPING, WARM)).oil();
        assertEquals(75e-6, oil.kinematicViscosity(40 + K), 1e-13);
        assertEquals(31.0, oil.dynamicViscosity(-40 + K), 1e-9);
        assertEquals(-40 + K, oil.lowestAnchor());
        assertTrue(oil.hasColdAnchor());
    }

    @Test
    void coldDynamicPointIsConvertedWithTheDensityAtItsOwnTemperature() {
        Oil oil = resolved(spec(WARM, HOT, PUMPING)).oil();
        assertEquals(31.0 / 884.07, oil.kinematicViscosity(-40 + K), 1e-6);
    }

    @Test
    void pointsNeedNotLieAt40And100() {
        Oil oil = resolved(spec(point(Method.KINEMATIC, 20, 120e-6), point(Method.KINEMATIC, 80, 14e-6)))
                .oil();
        assertEquals(120e-6, oil.kinematicViscosity(20 + K), 1e-13);
        assertFalse(oil.hasColdAnchor());
    }

    @Test
    void highShearPointServesOnlyWithoutALowShearOneAndIsFlagged() {
        Resolved alone = resolved(spec(WARM, HOT, CRANKING));
        assertEquals(List.of("oil.highShearAnchor"), codes(alone.notices()));
        assertEquals(5.9, alone.oil().dynamicViscosity(-35 + K), 1e-9);
        assertFalse(alone.oil().hasColdAnchor());
        Resolved both = resolved(spec(WARM, HOT, CRANKING, PUMPING));
        assertEquals(List.of("oil.pointUnused"), codes(both.notices()));
        assertEquals(31.0, both.oil().dynamicViscosity(-40 + K), 1e-9);
    }

    @Test
    void surplusPointIsReportedNotSwallowed() {
        Resolved result = resolved(spec(WARM, HOT, PUMPING, point(Method.KINEMATIC, 0, 600e-6)));
        assertEquals(List.of("oil.pointUnused"), codes(result.notices()));
    }

    @Test
    void refusalsNameThePointsAtFault() {
        assertEquals(
                List.of(1, 0),
                refused(spec(WARM, point(Method.KINEMATIC, 20, 70e-6))).anchors());
        assertEquals(
                OilFault.NOT_FALLING,
                refused(spec(WARM, point(Method.KINEMATIC, 20, 70e-6))).fault());
        assertEquals(
                OilFault.SAME_TEMPERATURE,
                refused(spec(WARM, HOT, point(Method.KINEMATIC, 40, 74e-6))).fault());
        assertEquals(OilFault.TOO_FEW_POINTS, refused(spec(WARM)).fault());
        assertEquals(OilFault.TOO_FEW_POINTS, refused(spec(WARM, CRANKING)).fault());
        assertEquals(
                OilFault.VISCOSITY_OUT_OF_RANGE,
                refused(spec(point(Method.KINEMATIC, 40, 75), HOT)).fault());
        assertEquals(
                OilFault.TEMPERATURE_OUT_OF_RANGE,
                refused(spec(point(Method.KINEMATIC, 40 + K, 75e-6), HOT)).fault());
        Refused unfit = refused(spec(point(Method.LOW_SHEAR, 0, 0.068), WARM, HOT));
        assertEquals(OilFault.COLD_POINT_UNFIT, unfit.fault());
        assertEquals(6, unfit.values().size());
    }

    @Test
    void coldPointThinnerThanTheWarmOneIsRefused() {
        assertEquals(
                OilFault.NOT_FALLING,
                refused(spec(WARM, HOT, point(Method.HIGH_SHEAR, -35, 0.05))).fault());
    }

    @Test
    void densityIsNeverInvented() {
        assertEquals(
                OilFault.DENSITY_MISSING,
                refused(OilSpec.ofPoints("o", WARM, HOT)).fault());
        assertEquals(
                OilFault.DENSITY_OUT_OF_RANGE,
                refused(OilSpec.ofPoints("o", WARM, HOT).withDensity(0.85, 15 + K))
                        .fault());
        assertEquals(
                OilFault.DENSITY_OUT_OF_RANGE,
                refused(OilSpec.ofPoints("o", WARM, HOT).withDensity(0.85, 40 + K))
                        .fault());
        Resolved typical = resolved(OilSpec.ofPoints("o", WARM, HOT).withGrade(grade("0W-40")));
        assertEquals(List.of("oil.typicalDensity"), codes(typical.notices()));
    }

    @Test
    void gradeOnlyIsMarkedAndHasTheBandOfAnUnknownClass() {
        Resolved result = resolved(OilSpec.ofGrade("o", grade("10W-30")));
        assertTrue(codes(result.notices()).contains("oil.gradeOnly"));
        // half-width 0.03 + 0.36 at 0 degrees C, and 0.08 between oils of the grade
        double halfWidth = Math.hypot(Math.log(1.03) + 0.36, 1.96 * 0.08);
        assertEquals(halfWidth, 1.96 * result.oil().viscositySpread(K), 1e-3);
        assertEquals(63.2e-6, result.oil().kinematicViscosity(40 + K), 1e-12);
    }

    @Test
    void aSingleGradeOfStatedBaseHasTheBandOfItsClass() {
        Oil unknown = resolved(OilSpec.ofGrade("o", grade("SAE 30"))).oil();
        Oil mineral = resolved(OilSpec.ofGrade("o", grade("SAE 30")).withBase(OilBase.MINERAL))
                .oil();
        assertTrue(mineral.viscositySpread(-20 + K) < 0.7 * unknown.viscositySpread(-20 + K));
        assertTrue(mineral.kinematicViscosity(-20 + K) < unknown.kinematicViscosity(-20 + K));
    }

    @Test
    void anIsoGradeIsAGradeToo() {
        Resolved result = resolved(OilSpec.ofGrade("o", grade("ISO VG 46")));
        assertEquals(46e-6, result.oil().kinematicViscosity(40 + K), 1e-12);
        assertEquals(
                List.of("oil.grade.tooThickWarm"),
                codes(OilNotices.againstGrade(resolved(spec(WARM, HOT)).oil(), grade("ISO VG 46"))));
        assertEquals(
                List.of("oil.grade.tooThinWarm"),
                codes(OilNotices.againstGrade(resolved(spec(WARM, HOT)).oil(), grade("ISO VG 100"))));
        assertEquals(List.of(), codes(OilNotices.againstGrade(result.oil(), grade("ISO VG 46"))));
    }

    @Test
    void theBaseOfAMultigradeIsSaidToBeUnused() {
        OilSpec multigrade = spec(WARM, HOT).withGrade(grade("0W-40"));
        Resolved said = resolved(multigrade.withBase(OilBase.SYNTHETIC));
        assertEquals(List.of("oil.baseUnused"), codes(said.notices()));
        assertEquals(
                resolved(multigrade).oil().kinematicViscosity(-30 + K),
                said.oil().kinematicViscosity(-30 + K));
    }

    @Test
    void nothingAndUnknownGradesAreRefused() {
        assertEquals(OilFault.NOTHING_KNOWN, refused(OilSpec.ofPoints("o")).fault());
        assertEquals(
                OilFault.NO_TYPICAL_OIL,
                refused(OilSpec.ofGrade("o", grade("25W-40"))).fault());
    }

    @Test
    void statedGradeIsCheckedAgainstTheCurve() {
        assertEquals(
                List.of(), resolved(spec(WARM, HOT).withGrade(grade("0W-40"))).notices());
        assertEquals(
                List.of("oil.grade.tooThickHot"),
                codes(resolved(spec(WARM, HOT).withGrade(grade("5W-30"))).notices()));
        assertEquals(
                List.of("oil.grade.tooThinHot", "oil.grade.farFromCrankingLimit"),
                codes(resolved(spec(WARM, HOT).withGrade(grade("20W-50"))).notices()));
        Oil thick = resolved(spec(point(Method.KINEMATIC, 40, 145e-6), point(Method.KINEMATIC, 100, 14.5e-6)))
                .oil();
        assertEquals(
                List.of("oil.grade.farFromCrankingLimit", "oil.grade.abovePumpingLimit"),
                codes(OilNotices.againstGrade(thick, grade("0W-40"))));
    }

    @Test
    void useInTheColdIsReported() {
        Oil oil = resolved(spec(WARM, HOT).withPourPoint(-36 + K)).oil();
        assertEquals(List.of(), codes(OilNotices.at(oil, 60 + K)));
        assertEquals(List.of("oil.extrapolated"), codes(OilNotices.at(oil, -20 + K)));
        assertEquals(List.of("oil.extrapolated", "oil.nearPourPoint"), codes(OilNotices.at(oil, -34 + K)));
        assertEquals(List.of("oil.extrapolated", "oil.belowPourPoint"), codes(OilNotices.at(oil, -38 + K)));
        assertTrue(codes(OilNotices.at(oil, -42 + K)).contains("oil.outsideDomain"));
        Oil anchored = resolved(spec(WARM, HOT, PUMPING)).oil();
        assertEquals(List.of(), codes(OilNotices.at(anchored, -40 + K)));
    }

    private static ViscosityGrade grade(String text) {
        return ViscosityGrade.parse(text).orElseThrow();
    }

    @Test
    void anIndexMakesTheSecondPointOfOne() {
        Resolved result = resolved(spec(HOT).withViscosityIndex(index(185)));
        assertEquals(List.of("oil.pointFromIndex"), codes(result.notices()));
        double made = result.oil().kinematicViscosity(40 + K);
        assertEquals(185, ViscosityIndex.of(made, 13.5e-6).orElseThrow(), 1e-6);
        assertEquals(75e-6, made, 0.5e-6);
        Oil fromWarm = resolved(spec(WARM).withViscosityIndex(index(185))).oil();
        assertEquals(75e-6, fromWarm.kinematicViscosity(40 + K), 1e-13);
        assertEquals(13.5e-6, fromWarm.kinematicViscosity(100 + K), 0.1e-6);
    }

    @Test
    void aColdPointBesideOneWarmPointAndAnIndexStaysTheColdOne() {
        Oil oil = resolved(spec(HOT, PUMPING).withViscosityIndex(index(185))).oil();
        assertTrue(oil.hasColdAnchor());
        assertEquals(31.0, oil.dynamicViscosity(-40 + K), 1e-9);
    }

    @Test
    void aMadePointIsAsUncertainAsItsIndex() {
        Oil sure = resolved(spec(HOT).withViscosityIndex(index(185))).oil();
        StatedIndex doubtful = new StatedIndex(185, 20, Provenance.GUESSED);
        Oil unsure = resolved(spec(HOT).withViscosityIndex(doubtful)).oil();
        assertTrue(unsure.viscositySpread(40 + K) > 5 * sure.viscositySpread(40 + K));
        assertEquals(13.5e-6, unsure.kinematicViscosity(100 + K), 1e-13);
    }

    @Test
    void anIndexThatTheViscositiesDoNotMakeIsPointedOut() {
        assertEquals(
                List.of(),
                codes(resolved(spec(WARM, HOT).withViscosityIndex(index(184))).notices()));
        assertEquals(
                List.of("oil.indexDisagrees"),
                codes(resolved(spec(WARM, HOT).withViscosityIndex(index(158))).notices()));
    }

    @Test
    void anIndexThatNoLineHasIsRefused() {
        Refused thin = refused(spec(point(Method.KINEMATIC, 100, 1.2e-6)).withViscosityIndex(index(100)));
        assertEquals(OilFault.INDEX_UNFIT, thin.fault());
        assertEquals(List.of(0), thin.anchors());
        assertEquals(
                OilFault.INDEX_UNFIT,
                refused(spec(point(Method.KINEMATIC, 150, 4e-6)).withViscosityIndex(index(100)))
                        .fault());
        assertEquals(
                OilFault.TOO_FEW_POINTS,
                refused(spec(PUMPING).withViscosityIndex(index(100))).fault());
    }

    @Test
    void anIndexBesideAGradeAloneIsSaidToBeUnused() {
        Resolved result = resolved(OilSpec.ofGrade("o", grade("10W-30")).withViscosityIndex(index(140)));
        assertTrue(codes(result.notices()).contains("oil.indexUnused"));
    }

    private static StatedIndex index(double value) {
        return new StatedIndex(value, 0.7, Provenance.MAKER);
    }
}

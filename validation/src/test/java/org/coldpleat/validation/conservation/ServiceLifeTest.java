package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.CaptureFamily;
import org.coldpleat.model.loading.RatingPair;
import org.coldpleat.model.loading.SizeClasses;
import org.coldpleat.model.loading.TestDust;
import org.coldpleat.model.loading.service.ServiceCourse;
import org.coldpleat.model.loading.service.ServiceLife;
import org.coldpleat.model.loading.service.ServicePlan;
import org.coldpleat.model.pleat.FlatPack;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Balances and shapes of a service life with an ideal valve: no outside number. */
class ServiceLifeTest {
    private static final String SOURCE = "conservation, derived here";

    private static final double HOUR = 3600;
    private static final double FLOW = 2.5e-4;
    private static final SizeClasses CLASSES = TestDust.A3.sizes().classes(16);
    private static final double OPENS = 6;

    private static ServicePlan plan(PackModel pack, BlockingLaw law, double rate, double horizon) {
        var capture = CaptureFamily.LOG_NORMAL.through(new RatingPair(12e-6, 0.5), new RatingPair(25e-6, 0.987));
        double[] efficiency = new double[CLASSES.count()];
        double[] source = TestDust.A3.sizes().shares(CLASSES);
        for (int i = 0; i < efficiency.length; i++) {
            efficiency[i] = capture.efficiency(CLASSES.middle(i));
            source[i] *= rate;
        }
        return new ServicePlan(
                CLASSES,
                efficiency,
                source,
                4e-3,
                200 * HOUR,
                1e-10,
                pack,
                2.7e7,
                law,
                // an ideal valve: what the medium cannot take at the opening pressure goes round it
                ratio -> new ServicePlan.HotState(FLOW, Math.max(0, 1 - OPENS / ratio), Math.min(ratio, OPENS)),
                (temperature, ratio) -> {
                    double share = Math.min(0.9, Math.max(0, 1 - 1.5 / ratio));
                    return new ServicePlan.StartDose(share * FLOW * 600, (1 - share) * FLOW * 600);
                },
                600,
                new double[] {2 * HOUR, 2 * HOUR, 2 * HOUR},
                new double[] {253.15, 273.15, 293.15},
                horizon);
    }

    /** Twice as many pleats as there is room for: all legs touch, and at their ends oil crosses back within the sheets. */
    private static PackModel withoutRoom() {
        return new PleatPack(PleatGeometry.radial(33e-3, 17e-3, 200, 0.72e-3, 0, 0, 0, PleatEnds.FOLDED), 200, 56e-3);
    }

    private static PackModel crowded() {
        return new PleatPack(PleatGeometry.radial(33e-3, 17e-3, 70, 0.72e-3, 0, 0, 0, PleatEnds.FOLDED), 70, 56e-3);
    }

    @Test
    void aPackWithoutRoomKeepsItsDirtToo() {
        PackModel pack = withoutRoom();
        assertTrue(Arrays.stream(pack.solve(2.7e7).relativeFaceVelocities()).anyMatch(v -> v < 0), "oil crosses back");
        ServiceCourse course = ServiceLife.run(plan(pack, new BlockingLaw(1, 20), 5e-9, 200 * HOUR), OPENS);
        check("dirt balance of a pack whose legs all touch")
                .computed(course.end().massClosure(), "1")
                .below(1e-9, "rounding of some ten thousand sums");
        double load = course.load().mass();
        check("dirt on an element whose legs all touch")
                .expected(course.end().retainedMass(), "kg")
                .computed(load)
                .within(1e-9 * load, "rounding of some ten thousand sums");
    }

    @Test
    void everyClassOfDirtIsAccountedFor() {
        ServiceCourse course = ServiceLife.run(plan(crowded(), new BlockingLaw(1, 20), 5e-9, 1000 * HOUR), OPENS);
        // rounding of some ten thousand sums
        check("dirt balance over a service life")
                .computed(course.end().massClosure(), "1")
                .below(1e-9, "rounding of some ten thousand sums");
        double load = course.load().mass();
        check("dirt on the element over a service life")
                .expected(course.end().retainedMass(), "kg")
                .computed(load)
                .within(1e-9 * load, "rounding of some ten thousand sums");
    }

    @Test
    void resistanceNeverFallsAndBypassedOilIsCounted() {
        ServiceCourse course = ServiceLife.run(plan(crowded(), new BlockingLaw(1, 20), 5e-9, 1500 * HOUR), OPENS);
        List<ServiceCourse.Point> points = course.points();
        for (int i = 1; i < points.size(); i++) {
            assertTrue(points.get(i).packRatio() >= points.get(i - 1).packRatio() * (1 - 1e-12));
            assertTrue(points.get(i).unfilteredVolume() >= points.get(i - 1).unfilteredVolume());
            assertTrue(points.get(i).unfilteredVolume() <= points.get(i).pumpedVolume());
        }
        assertTrue(course.last().packRatio() > 2, "the element loads at all");
    }

    @Test
    void timeToOpeningConvergesWithTheToleranceAtSecondOrder() {
        ServicePlan plan = plan(crowded(), new BlockingLaw(1.2, 20), 2e-8, 3000 * HOUR);
        double exact = opening(ServiceLife.runWith(plan, 1e-7, Double.POSITIVE_INFINITY, OPENS));
        double coarse = Math.abs(opening(ServiceLife.runWith(plan, 1e9, 40 * HOUR, OPENS)) - exact);
        double fine = Math.abs(opening(ServiceLife.runWith(plan, 1e9, 10 * HOUR, OPENS)) - exact);
        double usual = Math.abs(opening(ServiceLife.run(plan, OPENS)) - exact);
        // step a quarter: error a sixteenth at order two; starts that fall on other steps blur it, so at least a sixth
        assertTrue(fine < coarse / 6, () -> "errors " + coarse + " s and " + fine + " s");
        // usual tolerance: within 0.1 % of the life
        check("error of the time to opening at the usual tolerance")
                .computed(usual / exact, "1")
                .below(1e-3, "as claimed: within 0.1 % of the life");
    }

    @Test
    void cleanOilLeavesTheElementClean() {
        ServiceCourse course = ServiceLife.run(plan(crowded(), new BlockingLaw(1, 20), 0, 100 * HOUR));
        check("resistance ratio after clean oil")
                .expected(1, "1")
                .computed(course.last().packRatio())
                .within(1e-12, "rounding");
        check("time run")
                .expected(100 * HOUR, "s")
                .computed(course.last().time())
                .within(1e-6, "rounding");
    }

    /**
     * Analytic for exponential growth: all dirt caught, life A ln(ratio)/(K rate). Half the area doubles the clean drop, so
     * only half the ratio is left: life falls to 0.5 ln(3)/ln(6), less than half. Capacity per area is taken as independent
     * of face velocity; if it falls with velocity, as is common practice, the loss is greater still.
     */
    @Test
    void halfTheAreaMoreThanHalvesTheLife() {
        double whole = flatLife(0.1, 6);
        double half = flatLife(0.05, 3);
        ExternalCheck.of(Topic.LOADING, "life to six times the clean drop", "derived here")
                .expected(0.1 * Math.log(6) / (20 * 5e-8), "s")
                .computed(whole)
                .within(2e-3 * whole, "usual tolerance of the course, 0.1 %, twice");
        ExternalCheck.of(Topic.LOADING, "life left at half the area, course of service", "derived here")
                .expected(0.5 * Math.log(3) / Math.log(6), "1")
                .computed(half / whole)
                .within(2e-3, "usual tolerance of the course, 0.1 %, twice");
        assertTrue(half < whole / 2);
    }

    private static double flatLife(double area, double ratio) {
        ServicePlan base = plan(new FlatPack(area), new BlockingLaw(1, 20), 5e-8, 1e6 * HOUR);
        double[] all = base.efficiency();
        Arrays.fill(all, 1);
        ServicePlan plan = new ServicePlan(
                base.classes(),
                all,
                base.source(),
                base.sumpVolume(),
                Double.POSITIVE_INFINITY,
                0,
                base.pack(),
                base.mediumResistance(),
                base.law(),
                r -> new ServicePlan.HotState(FLOW, 0, r),
                base.starts(),
                0,
                new double[] {10 * HOUR},
                new double[0],
                base.horizon());
        return ServiceLife.run(plan, ratio).timeAtRatio(ratio).orElseThrow();
    }

    private static double opening(ServiceCourse course) {
        return course.timeAtRatio(OPENS).orElseThrow();
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}

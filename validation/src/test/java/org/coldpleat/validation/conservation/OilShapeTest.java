package org.coldpleat.validation.conservation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilBase;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilResult;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.StatedIndex;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.model.oil.grade.TypicalOil;
import org.coldpleat.model.oil.grade.TypicalOils;
import org.coldpleat.model.oil.grade.ViscosityGrade;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Whatever plausible oil comes in, its curves keep their shape over -40 to 150 C. */
class OilShapeTest {
    private static final String SOURCE = "derived here, random oils";

    private static final int OILS = 2000;
    private static final long SEED = 20260115;
    private static final double K = 273.15;

    @Test
    void viscosityAndDensityFallFromTheColdToTheHotEnd() {
        for (Oil central : oils()) {
            for (double z : new double[] {-2, 0, 2}) {
                Oil oil = central.shifted(z);
                double viscosity = Double.POSITIVE_INFINITY;
                double density = Double.POSITIVE_INFINITY;
                for (int i = 0; i <= 380; i++) {
                    double temperature = Oil.MIN_TEMPERATURE + 0.5 * i;
                    double next = oil.kinematicViscosity(temperature);
                    assertTrue(next > 0 && next < viscosity, () -> oil + " at " + temperature);
                    assertTrue(oil.logSlope(temperature) < 0, () -> oil + " at " + temperature);
                    assertTrue(oil.density(temperature) < density);
                    viscosity = next;
                    density = oil.density(temperature);
                }
            }
        }
    }

    /** Every pair of 40 and 100 C with an index, by each class that may be stated, and at the edges of the draws. */
    @Test
    void viscosityFallsForAllPairsOfViscosityAndIndex() {
        int pairs = 0;
        for (double kv40 = 2; kv40 <= 500; kv40 *= 1.25) {
            for (double index = 80; index <= 300; index += 10) {
                OilSpec spec = OilSpec.ofPoints("pair", point(40, kv40 * 1e-6))
                        .withDensity(870, 15 + K)
                        .withViscosityIndex(new StatedIndex(index, 0.5, Provenance.MAKER));
                for (OilSpec stated : List.of(spec, spec.withBase(OilBase.SYNTHETIC), spec.withBase(OilBase.MINERAL))) {
                    if (OilResolver.resolve(stated) instanceof OilResult.Resolved resolved) {
                        pairs++;
                        fallsEverywhere(resolved.oil());
                    }
                }
            }
        }
        // an index needs 2 mm2/s at 100 C, which the thinnest oils do not have
        assertTrue(pairs > 1200, "too few pairs: " + pairs);
    }

    @Test
    void viscosityFallsForTypicalOilsOfAllGrades() {
        for (TypicalOil row : TypicalOils.all()) {
            fallsEverywhere(OilResolver.resolve(OilSpec.ofGrade(
                            "typical", ViscosityGrade.parse(row.grade()).orElseThrow()))
                    .orThrow());
        }
    }

    @Test
    void viscosityFallsForOilsOfTwoColdPoints() {
        int oils = 0;
        for (Oil warm : oils()) {
            if (warm.anchors().size() > 2 || oils == 200) {
                continue;
            }
            oils++;
            for (double[] pair : new double[][] {{-40, -20}, {-20, 0}, {0, 15}, {0, 20}, {0, 100}, {20, 30}}) {
                fallsEverywhere(OilResolver.resolve(OilSpec.ofPoints(
                                        "cold",
                                        point(pair[0], warm.kinematicViscosity(pair[0] + K)),
                                        point(pair[1], warm.kinematicViscosity(pair[1] + K)))
                                .withDensity(870, 15 + K))
                        .orThrow());
            }
        }
        assertEquals(200, oils);
    }

    private static Anchor point(double celsius, double viscosity) {
        return Anchor.of(Anchor.Method.KINEMATIC, celsius + K, viscosity, Provenance.MAKER);
    }

    private static void fallsEverywhere(Oil central) {
        for (double z : new double[] {-3.5, -1.96, 0, 1.96, 3.5}) {
            Oil oil = central.shifted(z);
            double viscosity = Double.POSITIVE_INFINITY;
            for (double t = -40; t <= 150; t += 1) {
                double next = oil.kinematicViscosity(t + K);
                double before = viscosity;
                double at = t;
                assertTrue(next > 0 && next < before, () -> oil + " at " + at);
                viscosity = next;
            }
        }
    }

    @Test
    void viscosityIsContinuousAtTheJoint() {
        for (Oil oil : oils()) {
            double below = oil.kinematicViscosity(Math.nextDown(40 + K));
            double at = oil.kinematicViscosity(40 + K);
            check("viscosity below over at the joint of its two branches")
                    .expected(1, "1")
                    .computed(below / at)
                    .within(1e-9, "rounding only"); // rounding only
        }
    }

    @Test
    void curvesGoThroughTheirPoints() {
        for (Oil oil : oils()) {
            for (Anchor anchor : oil.anchors()) {
                double expected = anchor.kinematicViscosity(oil.density());
                // one Newton step after the published inverse: 1e-8 relative at 2 mm2/s, rounding above 6
                check("curve over its own points")
                        .expected(1, "1")
                        .computed(oil.kinematicViscosity(anchor.temperature()) / expected)
                        .within(1e-7, "one Newton step after the published inverse: 1e-8 at 2 mm2/s");
            }
        }
    }

    @Test
    void bandNeverShrinksTowardTheColdOfAnOilWithoutAColdPoint() {
        for (Oil oil : oils()) {
            if (oil.anchors().size() > 2) {
                continue;
            }
            for (double t = 40; t > -40; t -= 1) {
                assertTrue(oil.viscositySpread(t - 1 + K) >= oil.viscositySpread(t + K) - 1e-9);
            }
        }
    }

    /** Two thirds of the oils have a cold point within a factor of two of the line through the warm points. */
    private static List<Oil> oils() {
        Random random = new Random(SEED);
        List<Oil> oils = new ArrayList<>();
        int refused = 0;
        while (oils.size() < OILS) {
            double hot = (4 + 18 * random.nextDouble()) * 1e-6;
            // exponent 1.5 to 1.72 of KV100 in mm2/s: viscosity index about 85 to 200
            double warm = 1.9e-6 * Math.pow(hot * 1e6, 1.5 + 0.22 * random.nextDouble());
            double density = 820 + 80 * random.nextDouble();
            List<Anchor> anchors = new ArrayList<>(List.of(
                    Anchor.of(Anchor.Method.KINEMATIC, 40 + K, warm, Provenance.MEASURED),
                    Anchor.of(Anchor.Method.KINEMATIC, 100 + K, hot, Provenance.MEASURED)));
            double cold = -40 + 30 * random.nextDouble() + K;
            double factor = Math.exp((2 * random.nextDouble() - 1) * Math.log(2) * (40 + K - cold) / 80);
            if (random.nextInt(3) > 0) {
                double line = WaltherCurve.through(40 + K, warm, 100 + K, hot).kinematicViscosity(cold);
                anchors.add(Anchor.of(Anchor.Method.LOW_SHEAR, cold, line * factor * density, Provenance.MEASURED));
            }
            OilResult result = OilResolver.resolve(
                    OilSpec.ofPoints("random", anchors.toArray(Anchor[]::new)).withDensity(density, 15 + K));
            if (result instanceof OilResult.Resolved resolved) {
                oils.add(resolved.oil());
            } else {
                refused++;
            }
        }
        // a plausible oil must not be turned away
        assertEquals(0, refused);
        return oils;
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

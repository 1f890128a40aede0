package org.coldpleat.model.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.BenchEstimate.Status;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class SmallTestsTest {
    private static final double PSI = 6894.757;

    private static Measured normal(Kind kind, double value, double uncertainty) {
        return Measured.exact(kind, value, Provenance.MEASURED).withSpread(uncertainty, Spread.NORMAL);
    }

    private static boolean has(BenchEstimate estimate, String code) {
        return estimate.notices().stream().anyMatch(n -> n.code().equals(code));
    }

    @Test
    void scaleTestUsesTheSealLine() {
        ScaleTest.Readings readings = new ScaleTest.Readings(
                normal(Kind.MASS, 2.5, 0.01),
                Optional.of(normal(Kind.MASS, 2.0, 0.01)),
                Optional.of(normal(Kind.MASS, 3.5, 0.01)),
                Optional.of(normal(Kind.LENGTH, 2e-3, 1e-4)),
                Measured.exact(Kind.RATIO, 1, Provenance.MEASURED),
                Measured.exact(Kind.FORCE, 0.5, Provenance.MEASURED),
                normal(Kind.LENGTH, 0.02, 1e-4),
                Optional.of(normal(Kind.LENGTH, 0.024, 1e-4)));
        ScaleTest.Result result = ScaleTest.evaluate(readings);
        double area = Math.PI * 0.01 * 0.01;
        Measured opening = result.opening().value().orElseThrow();
        assertEquals((2.5 * 9.80665 + 0.5) / area, opening.value(), 1e-6 * opening.value());
        // seat 1 %, scale 0.4 %: hypot of both within the weight share
        assertEquals(Math.hypot(0.01, 0.004 * 24.517 / 25.017), opening.halfWidth(), 1e-5);
        assertEquals(9.80665 / 2e-3, result.springRate().orElseThrow().value(), 1e-6);
        assertEquals(
                (2.0 * 9.80665 + 0.5) / area, result.closing().orElseThrow().value(), 1e-3);
        assertTrue(has(result.opening(), "bench.scale.friction"));
        assertTrue(has(result.opening(), "bench.scale.sealLine"));
    }

    @Test
    void leverTurnsForceAndTravel() {
        Measured zero = Measured.exact(Kind.FORCE, 0, Provenance.MEASURED);
        ScaleTest.Readings direct = new ScaleTest.Readings(
                normal(Kind.MASS, 2, 0.01),
                Optional.empty(),
                Optional.of(normal(Kind.MASS, 3, 0.01)),
                Optional.of(normal(Kind.LENGTH, 1e-3, 0)),
                Measured.exact(Kind.RATIO, 1, Provenance.MEASURED),
                zero,
                normal(Kind.LENGTH, 0.02, 0),
                Optional.empty());
        ScaleTest.Readings levered = new ScaleTest.Readings(
                normal(Kind.MASS, 1, 0.01),
                Optional.empty(),
                Optional.of(normal(Kind.MASS, 1.5, 0.01)),
                Optional.of(normal(Kind.LENGTH, 2e-3, 0)),
                Measured.exact(Kind.RATIO, 2, Provenance.MEASURED),
                zero,
                normal(Kind.LENGTH, 0.02, 0),
                Optional.empty());
        ScaleTest.Result one = ScaleTest.evaluate(direct);
        ScaleTest.Result two = ScaleTest.evaluate(levered);
        assertEquals(
                one.opening().value().orElseThrow().value(),
                two.opening().value().orElseThrow().value(),
                1e-6);
        assertEquals(
                one.springRate().orElseThrow().value(),
                two.springRate().orElseThrow().value(),
                1e-9);
    }

    @Test
    void bubblePointTakesOffTheImmersion() {
        BubblePoint.Liquid alcohol = new BubblePoint.Liquid(normal(Kind.RATIO, 0.0217, 0.0005), 785, 0);
        BenchEstimate estimate = BubblePoint.evaluate(
                List.of(new BubblePoint.Spot(1736 + 77, 0.01), new BubblePoint.Spot(2500, 0.01)), alcohol, 20, 0.001);
        assertEquals(50e-6, estimate.value().orElseThrow().value(), 0.05e-6);
        assertTrue(has(estimate, "bench.bubble.largestHole"));
        BenchEstimate hint = BubblePoint.resistanceHint(estimate.value().orElseThrow(), 0.6e-3, 0.15);
        double lnSigma = hint.value().orElseThrow().halfWidth();
        assertTrue(lnSigma > Math.log(2) && lnSigma < Math.log(3), "factor 2 to 3, ln sigma " + lnSigma);
        assertEquals(
                Status.REFUSED,
                BubblePoint.evaluate(List.of(new BubblePoint.Spot(70, 0.01)), alcohol, 20, 0.001)
                        .status());
    }

    @Test
    void magnificationAloneIsRefused() {
        FiberSizing.Mark mark = new FiberSizing.Mark(0, 0, 10, 0, 100);
        FiberSizing.Result refused = FiberSizing.evaluate(
                Optional.empty(), Optional.of("200x"), List.of(mark, mark), FiberSizing.Weight.NUMBER);
        assertEquals(Status.REFUSED, refused.mean().status());
        assertTrue(has(refused.mean(), "bench.fiber.magnificationOnly"));
        assertEquals(1.17e-6, new FiberSizing.Scale(normal(Kind.LENGTH, 1.5e-3, 1e-5), 1280).pixelSize(), 0.005e-6);
    }

    @Test
    void fiberWeightsAndEffectiveDiameter() {
        FiberSizing.Scale scale = new FiberSizing.Scale(Measured.exact(Kind.LENGTH, 1e-3, Provenance.MEASURED), 1000);
        List<FiberSizing.Mark> marks =
                List.of(new FiberSizing.Mark(0, 0, 6, 8, 300), new FiberSizing.Mark(0, 0, 20, 0, 100));
        FiberSizing.Result number =
                FiberSizing.evaluate(Optional.of(scale), Optional.empty(), marks, FiberSizing.Weight.NUMBER);
        FiberSizing.Result length =
                FiberSizing.evaluate(Optional.of(scale), Optional.empty(), marks, FiberSizing.Weight.LENGTH);
        assertEquals(15e-6, number.mean().value().orElseThrow().value(), 1e-12);
        assertEquals(12.5e-6, length.mean().value().orElseThrow().value(), 1e-12);
        assertEquals(14e-6, number.effective(), 1e-12); // (300*100 + 100*400)/(300*10 + 100*20)
        assertEquals(7.0711e-6, number.standardDeviation(), 1e-9);
        assertEquals(5e-6, number.standardError(), 1e-12);
        assertEquals(2, number.count());
    }

    @Test
    void twoDialsAreNotWorthTheirDifference() {
        GaugeCheck.Dial dial = new GaugeCheck.Dial(100 * PSI, 0.02);
        GaugeCheck check = GaugeCheck.of(dial, dial, 5 * PSI);
        assertEquals(2.8, check.halfWidth() / PSI, 0.05);
        assertEquals(0.57, check.relative(), 0.005);
        assertEquals("bench.gauge.useDifferential", check.notices().get(0).code());
        GaugeCheck.Dial fine = new GaugeCheck.Dial(10 * PSI, 0.005);
        assertTrue(GaugeCheck.of(fine, fine, 5 * PSI).notices().isEmpty());
    }

    private static final Air AIR = new Air(101_325, 1.82e-5, 1.2, 0.066e-6);

    private static AirTest.Readings air(
            List<AirTest.Row> rows, List<AirTest.Row> leak, Optional<Double> thickness, Optional<Measured> pore) {
        return new AirTest.Readings(
                rows,
                leak,
                Measured.exact(Kind.AREA, 0.002, Provenance.MEASURED),
                Optional.empty(),
                thickness,
                pore,
                1,
                0.01,
                false);
    }

    @Test
    void airTestSeparatesLeakInertiaAndViscousPart() {
        double resistance = 2.747e7;
        double inertia = 30;
        List<AirTest.Row> rows = new ArrayList<>();
        for (int i = 1; i <= 5; i++) {
            double v = 0.1 * i;
            double dp = AIR.dynamicViscosity() * resistance * v + AIR.density() * inertia * v * v;
            double mean = AIR.pressure() + dp / 2;
            rows.add(new AirTest.Row(dp, v * 0.002 * mean / AIR.pressure() + 1e-7 * dp));
        }
        List<AirTest.Row> leak = List.of(new AirTest.Row(200, 2e-5));
        BenchEstimate estimate = AirTest.evaluate(air(rows, leak, Optional.empty(), Optional.empty()), AIR);
        // the density at the mean pressure differs from that before the rig by 0.1 %, in a term of 4 %
        assertEquals(resistance, estimate.value().orElseThrow().value(), 1e-4 * resistance);
        assertEquals(Status.USABLE, estimate.status());
    }

    @Test
    void slipMakesTheMediumTighterForOil() {
        List<AirTest.Row> rows = List.of(new AirTest.Row(200, 8e-4));
        List<AirTest.Row> leak = List.of(new AirTest.Row(200, 0));
        BenchEstimate without = AirTest.evaluate(air(rows, leak, Optional.empty(), Optional.empty()), AIR);
        BenchEstimate with =
                AirTest.evaluate(air(rows, leak, Optional.empty(), Optional.of(normal(Kind.LENGTH, 10e-6, 2e-6))), AIR);
        double ratio = with.value().orElseThrow().value()
                / without.value().orElseThrow().value();
        assertEquals(1.0264, ratio, 1e-6);
        assertFalse(has(with, "bench.air.noPore"));
    }

    @Test
    void onePressureWithThicknessAllowsForInertia() {
        List<AirTest.Row> rows = List.of(new AirTest.Row(200, 8e-4));
        List<AirTest.Row> leak = List.of(new AirTest.Row(200, 0));
        BenchEstimate estimate = AirTest.evaluate(air(rows, leak, Optional.of(0.6e-3), Optional.empty()), AIR);
        Correction inertia = estimate.correction("inertia").orElseThrow();
        assertTrue(inertia.relativeSize() < 0 && inertia.relativeSize() > -0.07);
        assertTrue(inertia.lnSigma() > 0);
    }

    @Test
    void missingLeakTestWidens() {
        List<AirTest.Row> rows = List.of(new AirTest.Row(200, 8e-4));
        assertEquals(
                Status.WIDENED,
                AirTest.evaluate(air(rows, List.of(), Optional.empty(), Optional.empty()), AIR)
                        .status());
        List<AirTest.Row> open = List.of(new AirTest.Row(200, 9e-4));
        assertEquals(
                Status.REFUSED,
                AirTest.evaluate(air(rows, open, Optional.empty(), Optional.empty()), AIR)
                        .status());
    }

    @Test
    void plansNameReadingTimeAndResolution() {
        Plan scale = ScaleTest.plan(83_000, 0.02, 1, 0.005, 0.03, 0.1);
        assertEquals(83_000 * Math.PI * 1e-4 / 9.80665, scale.expected(), 1e-9);
        assertEquals(Kind.MASS, scale.reading());
        BubblePoint.Liquid alcohol = new BubblePoint.Liquid(normal(Kind.RATIO, 0.0217, 0.0005), 785, 0);
        Plan bubble = BubblePoint.plan(50e-6, 0.01, alcohol, 10, 0.03, 0.3);
        assertEquals(1736 + 77, bubble.expected(), 0.1);
        assertTrue(bubble.cautions().contains("bench.caution.alcoholFire"));
        Plan air = AirTest.plan(2.747e7, 0.002, 200, AIR, 1e-5, 30, 0.05, 0.5);
        assertEquals(8e-4, air.expected(), 1e-7);
        assertEquals(180, air.duration(), 1e-9);
        Plan fiber = FiberSizing.plan(20e-6, 0.3, 36, 1.17e-6, 0.3);
        assertEquals(Math.hypot(0.05, 2 * Math.sqrt(2) * 1.17 / 20 / Math.sqrt(12)), fiber.lnSigma(), 1e-12);
        assertTrue(fiber.resolutionNeeded().orElseThrow() > 1.17e-6);
    }

    /** With exactly the resolution a plan asks for, the test knows just as much as is known now. */
    @Test
    void resolutionNeededIsTheBreakEven() {
        double needed = ScaleTest.plan(83_000, 0.02, 1, 0.005, 0.03, 0.1)
                .resolutionNeeded()
                .orElseThrow();
        assertEquals(0.1, ScaleTest.plan(83_000, 0.02, 1, needed, 0.03, 0.1).lnSigma(), 1e-12);
    }

    @Test
    void refusedEstimateHasNoValue() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new BenchEstimate(Status.USABLE, Optional.empty(), List.of(), List.of(), List.of()));
    }
}

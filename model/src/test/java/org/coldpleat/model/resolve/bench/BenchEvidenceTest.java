package org.coldpleat.model.resolve.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.coldpleat.model.Cases;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.TestPlan;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.reading.CaseReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Raw readings in a case become evidence. The rigs are synthetic: their truth is known. */
class BenchEvidenceTest {
    private static final double TRUE_RESISTANCE = 5e7;

    /** Errors of readings, fixed so that the test is the same every time: about 3 % standard deviation, mean about 0. */
    private static final double[] NOISE = {0.031, -0.024, 0.012, -0.038, 0.027, 0.019, -0.033, 0.008, -0.015, 0.014};

    private static String filter(String medium, String tests) {
        return Cases.stand("5 L/min") + """
                candidates:
                  - name: A
                    outside: {present: false}
                    antiDrainFlap: {present: false}
                    bypass: {position: dome, openingPressure: 14 to 18 psi, seatDiameter: 15.2 mm}
                    basePlate:
                      thickness: 2.8 mm
                      inletHoles: {count: 8, diameter: 6.1 mm}
                      outletBore: {diameter: 17.5 mm, length: 16 mm}
                    centerTube: {insideDiameter: 31 mm, wallThickness: 0.4 mm, length: 60 mm, holes: {count: 64, diameter: 4.1 mm}}
                    pleats: {present: false, count: 55, depth: 14 mm, height: 60 mm}
                    medium: {thickness: 0.8 mm, basisWeight: 150 g/m2, fiberDensity: 1500 kg/m3%s}
                %s
                """.formatted(medium, tests);
    }

    private static String bench(double noise, boolean tare, double factor) {
        ResolvedCase truth = Cases.resolve(filter(", resistance: 5e7 1/m", ""));
        StringBuilder text =
                new StringBuilder("    tests:\n      flowBench:\n        gaugeResolution: 0.1 kPa\n        rows:\n");
        StringBuilder empty = new StringBuilder("        tare:\n");
        for (int i = 0; i < 20; i++) {
            double flow = (2 + 0.75 * i) / 6e4;
            double temperature = 313.15 + 0.3 * i;
            Fluid oil = truth.shared().oil().at(temperature);
            double head = oil.dynamicViscosity() * 2e9 * flow;
            double drop = truth.candidates()
                    .get(0)
                    .filter()
                    .withoutBypass()
                    .solve(flow, oil)
                    .totalDrop();
            text.append(row(
                    (drop * factor + head) * (1 + noise * NOISE[i < 10 ? i : 19 - i] / 0.024), flow, temperature));
            empty.append(row(head, flow, temperature));
        }
        return text + (tare ? empty.toString() : "");
    }

    private static String row(double pressure, double flow, double temperature) {
        return String.format(
                Locale.ROOT,
                "          - {pressure: %.4f kPa, flow: %.4f L/min, temperature: %.2f °C}%n",
                pressure / 1e3,
                flow * 6e4,
                temperature - 273.15);
    }

    private static EvidenceReport evidence(String text) {
        return Simulation.evidence(Cases.resolve(text), "A").now();
    }

    private static EvidenceReport.Combined medium(EvidenceReport report) {
        return report.combined("mediumResistance").orElseThrow();
    }

    /** Levels and air flows read off the model itself; the chain back through hose, holes and channels must close. */
    private static String drain() {
        ResolvedCase truth = Cases.resolve(filter(", resistance: 5e7 1/m", ""));
        StringBuilder text = new StringBuilder("""
                    tests:
                      drainTest:
                        vesselDiameter: 84 mm
                        headResolution: 0.1 mm
                        fallingHead:
                """);
        double temperature = 293.15;
        Fluid oil = truth.shared().oil().at(temperature);
        var path = truth.candidates().get(0).filter().withoutBypass();
        double head = 0.6;
        double area = Math.PI * 0.084 * 0.084 / 4;
        double step = 0.05;
        for (int i = 0; i <= 8 * 100; i++) {
            if (i % 100 == 0) {
                text.append(String.format(
                        Locale.ROOT,
                        "          - {time: %.2f s, head: %.3f mm, temperature: 20 °C}%n",
                        i * step,
                        head * 1e3));
            }
            head -= step / area * flowUnder(path, oil, oil.density() * 9.80665 * head);
        }
        return text.toString();
    }

    /** Flow at which a filter drops a pressure, by halving [m3/s]. */
    private static double flowUnder(org.coldpleat.model.filter.FilterAssembly path, Fluid oil, double pressure) {
        double low = 0;
        double high = 20 / 6e4;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            boolean over = path.solve(middle, oil).totalDrop() > pressure;
            high = over ? middle : high;
            low = over ? low : middle;
        }
        return low;
    }

    @Test
    void drainingOilGivesTheMediumBack() {
        // an explicit step of 50 ms on a fall of about 40 s time constant: about 1e-3
        assertEquals(TRUE_RESISTANCE, medium(evidence(filter("", drain()))).median(), 5e-3 * TRUE_RESISTANCE);
    }

    /** Air drawn through the whole element: the pack alone, laminar, air of ISO 2533 at 20 degrees C; derived here. */
    @Test
    void airThroughAnElementGivesTheMediumBack() {
        ResolvedCase truth = Cases.resolve(filter(", resistance: 5e7 1/m", ""));
        double resistance = truth.candidates().get(0).pack().resistance();
        double viscosity = org.coldpleat.model.medium.AirViscosity.at(293.15);
        StringBuilder rows = new StringBuilder();
        for (double pressure : new double[] {40, 80, 120, 160}) {
            rows.append(String.format(
                    Locale.ROOT,
                    "          - {pressure: %.1f Pa, flow: %.4f L/min}%n",
                    pressure,
                    pressure / (viscosity * resistance) * 6e4));
        }
        String test = "    tests:\n      airTest:\n        piece: element\n        rows:\n" + rows;
        // slip of air in the pores is taken off, which makes the medium a little tighter for oil
        assertEquals(TRUE_RESISTANCE, medium(evidence(filter("", test))).median(), 0.03 * TRUE_RESISTANCE);
    }

    /** Without noise the chain from the medium to the readings and back must close. */
    @Test
    void readingsWithoutNoiseGiveTheMediumBack() {
        EvidenceReport report = evidence(filter("", bench(0, true, 1)));
        // readings are written to 0.1 Pa and the series parts are split by a fit: a part in a thousand
        assertEquals(TRUE_RESISTANCE, medium(report).median(), 1e-3 * TRUE_RESISTANCE);
    }

    /** Twenty rows with 3 % noise; two standard uncertainties of such a fit are about 3 %, which is also the requirement. */
    @Test
    void threePercentNoiseGivesTheMediumWithinThreePercent() {
        EvidenceReport report = evidence(filter("", bench(0.03, true, 1)));
        assertEquals(TRUE_RESISTANCE, medium(report).median(), 0.03 * TRUE_RESISTANCE);
        assertTrue(medium(report).lnSigma() > 0.01 && medium(report).lnSigma() < 0.15);
    }

    @Test
    void withoutRunOfTheEmptyHeadTheTestIsRefusedAndOtherEvidenceStands() {
        EvidenceReport report = evidence(filter(", resistance: 6e7 1/m", bench(0, false, 1)));
        assertEquals("REFUSED", report.test("flowBench").orElseThrow().status());
        assertEquals(6e7, medium(report).median(), 1);
    }

    @Test
    void withoutRunOfTheEmptyHeadAndWithoutOtherEvidenceTheCaseIsRefused() {
        CaseReading reading = CaseReader.read("test.yaml", filter("", bench(0, false, 1)));
        Resolution resolution = Simulation.resolve(reading.document().orElseThrow());
        assertTrue(resolution.resolved().isEmpty());
        assertEquals("candidate.testsGiveNothing", resolution.problems().get(0).code());
    }

    @Test
    void statedShareOfTheEmptyHeadWidens() {
        String bench = bench(0, false, 1);
        EvidenceReport tared = evidence(filter("", bench(0, true, 1)));
        EvidenceReport allowed = evidence(filter("", bench + "        tareShare: 0 to 30 %\n"));
        assertEquals("WIDENED", allowed.test("flowBench").orElseThrow().status());
        assertTrue(medium(allowed).lnSigma() > medium(tared).lnSigma());
    }

    @Test
    void moreEvidenceNarrowsAndConflictingEvidenceDoesNot() {
        double alone = medium(evidence(filter("", bench(0, true, 1)))).lnSigma();
        EvidenceReport.Combined agreeing = medium(evidence(filter(", resistance: 5.1e7 1/m ± 5 %", bench(0, true, 1))));
        EvidenceReport.Combined against = medium(evidence(filter(", resistance: 1.2e8 1/m ± 5 %", bench(0, true, 1))));
        assertTrue(agreeing.lnSigma() < alone);
        assertFalse(agreeing.conflict());
        assertTrue(against.conflict());
        assertTrue(against.lnSigma() > alone);
        // the band reaches both
        assertTrue(against.median() * Math.exp(-1.96 * against.lnSigma()) < TRUE_RESISTANCE);
        assertTrue(against.median() * Math.exp(1.96 * against.lnSigma()) > 1.2e8);
    }

    /** Keys of a YAML mapping have no order: written the other way round the same bits come out. */
    @Test
    void orderOfEvidenceDoesNotMatter() {
        String scale = "      scaleTest: {liftOff: 2.04 kg}\n";
        String bench = bench(0.03, true, 1).substring("    tests:\n".length());
        EvidenceReport one = evidence(filter(", resistance: 5.1e7 1/m", "    tests:\n" + bench + scale));
        EvidenceReport two = evidence(filter(", resistance: 5.1e7 1/m", "    tests:\n" + scale + bench));
        assertEquals(one.combined(), two.combined());
    }

    /** 2.04 kg on a seat of 15.2 mm are 110.2 kPa, 16.0 psi; derived here. */
    @Test
    void scaleTestNarrowsThePrintedRangeOrWidensInConflict() {
        EvidenceReport.Combined agreeing = evidence(
                        filter(", resistance: 5e7 1/m", "    tests:\n      scaleTest: {liftOff: 2.04 kg ± 0.05 kg}\n"))
                .combined("openingPressure")
                .orElseThrow();
        assertFalse(agreeing.conflict());
        assertEquals(110.2e3, agreeing.median(), 0.5e3);
        // printed alone: 2 psi / root 3 of 16 psi
        assertTrue(agreeing.lnSigma() < 2 / Math.sqrt(3) / 16);
        EvidenceReport.Combined against = evidence(
                        filter(", resistance: 5e7 1/m", "    tests:\n      scaleTest: {liftOff: 1.2 kg ± 0.05 kg}\n"))
                .combined("openingPressure")
                .orElseThrow();
        assertTrue(against.conflict());
        assertTrue(against.median() * Math.exp(-1.96 * against.lnSigma()) < 65e3);
        assertTrue(against.median() * Math.exp(1.96 * against.lnSigma()) > 110e3);
    }

    /** 1736 Pa over isopropanol of 21.7 mN/m: 50 micrometers, after 77 Pa for 10 mm of depth; derived here. */
    @ParameterizedTest
    @ValueSource(strings = {"{pressure: 1736 Pa, depth: 0 mm}", "{pressure: 1813 Pa, depth: 10 mm}"})
    void bubblePointIsTheLargestHoleAndWeak(String spot) {
        EvidenceReport report =
                evidence(filter("", "    tests:\n      bubblePoint: {liquid: isopropanol, spots: [" + spot + "]}\n"));
        TestReport.Value hole =
                report.test("bubblePoint").orElseThrow().values().get(0);
        assertEquals("largestHole", hole.key());
        assertEquals(50e-6, hole.value().value(), 0.1e-6);
        assertEquals("bubble_point", medium(report).members().get(0).name());
        assertTrue(medium(report).lnSigma() > Math.log(2) / 1.96);
    }

    /** Two 0 to 100 psi dials of 2 %: root 2 times 2 psi is 2.83 psi, 57 % of 5 psi; derived here. */
    @Test
    void twoDialsAreJudged() {
        EvidenceReport report = evidence(filter(", resistance: 5e7 1/m", """
                    tests:
                      gauges:
                        before: {fullScale: 100 psi, accuracy: 2 %}
                        after: {fullScale: 100 psi, accuracy: 2 %}
                        difference: 5 psi
                """));
        TestReport check = report.test("gauges").orElseThrow();
        assertEquals(2.828 * 6894.757, check.values().get(0).value().value(), 5);
        assertEquals(0.566, check.values().get(1).value().value(), 0.001);
        assertTrue(check.notices().stream().anyMatch(one -> one.code().equals("bench.gauge.useDifferential")));
    }

    /** 1.5 mm over 1280 pixels: 1.17 micrometers a pixel; a magnification alone is refused. */
    @Test
    void picturesNeedAScale() {
        String fibers = "fibers: [{width: 14}, {width: 17}, {width: 12}, {width: 15}]}\n";
        EvidenceReport report = evidence(
                filter("", "    tests:\n      fiberSizing: {fieldWidth: 1.5 mm, fieldPixels: 1280, " + fibers));
        TestReport sizing = report.test("fiberSizing").orElseThrow();
        assertEquals(1.171875e-6, sizing.values().get(0).value().value(), 1e-12);
        assertEquals("structure", medium(report).members().get(0).name());
        CaseReading refused = CaseReader.read(
                "test.yaml",
                filter(", resistance: 5e7 1/m", "    tests:\n      fiberSizing: {magnification: 200x, " + fibers));
        assertTrue(refused.document().isEmpty());
        assertEquals("case.magnificationOnly", refused.problems().get(0).code());
    }

    /** 24 in of oil of 850 kg/m3 weigh 5.08 kPa; the oil here has another density, so the ratio is checked; derived here. */
    @Test
    void leakIsScaledAndOneReadingIsSaidToBeOne() {
        EvidenceReport report = evidence(filter(
                ", resistance: 5e7 1/m",
                "    tests:\n      antiDrainLeak: {volume: 10 mL, time: 1 h, head: 24 in, temperature: 40 °C}\n"));
        TestReport leak = report.test("antiDrainLeak").orElseThrow();
        assertEquals(10e-6 / 3600, leak.values().get(0).value().value(), 1e-15);
        assertEquals(5.08e3 * 822 / 850, leak.values().get(1).value().value(), 40);
        assertEquals(1, leak.count());
        assertTrue(leak.notices().stream().anyMatch(one -> one.code().equals("bench.repeats.single")));
    }

    /** 2 mL/h for 30 h are 60 mL, more than the 40 mL that can run out; 5 cm3 a turn at 600 rpm bring 3 L/min; derived here. */
    @Test
    void refillTakesWhatLeakedOutOrAllThereIs() {
        String engine = """
                oil: {grade: 10W-30}
                engine:
                  pump: {displacement: 5 cm3/rev}
                  gallery: {hotReading: {pressure: 300 kPa, temperature: 90 °C, speed: 3000 rpm, bearingShare: typical}}
                  states: [{name: idle, speed: 600 rpm}]
                temperatures: {from: -20 °C, to: 100 °C}
                """;
        String candidate = filter(
                ", resistance: 5e7 1/m",
                "    tests:\n      antiDrainLeak: {volume: 2 mL, time: 1 h,"
                        + " head: 90 mm, temperature: 20 °C, standing: %s, drainable: 40 mL}\n");
        String sheet =
                "formatVersion: 1\ntitle: Leak\n" + engine + candidate.substring(candidate.indexOf("candidates:"));
        assertEquals(0.8, refillDelay(sheet.formatted("30 h")), 0.8e-9);
        assertEquals(0.2, refillDelay(sheet.formatted("5 h")), 0.2e-9);
    }

    /** Made from the model: the drops of the filter with its pack as it is and three times as tight. */
    @Test
    void usedElementTellsItsLoadingFactor() {
        ResolvedCase truth = Cases.resolve(filter(", resistance: 5e7 1/m", ""));
        var filter = truth.candidates().get(0).filter().withoutBypass();
        var oil = truth.shared().oil();
        double flow = 10 / 6e4;
        double fresh = filter.solve(flow, oil.at(333.15)).totalDrop();
        double used = filter.withElementResistance(3 * filter.elementResistance())
                .solve(flow, oil.at(333.15))
                .totalDrop();
        String text = String.format(
                java.util.Locale.ROOT,
                "    tests:%n      usedElement: {newDrop: %.6f Pa, usedDrop: %.6f Pa, flow: 10 L/min, temperature: 60 °C}%n",
                fresh,
                used);
        var values = evidence(filter(", resistance: 5e7 1/m", text))
                .test("usedElement")
                .orElseThrow()
                .values();
        assertEquals(used / fresh, values.get(0).value().value(), 1e-6);
        assertEquals(3, values.get(1).value().value(), 1e-6);
        assertTrue(values.get(1).value().halfWidth() > values.get(0).value().halfWidth());
    }

    private static double refillDelay(String text) {
        return evidence(text).test("antiDrainLeak").orElseThrow().values().stream()
                .filter(value -> value.key().equals("refillDelay"))
                .findFirst()
                .orElseThrow()
                .value()
                .value();
    }

    /** What a test would read is what the model gives: 16 psi on a seat of 15.2 mm is 2.04 kg; derived here. */
    @Test
    void planSaysWhatToExpectAndWhichResolutionIsNeeded() {
        ResolvedCase resolved = Cases.resolve(filter(", resistance: 5e7 1/m", ""));
        TestPlan scale = Simulation.plan(resolved, "A", "scaleTest", java.util.OptionalDouble.empty())
                .now();
        assertEquals(2.04, scale.expected(), 0.01);
        assertTrue(scale.reachedLnSigma() < scale.presentLnSigma());
        double needed = scale.resolutionNeeded().orElseThrow();
        TestPlan coarse = Simulation.plan(resolved, "A", "scaleTest", java.util.OptionalDouble.of(needed))
                .now();
        assertEquals(coarse.presentLnSigma(), coarse.reachedLnSigma(), 1e-9);
    }

    /** Two independent normal sources of one value: precisions add (textbook). Here sheet and rig say the same of the pack. */
    @Test
    void spreadOfThePackIsThatOfSheetAndRigTogether() {
        String sheet = ", resistance: 5e7 1/m";
        ResolvedCase alone = Cases.resolve(filter(sheet, ""));
        ResolvedCase both = Cases.resolve(filter(sheet, bench(0.03, true, 1)));
        double before = packSpread(alone);
        double rig = both.bench(0).rigs().get(0).lnSigma();
        double expected = 1 / Math.sqrt(1 / (before * before) + 1 / (rig * rig));
        // first order, and the slope of the pack over the medium is taken by a difference
        assertEquals(expected, packSpread(both), 0.02 * expected);
    }

    private static double packSpread(ResolvedCase resolved) {
        return Variants.norm(new Variants(resolved)
                .ownContributions(0, one -> Math.log(one.pack().resistance())));
    }
}

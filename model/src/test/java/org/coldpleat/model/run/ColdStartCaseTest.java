package org.coldpleat.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.Cases;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.quantity.Amount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Starts of whole cases, from the case file to the result. */
class ColdStartCaseTest {
    private static final double ZERO = 273.15;

    /** Resistance of a filter whose pack alone counts [1/m3]. */
    private static final double PACK = 6e9;

    private static final double OPENING = 80e3;

    /** Delivery at 900 rpm without slip [m3/s]. */
    private static final double DELIVERY = 7.2e-6 * 900 / 60;

    private static String engine(String start) {
        return Cases.OIL + """
                engine:
                  pump: {displacement: 7.2 cm3/rev, slip: 0 m3}
                  reliefValves:
                    - {name: relief, senses: outlet, openingPressure: 500 kPa}
                  gallery:
                    passages:
                      - {name: gap, kind: bearing, bore: 6 mm, length: 100 mm, count: 1}
                    film: none
                  states:
                    - {name: idle, speed: 900 rpm}
                    - {name: fast, speed: 2400 rpm}
                temperatures: {from: -35 °C, to: 120 °C}
                start:
                %s
                candidates:
                """.formatted(start.stripTrailing().indent(2).stripTrailing());
    }

    private static String candidate(String name, double pack, String more) {
        return String.format(Locale.ROOT, """
                  - name: %s
                    outside: {present: false}
                    basePlate: {inletHoles: {present: false}, outletBore: {present: false}}
                    antiDrainFlap: {present: false}
                    centerTube: {present: false}
                    pleats: {present: false}
                    bypass: {position: base, openingPressure: 80 kPa, seatDiameter: 14 mm, springRate: 3 N/mm, maximumLift: 4 mm}
                    medium: {statedArea: 1000 cm2 ± 0.001 cm2, resistance: %.6e 1/m}
                %s""", name, 0.1 * pack, more)
                .replace(more.contains("outside:") ? "    outside: {present: false}\n" : "\0", "");
    }

    private static final String WARMING = """
            schedules:
              - name: morning
                phases:
                  - {state: idle, duration: 60 min}
            from: -15 °C
            hot: 40 °C
            galleryVolume: 0.1 L
            thermal:
              oilVolume: 4 L
              metalMass: 60 kg
              oilToMetal: 80 W/K
              metalToAmbient: 40 W/K
              oilToAmbient: 6 W/K
              heats:
                - {state: idle, toMetal: 3 kW, toOil: 300 W}
            """;

    private static ColdStart run(String text) {
        return Simulation.coldStart(Cases.resolve(text), ColdStartRequest.AS_STATED)
                .orElseThrow()
                .now();
    }

    private static double value(ColdStartCandidate one, StartQuantity quantity) {
        return one.band(quantity).value();
    }

    /** Exponential warm-up from -15 to 90 degrees C, time constant 400 s, read every 5 s. */
    private static String log() {
        StringBuilder csv = new StringBuilder("# invented\ntime [s], temperature [°C]\n");
        for (int t = 0; t <= 1800; t += 5) {
            csv.append(String.format(Locale.ROOT, "%d, %.6f%n", t, 90 - 105 * Math.exp(-t / 400.0)));
        }
        return csv.toString();
    }

    /** Temperature at which the pack alone takes the opening pressure at the whole delivery [degrees C]. */
    private static double openingTemperature(ResolvedCase resolved) {
        double low = -30;
        double high = 120;
        for (int i = 0; i < 60; i++) {
            double at = 0.5 * (low + high);
            double viscosity = Simulation.point(resolved, "One", "idle", at + ZERO)
                    .now()
                    .oil()
                    .dynamicViscosity();
            if (viscosity * PACK * DELIVERY > OPENING) {
                low = at;
            } else {
                high = at;
            }
        }
        return 0.5 * (low + high);
    }

    @Test
    void exponentialLogIsOpenForTheTimeOfTheClosedForm(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("log.csv"), log());
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, engine("""
                schedules:
                  - name: morning
                    phases:
                      - {state: idle, duration: 30 min}
                from: -15 °C
                hot: 60 °C
                trace: {file: log.csv}
                """) + candidate("One", PACK, ""));
        CaseDocument document = CaseReader.read(file).document().orElseThrow();
        ResolvedCase resolved = Simulation.resolve(document).resolved().orElseThrow();
        ColdStart start = Simulation.coldStart(resolved, ColdStartRequest.AS_STATED)
                .orElseThrow()
                .now();
        assertTrue(start.logged());
        ColdStartCandidate one = start.candidates().get(0);
        double opening = openingTemperature(resolved);
        // 90 - 105 exp(-t/400) = opening
        double expected = 400 * Math.log(105 / (90 - opening));
        assertTrue(expected > 60 && expected < 1500, "the log must cross the opening: " + expected);
        assertEquals(expected, value(one, StartQuantity.OPEN_SECONDS), 1);
        assertEquals(400 * Math.log(105 / 30.0), value(one, StartQuantity.HOT_TIME), 1);
        double unfiltered = value(one, StartQuantity.UNFILTERED);
        assertTrue(unfiltered > 0);
        double pumped = value(one, StartQuantity.PUMPED);
        assertEquals(DELIVERY * 1800, pumped, 1e-6 * pumped);
        // what passes the filter is pumped; rounding of the sums
        assertTrue(unfiltered + value(one, StartQuantity.FILTERED) <= pumped * (1 + 1e-9));
        assertTrue(start.notices().stream().anyMatch(notice -> notice.code().equals("start.traceRules")));
        assertThrows(
                IllegalArgumentException.class,
                () -> Simulation.coldStartSweep(resolved, ColdStartRequest.AS_STATED)
                        .orElseThrow()
                        .now());
    }

    @Test
    void digestTellsOneLogFromAnother(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, engine("""
                schedules:
                  - {name: morning, phases: [{state: idle, duration: 30 min}]}
                trace: {file: log.csv}
                """) + candidate("One", PACK, ""));
        Files.writeString(folder.resolve("log.csv"), log());
        String first = CaseReader.read(file).document().orElseThrow().digest();
        assertEquals(first, CaseReader.read(file).document().orElseThrow().digest());
        Files.writeString(folder.resolve("log.csv"), log().replace("1800, 8", "1800, 7"));
        assertNotEquals(first, CaseReader.read(file).document().orElseThrow().digest());
    }

    @Test
    void temperaturesRiseToTheirSteadyStateAndNeverPastIt() {
        String endless = WARMING.replace("60 min", "20 h");
        ColdStartCandidate one =
                run(engine(endless) + candidate("One", PACK, "")).candidates().get(0);
        List<ColdStartCandidate.Moment> moments = one.moments();
        ColdStartCandidate.Moment last = moments.get(moments.size() - 1);
        double before = 0;
        for (ColdStartCandidate.Moment moment : moments) {
            // tolerance of the integration over many steps
            assertTrue(moment.oilTemperature() <= last.oilTemperature() + 1e-3, moment.time() + " s");
            assertTrue(moment.metalTemperature() <= last.metalTemperature() + 1e-3, moment.time() + " s");
            assertTrue(moment.oilTemperature() >= before - 1e-3, moment.time() + " s");
            before = moment.oilTemperature();
        }
        // all heat leaves: 3.3 kW and the pump work against both conductances
        double lost = 40 * (last.metalTemperature() - (ZERO - 15)) + 6 * (last.oilTemperature() - (ZERO - 15));
        double brought = 3300 + last.pumpPressure() * DELIVERY;
        assertEquals(brought, lost, 1e-3 * brought);
    }

    @Test
    void heatBalanceClosesThroughTheWholeRun() {
        ColdStartCandidate one =
                run(engine(WARMING) + candidate("One", PACK, "")).candidates().get(0);
        assertTrue(one.heatResidual() < 1e-6, one.heatResidual() + "");
        // 0.1 L at the delivery, less what the relief valve sends back
        assertTrue(one.fillTime() >= 1e-4 / DELIVERY * (1 - 1e-9), one.fillTime() + " s");
    }

    @Test
    void lessMediumStaysOpenLongerAndTheVerdictSaysByHowMuch() {
        String half = candidate("Half", PACK, "").replace("1000 cm2", "500 cm2");
        ColdStart start = run(engine(WARMING) + candidate("Full", PACK, "") + half);
        double full = value(start.candidates().get(0), StartQuantity.OPEN_SECONDS);
        double less = value(start.candidates().get(1), StartQuantity.OPEN_SECONDS);
        assertTrue(less > full + 1, less + " s against " + full + " s");
        Verdict longer = start.verdicts().stream()
                .filter(verdict -> verdict.code().startsWith("start.longer"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("Half", "Full"), longer.candidates());
        Verdict reason = start.verdicts().stream()
                .filter(verdict -> verdict.code().startsWith("start.reason."))
                .findFirst()
                .orElseThrow();
        assertEquals("start.reason.area.longer", reason.code());
        // the only difference is worth all of it
        assertEquals(Amount.duration(less - full), reason.values().get(0));
    }

    @Test
    void whatIsTypicalOrLeftOutIsSaidAndEntersTheBands() {
        String sized = """
                    outside: {diameter: 76 mm, length: 90 mm}
                """;
        String left = WARMING.replace("  oilToAmbient: 6 W/K\n", "")
                .replace("metalToAmbient: 40 W/K", "metalToAmbient: typical");
        ColdStart start = run(engine(left) + candidate("One", PACK, sized));
        List<String> paths = start.assumptions().stream().map(Assumption::path).toList();
        for (String path : List.of(
                "start.oilInCan",
                "candidates[0].outside.mass",
                "start.thermal.oilToAmbient",
                "start.thermal.metalToAmbient")) {
            assertTrue(paths.contains(path), path + " in " + paths);
        }
        assertFalse(paths.contains("start.domeFlush"), "there is no valve in a dome");
        assertTrue(start.notices().stream().anyMatch(notice -> notice.code().equals("start.leftOut")));
        assertTrue(start.candidates().get(0).included().contains("start.oilInCan"));
        assertTrue(start.candidates().get(0).included().contains("start.thermal.oilToAmbient"));
        assertTrue(start.candidates().get(0).included().contains("candidates[0].outside.mass"));
    }

    @Test
    void filterWithoutSizeFollowsTheOilAndSaysSo() {
        ColdStart start = run(engine(WARMING) + candidate("One", PACK, ""));
        assertTrue(start.notices().stream().anyMatch(notice -> notice.code().equals("start.noHoldUp")));
    }

    @Test
    void filterThatHoldsColdOilStaysOpenLonger() {
        String sized = """
                    outside: {diameter: 76 mm, length: 90 mm, mass: 300 g}
                """;
        double with = value(
                run(engine(WARMING) + candidate("One", PACK, sized))
                        .candidates()
                        .get(0),
                StartQuantity.OPEN_SECONDS);
        double without = value(
                run(engine(WARMING) + candidate("One", PACK, "")).candidates().get(0), StartQuantity.OPEN_SECONDS);
        assertTrue(with > without, with + " s against " + without + " s");
    }

    @Test
    void heatBeyondTheFastestStatedSpeedIsSaid() {
        ResolvedCase resolved = Cases.resolve(engine(WARMING) + candidate("One", PACK, ""));
        ColdStart start = Simulation.coldStart(
                        resolved,
                        new ColdStartRequest(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of("fast"),
                                OptionalDouble.empty(),
                                OptionalDouble.empty()))
                .orElseThrow()
                .now();
        assertTrue(start.notices().stream().anyMatch(notice -> notice.code().equals("start.heatBeyond")));
        assertEquals(3000 * 2400 / 900.0, start.phases().get(0).heatToMetal(), 1e-6);
    }

    @Test
    void spreadOfHotAndOfAPhaseReachesTheBands() {
        String spread = WARMING.replace("hot: 40 °C", "hot: 40 °C ± 10 °C");
        StartBand wide = run(engine(spread) + candidate("One", PACK, ""))
                .candidates()
                .get(0)
                .band(StartQuantity.HOT_TIME);
        StartBand narrow = run(engine(WARMING) + candidate("One", PACK, ""))
                .candidates()
                .get(0)
                .band(StartQuantity.HOT_TIME);
        assertTrue(wide.low() < narrow.low() - 1, wide.low() + " s against " + narrow.low() + " s");
        ColdStartCandidate phased = run(engine(WARMING.replace("60 min", "60 min ± 10 min"))
                        + candidate("One", PACK, ""))
                .candidates()
                .get(0);
        StartBand pumped = phased.band(StartQuantity.PUMPED);
        // 10 min of 60 as a rectangle, 95 %: 1.96 / sqrt 3 of a sixth each way
        assertEquals(2 * 1.96 / Math.sqrt(3) / 6, (pumped.high() - pumped.low()) / pumped.value(), 0.05);
    }

    @Test
    void sweepGrowsWithTheCold() {
        ColdStartSweep sweep = Simulation.coldStartSweep(
                        Cases.resolve(engine(WARMING) + candidate("One", PACK, "")), ColdStartRequest.AS_STATED)
                .orElseThrow()
                .now();
        List<ColdStartSweep.Row> rows = sweep.candidates().get(0).rows();
        assertTrue(rows.size() > 10);
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i).from() > rows.get(i - 1).from());
            // located within a millisecond
            assertTrue(rows.get(i).openSeconds() <= rows.get(i - 1).openSeconds() + 1e-3);
        }
        assertTrue(rows.get(0).openSeconds() > 0);
    }

    @Test
    void aSweepWithBandsHasTheStartsOfTheSweepWithout() {
        ResolvedCase resolved = Cases.resolve(engine(WARMING) + candidate("One", PACK, ""));
        List<ColdStartSweep.Row> plain = Simulation.coldStartSweep(resolved, ColdStartRequest.AS_STATED)
                .orElseThrow()
                .now()
                .candidates()
                .get(0)
                .rows();
        List<ColdStartSweep.Row> banded = Simulation.bandedColdStartSweep(resolved, ColdStartRequest.AS_STATED)
                .orElseThrow()
                .with(Progress.NONE)
                .orElseThrow()
                .candidates()
                .get(0)
                .rows();
        assertTrue(banded.size() > 5);
        for (ColdStartSweep.Row row : banded) {
            ColdStartSweep.Row same = plain.stream()
                    .filter(one -> Math.abs(one.from() - row.from()) < 1e-9)
                    .findFirst()
                    .orElseThrow();
            // located within a millisecond
            assertEquals(same.openSeconds(), row.openSeconds(), 1e-3);
            StartBand open = row.bands().orElseThrow().openSeconds();
            assertTrue(open.low() <= row.openSeconds() && row.openSeconds() <= open.high());
        }
        StartBand coldest = banded.get(0).bands().orElseThrow().openSeconds();
        assertTrue(coldest.low() < coldest.high());
    }

    @Test
    void aSweepWithBandsCanBeStopped() {
        ResolvedCase resolved = Cases.resolve(engine(WARMING) + candidate("One", PACK, ""));
        assertTrue(Simulation.bandedColdStartSweep(resolved, ColdStartRequest.AS_STATED)
                .orElseThrow()
                .with(new Progress() {
                    @Override
                    public void done(long evaluations, long total) {}

                    @Override
                    public boolean cancelled() {
                        return true;
                    }
                })
                .isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "60 min           | -5 s            | duration",
                "60 min           | 0 s             | duration",
                "state: idle      | speed: -3 rpm   | speed",
                "state: idle      | speed: 0 rpm    | schedules",
                "state: idle      | state: idel     | state",
                "hot: 40 °C       | hot: -20 °C     | from",
                "from: -15 °C     | from: 75 °C     | from",
                "toMetal: 3 kW    | toMetal: -3 kW  | toMetal",
                "oilVolume: 4 L   | notes: none     | thermal",
                "metalMass: 60 kg | notes: none     | thermal"
            })
    void badStartIsAProblemWithPlaceAndRemedy(String good, String bad, String place) {
        String text = engine(WARMING.replace(good, bad)) + candidate("One", PACK, "");
        List<CaseProblem> problems = CaseReader.read("case.yaml", text).problems();
        assertFalse(problems.isEmpty(), bad);
        assertTrue(
                problems.stream()
                        .anyMatch(one -> one.line() > 0
                                && one.field().contains(place)
                                && one.sentence().length() > 40),
                () -> problems.stream().map(CaseProblem::text).toList() + "");
    }

    @Test
    void logThatGoesBackInTimeIsAProblem() {
        String text = engine("""
                schedules:
                  - {name: morning, phases: [{state: idle, duration: 30 min}]}
                trace:
                  points:
                    - {time: 0 s, temperature: -15 °C}
                    - {time: 20 s, temperature: -10 °C}
                    - {time: 10 s, temperature: -5 °C}
                """) + candidate("One", PACK, "");
        CaseProblem problem = CaseReader.read("case.yaml", text).problems().get(0);
        assertTrue(problem.field().contains("points[2].time"), problem.field());
    }

    @Test
    void requestForAHotStartOrAnUnknownScheduleIsRefused() {
        ResolvedCase resolved = Cases.resolve(engine(WARMING) + candidate("One", PACK, ""));
        ColdStartRequest hot = new ColdStartRequest(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(ZERO + 70),
                OptionalDouble.empty());
        assertThrows(
                IllegalArgumentException.class,
                () -> Simulation.coldStart(resolved, hot).orElseThrow().now());
        ColdStartRequest unknown = new ColdStartRequest(
                Optional.empty(),
                Optional.of("evening"),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertThrows(
                IllegalArgumentException.class,
                () -> Simulation.coldStart(resolved, unknown).orElseThrow().now());
    }
}

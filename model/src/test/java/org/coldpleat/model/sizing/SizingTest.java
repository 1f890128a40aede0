package org.coldpleat.model.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Option;
import org.coldpleat.model.sizing.SizingResult.Status;
import org.coldpleat.model.sizing.SizingResult.Variable;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What was sized is written into the case, and the comparison of that case meets the target. */
class SizingTest {
    private static final double ICE = 273.15;

    /** The finders close in on an opening to 1 mK; the size itself is found to 1e-7. */
    private static final double OPENING_TOLERANCE = 0.01;

    /** The case with values in the order opening pressure [kPa], pleats, area factor, medium resistance [1/m]. */
    private static String text(double opening, int pleats, double area, double resistance) {
        return """
                formatVersion: 1
                title: Sizing on a stand
                invented: true
                oil:
                  grade: 5W-30
                  points:
                    - {temperature: 40 °C, kinematic: 63 cSt}
                    - {temperature: 100 °C, kinematic: 10.9 cSt}
                  density: 853 kg/m3
                flowStand:
                  states:
                    - {name: stand, flow: 12 L/min}
                temperatures: {from: -40 °C, to: 120 °C}
                candidates:
                  - name: Pack
                    outside: {present: false}
                    basePlate: {inletHoles: {present: false}, outletBore: {present: false}}
                    antiDrainFlap: {present: false}
                    centerTube: {present: false}
                    bypass: {position: dome, openingPressure: %s kPa, seatDiameter: 15 mm, springRate: 1.8 N/mm, maximumLift: 3 mm}
                    element: {outsideDiameter: 68 mm, insideDiameter: 34 mm, length: %s mm}
                    pleats: {count: %s, height: %s mm, buriedPerEnd: 0 mm}
                    medium:
                      family: blend
                      strip: {length: %s mm, width: %s mm}
                      thickness: 0.7 mm
                      resistance: %s 1/m
                """.formatted(
                        number(opening),
                        number(60 * area),
                        pleats,
                        number(60 * area),
                        number(32.0 * pleats),
                        number(60 * area),
                        number(resistance));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.12g", value);
    }

    private static final String PRESENT = text(110, 55, 1, 3e7);

    static ResolvedCase resolve(String text) {
        Resolution resolution = Simulation.resolve(
                CaseReader.read("sizing.yaml", text).document().orElseThrow());
        return resolution.resolved().orElseThrow();
    }

    static double opening(ResolvedCase resolved) {
        StateResult state =
                Simulation.compare(resolved).now().candidates().get(0).states().get(0);
        return state.openingTemperature().orElseThrow().value();
    }

    static SizingResult size(ResolvedCase resolved, Variable variable, String target) {
        Target read = TargetText.read(target, resolved.stateNames(), resolved.from(), resolved.to())
                .target()
                .orElseThrow();
        SizingRequest request = new SizingRequest(
                resolved.candidateNames().get(0),
                variable,
                read,
                OptionalDouble.of(0.9),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                64,
                7);
        return CaseSizing.run(resolved, request, Progress.NONE).orElseThrow();
    }

    private static Answer best(SizingResult result) {
        return result.conditions().get(0).best();
    }

    @ParameterizedTest
    @CsvSource({"AREA", "OPENING", "RESISTANCE"})
    void whatWasSizedMeetsTheTargetOnceWrittenIntoTheCase(Variable variable) {
        SizingResult result = size(resolve(PRESENT), variable, "never open at -12 °C in stand");
        double value = best(result).value();
        String written = switch (variable) {
            case AREA -> text(110, 55, value / result.present(), 3e7);
            case OPENING -> text(value / 1000, 55, 1, 3e7);
            default -> text(110, 55, 1, value);
        };
        assertEquals(ICE - 12, opening(resolve(written)), OPENING_TOLERANCE);
    }

    @Test
    void fewestPleatsMeetTheTargetAndOneLessDoesNot() {
        SizingResult result = size(resolve(PRESENT), Variable.PLEATS, "never open at -2 °C in stand");
        assertEquals(Status.FOUND, best(result).status());
        int count = (int) best(result).value();
        assertTrue(opening(resolve(text(110, count, 1, 3e7))) <= ICE - 2 + OPENING_TOLERANCE);
        assertTrue(opening(resolve(text(110, count - 1, 1, 3e7))) > ICE - 2);
    }

    @Test
    void thickestGradeMeetsTheTargetAndTheNextThickerDoesNot() {
        SizingResult result = size(resolve(PRESENT), Variable.GRADE, "never open at -2 °C in stand");
        String grade = best(result).label();
        List<Option> options = result.conditions().get(0).options();
        int at = options.stream().map(Option::label).toList().indexOf(grade);
        assertTrue(opening(withGrade(grade)) <= ICE - 2 + OPENING_TOLERANCE);
        assertTrue(opening(withGrade(options.get(at + 1).label())) > ICE - 2);
        assertEquals(opening(withGrade(grade)), best(result).opening(), OPENING_TOLERANCE);
    }

    private static ResolvedCase withGrade(String grade) {
        return resolve(PRESENT.replaceFirst("(?s)  grade: 5W-30.*?density: 853 kg/m3", "  grade: \"" + grade + "\""));
    }

    @ParameterizedTest
    @EnumSource(
            value = Variable.class,
            names = {"AREA", "OPENING", "RESISTANCE"})
    void targetAtThePresentOpeningGivesThePresentValue(Variable variable) {
        ResolvedCase resolved = resolve(PRESENT);
        double now = opening(resolved) - ICE;
        SizingResult result = size(resolved, variable, String.format(Locale.ROOT, "opens below %.9f °C in stand", now));
        // an opening known to 1 mK times the slope of the oil, 0.07 per kelvin
        assertEquals(1, best(result).value() / result.present(), 1e-4);
    }

    @Test
    void colderTargetNeedsMoreAreaAndMoreConfidenceNeedsMoreToo() {
        ResolvedCase resolved = resolve(PRESENT);
        double before = 0;
        for (int degrees : new int[] {0, -5, -10, -15, -20}) {
            SizingResult result = size(resolved, Variable.AREA, "never open at " + degrees + " °C in stand");
            double needed = best(result).value();
            assertTrue(needed > before);
            assertTrue(result.conditions().get(0).sure().get(0).value() > needed);
            before = needed;
        }
    }

    @Test
    void chanceAtTheSureAnswerIsTheOneAskedFor() {
        SizingResult result = size(resolve(PRESENT), Variable.OPENING, "never open at -10 °C in stand");
        // one draw of 64 is the step
        assertEquals(0.9, result.conditions().get(0).sure().get(0).chance(), 1.0 / 64);
    }

    @Test
    void pleatCurveHasAnOptimumAndTellsWhenNoCountWillDo() {
        SizingResult result = size(resolve(PRESENT), Variable.PLEATS, "never open at -35 °C in stand");
        Answer best = best(result);
        assertEquals(Status.NEVER, best.status());
        List<Option> options = result.conditions().get(0).options();
        double least =
                options.stream().mapToDouble(Option::packResistance).min().orElseThrow();
        assertTrue(options.get(0).packResistance() > 1.2 * least);
        assertTrue(options.get(options.size() - 1).packResistance() > 1.2 * least);
        assertTrue(options.stream().anyMatch(one -> one.value() == best.reachable() && one.packResistance() == least));
    }

    @Test
    void shareAndElementTargetsAreMetAtTheirLimits() {
        ResolvedCase resolved = resolve(PRESENT);
        SizingResult sized = size(resolved, Variable.AREA, "share below 5 % at -20 °C in stand");
        ResolvedCase written =
                resolve(text(110, 55, sized.conditions().get(0).best().value() / sized.present(), 3e7));
        assertEquals(
                0.05,
                Simulation.point(written, "Pack", "stand", ICE - 20)
                        .now()
                        .bypass()
                        .orElseThrow()
                        .share(),
                1e-5);
        SizingResult element = size(resolved, Variable.OPENING, "element below 150 kPa at -25 °C in stand");
        ResolvedCase softer = resolve(text(best(element).value() / 1000, 55, 1, 3e7));
        double drop = Simulation.point(softer, "Pack", "stand", ICE - 25).now().elementPressureDrop();
        assertEquals(150e3, drop, 1e-4 * 150e3);
    }
}

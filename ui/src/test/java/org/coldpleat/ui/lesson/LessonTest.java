package org.coldpleat.ui.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.notice.Wording;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Opening;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LessonTest {
    private static final CaseService SERVICE = CaseService.standard();

    private static LessonCase lesson(String demo, Map<String, String> changed) throws Exception {
        Path file = Path.of("../demo-cases", demo, "case.yaml");
        CaseDraft draft =
                CaseDraft.open(file.toString(), Files.readString(file)).draft();
        for (Map.Entry<String, String> one : changed.entrySet()) {
            draft = draft.set(one.getKey(), one.getValue());
        }
        Opening opening = SERVICE.openDraft(file.toString(), draft, Optional.empty());
        assertEquals(List.of(), opening.problems());
        OpenedCase opened = opening.opened().orElseThrow();
        return LessonCase.of(SERVICE, draft, opened);
    }

    private static Map<String, Lesson.Told> told(LessonCase one) {
        Map<String, Lesson.Told> all = new HashMap<>();
        for (LessonStep step : Lesson.STEPS) {
            Lesson.ask(step, one).ifPresent(found -> all.put(step.key(), Lesson.told(step, found, UnitSystem.METRIC)));
        }
        return all;
    }

    @Test
    void everyStepCanBeAskedOfTheTeachingCase() throws Exception {
        assertEquals(
                Lesson.STEPS.size(), told(lesson("half-the-area", Map.of())).size());
    }

    @Test
    void aRangeThatLeavesOutTheColdestNamedTemperatureIsNoHindrance() throws Exception {
        assertTrue(told(lesson("half-the-area", Map.of("temperatures.from", "-5 °C")))
                        .size()
                > 5);
    }

    @ParameterizedTest
    @Tag("nightly")
    @ValueSource(strings = {"clinic-van", "ridge-hut-generator", "harbour-launch"})
    void otherCasesAnswerWhatTheyCanAndLeaveNoGapInTheWords(String demo) throws Exception {
        Map<String, Lesson.Told> all = told(lesson(demo, Map.of()));
        assertTrue(all.size() >= 5, all.keySet()::toString);
        all.values()
                .forEach(one ->
                        assertFalse((one.question() + one.answer() + one.reason()).contains("{"), one::toString));
    }

    @Test
    void anotherCaseGivesOtherNumbersInEveryStep() throws Exception {
        Map<String, Lesson.Told> before = told(lesson("half-the-area", Map.of()));
        Map<String, Lesson.Told> after = told(lesson(
                "half-the-area",
                Map.of(
                        "candidates[1].bypass.openingPressure", "80 kPa",
                        "candidates[1].medium.airTest.velocity", "70 L/m2/s",
                        "engine.reliefValves[0].openingPressure", "500 kPa",
                        "temperatures.named[0].temperature", "-20 °C")));
        assertEquals(before.keySet(), after.keySet());
        before.forEach((key, one) -> assertNotEquals(
                one.question() + one.answer(),
                after.get(key).question() + after.get(key).answer(),
                key));
    }

    @Test
    void halvedAreaAboutDoublesTheDropAtTheSameFlow() throws Exception {
        LessonAnswer found =
                FilterSteps.area(lesson("half-the-area", Map.of()), 0.5).orElseThrow();
        // the medium alone would double it; gaps and folds take part
        assertEquals(2, found.number().orElseThrow(), 0.2);
    }

    @Test
    void aStifferValveOpensColderByAboutTheLogarithmOverTheSlopeOfTheViscosity() throws Exception {
        LessonAnswer found = FilterSteps.setting(lesson("half-the-area", Map.of()), 22.0 / 12)
                .orElseThrow();
        // ln(22/12) = 0.61 over 5 to 7 % a kelvin for such an oil near 15 degrees C
        assertEquals(10.2, found.number().orElseThrow(), 2);
    }

    @Test
    void whatIsTurnedInAStepMovesItsAnswer() throws Exception {
        turn(0.15, 0.3, 0.6);
    }

    @Test
    @Tag("nightly")
    void whatIsTurnedInAStepMovesItsAnswerInManyPlaces() throws Exception {
        turn(0.02, 0.15, 0.3, 0.6, 0.98);
    }

    /** Turns each step to parts of its way; most of the answers are others. */
    private static void turn(double... parts) throws Exception {
        LessonCase one = lesson("half-the-area", Map.of());
        for (LessonStep step : Lesson.STEPS) {
            Turned turned = step.turned().apply(one);
            Set<String> answers = new HashSet<>();
            for (double part : parts) {
                double value = turned.low() + part * (turned.high() - turned.low());
                Lesson.ask(step, one, value)
                        .ifPresent(found -> answers.add(
                                Lesson.told(step, found, UnitSystem.METRIC).answer()));
            }
            assertTrue(answers.size() >= (parts.length + 1) / 2.0, step.key() + ": " + answers);
            assertTrue(answers.stream().noneMatch(answer -> answer.contains("{")), answers::toString);
            assertTrue(Lesson.turned(step, turned, turned.base(), UnitSystem.US).matches(".*\\d.*"), step.key());
        }
    }

    @Test
    void nothingIsAskedBeyondTheEndsOfWhatCanBeTurned() throws Exception {
        LessonCase one = lesson("half-the-area", Map.of());
        LessonStep step = Lesson.STEPS.get(0);
        double beyond = 1.01 * step.turned().apply(one).high();
        assertThrows(IllegalArgumentException.class, () -> Lesson.ask(step, one, beyond));
    }

    @Test
    void thePictureShowsTheCandidateAndItsChangedCopy() throws Exception {
        LessonCase one = lesson("half-the-area", Map.of());
        QuickCurves quickCurves = Lesson.picture(Lesson.STEPS.get(0), one).orElseThrow();
        assertEquals(2, quickCurves.candidates().size());
        assertEquals("Half", quickCurves.candidates().get(0).name());
        assertTrue(quickCurves.candidates().get(1).name().startsWith("Half "));
    }

    @Test
    void aDifferenceOfTemperaturesIsPredictedInTheUnitsAskedFor() throws Exception {
        LessonCase one = lesson("half-the-area", Map.of());
        LessonStep setting = Lesson.STEPS.stream()
                .filter(step -> step.key().equals("setting"))
                .findFirst()
                .orElseThrow();
        LessonAnswer found = Lesson.ask(setting, one).orElseThrow();
        Lesson.Told metric = Lesson.told(setting, found, UnitSystem.METRIC);
        Lesson.Told us = Lesson.told(setting, found, UnitSystem.US);
        assertEquals(1.8 * metric.number().orElseThrow(), us.number().orElseThrow(), 1e-9);
        assertTrue(us.question().contains("How many °F colder"), us.question());
        assertTrue(us.answer().matches("\\d+ °F: from \\d+ °F down to \\d+ °F\\..*"), us.answer());
    }

    @Test
    void wordsHoldNoNumbersOfTheirOwn() {
        Wording words = Wording.beside(Lesson.class, "lesson");
        for (String code : words.codes()) {
            if (!code.endsWith(".equation")) {
                String rest = words.pattern(code).replaceAll("\\{\\d}", "").replace("1/", "");
                assertFalse(rest.matches("(?s).*\\d.*"), code + ": " + rest);
            }
        }
    }

    @Test
    void aPredictionIsHeldAgainstTheNumber() {
        Lesson.Told ten = Lesson.told(Lesson.STEPS.get(0), LessonAnswer.of(10), UnitSystem.METRIC);
        assertTrue(Lesson.verdict(11, ten).contains("Well predicted"));
        assertTrue(Lesson.verdict(3, ten).contains("More"));
        assertTrue(Lesson.verdict(30, ten).contains("Less"));
    }

    @Test
    void flowTestOfTheWholeFilterDoesNotHoldTheMediumBackWhenItsAreaIsTurned() throws Exception {
        LessonCase bare = lesson("half-the-area", Map.of());
        double flow = bare.flow();
        double warm = bare.warmest();
        double drop = bare.atFlow(bare.opened(), flow, warm).elementPressureDrop();
        Map<String, String> rows = new TreeMap<>();
        rows.put(bare.path("tests.flowBench.flapHeld"), "true");
        for (int i = 0; i < 3; i++) {
            double part = (i + 1) / 3.0;
            String row = bare.path("tests.flowBench.rows[" + i + "].");
            rows.put(row + "pressure", String.format(Locale.ROOT, "%.4f kPa", part * drop / 1000));
            rows.put(row + "flow", String.format(Locale.ROOT, "%.4f L/min", part * flow * 60_000));
            rows.put(row + "temperature", String.format(Locale.ROOT, "%.1f °C", warm - 273.15));
        }
        LessonCase tested = lesson("half-the-area", rows);
        double before = tested.atFlow(tested.opened(), flow, warm).elementPressureDrop();
        OpenedCase half = FilterSteps.withPleats(tested, 0.5).orElseThrow();
        double after = tested.atFlow(half, flow, warm).elementPressureDrop();
        assertTrue(after > 1.5 * before, after + " of " + before);
    }

    @Test
    void whatIsTurnedIsDrawnAsACopyBesideTheFilterItselfAndNoOtherFilterIsTouched() throws Exception {
        LessonCase one = lesson("ridge-hut-generator", Map.of());
        QuickCurves both = one.glanceBeside(FilterSteps.withPleats(one, 0.5).orElseThrow(), "turned");
        assertEquals(
                List.of(one.candidate(), one.candidate() + " turned"),
                both.candidates().stream().map(QuickCurves.Candidate::name).toList());
    }
}

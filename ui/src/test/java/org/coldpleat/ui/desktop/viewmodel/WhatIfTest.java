package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Trials;
import org.coldpleat.ui.service.TriedOut;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WhatIfTest {
    private static final Path HUT = Path.of("../demo-cases/ridge-hut-generator/case.yaml");
    private static final int COPPER = 1;
    private static final double COLD = 253.15;

    private final CaseService service = CaseService.standard();
    private CaseBench bench;
    private final Trials trials = new Trials();
    private OpenedCase opened;
    private String state;
    private WhatIf untouched;

    @BeforeEach
    void open() throws IOException {
        bench = CaseBench.open(service, HUT);
        opened = bench.opened().orElseThrow();
        state = opened.states().get(0);
        untouched = whatIf(opened, COPPER);
    }

    private WhatIf whatIf(OpenedCase one, int number) {
        return WhatIf.of(one, number, one.present(one.candidates().get(number)), state);
    }

    private TriedOut out(WhatIf tried) {
        return trials.out(opened, tried.change(), "Copper", state, COLD, tried.inService());
    }

    private Trial after(WhatIf tried) {
        TriedOut out = out(tried);
        assertTrue(out.isFilter());
        return out.after().orElseThrow();
    }

    private WhatIf turned(String key, double factor) {
        return untouched.turn(key, factor * knob(key).base());
    }

    private Knob knob(String key) {
        return untouched.knobs().stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static double warmest(Trial trial) {
        return trial.curve().intervals().stream()
                .mapToDouble(interval -> interval[1])
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private TriedOut tried(OpenedCase its, WhatIf whatIf, int c, Knob knob, double factor) {
        TriedOut out = trials.out(
                its,
                whatIf.turn(knob.key(), factor * knob.base()).change(),
                its.candidates().get(c),
                its.states().get(0),
                COLD,
                0);
        assertTrue(out.isFilter(), its.title() + " " + its.candidates().get(c) + " " + knob.key());
        return out;
    }

    private static double coldDrop(Trial trial) {
        double[] drops = trial.curve().curve().pressureDrop();
        return drops[drops.length / 4];
    }

    @Test
    void everyWantedValueCanBeTried() {
        assertEquals(
                List.of("opening", "area", "thickness", "speed", "hours"),
                untouched.knobs().stream().map(Knob::key).toList());
    }

    @Test
    void nothingMovedIsTheCandidateItself() {
        TriedOut out = out(untouched);
        QuickCurves.Candidate known =
                opened.quickCurves(state).now().candidates().get(COPPER);
        assertArrayEquals(
                known.curve().valveDifference(), out.before().curve().curve().valveDifference());
        assertArrayEquals(
                known.curve().valveDifference(),
                out.after().orElseThrow().curve().curve().valveDifference());
        assertEquals(
                opened.point("Copper", state, COLD).now().bypass().orElseThrow().share(),
                out.before().bypassShare(),
                1e-9);
    }

    @Test
    void everyKnobMovesTheAnswerTheWayItMust() {
        Trial before = out(untouched).before();
        // a valve that opens later, more medium: colder; thicker paper, more oil, dirt: warmer
        assertTrue(warmest(after(turned("opening", 1.3))) < warmest(before));
        assertTrue(warmest(after(turned("area", 1.5))) < warmest(before));
        assertTrue(warmest(after(turned("thickness", 1.5))) > warmest(before));
        assertTrue(warmest(after(turned("speed", 1.5))) > warmest(before));
        assertTrue(warmest(after(untouched.turn(WhatIf.HOURS, 60 * 3600.0))) > warmest(before));
    }

    @Test
    void dirtAfterSomeHoursIsThatOfTheService() {
        // the service tells the temperature of the state it starts in, to 0.01 K
        String start = "cold idle";
        double hours = 60 * 3600.0;
        ServiceResult.Candidate life = opened.service(OptionalDouble.of(hours))
                .map(Run::now)
                .orElseThrow()
                .candidates()
                .get(COPPER);
        Trial trial = trials.out(opened, CandidateChange.NONE, "Copper", start, COLD, hours)
                .after()
                .orElseThrow();
        assertEquals(life.last().openingTemperature(), warmest(trial), 0.02);
    }

    @Test
    void anElementThatIsFullByThenHasNoCurve() {
        WhatIf full = untouched.turn(WhatIf.HOURS, 1500 * 3600.0);
        assertTrue(out(full).after().isEmpty());
        assertTrue(out(full).isFilter());
    }

    @Test
    void keptCandidateIsTheOneThatWasTried() {
        WhatIf tried = turned("opening", 0.8)
                .turn("area", 1.2 * knob("area").base())
                .turn("thickness", 1.1 * knob("thickness").base());
        Trial trial = after(tried);
        int number = bench.keep(COPPER, tried);
        assertEquals("Copper 2", bench.candidates().get(number));
        assertTrue(bench.isUnderstood());
        QuickCurves.Candidate kept = bench.opened()
                .orElseThrow()
                .quickCurves(state)
                .now()
                .candidates()
                .get(number);
        // a sheet is written with nine digits, and a pack about to close answers 20-fold
        assertArrayEquals(trial.curve().curve().valveDifference(), kept.curve().valveDifference(), 1);
        assertEquals(warmest(trial), kept.intervals().get(0)[1], 1e-3);
        bench.undo();
        assertEquals(4, bench.candidates().size());
    }

    @Test
    void hoursAndSpeedAreNotKept() {
        assertFalse(turned("speed", 1.2).turn(WhatIf.HOURS, 3600).canKeep());
        assertTrue(turned("opening", 1.2).canKeep());
    }

    @Test
    void whatWasMovedStaysThroughAnEditButNotOnAnotherCandidate() {
        WhatIf tried = turned("opening", 0.8);
        bench.edit("candidates[1].pleats.count", "41");
        OpenedCase edited = bench.opened().orElseThrow();
        assertEquals(1, tried.onto(whatIf(edited, COPPER)).moved().size());
        assertEquals(0, tried.onto(whatIf(edited, 0)).moved().size());
        assertEquals(0, tried.reset().moved().size());
    }

    @Test
    void valuesBeyondTheSliderCountAsItsEndsAndUnknownKnobsAreRefused() {
        Knob knob = knob("opening");
        assertEquals(knob.high(), untouched.turn("opening", 1e9).value(knob));
        assertEquals(knob.low(), untouched.turn("opening", -1).value(knob));
        assertThrows(IllegalArgumentException.class, () -> untouched.turn("color", 1));
    }

    @Test
    void everyDemoCaseCanBeTried() throws IOException {
        for (String name : List.of("clinic-van", "half-the-area", "harbour-launch", "ridge-hut-generator")) {
            Path file = Path.of("../demo-cases").resolve(name).resolve("case.yaml");
            CaseBench one = CaseBench.open(service, file);
            OpenedCase its = one.opened().orElseThrow();
            for (int c = 0; c < its.candidates().size(); c++) {
                WhatIf whatIf = WhatIf.of(
                        its,
                        c,
                        its.present(its.candidates().get(c)),
                        its.states().get(0));
                for (Knob knob : whatIf.knobs()) {
                    if (!knob.key().equals(WhatIf.HOURS)) {
                        Trial before = tried(its, whatIf, c, knob, 1).before();
                        // a pack about to close answers its thickness 20-fold; tests left in force would jump by more
                        double little = coldDrop(
                                tried(its, whatIf, c, knob, 1.0001).after().orElseThrow());
                        assertEquals(1, little / coldDrop(before), 0.004, name + " " + c + " " + knob.key());
                    }
                }
            }
        }
    }
}

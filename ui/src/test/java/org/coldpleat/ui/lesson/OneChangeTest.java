package org.coldpleat.ui.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coldpleat.model.change.AreaBy;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.steady.DesignState;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.desktop.viewmodel.Knob;
import org.coldpleat.ui.desktop.viewmodel.WhatIf;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Present;
import org.coldpleat.ui.service.Trials;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The same change of a filter has the same answer whoever asks. */
class OneChangeTest {
    private static final double[] FACTORS = {0.6, 1.6};

    /** A kept sheet has nine digits of what the slider stood at, and the rest of the case once more from there [K]. */
    private static final double WRITTEN = 1e-3;

    /** The full search over all temperatures closes in to 1e-4 K, that for the warmest opening alone to 1e-7 K [K]. */
    private static final double CLOSED_IN = 1e-4;

    private final CaseService service = CaseService.standard();

    static Stream<String> demos() {
        return Stream.of("clinic-van", "half-the-area", "harbour-launch");
    }

    @Test
    @Tag("nightly")
    void manyFiltersAnswerAlike() throws IOException {
        slidersSizingAndLessonAnswerAlike("ridge-hut-generator");
        settingsAnswerAsTheOpeningPressureSaid("ridge-hut-generator");
        whatIsKeptOpensAsTheSliderShowed("ridge-hut-generator");
    }

    private static Path file(String demo) {
        return Path.of("../demo-cases", demo, "case.yaml");
    }

    private static ResolvedCase resolved(String demo) {
        return Simulation.resolve(CaseReader.read(file(demo)).document().orElseThrow())
                .resolved()
                .orElseThrow();
    }

    private static double warmest(QuickCurves.Candidate candidate) {
        return candidate.intervals().stream()
                .mapToDouble(interval -> interval[1])
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void slidersSizingAndLessonAnswerAlike(String demo) throws IOException {
        CaseBench bench = CaseBench.open(service, file(demo));
        OpenedCase opened = bench.opened().orElseThrow();
        LessonCase lesson = LessonCase.of(service, bench.draft(), opened);
        ResolvedCase resolved = resolved(demo);
        Trials trials = new Trials();
        for (int c = 0; c < opened.candidates().size(); c++) {
            String name = opened.candidates().get(c);
            Present present = opened.present(name);
            for (String state : opened.states()) {
                WhatIf untouched = WhatIf.of(opened, c, present, state);
                for (Knob knob : untouched.knobs()) {
                    for (double factor : FACTORS) {
                        Optional<CandidateChange> asked = change(knob, factor, present);
                        if (asked.isEmpty()) {
                            continue;
                        }
                        String what = String.join(" ", demo, name, state, knob.key(), Double.toString(factor));
                        WhatIf tried = untouched.turn(knob.key(), factor * knob.base());
                        var out = trials.out(opened, tried.change(), name, state, resolved.from(), 0);
                        Optional<OpenedCase> other = opened.changed(name, asked.get());
                        assertEquals(other.isPresent(), out.isFilter(), what);
                        if (other.isEmpty()) {
                            continue;
                        }
                        double slider = warmest(out.after().orElseThrow().curve());
                        Design design = asked.get().applyTo(resolved, c);
                        QuickCurves.Candidate sized = Simulation.quickCurves(design.in(resolved, c), state)
                                .now()
                                .candidates()
                                .get(c);
                        assertEquals(warmest(sized), slider, 0, what);
                        if (name.equals(lesson.candidate())) {
                            double taught = lesson.opening(
                                            lesson.with(asked.get()).orElseThrow(), state)
                                    .orElse(Double.NEGATIVE_INFINITY);
                            assertEquals(taught, slider, 0, what);
                        }
                        double searched = DesignState.of(
                                        design, resolved.operatingState(state).orElseThrow())
                                .opening(resolved.from(), resolved.to());
                        double there = DesignState.of(
                                        Design.of(design.in(resolved, c), c),
                                        resolved.operatingState(state).orElseThrow())
                                .opening(resolved.from(), resolved.to());
                        assertEquals(there, searched, 0, what);
                        assertEquals(Math.min(resolved.to(), searched), slider, CLOSED_IN, what);
                    }
                }
            }
        }
    }

    private static Optional<CandidateChange> change(Knob knob, double factor, Present present) {
        return switch (knob.key()) {
            case "area" ->
                Optional.of(CandidateChange.NONE.timesArea(
                        AreaBy.TALLER_PLEATS, 1 + (factor * knob.base() / knob.base() - 1) / present.freeShare()));
            case "opening" -> Optional.of(CandidateChange.NONE.timesOpening(factor * knob.base() / knob.base()));
            case "thickness" -> Optional.of(CandidateChange.NONE.timesThickness(factor * knob.base() / knob.base()));
            default -> Optional.empty();
        };
    }

    @ParameterizedTest
    @MethodSource("demos")
    void settingsAnswerAsTheOpeningPressureSaid(String demo) {
        ResolvedCase resolved = resolved(demo);
        int c = 0;
        double now = Design.of(resolved, c).openingPressure().orElseThrow();
        SettingsResult settings = Simulation.settings(
                        resolved, Optional.of(resolved.candidateNames().get(c)), FACTORS[0] * now, FACTORS[1] * now)
                .with(org.coldpleat.model.progress.Progress.NONE)
                .orElseThrow();
        for (SettingsResult.Row one : settings.candidates().get(0).rows()) {
            Design design =
                    CandidateChange.NONE.timesOpening(one.setting() / now).applyTo(resolved, c);
            for (int d = 0; d < resolved.operatingStates().size(); d++) {
                assertEquals(
                        DesignState.of(design, resolved, d).opening(resolved.from(), resolved.to()),
                        one.openings().get(d).value(),
                        0);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void whatIsKeptOpensAsTheSliderShowed(String demo) throws IOException {
        List<String> off = new ArrayList<>();
        for (int c = 0; c < resolved(demo).candidates().size(); c++) {
            CaseBench bench = CaseBench.open(service, file(demo));
            OpenedCase opened = bench.opened().orElseThrow();
            String name = opened.candidates().get(c);
            String state = opened.states().get(0);
            WhatIf untouched = WhatIf.of(opened, c, opened.present(name), state);
            for (Knob knob : untouched.knobs()) {
                for (double factor : knob.kept() ? FACTORS : new double[0]) {
                    WhatIf tried = untouched.turn(knob.key(), factor * knob.base());
                    var out = new Trials().out(opened, tried.change(), name, state, 273.15, 0);
                    if (!out.isFilter()) {
                        continue;
                    }
                    double slider = warmest(out.after().orElseThrow().curve());
                    int number = bench.keep(c, tried);
                    assertTrue(bench.isUnderstood(), () -> bench.problems().toString());
                    double kept = warmest(bench.opened()
                            .orElseThrow()
                            .quickCurves(state)
                            .now()
                            .candidates()
                            .get(number));
                    if (!(kept == slider || Math.abs(kept - slider) <= WRITTEN)) {
                        off.add(String.join(" ", name, knob.key(), factor + ":", slider + "", "kept " + kept));
                    }
                    bench.undo();
                }
            }
        }
        assertEquals(List.of(), off);
    }
}

package org.coldpleat.model.certainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.junit.jupiter.api.Test;

class EngineProfilerTest {
    private static ResolvedCase resolved(String engine) {
        return Simulation.resolve(CaseReader.read("test.yaml", """
                        oil: {grade: 5W-30}
                        engine: {kind: car, displacement: 2.0 L%s}
                        candidates:
                          - name: Spin-on
                            bypass: {position: dome, openingPressure: 12 psi}
                            medium: {family: cellulose, statedArea: 540 cm2}
                        """.formatted(engine))
                        .document()
                        .orElseThrow())
                .resolved()
                .orElseThrow();
    }

    private static EngineProfile profile(String engine) {
        return Simulation.engineProfile(resolved(engine)).orElseThrow().now();
    }

    private static List<String> asked(EngineProfile profile) {
        return profile.questions().stream().map(EngineProfile.Question::about).toList();
    }

    @Test
    void aBareEngineIsAskedForAllFour() {
        EngineProfile profile = profile("");
        assertEquals(4, profile.questions().size());
        double before = 1;
        double all = 0;
        for (EngineProfile.Question question : profile.questions()) {
            assertTrue(question.share() > 0 && question.share() <= before, profile.toString());
            before = question.share();
            all += question.share();
            assertEquals(
                    profile.engineLnSigma() * Math.sqrt(1 - question.share()),
                    question.lnSigmaAfter(),
                    1e-12 * profile.engineLnSigma());
        }
        assertTrue(all < 1, "the rest is what nobody is asked for: " + all);
        assertTrue(profile.engineLnSigma() < profile.lnSigma());
    }

    @Test
    void whatIsStatedIsNotAskedAndNarrows() {
        EngineProfile bare = profile("");
        EngineProfile told = profile(", gallery: {hotReading: {jetBore: 1.6 mm +- 0.05 mm, jetLength: 4 mm}}");
        assertFalse(asked(told).contains("jets"));
        assertEquals(3, told.questions().size());
        assertTrue(told.engineLnSigma() < bare.engineLnSigma());
        double promised = bare.questions().stream()
                .filter(one -> one.about().equals("jets"))
                .findFirst()
                .orElseThrow()
                .lnSigmaAfter();
        // the bore is at the typical value, so that only what is left of its spread keeps it from the promise
        assertEquals(promised, told.engineLnSigma(), 0.02 * promised);
        EngineProfile relief = profile(", reliefValves: [{openingPressure: 4.5 bar}]");
        assertFalse(asked(relief).contains("relief"));
    }

    @Test
    void everyValueIsStatedOrHasSurenessAndSource() {
        for (EngineProfile.Value value : profile(", oilFill: 5 L").values()) {
            assertEquals(value.isStated(), value.source().isEmpty(), value.toString());
            boolean stated =
                    value.path().equals("engine.displacement") || value.path().equals("engine.oilFill");
            boolean filling = value.path().equals("start.thermal.oilVolume")
                    || value.path().equals("duty.sump.volume");
            assertEquals(stated || filling, value.isStated(), value.toString());
        }
    }

    @Test
    void anEngineWithoutKindHasNoProfile() {
        ResolvedCase stand = Simulation.resolve(
                        CaseReader.read("test.yaml", """
                        oil: {grade: 5W-30}
                        flowStand: {states: [{name: cold idle, flow: 5 L/min}]}
                        candidates:
                          - name: Spin-on
                            bypass: {position: dome, openingPressure: 12 psi}
                            medium: {family: cellulose, statedArea: 540 cm2}
                        """).document().orElseThrow())
                .resolved()
                .orElseThrow();
        assertTrue(Simulation.engineProfile(stand).isEmpty());
    }
}

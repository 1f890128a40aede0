package org.coldpleat.model.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.Cases;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.junit.jupiter.api.Test;

/** Cases whose values read well one by one, but cannot be computed: each problem has a place and a remedy. */
class CaseResolverTest {
    private static List<CaseProblem> problems(String text) {
        Resolution resolution =
                Simulation.resolve(CaseReader.read("test.yaml", text).document().orElseThrow());
        assertTrue(resolution.resolved().isEmpty());
        for (CaseProblem problem : resolution.problems()) {
            assertTrue(problem.line() > 0, problem.text());
            assertFalse(problem.sentence().startsWith(problem.code()), "no text for " + problem.code());
        }
        return resolution.problems();
    }

    private static String candidate(String rest) {
        return Cases.stand("2 gpm") + """
                candidates:
                  - name: One
                    bypass: {position: dome, openingPressure: 12 psi}
                """ + rest;
    }

    private static void assertOnly(String code, String text) {
        assertEquals(
                List.of(code), problems(text).stream().map(CaseProblem::code).toList());
    }

    @Test
    void mediumIsNeeded() {
        assertOnly("candidate.mediumMissing", candidate("    pleats: {count: 50}\n"));
    }

    @Test
    void areaNeedsARoute() {
        assertOnly("candidate.areaUnknown", candidate("    medium: {resistance: 3e7 1/m}\n"));
    }

    @Test
    void resistanceNeedsEvidence() {
        assertOnly("candidate.resistanceUnknown", candidate("    medium: {statedArea: 900 cm2}\n"));
    }

    @Test
    void permeabilityNeedsAThickness() {
        assertOnly(
                "candidate.permeabilityNeedsThickness",
                candidate("    medium: {statedArea: 900 cm2, permeability: 2e-11 m2}\n"));
    }

    @Test
    void pleatsNeedRoomForTheMedium() {
        assertOnly("candidate.pleatsTooShallow", candidate("""
                            element: {outsideDiameter: 40 mm, insideDiameter: 36 mm, length: 60 mm}
                            pleats: {count: 40, height: 58 mm}
                            medium: {thickness: 0.8 mm, resistance: 3e7 1/m}
                        """));
    }

    @Test
    void oilFaultsPointAtTheirLine() {
        String text = candidate("    medium: {statedArea: 900 cm2, resistance: 3e7 1/m}\n")
                .replace("density: 841 kg/m3", "density: 700 kg/m3");
        assertOnly("oil.fault.densityOutOfRange", text);
    }

    @Test
    void hotReadingWithAnOpenReliefIsRefused() {
        String text = Cases.OIL + """
                engine:
                  pump: {displacement: 7.2 cm3/rev}
                  reliefValves:
                    - {name: relief, senses: outlet, openingPressure: 250 kPa}
                  gallery:
                    hotReading: {pressure: 300 kPa, temperature: 90 °C, speed: 3000 rpm, bearingShare: 60 %}
                  states:
                    - {name: idle, speed: 900 rpm}
                candidates:
                  - name: One
                    bypass: {position: dome, openingPressure: 12 psi}
                    medium: {statedArea: 900 cm2, resistance: 3e7 1/m}
                """;
        assertOnly("engine.reliefOpenAtReading", text);
    }

    @Test
    void engineThatContradictsItselfIsRefused() {
        String text = Cases.OIL + """
                engine:
                  pump: {displacement: 7.2 cm3/rev}
                  gallery:
                    passageResistance: 1e13 1/m3
                    hotReading: {pressure: 300 kPa, temperature: 90 °C, speed: 3000 rpm, bearingShare: 60 %}
                  states:
                    - {name: idle, speed: 900 rpm}
                candidates:
                  - name: One
                    bypass: {position: dome, openingPressure: 12 psi}
                    medium: {statedArea: 900 cm2, resistance: 3e7 1/m}
                """;
        assertOnly("engine.contradiction", text);
    }
}

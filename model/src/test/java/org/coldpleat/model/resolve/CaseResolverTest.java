package org.coldpleat.model.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.Cases;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilBlend;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.grade.SaeGrade;
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
    void anotherOilPouredInMakesABlend() {
        String plain = candidate("    medium: {statedArea: 900 cm2, resistance: 3e7 1/m}\n");
        String mixed = plain.replace("density: 841 kg/m3", "density: 841 kg/m3\n  topUp: {grade: 15W-40, share: 20 %}");
        Oil before = Cases.resolve(plain).shared().oil().oil();
        ResolvedCase resolved = Cases.resolve(mixed);
        Oil after = resolved.shared().oil().oil();
        Oil added = OilResolver.resolve(
                        OilSpec.ofGrade("15W-40", SaeGrade.parse("15W-40").orElseThrow()))
                .orThrow();
        double expected = new OilBlend(before, added, 0.2, 0).oil().kinematicViscosity(273.15);
        assertEquals(expected, after.kinematicViscosity(273.15), 1e-12);
        assertTrue(after.kinematicViscosity(273.15) > 1.1 * before.kinematicViscosity(273.15));
        assertTrue(
                resolved.oilNotices().stream().anyMatch(notice -> notice.code().equals("oil.blended")));
    }

    @Test
    void faultsOfTheOilPouredInPointAtItsLine() {
        String text = candidate("    medium: {statedArea: 900 cm2, resistance: 3e7 1/m}\n")
                .replace("density: 841 kg/m3", "density: 841 kg/m3\n  topUp: {grade: SAE 45, share: 20 %}");
        assertOnly("oil.fault.nothingKnown", text);
        assertEquals("oil.topUp", problems(text).get(0).field());
    }

    @Test
    void theBaseOfAnOilDecidesItsColdEnd() {
        String plain = candidate("    medium: {statedArea: 900 cm2, resistance: 3e7 1/m}\n")
                .replace("grade: 0W-20", "grade: ISO VG 46");
        Oil unknown = Cases.resolve(plain).shared().oil().oil();
        String stated = plain.replace("density: 841", "base: synthetic\n  density: 841");
        Oil synthetic = Cases.resolve(stated).shared().oil().oil();
        assertEquals(-0.08, Math.log(synthetic.kinematicViscosity(273.15) / unknown.kinematicViscosity(273.15)), 1e-9);
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

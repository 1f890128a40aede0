package org.coldpleat.model.resolve.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.reading.CaseReading;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EngineCompletionTest {
    private static CaseDocument read(String engine) {
        CaseReading reading = CaseReader.read("test.yaml", """
                formatVersion: 1
                title: Test
                oil: {grade: 5W-30}
                """ + engine + """
                candidates:
                  - name: One
                    bypass: {position: dome, openingPressure: 12 psi}
                    medium: {family: cellulose, statedArea: 540 cm2}
                """);
        return reading.document()
                .orElseThrow(() -> new AssertionError(reading.problems().toString()));
    }

    private static Section completed(String engine) {
        return EngineCompletion.complete(read(engine)).document().root();
    }

    private static double value(Section root, String... keys) {
        Section at = root;
        for (int i = 0; i < keys.length - 1; i++) {
            at = at.section(keys[i]).orElseThrow();
        }
        return at.quantity(keys[keys.length - 1]).orElseThrow().value();
    }

    @ParameterizedTest
    @ValueSource(strings = {"utility", "motorcycle", "car", "lightTruck", "heavy", "generator", "marine"})
    void everyKindIsCompleteWithItsDisplacementAlone(String kind) {
        Section root = completed("engine: {kind: " + kind + ", displacement: 2 L}\n");
        Section engine = root.section("engine").orElseThrow();
        assertEquals(4, engine.sections("states").size());
        assertTrue(value(root, "engine", "pump", "displacement") > 0);
        assertTrue(engine.section("gallery").orElseThrow().section("hotReading").isPresent());
        assertTrue(root.section("start").isPresent() && root.section("duty").isPresent());
    }

    @Test
    void whatIsStatedStays() {
        Section root = completed("""
                engine:
                  kind: car
                  displacement: 2 L
                  oilFill: 5 L
                  pump: {displacement: 12 cm3/rev}
                  reliefValves: [{name: main, senses: gallery, openingPressure: 5 bar}]
                  gallery: {hotReading: {pressure: 1.4 bar, speed: 800 rpm}, film: {dissipation: 0.5 m3}}
                  states: [{name: idle, speed: 900 rpm}]
                """);
        assertEquals(12e-6, value(root, "engine", "pump", "displacement"), 1e-15);
        assertEquals(
                5e5,
                root.section("engine")
                        .orElseThrow()
                        .sections("reliefValves")
                        .get(0)
                        .quantity("openingPressure")
                        .orElseThrow()
                        .value(),
                1e-6);
        assertEquals(1.4e5, value(root, "engine", "gallery", "hotReading", "pressure"), 1e-6);
        assertEquals(0.5, value(root, "engine", "gallery", "film", "dissipation"), 1e-12);
        assertEquals(5e-3, value(root, "start", "thermal", "oilVolume"), 1e-12);
        assertEquals(5e-3, value(root, "duty", "sump", "volume"), 1e-12);
        assertEquals(1, root.section("engine").orElseThrow().sections("states").size());
        // what is left out beside it still comes: 2.0e-12 m3 at 8 cm3/rev
        assertEquals(2e-12 * Math.pow(1.5, 0.67), value(root, "engine", "pump", "slip"), 1e-20);
    }

    @Test
    void aCaseWithoutAKindIsLeftAlone() {
        CaseDocument document = read("""
                engine:
                  pump: {displacement: 12 cm3/rev}
                  gallery: {hotReading: {pressure: 2 bar, temperature: 90 C, speed: 2000 rpm}}
                  states: [{name: idle, speed: 800 rpm}]
                """);
        assertSame(document, EngineCompletion.complete(document).document());
    }

    @Test
    void rollingBearingsHaveNoFilms() {
        Section root = completed("engine: {kind: motorcycle, displacement: 0.11 L, crankshaft: rolling}\n");
        Section film = root.section("engine")
                .flatMap(engine -> engine.section("gallery"))
                .flatMap(gallery -> gallery.section("film"))
                .orElseThrow();
        assertEquals(false, film.flag("present").orElseThrow());
    }

    @Test
    void theLeastThatAManualAllowsIsNotAReading() {
        String with =
                "engine: {kind: car, displacement: 2 L, gallery: {hotReading: {pressure: %s, speed: %s, minimum: true}}}\n";
        // 150 kPa at 70, 405 at 300 kPa and 3000 rpm
        assertEquals(
                150e3,
                value(completed(with.formatted("70 kPa", "750 rpm")), "engine", "gallery", "hotReading", "pressure"),
                1);
        assertEquals(
                405e3,
                value(completed(with.formatted("300 kPa", "3000 rpm")), "engine", "gallery", "hotReading", "pressure"),
                1);
        assertEquals(
                287.5e3,
                value(completed(with.formatted("250 kPa", "750 rpm")), "engine", "gallery", "hotReading", "pressure"),
                1);
    }

    @Test
    void aListOfTwoReadingsIsAReadingAndItsSecond() {
        Section root = completed("""
                engine:
                  kind: car
                  displacement: 2 L
                  gallery:
                    hotReading:
                      - {pressure: 1.5 bar, temperature: 95 C, speed: 750 rpm}
                      - {pressure: 3.2 bar, speed: 1800 rpm}
                """);
        assertEquals(3.2e5, value(root, "engine", "gallery", "hotReading", "second", "pressure"), 1e-6);
        assertEquals(1.5e5, value(root, "engine", "gallery", "hotReading", "pressure"), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"utility", "motorcycle", "car", "lightTruck", "heavy", "generator", "marine"})
    void everyValueThatStandsInHasItsRow(String kind) {
        EngineCompletion.Completed completed =
                EngineCompletion.complete(read("engine: {kind: " + kind + ", displacement: 2 L}\n"));
        Set<String> typical = new TreeSet<>();
        completed.document().quantities().forEach((path, value) -> {
            boolean condition = path.startsWith("start.schedules") || path.endsWith("oilToMetalSpeed");
            if (value.provenance() == Provenance.TYPICAL && !condition) {
                typical.add(path);
            }
        });
        assertEquals(typical, new TreeSet<>(completed.standIns().keySet()));
        assertTrue(typical.size() > 30, typical::toString);
    }

    @Test
    void whatIsStatedHasNoRow() {
        EngineCompletion.Completed completed = EngineCompletion.complete(read("""
                engine:
                  kind: car
                  displacement: 2 L
                  oilFill: 5 L
                  reliefValves: [{openingPressure: 5 bar}]
                  gallery: {hotReading: {jetBore: 1.2 mm}}
                """));
        assertEquals(
                "outlet",
                completed
                        .document()
                        .root()
                        .section("engine")
                        .orElseThrow()
                        .sections("reliefValves")
                        .get(0)
                        .choice("senses")
                        .orElseThrow());
        Set<String> rows = completed.standIns().keySet();
        assertFalse(rows.contains("engine.reliefValves[0].openingPressure"));
        assertFalse(rows.contains("engine.gallery.hotReading.jetBore"));
        assertFalse(rows.contains("start.thermal.oilVolume") || rows.contains("duty.sump.volume"));
        assertTrue(rows.contains("engine.reliefValves[0].override"));
        assertTrue(rows.contains("engine.gallery.hotReading.pressure"));
    }
}

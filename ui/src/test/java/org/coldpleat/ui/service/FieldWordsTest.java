package org.coldpleat.ui.service;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldWordsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            basePlate.inletHoles.count              | Base plate, inlet holes, number
            candidates[3].medium.airTest.velocity   | Medium, air test on the label, air velocity through the sheet
            oil.points[1].kinematic                 | Oil, data sheet point 2, kinematic viscosity
            engine.gallery.hotReading.bearingShare  | Engine, oil gallery, warm pressure reading, share through bearings
            candidates[0].medium.combinedResistance | Medium, combined resistance
            apparentResistance                      | Apparent resistance
            """)
    void aPathReadsLikeTheSheet(String path, String words) {
        assertEquals(words, FieldWords.of(path));
    }
}

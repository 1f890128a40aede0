package org.coldpleat.model.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.junit.jupiter.api.Test;

class GalleryTest {
    private static final GroovedBearing MAIN = new GroovedBearing(60e-3, 30e-6, 8e-3, 0.6);
    private static final Fluid OIL = new Fluid(0.01, 860);

    @Test
    void bearingPassesOilThroughBothLands() {
        // two slots 188.5 mm wide, 8 mm long, 30 um high, 1.54 times that for the eccentric journal: 0.2939 L/min
        double perLand = Math.PI * 60e-3 * 27e-15 / (12 * 8e-3);
        assertEquals(2 * perLand * (1 + 1.5 * 0.36), MAIN.conductance(), 1e-25);
        assertEquals(0.2939, MAIN.conductance() * 300e3 / 0.01 * 60e3, 5e-5);
    }

    @Test
    void journalPumpsWithItsEccentricityAndDragsWithItsRadius() {
        // pi D c L e = 188.4956 mm x 30 um x 20 mm x 0.6
        assertEquals(67.858e-9, MAIN.sideFlow(20e-3), 1e-12);
        // 2 pi R^3 x 16 mm/30 um = 2 pi x 27e-6 x 533.33
        assertEquals(0.0904779, MAIN.friction(), 1e-7);
    }

    @Test
    void galleryOfBearingsAddsAllOfThemSideBySide() {
        GroovedBearing rod = new GroovedBearing(50e-3, 25e-6, 7e-3, 0.5);
        Gallery gallery = new GalleryFromBearings(
                        2e7,
                        List.of(
                                new GalleryFromBearings.BearingGroup(MAIN, 5, 20e-3),
                                new GalleryFromBearings.BearingGroup(rod, 4, 0)),
                        List.of(),
                        12,
                        0.4)
                .resolve();
        Bearings all = gallery.bearings();
        assertEquals(2e7, gallery.seriesResistance());
        assertEquals(5 * MAIN.conductance() + 4 * rod.conductance(), all.conductance(), 1e-25);
        assertEquals(5 * MAIN.sideFlow(20e-3), all.sideFlow(), 1e-20);
        assertEquals(5 * MAIN.friction() + 4 * rod.friction(), all.friction(), 1e-12);
        assertEquals(12, all.metalConductance());
        assertEquals(0.4, all.filmPosition());
    }

    @Test
    void bearingsSideBySideAddWhatTheyPassPumpDragAndLose() {
        Bearings sum = new Bearings(1e-12, 2e-8, 0.3, 5, 0.5).plus(new Bearings(3e-12, 1e-8, 0.1, 2, 0.9));
        assertEquals(4e-12, sum.conductance(), 1e-27);
        assertEquals(3e-8, sum.sideFlow(), 1e-22);
        assertEquals(0.4, sum.friction(), 1e-15);
        assertEquals(7, sum.metalConductance());
        assertEquals(0.5, sum.filmPosition());
    }

    @Test
    void filmsAreOnlyWarmWhereOilPassesAndTheFilmLiesBehindTheInlet() {
        assertTrue(new Bearings(1e-12, 0, 0, 0, 0.5).isWarm());
        assertTrue(new Bearings(0, 1e-8, 0, 0, 0.5).isWarm());
        assertFalse(new Bearings(0, 0, 1, 5, 0.5).isWarm());
        assertFalse(new Bearings(1e-12, 1e-8, 1, 5, 0).isWarm());
    }

    @Test
    void creepingResistanceIsThePassageBeforeAllWaysOut() {
        // ways out: 1e-11 m3 over a film twice as thick, and two jets of 4e11 1/m3: 5e-12 + 5e-12 = 1e-11 m3
        Restrictor jets = new Restrictor(new AdditiveLaw(4e11, 1e9), 2, 150e3);
        Gallery gallery = new Gallery(3e10, Bearings.isothermal(1e-11), List.of(jets));
        assertEquals(1.3e11, gallery.creepingResistance(2), 1e-3);
    }

    @Test
    void laminarGalleryIsOneResistance() {
        assertEquals(1.5e9, Gallery.laminar(1.5e9).creepingResistance(1), 1e-6);
        assertThrows(IllegalArgumentException.class, () -> Gallery.laminar(0));
    }

    @Test
    void jetsShareThePressureAboveTheirCheckValve() {
        Restrictor jets = new Restrictor(AdditiveLaw.laminarOnly(4e11), 3, 100e3);
        assertEquals(0, jets.flowRate(99e3, OIL));
        assertEquals(3 * 50e3 / (0.01 * 4e11), jets.flowRate(150e3, OIL), 1e-18);
        // the corner ends 0.1 % above the crack pressure; half way up it passes 3/8 of its width
        assertEquals(3 * 37.5 / (0.01 * 4e11), jets.flowRate(100_050, OIL), 1e-18);
        assertEquals(3 * 100 / (0.01 * 4e11), jets.flowRate(100_100, OIL), 1e-18);
    }

    @Test
    void slopeOfJetsIsTheDerivativeOfTheirFlow() {
        for (double crack : new double[] {0, 100e3}) {
            Restrictor jets = new Restrictor(new AdditiveLaw(4e10, 1e13), 3, crack);
            for (double p : new double[] {99e3, 100_030, 100_080, 150e3, 600e3}) {
                double numeric = (jets.flowRate(p + 0.01, OIL) - jets.flowRate(p - 0.01, OIL)) / 0.02;
                assertEquals(numeric, jets.passage(p, OIL).slope(), 1e-5 * numeric);
            }
        }
    }

    @Test
    void jetsWithoutCheckValvePassOilFromZeroPressureOn() {
        Restrictor jets = new Restrictor(AdditiveLaw.laminarOnly(4e11), 3, 0);
        assertEquals(3 / (0.01 * 4e11), jets.passage(0, OIL).slope(), 1e-20);
        assertEquals(3 * 10 / (0.01 * 4e11), jets.flowRate(10, OIL), 1e-20);
    }
}

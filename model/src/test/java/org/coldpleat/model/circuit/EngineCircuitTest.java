package org.coldpleat.model.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.circuit.Relief.Sensing;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.flow.Openings;
import org.junit.jupiter.api.Test;

class EngineCircuitTest {
    /** An invented oil: 90 mPa s at 40 C, falling by 3.5 % to 8 % per kelvin. */
    static final Lubricant OIL = new Lubricant() {
        @Override
        public Fluid at(double temperature) {
            double nu = Math.exp(Math.exp(20.5 - 3.3 * Math.log(temperature)) - 1) * 1e-6;
            return new Fluid(870 * nu, 870);
        }

        @Override
        public double heatCapacity(double temperature) {
            return 1900;
        }
    };

    private static final Restrictor JETS = new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHORT_TUBE), 2, 0);
    private static final Bearings BEARINGS = new Bearings(1 / 2e11, 2e-8, 0.3, 5, 0.5);

    private static EngineCircuit circuit(Pump pump, Bearings bearings, Relief... reliefs) {
        return new EngineCircuit(
                pump, List.of(reliefs), AdditiveLaw.laminarOnly(5e8), new Gallery(1e8, bearings, List.of(JETS)), OIL);
    }

    @Test
    void balancesHoldOverTemperatureAndSpeed() {
        EngineCircuit circuit = circuit(
                Pump.unlimited(8e-6, 2e-12),
                BEARINGS,
                Relief.linear(Sensing.GALLERY, 350e3, 2e8),
                Relief.ideal(Sensing.PUMP_OUTLET, 700e3));
        for (double t = 233; t < 423; t += 5) {
            for (double n = 3; n < 80; n *= 1.7) {
                OperatingPoint point = circuit.solve(n, t);
                assertEquals(SolveStatus.CONVERGED, point.status());
                assertTrue(point.residuals().largest() < 1e-9, point::toString);
                assertTrue(point.pumpPressure() >= point.galleryPressure() && point.bearingPressure() >= 0);
            }
        }
    }

    @Test
    void warmStartChangesTimeNotAnswer() {
        EngineCircuit circuit =
                circuit(Pump.unlimited(8e-6, 2e-12), BEARINGS, Relief.linear(Sensing.PUMP_OUTLET, 400e3, 2e8));
        OperatingPoint near = circuit.solve(20, 270);
        OperatingPoint cold = circuit.solve(20, 265);
        OperatingPoint warm = circuit.solve(20, 265, Optional.of(near));
        assertEquals(cold.pumpPressure(), warm.pumpPressure(), 1e-9 * cold.pumpPressure());
        assertTrue(warm.steps() <= cold.steps());
    }

    @Test
    void pumpAtRestMovesNothingAndSaysSo() {
        OperatingPoint point = circuit(Pump.unlimited(8e-6, 2e-12), BEARINGS).solve(0, 300);
        assertEquals(SolveStatus.NO_FLOW, point.status());
        assertEquals("circuit.noFlow", point.notices().get(0).code());
    }

    @Test
    void suctionLimitCutsColdDelivery() {
        Pump pump = new Pump(8e-6, 2e-12, 4e8, 90e3);
        Relief relief = Relief.ideal(Sensing.PUMP_OUTLET, 400e3);
        OperatingPoint cold = circuit(pump, Bearings.isothermal(5e-12), relief).solve(30, 240);
        assertTrue(cold.suctionLimited());
        double mu = OIL.at(240).dynamicViscosity();
        assertEquals(90e3 / (mu * 4e8), cold.pumpFlow(), 1e-12 * cold.pumpFlow());
        assertFalse(
                circuit(pump, Bearings.isothermal(5e-12), relief).solve(30, 350).suctionLimited());
    }

    @Test
    void journalsThatAskForMoreThanArrivesStarveTheGallery() {
        Bearings thirsty = new Bearings(5e-12, 1e-5, 0.1, 0, 0.5);
        OperatingPoint point = circuit(Pump.unlimited(8e-6, 2e-12), thirsty).solve(30, 300);
        assertTrue(point.galleryStarved());
        assertEquals(SolveStatus.CONVERGED, point.status());
        assertEquals(0, point.bearingPressure());
        assertTrue(point.residuals().largest() < 1e-9, point::toString);
        assertEquals("circuit.starvedGallery", point.notices().get(0).code());
    }

    @Test
    void dissipationWarmsTheFilmsAndMeetsItsBalance() {
        EngineCircuit circuit = circuit(Pump.unlimited(8e-6, 2e-12), BEARINGS);
        OperatingPoint point = circuit.solve(30, 320);
        double film = point.filmTemperature();
        assertTrue(film > 320.5);
        double omega = 2 * Math.PI * 30;
        double heat =
                OIL.at(film).dynamicViscosity() * 0.3 * omega * omega + point.bearingPressure() * point.bearingFlow();
        assertEquals(heat, warming(point.bearingFlow()) * (film - 320), 1e-9 * heat);
        assertEquals(5 * (film - 320), point.filmToMetal(), 1e-9 * heat);
        double pressed = point.bearingPressure() / 2e11 / OIL.at(film).dynamicViscosity();
        assertEquals(pressed + 2e-8 * 30, point.bearingFlow(), 1e-9 * point.bearingFlow());
    }

    @Test
    void hotReadingIsReproducedByTheGalleryMadeFromIt() {
        Pump pump = Pump.unlimited(8e-6, 2e-12);
        GalleryFromHotReading reading = new GalleryFromHotReading(
                250e3, 363, 30, 2.1e-4, 0.6, JETS.one(), 100e3, 1e7, 0, new Bearings(0, 2e-8, 0.3, 5, 0.5));
        GalleryFromHotReading.Resolved resolved = reading.resolve(OIL);
        assertTrue(resolved.laminarShare() > 0 && resolved.laminarShare() < 1);
        // a pump without filter and slip that delivers the stated flow must show the stated gauge pressure
        EngineCircuit circuit = new EngineCircuit(
                Pump.unlimited(2.1e-4 / 30, 0), List.of(), AdditiveLaw.laminarOnly(1), resolved.gallery(), OIL);
        OperatingPoint point = circuit.solve(30, 363);
        assertEquals(250e3, point.galleryPressure(), 1e-8 * 250e3);
        assertEquals(0.6, point.bearingFlow() / point.filterFlow(), 1e-8);
        assertTrue(pump.delivery(30, 250e3, OIL.at(363).dynamicViscosity()) > 0);
    }

    @Test
    void sharesOfFlowAreNotSharesOfDrop() {
        // jets 1.5 x 3 mm sharp-edged at 300 kPa, 12 mPa s, 860 kg/m3: worked by hand to two digits
        double[] flowShare = {0.9, 0.7, 0.5, 0.3};
        double[] dropShare = {0.27, 0.11, 0.07, 0.05};
        Lubricant hot = new Lubricant() {
            @Override
            public Fluid at(double temperature) {
                return new Fluid(0.012, 860);
            }

            @Override
            public double heatCapacity(double temperature) {
                return 2000;
            }
        };
        for (int i = 0; i < flowShare.length; i++) {
            GalleryFromHotReading reading = new GalleryFromHotReading(
                    300e3, 363, 20, 2e-4, flowShare[i], Openings.hole(1.5e-3, 3e-3, 0.61), 0, 0, 0, Bearings.NONE);
            assertEquals(dropShare[i], reading.resolve(hot).laminarShare(), 0.005);
        }
    }

    @Test
    void starvedFilmIsWarmedByTheOilThatArrives() {
        Bearings thirsty = new Bearings(5e-12, 1e-5, 2, 5, 0.5);
        OperatingPoint point = circuit(Pump.unlimited(8e-6, 2e-12), thirsty).solve(30, 300);
        double film = point.filmTemperature();
        double omega = 2 * Math.PI * 30;
        double heat = OIL.at(film).dynamicViscosity() * 2 * omega * omega;
        assertEquals(heat, warming(point.filterFlow()) * (film - 300), 1e-9 * heat);
        assertTrue(film > 301);
    }

    /** Heat [W] that warms films by a kelvin at a flow, with 5 W/K to metal as warm as the sump: rho cp q/h. */
    private static double warming(double flow) {
        double capacityFlow = 870 * 1900 * flow;
        double n = 5 / capacityFlow;
        return capacityFlow * n / (1 + Math.expm1(-n) / n);
    }

    private static GalleryFromHotReading reading(double bearingShare, Bearings habits) {
        return new GalleryFromHotReading(
                250e3, 363, 30, 2.1e-4, bearingShare, AdditiveLaw.laminarOnly(3e12), 0, 1e8, 0, habits);
    }

    @Test
    void readingOfCoolBearingsAndLaminarJetsSplitsTheConductance() {
        // 250 kPa less the passage's mu 1e8 2.1e-4; all of it laminar, so all of the hot drop counts when cold
        double mu = OIL.at(363).dynamicViscosity();
        double pressure = 250e3 - mu * 1e8 * 2.1e-4;
        GalleryFromHotReading.Resolved resolved = reading(0.6, Bearings.NONE).resolve(OIL);
        assertEquals(0.6 * 2.1e-4 * mu / pressure, resolved.gallery().bearings().conductance(), 1e-24);
        double jets = 0.4 * 2.1e-4 * mu * 3e12 / pressure;
        assertEquals(jets, resolved.gallery().restrictors().get(0).count(), 1e-10 * jets);
        assertEquals(1, resolved.laminarShare(), 1e-12);
        assertEquals(1, resolved.filmViscosityRatio());
        assertEquals(5e8 * mu * 2.1e-4 / 250e3, resolved.resistanceRatio(5e8), 1e-12);
    }

    @Test
    void galleryOfBearingsAloneHasNoJetsAndOfJetsAloneNoBearings() {
        assertEquals(List.of(), reading(1, Bearings.NONE).resolve(OIL).gallery().restrictors());
        assertEquals(
                Bearings.NONE,
                reading(0, new Bearings(0, 2e-6, 0.3, 5, 0.5))
                        .resolve(OIL)
                        .gallery()
                        .bearings());
    }

    @Test
    void readingInWhichJournalsPumpMoreThanTheirShareIsRefused() {
        // 0.6 x 2.1e-4 m3/s are 4.2e-6 m3 a revolution
        Bearings most = new Bearings(0, 4.1e-6, 0, 0, 0);
        double mu = OIL.at(363).dynamicViscosity();
        double pressed = (1.26e-4 - 1.23e-4) * mu / (250e3 - mu * 1e8 * 2.1e-4);
        assertEquals(
                pressed, reading(0.6, most).resolve(OIL).gallery().bearings().conductance(), 1e-9 * pressed);
        Bearings more = new Bearings(0, 4.3e-6, 0, 0, 0);
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class, () -> reading(0.6, more).resolve(OIL));
        assertTrue(thrown.getMessage().contains("side flow"), thrown.getMessage());
    }

    @Test
    void filmOfAHotReadingCarriesOffItsHeat() {
        Bearings habits = new Bearings(0, 2e-8, 0.3, 5, 0.5);
        GalleryFromHotReading.Resolved resolved = reading(0.6, habits).resolve(OIL);
        double mu = OIL.at(363).dynamicViscosity();
        double pressure = 250e3 - mu * 1e8 * 2.1e-4;
        double omega = 2 * Math.PI * 30;
        // the film that its heat warms, found by halving
        double low = 363;
        double high = 500;
        for (int i = 0; i < 80; i++) {
            double film = (low + high) / 2;
            double heat = OIL.at(film).dynamicViscosity() * 0.3 * omega * omega + pressure * 1.26e-4;
            if (heat > warming(1.26e-4) * (film - 363)) {
                low = film;
            } else {
                high = film;
            }
        }
        double expected = OIL.at(low).dynamicViscosity() / mu;
        assertEquals(expected, resolved.filmViscosityRatio(), 1e-10 * expected);
    }

    @Test
    void galleryNeedsAWayOut() {
        assertThrows(IllegalArgumentException.class, () -> new Gallery(0, Bearings.NONE, List.of()));
    }

    @Test
    void flowStandGivesTheDropOfTheFilter() {
        FlowStand stand = new FlowStand(AdditiveLaw.laminarOnly(5e8), OIL);
        double mu = OIL.at(300).dynamicViscosity();
        assertEquals(5e8 * 1e-4 * mu, stand.solve(1e-4, 300).filterDrop(), 1e-9);
        assertEquals(SolveStatus.NO_FLOW, stand.solve(0, 300).status());
    }
}

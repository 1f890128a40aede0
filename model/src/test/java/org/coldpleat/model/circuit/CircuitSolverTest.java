package org.coldpleat.model.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.circuit.Relief.Sensing;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Shown;
import org.junit.jupiter.api.Test;

/**
 * Circuits of laminar parts in an oil of 0.5 Pa s: pump 8 cm3/rev at 30 rev/s with slip 2e-11 m3, filter 5e8, passage 2e8,
 * bearings 1e-9 m3. All of it is linear and worked by hand.
 */
class CircuitSolverTest {
    private static final double MU = 0.5;
    private static final double PASSAGE = 2e8;
    private static final double FILTER = 5e8;
    private static final double BEARINGS = 1e-9;
    private static final double SLIP = 2e-11;
    private static final double SPEED = 30;
    private static final double DISPLACED = 2.4e-4;

    private static final Lubricant OIL = new Lubricant() {
        @Override
        public Fluid at(double temperature) {
            return new Fluid(MU, 870);
        }

        @Override
        public double heatCapacity(double temperature) {
            return 1900;
        }
    };

    private static final AdditiveLaw FILTER_LAW = AdditiveLaw.laminarOnly(FILTER);
    private static final Bearings COOL = Bearings.isothermal(BEARINGS);

    private static EngineCircuit circuit(Gallery gallery, PressureDropLaw filter, Relief... reliefs) {
        return new EngineCircuit(Pump.unlimited(8e-6, SLIP), List.of(reliefs), filter, gallery, OIL);
    }

    private static OperatingPoint solve(Relief... reliefs) {
        return circuit(new Gallery(PASSAGE, COOL, List.of()), FILTER_LAW, reliefs)
                .solve(SPEED, 300);
    }

    @Test
    void pressuresAddUpAlongAShutCircuit() {
        // resistances 5e8 + 2e8 + 1e9; flow 2.4e-4/(1 + 2e-11 x 1.7e9)
        double flow = DISPLACED / 1.034;
        OperatingPoint point = solve();
        assertEquals(flow, point.filterFlow(), 1e-12 * flow);
        assertEquals(flow, point.pumpFlow(), 1e-12 * flow);
        assertEquals(flow, point.bearingFlow(), 1e-12 * flow);
        assertEquals(MU * 1e9 * flow, point.bearingPressure(), 1e-6);
        assertEquals(MU * 1.2e9 * flow, point.galleryPressure(), 1e-6);
        assertEquals(MU * FILTER * flow, point.filterDrop(), 1e-6);
        assertEquals(MU * 1.7e9 * flow, point.pumpPressure(), 1e-6);
        assertTrue(point.residuals().largest() < 1e-12, point::toString);
    }

    @Test
    void linearCircuitTakesOneStepAndOneMoreForAReliefThatOpensOnTheWay() {
        assertTrue(solve().steps() <= 2);
        assertTrue(solve(Relief.linear(Sensing.PUMP_OUTLET, 100e3, 2e8)).steps() <= 3);
        assertTrue(solve(Relief.linear(Sensing.GALLERY, 60e3, 2e8)).steps() <= 3);
        Restrictor jets = new Restrictor(AdditiveLaw.laminarOnly(4e9), 2, 0);
        EngineCircuit jetted = circuit(new Gallery(PASSAGE, COOL, List.of(jets)), FILTER_LAW);
        assertTrue(jetted.solve(SPEED, 300).steps() <= 2);
        assertTrue(solve(Relief.ideal(Sensing.PUMP_OUTLET, 100e3)).steps() <= 2);
        assertTrue(solve(Relief.ideal(Sensing.GALLERY, 60e3)).steps() <= 2);
    }

    @Test
    void idealReliefHoldsThePumpPressureAndDumpsTheSurplus() {
        OperatingPoint point = solve(Relief.ideal(Sensing.PUMP_OUTLET, 100e3));
        double flow = 100e3 / (MU * 1.7e9);
        assertEquals(100e3, point.pumpPressure(), 1e-7);
        assertEquals(flow, point.filterFlow(), 1e-12 * flow);
        double surplus = DISPLACED - SLIP * 100e3 / MU - flow;
        assertEquals(surplus, point.reliefFlow(), 1e-11 * surplus);
        assertTrue(point.residuals().largest() < 1e-11, point::toString);
    }

    @Test
    void idealReliefOfTheGalleryHoldsThePressureBehindTheFilter() {
        OperatingPoint point = solve(Relief.ideal(Sensing.GALLERY, 60e3));
        double flow = 60e3 / (MU * 1.2e9);
        assertEquals(60e3, point.galleryPressure(), 1e-7);
        assertEquals(60e3 * 1.7 / 1.2, point.pumpPressure(), 1e-6);
        double surplus = DISPLACED - SLIP * point.pumpPressure() / MU - flow;
        assertEquals(surplus, point.reliefFlow(), 1e-11 * surplus);
    }

    @Test
    void reliefThatIsNotReachedStaysShut() {
        OperatingPoint point = solve(Relief.ideal(Sensing.PUMP_OUTLET, 300e3));
        assertEquals(solve().pumpPressure(), point.pumpPressure(), 1e-7);
        assertEquals(List.of(0.0), point.reliefFlows());
    }

    @Test
    void theReliefThatIsFurthestOverItsSettingHolds() {
        Relief outlet = Relief.ideal(Sensing.PUMP_OUTLET, 100e3);
        Relief gallery = Relief.ideal(Sensing.GALLERY, 60e3);
        // 60 kPa in the gallery are 85 kPa at the pump: the gallery's relief holds, wherever it stands in the list
        OperatingPoint first = solve(gallery, outlet);
        OperatingPoint last = solve(outlet, gallery);
        assertEquals(60e3, first.galleryPressure(), 1e-6);
        assertEquals(60e3, last.galleryPressure(), 1e-6);
        assertTrue(first.reliefFlows().get(0) > 1e-5 && first.reliefFlows().get(1) == 0);
        assertTrue(last.reliefFlows().get(1) > 1e-5 && last.reliefFlows().get(0) == 0);
    }

    @Test
    void firstOfTwoEqualReliefsHolds() {
        Relief one = Relief.ideal(Sensing.PUMP_OUTLET, 100e3);
        OperatingPoint point = solve(one, one);
        assertTrue(point.reliefFlows().get(0) > 1e-5);
        assertEquals(0, point.reliefFlows().get(1));
    }

    @Test
    void overrideLetsThePressureRiseWithTheDumpedFlow() {
        // p/(MU R) + (p - 100 kPa)/m + lam p/MU = D n: one equation for the pump pressure
        double override = 2e8;
        double pressure = (DISPLACED + 100e3 / override) / (1 / (MU * 1.7e9) + 1 / override + SLIP / MU);
        OperatingPoint point = solve(Relief.linear(Sensing.PUMP_OUTLET, 100e3, override));
        assertEquals(pressure, point.pumpPressure(), 1e-6);
        assertEquals((pressure - 100e3) / override, point.reliefFlow(), 1e-15);
    }

    @Test
    void overrideOfTheGalleryFollowsThePressureBehindTheFilter() {
        // as above in the gallery pressure g, with the pump pressure 1.7/1.2 g
        double override = 2e8;
        double gallery = (DISPLACED + 60e3 / override) / (1 / (MU * 1.2e9) + 1 / override + SLIP / MU * 1.7 / 1.2);
        OperatingPoint point = solve(Relief.linear(Sensing.GALLERY, 60e3, override));
        assertEquals(gallery, point.galleryPressure(), 1e-6);
        assertEquals((gallery - 60e3) / override, point.reliefFlow(), 1e-15);
        assertTrue(point.residuals().largest() < 1e-11, point::toString);
    }

    @Test
    void reliefWithALawOfItsOwnDumpsWhatTheLawSays() {
        Relief own = Relief.valve(Sensing.PUMP_OUTLET, 100e3, new LinearOverride(100e3, 2e8));
        assertEquals(
                solve(Relief.linear(Sensing.PUMP_OUTLET, 100e3, 2e8)).pumpPressure(),
                solve(own).pumpPressure(),
                1e-7);
        assertEquals(100e3, own.setPressure());
    }

    @Test
    void jetsAndBearingsShareTheGallery() {
        // two jets of 4e9 1/m3 beside the bearings of 1e9: together 1/1.5e-9
        Restrictor jets = new Restrictor(AdditiveLaw.laminarOnly(4e9), 2, 0);
        OperatingPoint point =
                circuit(new Gallery(PASSAGE, COOL, List.of(jets)), FILTER_LAW).solve(SPEED, 300);
        double flow = DISPLACED / (1 + SLIP * (7e8 + 1 / 1.5e-9));
        assertEquals(flow, point.filterFlow(), 1e-12 * flow);
        assertEquals(flow / 3, point.restrictorFlow(), 1e-12 * flow);
        assertEquals(2 * flow / 3, point.bearingFlow(), 1e-12 * flow);
        assertTrue(point.residuals().largest() < 1e-12, point::toString);
    }

    @Test
    void starvedJournalsTakeAllThatArrivesWithoutPressure() {
        // 1e-5 m3/rev asked for, 8e-6 displaced: only filter and passage resist
        Bearings thirsty = new Bearings(BEARINGS, 1e-5, 0, 0, 0);
        OperatingPoint point =
                circuit(new Gallery(PASSAGE, thirsty, List.of()), FILTER_LAW).solve(SPEED, 300);
        double flow = DISPLACED / (1 + SLIP * 7e8);
        assertTrue(point.galleryStarved());
        assertEquals(flow, point.filterFlow(), 1e-12 * flow);
        assertEquals(flow, point.sideFlow(), 1e-12 * flow);
        assertEquals(0, point.bearingPressure());
        assertEquals(MU * 7e8 * flow, point.pumpPressure(), 1e-6);
        assertTrue(point.residuals().largest() < 1e-11, point::toString);
        assertTrue(point.steps() <= 3);
    }

    @Test
    void reliefStarvesTheJournalsWhenItOpensBelowTheirDemand() {
        // the journals ask for 7e-6 x 30; 40 kPa push 40e3/(MU 7e8) through filter and passage
        Bearings thirsty = new Bearings(BEARINGS, 7e-6, 0, 0, 0);
        OperatingPoint point = circuit(
                        new Gallery(PASSAGE, thirsty, List.of()), FILTER_LAW, Relief.ideal(Sensing.PUMP_OUTLET, 40e3))
                .solve(SPEED, 300);
        assertTrue(point.galleryStarved());
        assertEquals(40e3 / (MU * 7e8), point.filterFlow(), 1e-12);
        assertEquals(40e3, point.pumpPressure(), 1e-6);
    }

    @Test
    void journalsThatGetEnoughPumpTheirSideFlow() {
        // side flow s passes without pressure: p1 = (q - s) MU/C and pump pressure MU (7e8 q + 1e9 (q - s))
        double side = 1e-6 * SPEED;
        Bearings pumping = new Bearings(BEARINGS, 1e-6, 0, 0, 0);
        OperatingPoint point =
                circuit(new Gallery(PASSAGE, pumping, List.of()), FILTER_LAW).solve(SPEED, 300);
        double flow = (DISPLACED + SLIP * 1e9 * side) / (1 + SLIP * 1.7e9);
        assertFalse(point.galleryStarved());
        assertEquals(flow, point.filterFlow(), 1e-12 * flow);
        assertEquals(side, point.sideFlow(), 1e-18);
        assertEquals(MU * 1e9 * (flow - side), point.bearingPressure(), 1e-6);
    }

    @Test
    void startFromAStarvedPointFindsTheSameAnswer() {
        Bearings thirsty = new Bearings(BEARINGS, 1e-5, 0, 0, 0);
        EngineCircuit starved = circuit(new Gallery(PASSAGE, thirsty, List.of()), FILTER_LAW);
        EngineCircuit plain = circuit(new Gallery(PASSAGE, COOL, List.of()), FILTER_LAW);
        Optional<OperatingPoint> dry = Optional.of(starved.solve(SPEED, 300));
        Optional<OperatingPoint> wet = Optional.of(plain.solve(SPEED, 300));
        assertEquals(wet.get().pumpPressure(), plain.solve(SPEED, 300, dry).pumpPressure(), 1e-6);
        OperatingPoint again = starved.solve(SPEED, 300, wet);
        assertTrue(again.galleryStarved());
        assertEquals(dry.get().pumpPressure(), again.pumpPressure(), 1e-6);
        assertEquals(dry.get().pumpPressure(), starved.solve(SPEED, 300, dry).pumpPressure(), 1e-6);
    }

    @Test
    void startFromTheAnswerItselfTakesOneLook() {
        EngineCircuit circuit = circuit(new Gallery(PASSAGE, COOL, List.of()), FILTER_LAW);
        OperatingPoint known = circuit.solve(SPEED, 300);
        assertEquals(1, circuit.solve(SPEED, 300, Optional.of(known)).steps());
    }

    @Test
    void pointThatIsNoAnswerIsNoStart() {
        PressureDropLaw broken = new PressureDropLaw() {
            @Override
            public double pressureDrop(double flowRate, Fluid fluid) {
                return Double.NaN;
            }

            @Override
            public double slope(double flowRate, Fluid fluid) {
                return Double.NaN;
            }
        };
        EngineCircuit circuit = circuit(new Gallery(PASSAGE, COOL, List.of()), FILTER_LAW);
        OperatingPoint bad = circuit.withFilter(broken).solve(SPEED, 300);
        assertEquals(SolveStatus.NOT_FINITE, bad.status());
        assertEquals(List.of(Shown.word("NOT_FINITE")), bad.notices().get(0).values());
        OperatingPoint cold = circuit.solve(SPEED, 300);
        assertEquals(cold, circuit.solve(SPEED, 300, Optional.of(bad)));
        assertEquals(
                SolveStatus.NOT_FINITE,
                new FlowStand(broken, OIL).solve(1e-4, 300).status());
    }

    @Test
    void slipTakesAllOfAPumpThatTurnsTooSlowly() {
        // 0.001 rev/s: flow 8e-9/1.034
        OperatingPoint point =
                circuit(new Gallery(PASSAGE, COOL, List.of()), FILTER_LAW).solve(1e-3, 300);
        assertEquals(8e-9 / 1.034, point.filterFlow(), 1e-19);
    }

    @Test
    void standStillPointIsAnAnswerAndABrokenOneIsNot() {
        assertTrue(SolveStatus.NO_FLOW.isAnswer() && SolveStatus.CONVERGED.isAnswer());
        assertFalse(SolveStatus.NOT_FINITE.isAnswer() || SolveStatus.MAX_ITERATIONS.isAnswer());
        assertFalse(SolveStatus.NO_STEADY_STATE.isAnswer());
    }

    @Test
    void allReliefsTogetherDumpTheSumOfTheirFlows() {
        OperatingPoint point =
                solve(Relief.linear(Sensing.PUMP_OUTLET, 50e3, 1e9), Relief.linear(Sensing.PUMP_OUTLET, 60e3, 2e9));
        double first = (point.pumpPressure() - 50e3) / 1e9;
        double second = (point.pumpPressure() - 60e3) / 2e9;
        assertEquals(first + second, point.reliefFlow(), 1e-16);
        assertEquals(point.pumpFlow() - point.filterFlow(), point.reliefFlow(), 1e-15);
    }

    @Test
    void readerIsToldOfSuctionAndHotFilms() {
        EngineCircuit limited = new EngineCircuit(
                new Pump(8e-6, 0, 4e9, 90e3), List.of(), FILTER_LAW, new Gallery(PASSAGE, COOL, List.of()), OIL);
        OperatingPoint point = limited.solve(SPEED, 300);
        assertEquals(
                List.of("circuit.suctionLimited"),
                point.notices().stream().map(Notice::code).toList());
        assertEquals(List.of(), solve().notices());
        // an oil that does not thin and a friction without end: no film below 600 K carries the heat off
        Bearings hot = new Bearings(BEARINGS, 0, 1e3, 0, 0.5);
        OperatingPoint burnt =
                circuit(new Gallery(PASSAGE, hot, List.of()), FILTER_LAW).solve(SPEED, 300);
        assertEquals(
                List.of("circuit.filmTooHot"),
                burnt.notices().stream().map(Notice::code).toList());
        assertTrue(burnt.residuals().largest() > 0.1);
    }
}

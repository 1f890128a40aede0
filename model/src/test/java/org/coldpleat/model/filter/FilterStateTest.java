package org.coldpleat.model.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.notice.Notice;
import org.junit.jupiter.api.Test;

class FilterStateTest {
    private static final ValveState NO_VALVE = ValveState.of(Optional.empty(), 0, 50e3);

    private static ValveState valve(double flow, double difference) {
        return new ValveState(true, flow, difference, 100e3, 150e3, 0);
    }

    /** Pack 40 kPa and outlet 10 kPa; the total drop and the medium flow as stated. */
    private static FilterState state(
            boolean converged, double total, double drop, double medium, ValveState element, ValveState block) {
        Map<FilterPart, Double> parts = new EnumMap<>(FilterPart.class);
        parts.put(FilterPart.PLEAT_PACK, 40e3);
        parts.put(FilterPart.OUTLET_BORE, 10e3);
        return new FilterState(converged, total, drop, 1e9, parts, medium, element, block);
    }

    private static FilterState state(double total, double medium, ValveState element, ValveState block) {
        return state(true, total, 50e3, medium, element, block);
    }

    private static List<String> codes(FilterState state) {
        return state.notices().stream().map(Notice::code).toList();
    }

    @Test
    void bothValvesShareTheUnfilteredOil() {
        FilterState state = state(4e-4, 1e-4, valve(1e-4, 110e3), valve(2e-4, 120e3));
        assertEquals(3e-4, state.bypassFlow(), 1e-18);
        assertEquals(0.75, state.bypassShare(), 1e-15);
    }

    @Test
    void nothingIsBypassedAtNoFlow() {
        assertEquals(0, state(0, 0, valve(0, 0), NO_VALVE).bypassShare());
    }

    @Test
    void packIsTheElement() {
        assertEquals(40e3, state(1e-4, 1e-4, NO_VALVE, NO_VALVE).elementDrop());
    }

    @Test
    void valveNearestToItsOpeningLeads() {
        ValveState near = valve(0, 90e3);
        ValveState far = valve(0, 30e3);
        assertSame(near, state(1e-4, 1e-4, near, far).leadingValve());
        assertSame(near, state(1e-4, 1e-4, far, near).leadingValve());
        assertSame(near, state(1e-4, 1e-4, near, NO_VALVE).leadingValve());
    }

    @Test
    void elementValveLeadsWhenBothAreAsNear() {
        ValveState element = valve(1e-9, 90e3);
        assertSame(element, state(1e-4, 1e-4, element, valve(2e-9, 90e3)).leadingValve());
    }

    @Test
    void anyOpenValveIsAnOpenBypass() {
        assertTrue(state(1e-4, 1e-4, valve(0, 101e3), NO_VALVE).isBypassOpen());
        assertTrue(state(1e-4, 1e-4, NO_VALVE, valve(0, 101e3)).isBypassOpen());
        assertFalse(state(1e-4, 1e-4, valve(0, 99e3), valve(0, 99e3)).isBypassOpen());
    }

    @Test
    void quietStateHasNothingToSay() {
        assertEquals(List.of(), codes(state(1e-4, 1e-4, valve(0, 99e3), NO_VALVE)));
    }

    @Test
    void splitThatWasNotFoundIsSaid() {
        FilterState state = state(false, 1e-4, 50e3, 1e-4, valve(0, 99e3), NO_VALVE);
        assertEquals(List.of("filter.notConverged"), codes(state));
    }

    @Test
    void backwardFlowIsSaidInLitersPerMinute() {
        // 1e-4 m3/s are 6 L/min
        Notice notice = state(-1e-4, -1e-4, valve(0, -50e3), NO_VALVE).notices().get(0);
        assertEquals("filter.flowsBackward", notice.code());
        assertEquals("6.0 L/min", notice.values().get(0).text());
        assertEquals(List.of(), codes(state(0, 0, valve(0, 0), NO_VALVE)));
    }

    @Test
    void eachFullyLiftedValveIsSaidWithItsDifference() {
        FilterState state = state(4e-4, 1e-4, valve(1e-4, 160e3), valve(2e-4, 170e3));
        assertEquals(List.of("valve.liftedFully", "valve.liftedFully"), codes(state));
        assertEquals("160 kPa", state.notices().get(0).values().get(0).text());
        assertEquals("170 kPa", state.notices().get(1).values().get(0).text());
    }

    @Test
    void filterWithoutAnyValveIsSaidWithTheDropOfItsPack() {
        Notice notice = state(1e-4, 1e-4, NO_VALVE, NO_VALVE).notices().get(0);
        assertEquals("filter.noBypassValve", notice.code());
        assertEquals("40 kPa", notice.values().get(0).text());
        assertEquals(List.of(), codes(state(1e-4, 1e-4, NO_VALVE, valve(0, 50e3))));
    }

    @Test
    void lostFlowIsCountedAgainstTheTotal() {
        assertEquals(
                0.25, state(4e-4, 1e-4, valve(1e-4, 110e3), valve(1e-4, 110e3)).flowResidual(), 1e-15);
        assertEquals(0, state(0, 0, NO_VALVE, NO_VALVE).flowResidual());
    }

    @Test
    void missingDropIsCountedAgainstTheTotal() {
        assertEquals(0, state(true, 1e-4, 50e3, 1e-4, NO_VALVE, NO_VALVE).pressureResidual());
        assertEquals(0.5, state(true, 1e-4, 100e3, 1e-4, NO_VALVE, NO_VALVE).pressureResidual(), 1e-15);
    }

    @Test
    void valveOpensAboveItsOpeningPressureAndIsFullyLiftedAtFullLift() {
        assertFalse(valve(0, 100e3).isOpen());
        assertTrue(valve(0, 100.001e3).isOpen());
        assertFalse(valve(0, 149.999e3).isLiftedFully());
        assertTrue(valve(0, 150e3).isLiftedFully());
        assertEquals(1.2, valve(0, 120e3).ratio(), 1e-15);
    }

    @Test
    void stateOfAValveHoldsItsShareOfTheLift() {
        // 11 mm seat, 1.2 N/mm, 3 mm: 20 kPa over the opening lift pi/4 x 121 mm2 x 20 kPa/1.2 = 1.58389 mm
        SpringValve disc = SpringValve.disc(100e3, 11e-3, 1200, 3e-3, 0);
        ValveState state = ValveState.of(Optional.of(disc), 1e-4, 120e3);
        assertTrue(state.present());
        assertEquals(1.58389 / 3, state.liftShare(), 2e-6);
        assertEquals(disc.fullLiftPressure(), state.fullLiftPressure());
    }

    @Test
    void missingValveNeverOpens() {
        ValveState none = ValveState.of(Optional.empty(), 0, 1e9);
        assertFalse(none.present() || none.isOpen() || none.isLiftedFully());
        assertEquals(0, none.ratio());
        assertEquals(0, none.liftShare());
    }
}

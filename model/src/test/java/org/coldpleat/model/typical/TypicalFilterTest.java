package org.coldpleat.model.typical;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TypicalFilterTest {
    static Set<String> quantities() {
        return TypicalFilter.quantities();
    }

    @ParameterizedTest
    @MethodSource("quantities")
    void everyRowHasAValueABandAndASource(String quantity) {
        TypicalFilter row = TypicalFilter.of(quantity);
        assertTrue(row.value() > 0, quantity);
        assertTrue(row.band() > 1, quantity + " has a band of " + row.band());
        assertTrue(Set.of("a", "b", "c", "d").contains(row.sureness()), quantity);
        assertFalse(row.source().isBlank(), quantity);
        Measured measured = row.scales() ? row.times(2) : row.measured();
        assertEquals(Provenance.TYPICAL, measured.provenance());
        assertEquals(row.scales() ? 2 * row.value() : row.value(), measured.value(), 1e-12 * row.value());
        // the ends of the 95 % band are the value over and times the factor
        assertEquals(row.band(), measured.high() / measured.value(), 1e-12 * row.band());
        assertEquals(row.band(), measured.value() / measured.low(), 1e-12 * row.band());
    }

    @Test
    void unitsOfTheTableAreRead() {
        assertEquals(14 * 6894.757, TypicalFilter.of("bypass.openingPressure").value(), 0.1);
        assertEquals(0.0028, TypicalFilter.of("bypass.maximumLift").value(), 1e-15);
        assertEquals(4e6, TypicalFilter.of("antiDrainFlap.modulus").value(), 1e-6);
    }

    @Test
    void whatIsAMultipleNeedsTheOther() {
        TypicalFilter bore = TypicalFilter.of("centerTube.insideDiameter");
        assertThrows(IllegalArgumentException.class, bore::measured);
        assertEquals(0.034, bore.behind(0.91 * 0.034).value(), 1e-15);
        assertThrows(
                IllegalArgumentException.class,
                () -> TypicalFilter.of("bypass.seatDiameter").times(1));
        assertThrows(IllegalArgumentException.class, () -> TypicalFilter.of("bypass.color"));
    }

    @Test
    void aLimitMovesTheValueAndKeepsTheBand() {
        TypicalFilter buried = TypicalFilter.of("pleats.buriedPerEnd");
        assertEquals(0.001, buried.atMost(0.001).value());
        assertEquals(0.002, buried.atMost(1).value());
        assertEquals(Math.log(buried.band()) / COVERAGE_95, buried.atMost(0.001).halfWidth(), 1e-15);
    }
}

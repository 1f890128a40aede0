package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.valve.SpringValve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Disc valve of 12 mm seat, 1.5 N/mm, 100 kPa, 3 mm lift, Cd 0.62, 860 kg/m3: values derived here by hand. */
class SpringValveTest {
    private static final SpringValve VALVE = SpringValve.disc(100e3, 12e-3, 1500, 3e-3, 0);

    /** Tolerance: half the last printed digit, plus 0.05 % for the rounded corners. */
    @ParameterizedTest
    @CsvSource({
        "24, 110, 16.7", "24, 120, 35.1", "24, 150, 78.4", "24, 200, 90.5",
        "500, 110, 13.1", "500, 120, 31.2", "500, 150, 74.3", "500, 200, 86.4",
        "3000, 110, 4.93", "3000, 120, 17.6", "3000, 150, 56.4", "3000, 200, 68.0"
    })
    void flowMatchesTheWorkedTable(double kinematic, double kiloPascal, double literPerMinute) {
        Fluid oil = new Fluid(kinematic * 1e-6 * 860, 860);
        double flow = VALVE.flowRate(kiloPascal * 1e3, oil) * 60e3;
        double halfDigit = literPerMinute < 10 ? 0.005 : 0.05;
        assertEquals(literPerMinute, flow, halfDigit + 5e-4 * literPerMinute);
    }

    @Test
    void flowMatchesTheTwoFourDigitValues() {
        Fluid oil = new Fluid(24e-6 * 860, 860);
        assertEquals(16.70, VALVE.flowRate(110e3, oil) * 60e3, 1e-3 * 16.70);
        assertEquals(78.37, VALVE.flowRate(150e3, oil) * 60e3, 1e-3 * 78.37);
    }

    /** pc + k x/A = 139.79 kPa; five digits. */
    @Test
    void fullLiftPressure() {
        assertEquals(139.79e3, VALVE.fullLiftPressure(), 1e-3 * 139.79e3);
        assertEquals(100e3 + 1500 * 3e-3 / VALVE.seatArea(), VALVE.fullLiftPressure(), 1e-6);
    }

    /** pi d x = pi d^2/4 at x = d/4. */
    @Test
    void curtainEqualsTheBoreAtAQuarterOfTheDiameter() {
        assertEquals(VALVE.seatArea(), VALVE.curtainArea(3e-3), 1e-12 * VALVE.seatArea());
        assertTrue(VALVE.curtainArea(2.9e-3) < VALVE.seatArea());
    }
}

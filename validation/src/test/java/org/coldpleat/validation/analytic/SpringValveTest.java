package org.coldpleat.validation.analytic;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Disc valve of 12 mm seat, 1.5 N/mm, 100 kPa, 3 mm lift, Cd 0.62, 860 kg/m3: values derived here by hand. */
class SpringValveTest {
    private static final String SOURCE = "worked by hand, derived here";

    private static final SpringValve VALVE = SpringValve.disc(100e3, 12e-3, 1500, 3e-3, 0);

    /** Tolerance: half the last printed digit. None of the states lies in a rounded corner. */
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
        check("flow of a disc valve")
                .at(kinematic + " mm2/s, " + kiloPascal + " kPa")
                .expected(literPerMinute, "L/min")
                .computed(flow)
                .within(halfDigit, "half the last digit");
    }

    @Test
    void flowMatchesTheTwoFourDigitValues() {
        Fluid oil = new Fluid(24e-6 * 860, 860);
        check("flow of a disc valve at 24 mm2/s, 110 kPa")
                .expected(16.70, "L/min")
                .computed(VALVE.flowRate(110e3, oil) * 60e3)
                .within(0.005, "half the last digit");
        check("flow of a disc valve at 24 mm2/s, 150 kPa")
                .expected(78.37, "L/min")
                .computed(VALVE.flowRate(150e3, oil) * 60e3)
                .within(0.005, "half the last digit");
    }

    /** pc + k x/A = 139.79 kPa; five digits. */
    @Test
    void fullLiftPressure() {
        check("pressure at full lift")
                .expected(139.79e3, "Pa")
                .computed(VALVE.fullLiftPressure())
                .within(5, "half the last digit");
        check("pressure at full lift, formula")
                .expected(100e3 + 1500 * 3e-3 / (Math.PI * 6e-3 * 6e-3), "Pa")
                .computed(VALVE.fullLiftPressure())
                .within(1e-6, "arithmetic");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OPENINGS, quantity, SOURCE);
    }
}

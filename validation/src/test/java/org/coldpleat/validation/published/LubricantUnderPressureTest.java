package org.coldpleat.validation.published;

import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.BarusPressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Data set Lubricant of Bates and Watts 1988, Nonlinear Regression Analysis and Its Applications. */
class LubricantUnderPressureTest {
    private static final String SOURCE =
            "Bates, Watts 1988, Nonlinear Regression Analysis and Its Applications, data set Lubricant";

    private static final String TABLE = "/org/coldpleat/validation/oil/lubricant_bates_watts.csv";
    private static final double ATMOSPHERE = 101325;

    /** Through 100 and 210 F at ambient pressure; the hotter value is the mean of two readings. */
    private static final WaltherCurve LINE =
            WaltherCurve.through(310.928, Math.exp(4.29865) * 1e-6, 372.039, Math.exp((3.38099 + 3.37417) / 2) * 1e-6);

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void lineMeetsTheAmbientRowsAndStaysBelowTheRestUnderPressure(double atm, double celsius, double lnViscosity) {
        double line = Math.log(LINE.kinematicViscosity(celsius + 273.15) * 1e6);
        if (atm == 1) {
            check("ln viscosity at ambient pressure, line through 100 and 210 °F")
                    .at(celsius + " °C")
                    .expected(lnViscosity, "1")
                    .computed(line)
                    .within(0.01, "repeats of one state differ by 0.1 to 0.7 %, the line errs by 0.1 to 0.3 %");
        } else {
            check("measured ln viscosity under pressure less the ambient line")
                    .at(atm + " atm, " + celsius + " °C")
                    .computed(lnViscosity - line, "1")
                    .above(0, "sign only: pressure thickens oil");
        }
    }

    @ParameterizedTest
    @CsvSource({
        // celsius, ln nu at 1 atm, atm, ln nu there, coefficient [1/GPa] from these rows (arithmetic checked, derived
        // here)
        "25, 4.54223, 422.941, 5.29782, 17.7",
        "37.78, 4.29865, 191.084, 4.6606, 18.8",
        "25, 4.54223, 805.5, 5.82452, 15.7"
    })
    void pressureCoefficientComesOutAsKnown(double celsius, double ln1, double atm, double ln2, double perGigapascal) {
        BarusPressure law = BarusPressure.through(ATMOSPHERE, Math.exp(ln1), atm * ATMOSPHERE, Math.exp(ln2));
        check("pressure coefficient between two rows, quotient derived here")
                .at(atm + " atm, " + celsius + " °C")
                .expected(perGigapascal, "1/GPa")
                .computed(1e9 * law.coefficient())
                .withinRelative(0.03, "repeats of ln viscosity differ by 0.007 in 0.36 to 1.28");
    }

    @Test
    void lawFromALowPressureOverstatesAHighOne() {
        // known shape: the coefficient falls with pressure, so the law is a secant, for 0 C from 363 to 741 atm
        BarusPressure law =
                BarusPressure.through(ATMOSPHERE, Math.exp(5.10655), 363.166 * ATMOSPHERE, Math.exp(5.79057));
        double predicted = 5.10655 + Math.log(law.factor((740.803 - 1) * ATMOSPHERE));
        check("ln viscosity at 0 °C and 741 atm, law through 1 and 363 atm")
                .computed(predicted, "1")
                .between(
                        6.38705,
                        6.38705 * 1.03,
                        "known shape: the coefficient falls with pressure, a secant overstates");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

package org.coldpleat.validation.published;

import org.coldpleat.model.oil.MpmsDensity;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.BarusPressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Squalane, reference correlation of Mylona et al. 2014, J. Phys. Chem. Ref. Data 43, 013104. */
class SqualaneTest {
    private static final String SOURCE = "Mylona et al. 2014, J. Phys. Chem. Ref. Data 43, 013104, table 9";

    private static final String TABLE = "/org/coldpleat/validation/oil/squalane_mylona_2014.csv";

    /** Through the rows of 60 and 100 C. */
    private static final WaltherCurve LINE = WaltherCurve.through(333.15, 7.86e-3 / 783.0, 373.15, 3.08e-3 / 757.4);

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void lineThroughTwoRowsMeetsTheRowsNearby(double celsius, double density, double viscosity) {
        double ratio = LINE.kinematicViscosity(celsius + 273.15) / (viscosity * 1e-3 / density);
        if (celsius <= 120) {
            check("viscosity of squalane to 120 °C, line through 60 and 100 °C")
                    .at(celsius + " °C")
                    .expected(viscosity, "mPa s")
                    .computed(ratio * viscosity)
                    .withinRelative(0.02, "3 % uncertainty of the reference, less what both fit rows share with it");
        } else {
            check("viscosity of squalane above 120 °C, line through 60 and 100 °C")
                    .at(celsius + " °C")
                    .expected(viscosity, "mPa s")
                    .computed(ratio * viscosity)
                    .knownMiss(-0.025, 0.025, "the line falls short above its points, by 4.8 % at 160 °C");
        }
    }

    @Test
    void lineReachesRoomTemperature() {
        ExternalCheck.of(Topic.OIL, "viscosity of squalane at 25 °C, line through 60 and 100 °C", "from memory")
                .expected(28.2, "mPa s")
                .computed(LINE.kinematicViscosity(298.15) * 805 * 1e3)
                .withinRelative(0.03, "uncertainty of the reference correlation");
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void densityFrom15DegreesMeetsTheTable(double celsius, double density, double viscosity) {
        // 811.5 kg/m3 at 15 C: repository of the reference data, citing a web database
        double computed = new MpmsDensity(811.5).density(celsius + 273.15);
        ExternalCheck.Compared both = check("density of squalane from its value at 15 °C")
                .at(celsius + " °C")
                .expected(density, "kg/m3")
                .computed(computed);
        if (celsius <= 150) {
            both.withinRelative(1e-3, "0.06 % of the table and the law's own 0.05 %");
        } else {
            both.knownMiss(-1.2e-3, 2e-4, "outside the range of the law");
        }
    }

    @Test
    void pressureCoefficientFollowsFromTheTable() {
        // Mylona et al. 2014, Table 9: 60 C, 0.1 MPa 7.86 mPa s, 100 MPa 37.57 mPa s
        BarusPressure law = BarusPressure.through(0.1e6, 7.86, 100e6, 37.57);
        check("pressure coefficient between 0.1 and 100 MPa at 60 °C, quotient derived here")
                .expected(15.66, "1/GPa")
                .computed(1e9 * law.coefficient())
                .withinRelative(0.005, "rounding of 7.86 mPa s");
        check("viscosity factor of 1 MPa at 60 °C, derived here")
                .expected(1.0158, "1")
                .computed(law.factor(1e6))
                .within(1e-4, "last digit");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OIL, quantity, SOURCE);
    }
}

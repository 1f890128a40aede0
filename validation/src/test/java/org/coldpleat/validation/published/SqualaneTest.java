package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.oil.BarusPressure;
import org.coldpleat.model.oil.MpmsDensity;
import org.coldpleat.model.oil.WaltherCurve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Squalane, reference correlation of Mylona et al. 2014, J. Phys. Chem. Ref. Data 43, 013104. */
class SqualaneTest {
    private static final String TABLE = "/org/coldpleat/validation/oil/squalane_mylona_2014.csv";

    /** Through the rows of 60 and 100 C. */
    private static final WaltherCurve LINE = WaltherCurve.through(333.15, 7.86e-3 / 783.0, 373.15, 3.08e-3 / 757.4);

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void lineThroughTwoRowsMeetsTheRowsNearby(double celsius, double density, double viscosity) {
        double ratio = LINE.kinematicViscosity(celsius + 273.15) / (viscosity * 1e-3 / density);
        if (celsius <= 120) {
            // 3 % uncertainty of the reference, less what both fit rows share with it: 2 %
            assertEquals(1, ratio, 0.02);
        } else {
            // a known miss: the line falls short above its points, by 4.8 % at 160 C
            assertTrue(ratio < 1 && ratio > 0.95, () -> "" + ratio);
        }
    }

    @Test
    void lineReachesRoomTemperature() {
        // 28.2 mPa s at 25 C, density 805 kg/m3: from memory; tolerance the 3 % of the reference correlation
        assertEquals(28.2e-3, LINE.kinematicViscosity(298.15) * 805, 0.03 * 28.2e-3);
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void densityFrom15DegreesMeetsTheTable(double celsius, double density, double viscosity) {
        // 811.5 kg/m3 at 15 C: repository of the reference data, citing a web database
        double miss = new MpmsDensity(811.5).density(celsius + 273.15) / density - 1;
        if (celsius <= 150) {
            assertEquals(0, miss, 1e-3); // covers 0.06 % of the table
        } else {
            // outside the range of the law: a known miss of 0.12 % at 160 C
            assertEquals(-1.2e-3, miss, 2e-4);
        }
    }

    @Test
    void pressureCoefficientFollowsFromTheTable() {
        // Mylona et al. 2014, Table 9: 60 C, 0.1 MPa 7.86 mPa s, 100 MPa 37.57 mPa s
        BarusPressure law = BarusPressure.through(0.1e6, 7.86, 100e6, 37.57);
        assertEquals(15.66e-9, law.coefficient(), 0.005 * 15.66e-9); // rounding of 7.86
        assertEquals(1.0158, law.factor(1e6), 1e-4);
    }
}

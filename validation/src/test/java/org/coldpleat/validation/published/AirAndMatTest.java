package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.medium.AirPermeability;
import org.coldpleat.model.medium.AirViscosity;
import org.coldpleat.model.medium.DaviesPermeability;
import org.coldpleat.model.medium.HappelPerpendicularPermeability;
import org.coldpleat.model.medium.KuwabaraPermeability;
import org.coldpleat.model.medium.MediumResistance;
import org.coldpleat.model.medium.Solidity;
import org.coldpleat.validation.TableRows;
import org.junit.jupiter.api.Test;

/** Air permeability figures of the trade, and measured mats and felts. */
class AirAndMatTest {
    private static final double AIR = 1.82e-5;

    private static double measured(String medium) {
        for (Map<String, String> row : TableRows.read(AirAndMatTest.class, "fibrous_mats.csv")) {
            if (row.get("medium").equals(medium)) {
                return Double.parseDouble(row.get("value"));
            }
        }
        throw new AssertionError(medium);
    }

    private static double matPressureDrop(DoubleUnaryOperator law, double solidity) {
        double resistance = MediumResistance.ofFibers(law.applyAsDouble(solidity), 23e-6, 20e-3);
        return MediumResistance.pressureDrop(resistance, AIR, 1080.0 / 3600);
    }

    @Test
    void airPermeabilityGivesTheResistance() {
        // ISO 9237:1995: air permeability is a face velocity at a stated pressure drop; arithmetic derived here
        double resistance = AirPermeability.resistance(200, AIR, 400 * AirPermeability.LITER_PER_SQUARE_METER_SECOND);
        assertEquals(2.747e7, resistance, 5e-4 * 2.747e7);
        assertEquals(8.190e-12, 0.60e-3 / AirPermeability.resistance(200, AIR, 0.150), 1e-15);
        assertEquals(1.832e8, AirPermeability.resistance(200, AIR, 0.060), 5e-4 * 1.832e8);
    }

    @Test
    void cubicFeetPerMinuteAndSquareFootConvertExactly() {
        // 1 cfm/ft2 = 0.3048 m / 60 s; ASTM D737 figures are read at half an inch of water
        assertEquals(5.080e-3, AirPermeability.CFM_PER_SQUARE_FOOT, 1e-18);
        double velocity = 10 * AirPermeability.CFM_PER_SQUARE_FOOT;
        double permeability = 0.8e-3 / AirPermeability.resistance(124.5, AIR, velocity);
        assertEquals(5.94e-12, permeability, 0.005e-12);
        assertEquals(124.5, AirPermeability.HALF_INCH_OF_WATER, 0.05);
        // 20 cfm/ft2 at 124.5 Pa, 0.6 mm: derived here
        assertEquals(6.733e7, AirPermeability.resistance(124.5, AIR, 0.1016), 5e-4 * 6.733e7);
    }

    @Test
    void oilPressureDropOfAFlatSheetFollowsDarcy() {
        // 10 L/min through 0.10 m2 of the sheet above, 0.010 Pa s; derived here
        double velocity = 1e-2 / 60 / 0.10;
        assertEquals(457.9, MediumResistance.pressureDrop(2.747e7, 0.010, velocity), 0.1);
        assertEquals(91.6e3, MediumResistance.pressureDrop(2.747e7, 2.0, velocity), 50);
    }

    @Test
    void solidityFollowsFromTheSheet() {
        // derived here: 120 g/m2, 0.55 mm, 1500 kg/m3; 75 g/m2 glass, 0.50 mm, 2500; 130 g/m2, 0.60 mm, 1460
        assertEquals(0.14545, Solidity.of(0.120, 1500, 0.55e-3), 1e-4 * 0.14545);
        assertEquals(0.0600, Solidity.of(0.075, 2500, 0.50e-3), 1e-12);
        assertEquals(0.1484, Solidity.of(0.130, 1460, 0.60e-3), 5e-5);
    }

    @Test
    void compressedSheetResistsMore() {
        // derived here from Davies 1952, solidity 0.15, fiber conserved
        assertEquals(1.0531, Solidity.compressedResistanceRatio(0.15, 0.95), 5e-5);
        assertEquals(1.1164, Solidity.compressedResistanceRatio(0.15, 0.90), 1e-4);
        assertEquals(1.2874, Solidity.compressedResistanceRatio(0.15, 0.80), 5e-5);
        assertEquals(1.5591, Solidity.compressedResistanceRatio(0.15, 0.70), 5e-5);
    }

    @Test
    void airSlipsThroughFinePores() {
        // derived here: 4 x 0.066/10 and 4 x 0.066/2.5 for pores of 20 and 5 micrometers
        assertEquals(1.026, AirPermeability.withoutSlip(1, 0.066e-6, 10e-6), 5e-4);
        assertEquals(1.106, AirPermeability.withoutSlip(1, 0.066e-6, 2.5e-6), 5e-4);
    }

    @Test
    void airViscosityAndMeanFreePathAreThoseOfTheAtmosphere() {
        // U.S. Standard Atmosphere 1976, sea level (288.15 K): 1.7894e-5 Pa s (from memory), five digits
        assertEquals(1.7894e-5, AirViscosity.at(288.15), 1e-9);
        // S. G. Jennings 1988, J. Aerosol Sci. 19, 159: 65.43 nm in dry air at 20 C and 101325 Pa (from memory). He
        // takes
        // 0.4987 for the factor 1/2 and his own viscosity, together below 1 %
        assertEquals(65.43e-9, AirViscosity.meanFreePath(293.15, 101325), 0.01 * 65.43e-9);
    }

    @Test
    void daviesBandHoldsAMeasuredMat() {
        // Mauthe et al. 2022; the band is that of the stated packing density, 0.014 to 0.0165
        DoubleUnaryOperator davies = DaviesPermeability::normalizedPermeability;
        assertTrue(matPressureDrop(davies, 0.0140) < measured("mat"));
        assertTrue(matPressureDrop(davies, 0.0165) > measured("mat"));
        assertEquals(21.9, matPressureDrop(davies, 0.0140), 0.05);
        assertEquals(28.0, matPressureDrop(davies, 0.0165), 0.05);
    }

    @Test
    void cellModelsResistMoreThanTheMeasuredMat() {
        // Sign only: cell models of regular fibers across the flow are above a random mat, 13 to 65 % here
        for (double solidity : new double[] {0.0140, 0.0153, 0.0165}) {
            assertTrue(matPressureDrop(KuwabaraPermeability::normalizedPermeability, solidity) > measured("mat"));
            assertTrue(matPressureDrop(HappelPerpendicularPermeability::normalizedPermeability, solidity)
                    > measured("mat"));
        }
    }

    @Test
    void daviesGivesTheOrderOfMeasuredFelts() {
        // Cunningham, Broughton, Kraybill (abstract). Fiber size and solidity are not stated: 15 to 25 micrometers and
        // 0.10
        // to 0.20 are usual for such felts, fiber density 1300 kg/m3 (common practice). The middle of that box must
        // agree
        // within a factor two, and the measured value must lie between its corners
        double middle = feltResistancePerWeight(0.15, 20e-6) / measured("felt");
        assertTrue(middle > 0.5 && middle < 2, "ratio " + middle);
        assertTrue(feltResistancePerWeight(0.10, 25e-6) < measured("felt"));
        assertTrue(feltResistancePerWeight(0.20, 15e-6) > measured("felt"));
    }

    private static double feltResistancePerWeight(double solidity, double diameter) {
        double perThickness =
                MediumResistance.ofFibers(DaviesPermeability.normalizedPermeability(solidity), diameter, 1);
        return perThickness / (solidity * 1300);
    }
}

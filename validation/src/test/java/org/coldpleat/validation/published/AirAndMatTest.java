package org.coldpleat.validation.published;

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
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Air permeability figures of the trade, and measured mats and felts. */
class AirAndMatTest {
    private static final String SOURCE = "derived here";

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
        check("resistance from air permeability 400 L/(m2 s) at 200 Pa")
                .expected(2.747e7, "1/m")
                .computed(resistance)
                .withinRelative(5e-4, "four digits");
        check("permeability from 150 L/(m2 s) at 200 Pa, 0.60 mm")
                .expected(8.190e-12, "m2")
                .computed(0.60e-3 / AirPermeability.resistance(200, AIR, 0.150))
                .within(1e-15, "four digits");
        check("resistance from air permeability 60 L/(m2 s) at 200 Pa")
                .expected(1.832e8, "1/m")
                .computed(AirPermeability.resistance(200, AIR, 0.060))
                .withinRelative(5e-4, "four digits");
    }

    @Test
    void cubicFeetPerMinuteAndSquareFootConvertExactly() {
        // 1 cfm/ft2 = 0.3048 m / 60 s; ASTM D737 figures are read at half an inch of water
        ExternalCheck.of(Topic.MEDIUM, "one cubic foot per minute and square foot", "definition of the foot, 0.3048 m")
                .expected(5.080e-3, "m/s")
                .computed(AirPermeability.CFM_PER_SQUARE_FOOT)
                .within(1e-18, "exact by definition of the foot");
        double velocity = 10 * AirPermeability.CFM_PER_SQUARE_FOOT;
        double permeability = 0.8e-3 / AirPermeability.resistance(124.5, AIR, velocity);
        check("permeability from 10 cfm/ft2 at half an inch of water, 0.8 mm")
                .expected(5.94e-12, "m2")
                .computed(permeability)
                .within(0.005e-12, "three digits");
        ExternalCheck.of(Topic.MEDIUM, "half an inch of water", "ASTM D737")
                .expected(124.5, "Pa")
                .computed(AirPermeability.HALF_INCH_OF_WATER)
                .within(0.05, "half the last printed digit");
        // 20 cfm/ft2 at 124.5 Pa, 0.6 mm: derived here
        check("resistance from 20 cfm/ft2 at half an inch of water")
                .expected(6.733e7, "1/m")
                .computed(AirPermeability.resistance(124.5, AIR, 0.1016))
                .withinRelative(5e-4, "four digits");
    }

    @Test
    void oilPressureDropOfAFlatSheetFollowsDarcy() {
        // 10 L/min through 0.10 m2 of the sheet above, 0.010 Pa s; derived here
        double velocity = 1e-2 / 60 / 0.10;
        check("drop of 10 L/min of 0.010 Pa s through 0.10 m2 of sheet")
                .expected(457.9, "Pa")
                .computed(MediumResistance.pressureDrop(2.747e7, 0.010, velocity))
                .within(0.1, "last digit");
        check("drop of 10 L/min of 2.0 Pa s through 0.10 m2 of sheet")
                .expected(91.6e3, "Pa")
                .computed(MediumResistance.pressureDrop(2.747e7, 2.0, velocity))
                .within(50, "half the last digit");
    }

    @Test
    void solidityFollowsFromTheSheet() {
        // derived here: 120 g/m2, 0.55 mm, 1500 kg/m3; 75 g/m2 glass, 0.50 mm, 2500; 130 g/m2, 0.60 mm, 1460
        check("solidity of 120 g/m2, 0.55 mm, 1500 kg/m3")
                .expected(0.14545, "1")
                .computed(Solidity.of(0.120, 1500, 0.55e-3))
                .withinRelative(1e-4, "five digits");
        check("solidity of 75 g/m2, 0.50 mm, 2500 kg/m3")
                .expected(0.0600, "1")
                .computed(Solidity.of(0.075, 2500, 0.50e-3))
                .within(1e-12, "exact");
        check("solidity of 130 g/m2, 0.60 mm, 1460 kg/m3")
                .expected(0.1484, "1")
                .computed(Solidity.of(0.130, 1460, 0.60e-3))
                .within(5e-5, "half the last digit");
    }

    @Test
    void compressedSheetResistsMore() {
        // derived here from Davies 1952, solidity 0.15, fiber conserved
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "resistance of a sheet of solidity 0.15 squeezed to 0.95",
                        "derived here from Davies 1952")
                .expected(1.0531, "1")
                .computed(Solidity.compressedResistanceRatio(0.15, 0.95))
                .within(5e-5, "half the last digit");
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "resistance of a sheet of solidity 0.15 squeezed to 0.90",
                        "derived here from Davies 1952")
                .expected(1.1164, "1")
                .computed(Solidity.compressedResistanceRatio(0.15, 0.90))
                .within(1e-4, "last digit");
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "resistance of a sheet of solidity 0.15 squeezed to 0.80",
                        "derived here from Davies 1952")
                .expected(1.2874, "1")
                .computed(Solidity.compressedResistanceRatio(0.15, 0.80))
                .within(5e-5, "half the last digit");
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "resistance of a sheet of solidity 0.15 squeezed to 0.70",
                        "derived here from Davies 1952")
                .expected(1.5591, "1")
                .computed(Solidity.compressedResistanceRatio(0.15, 0.70))
                .within(5e-5, "half the last digit");
    }

    @Test
    void airSlipsThroughFinePores() {
        // derived here: 4 x 0.066/10 and 4 x 0.066/2.5 for pores of 20 and 5 micrometers
        check("slip in pores of 20 µm")
                .expected(1.026, "1")
                .computed(AirPermeability.withoutSlip(1, 0.066e-6, 10e-6))
                .within(5e-4, "half the last digit");
        check("slip in pores of 5 µm")
                .expected(1.106, "1")
                .computed(AirPermeability.withoutSlip(1, 0.066e-6, 2.5e-6))
                .within(5e-4, "half the last digit");
    }

    @Test
    void airViscosityAndMeanFreePathAreThoseOfTheAtmosphere() {
        // U.S. Standard Atmosphere 1976, sea level (288.15 K): 1.7894e-5 Pa s (from memory), five digits
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "viscosity of air at 15 °C",
                        "U.S. Standard Atmosphere 1976, sea level; value from memory")
                .expected(1.7894e-5, "Pa s")
                .computed(AirViscosity.at(288.15))
                .within(1e-9, "last of five printed digits");
        // S. G. Jennings 1988, J. Aerosol Sci. 19, 159: 65.43 nm in dry air at 20 C and 101325 Pa (from memory). He
        // takes
        // 0.4987 for the factor 1/2 and his own viscosity, together below 1 %
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "mean free path in air at 20 °C",
                        "Jennings 1988, J. Aerosol Sci. 19, 159; value from memory")
                .expected(65.43e-9, "m")
                .computed(AirViscosity.meanFreePath(293.15, 101325))
                .withinRelative(0.01, "he takes 0.4987 for the factor 1/2 and his own viscosity, together below 1 %");
    }

    @Test
    void daviesBandHoldsAMeasuredMat() {
        // Mauthe et al. 2022; the band is that of the stated packing density, 0.014 to 0.0165
        DoubleUnaryOperator davies = DaviesPermeability::normalizedPermeability;
        ExternalCheck mat = ExternalCheck.of(
                Topic.MEDIUM,
                "measured drop of a mat of 23 µm fibers, between the ends of Davies' law",
                "Mauthe et al. 2022");
        mat.computed(measured("mat"), "Pa")
                .between(
                        matPressureDrop(davies, 0.0140),
                        matPressureDrop(davies, 0.0165),
                        "limits are the law at the ends of the stated packing density, 0.014 to 0.0165");
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "mat of 23 µm fibers, solidity 0.0140, by Davies",
                        "derived here from Davies 1952")
                .expected(21.9, "Pa")
                .computed(matPressureDrop(davies, 0.0140))
                .within(0.05, "half the last digit");
        ExternalCheck.of(
                        Topic.MEDIUM,
                        "mat of 23 µm fibers, solidity 0.0165, by Davies",
                        "derived here from Davies 1952")
                .expected(28.0, "Pa")
                .computed(matPressureDrop(davies, 0.0165))
                .within(0.05, "half the last digit");
    }

    @Test
    void cellModelsResistMoreThanTheMeasuredMat() {
        // Sign only: cell models of regular fibers across the flow are above a random mat, 13 to 65 % here
        for (double solidity : new double[] {0.0140, 0.0153, 0.0165}) {
            cellModel("Kuwabara", matPressureDrop(KuwabaraPermeability::normalizedPermeability, solidity), solidity);
            cellModel(
                    "Happel",
                    matPressureDrop(HappelPerpendicularPermeability::normalizedPermeability, solidity),
                    solidity);
        }
    }

    private static void cellModel(String law, double drop, double solidity) {
        ExternalCheck.of(
                        Topic.MEDIUM, "drop of a mat of 23 µm fibers by the cell model of " + law, "Mauthe et al. 2022")
                .at("solidity " + solidity)
                .computed(drop, "Pa")
                .above(
                        measured("mat"),
                        "sign only, a known miss: regular fibers across the flow resist 13 to 65 % more than a random mat");
    }

    @Test
    void daviesGivesTheOrderOfMeasuredFelts() {
        // Cunningham, Broughton, Kraybill (abstract). Fiber size and solidity are not stated: 15 to 25 micrometers and
        // 0.10
        // to 0.20 are usual for such felts, fiber density 1300 kg/m3 (common practice). The middle of that box must
        // agree
        // within a factor two, and the measured value must lie between its corners
        double middle = feltResistancePerWeight(0.15, 20e-6) / measured("felt");
        String source =
                "Cunningham, Broughton, Kraybill (abstract); fiber size and solidity common practice, no source";
        ExternalCheck.of(Topic.MEDIUM, "resistance per weight of felts by Davies, over the measured one", source)
                .computed(middle, "1")
                .between(0.5, 2, "fiber size and solidity are not stated: the middle of their usual box, a factor two");
        ExternalCheck.of(Topic.MEDIUM, "measured resistance per weight of felts, between the corners", source)
                .computed(measured("felt"), "m/kg")
                .between(
                        feltResistancePerWeight(0.10, 25e-6),
                        feltResistancePerWeight(0.20, 15e-6),
                        "limits are Davies at the corners of the usual fiber sizes and solidities");
    }

    private static double feltResistancePerWeight(double solidity, double diameter) {
        double perThickness =
                MediumResistance.ofFibers(DaviesPermeability.normalizedPermeability(solidity), diameter, 1);
        return perThickness / (solidity * 1300);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.MEDIUM, quantity, SOURCE);
    }
}

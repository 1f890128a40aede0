package org.coldpleat.model.medium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class MediumTest {
    @Test
    void blendDensityAddsVolumes() {
        assertEquals(1442.3, Solidity.blendDensity(new double[] {0.8, 0.2}, new double[] {1500, 1250}), 0.05);
        assertThrows(
                IllegalArgumentException.class,
                () -> Solidity.blendDensity(new double[] {0.8, 0.3}, new double[] {1500, 1250}));
    }

    @Test
    void layersAdd() {
        assertEquals(3e7, MediumResistance.ofLayers(1e7, 2e7), 0);
        assertEquals(1e7, MediumResistance.ofLayers(1e7), 0);
    }

    @Test
    void inertiaCorrectionUndoesTheForchheimerLaw() {
        double resistance = 2.5e7;
        double thickness = 0.6e-3;
        double apparent =
                resistance + AirPermeability.WARD_COEFFICIENT * 1.2 * 0.4 / 1.82e-5 * Math.sqrt(resistance * thickness);
        assertEquals(
                resistance,
                AirPermeability.withoutInertia(
                        apparent, thickness, 0.4, 1.2, 1.82e-5, AirPermeability.WARD_COEFFICIENT),
                1e-6 * resistance);
        // Ratio of the terms of the Forchheimer law, C_F rho v sqrt(k)/mu, about 7 % here
        double permeability = thickness / resistance;
        assertEquals(1 + 0.55 * 1.2 * 0.4 * Math.sqrt(permeability) / 1.82e-5, apparent / resistance, 1e-9);
        assertEquals(1.07, apparent / resistance, 0.005);
    }

    @Test
    void typicalDiametersAreThoseOfTheAirPermeability() {
        for (FiberFamily family : FiberFamily.values()) {
            TypicalMedium typical = family.typical();
            double normalized =
                    DaviesPermeability.normalizedPermeability(typical.solidity().value());
            double viscosity = AirViscosity.at(293.15);
            for (boolean open : new boolean[] {false, true}) {
                double velocity = open
                        ? typical.airPermeability().high()
                        : typical.airPermeability().low();
                double resistance = AirPermeability.resistance(200, viscosity, velocity);
                double diameter = Math.sqrt(typical.thickness().value() / (resistance * normalized));
                double listed = open
                        ? typical.effectiveFiberDiameter().high()
                        : typical.effectiveFiberDiameter().low();
                // Listed to 0.1 micrometers
                assertEquals(diameter, listed, 0.051e-6, family.name());
            }
            assertEquals(Provenance.TYPICAL, typical.resistance().provenance());
        }
    }

    @Test
    void typicalSolidityHoldsTheMiddleOfWeightDensityAndThickness() {
        for (FiberFamily family : FiberFamily.values()) {
            TypicalMedium typical = family.typical();
            double middle = Solidity.of(
                    typical.basisWeight().value(),
                    typical.fiberDensity().value(),
                    typical.thickness().value());
            assertTrue(
                    middle > typical.solidity().low()
                            && middle < typical.solidity().high(),
                    family + " " + middle);
        }
    }

    @Test
    void allLawsFallWithSolidityWhereTheyHold() {
        for (double c = 0.06; c < 0.29; c += 0.01) {
            double d = c + 0.01;
            assertTrue(DaviesPermeability.normalizedPermeability(d) < DaviesPermeability.normalizedPermeability(c));
            assertTrue(KuwabaraPermeability.normalizedPermeability(d) < KuwabaraPermeability.normalizedPermeability(c));
            assertTrue(HappelPerpendicularPermeability.normalizedPermeability(d)
                    < HappelPerpendicularPermeability.normalizedPermeability(c));
        }
    }

    @Test
    void wrongUseNamesTheLimit() {
        assertThrows(IllegalArgumentException.class, () -> DaviesPermeability.normalizedPermeability(0));
        assertThrows(IllegalArgumentException.class, () -> DaviesPermeability.normalizedPermeability(1));
        assertThrows(IllegalArgumentException.class, () -> MediumResistance.of(-1, 1e-11));
        assertThrows(IllegalArgumentException.class, MediumResistance::ofLayers);
    }
}

package org.coldpleat.model.thermal;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Coolant of a starting engine: takes heat of combustion at the cylinder heads, exchanges with metal and oil, and gives to
 * the air what the thermostat lets through, {@code s(T) UArad (T - Ta)}, with {@code s = x^2 (3 - 2x)} between the
 * temperatures at which it opens and is open.
 *
 * @param heatCapacity of coolant and what warms with it [J/K], above 0
 * @param combustionShare share of the heat of combustion that it takes before the metal does [1], 0 to 1
 * @param toMetal UAmc [W/K], at least 0
 * @param toOil UAoc, an oil cooler included [W/K], at least 0
 * @param radiator UArad with the thermostat open [W/K], at least 0
 * @param opens thermostat begins to open [K], above 0
 * @param full thermostat is open [K], above opens
 */
@Source("lumped heat balance, textbook; smooth thermostat: derived here")
@Validity("coolant well mixed; thermostat without delay or hysteresis")
public record Coolant(
        double heatCapacity,
        double combustionShare,
        double toMetal,
        double toOil,
        double radiator,
        double opens,
        double full) {
    public Coolant {
        Require.positive("heatCapacity", heatCapacity, "J/K");
        Require.within("combustionShare", combustionShare, 0, 1, "1");
        Require.notNegative("toMetal", toMetal, "W/K");
        Require.notNegative("toOil", toOil, "W/K");
        Require.notNegative("radiator", radiator, "W/K");
        Require.positive("opens", opens, "K");
        Require.positive("full minus opens", full - opens, "K");
    }

    /** What goes to the air [W] from coolant [K] in air [K]. */
    public double loss(double temperature, double ambient) {
        double x = Math.min(1, Math.max(0, (temperature - opens) / (full - opens)));
        return x * x * (3 - 2 * x) * radiator * (temperature - ambient);
    }

    /** Whether the radiator holds the coolant below its full opening against a heat [W] in air [K]. */
    public boolean holds(double heat, double ambient) {
        return radiator * (full - ambient) >= heat;
    }
}

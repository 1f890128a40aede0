package org.coldpleat.model.circuit;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.numerics.Corner;
import org.coldpleat.shared.quantity.Require;

/**
 * Jets or restrictors of one kind at the end of the gallery, at sump viscosity.
 *
 * @param one law of a single one; must not be {@link AdditiveLaw#NONE}
 * @param count how many [1], at least 0; need not be whole
 * @param crackPressure of the check valve behind which they sit [Pa]; 0 without. Its corner is rounded over 0.1 %
 */
public record Restrictor(AdditiveLaw one, double count, double crackPressure) {
    private static final double ROUNDING = 1e-3;

    public Restrictor {
        Require.positive("laminar resistance of a restrictor", one.laminar(), "1/m3");
        Require.notNegative("count", count, "1");
        Require.notNegative("crackPressure", crackPressure, "Pa");
    }

    /** Flow of all together and its slope, for the price of about one, at a pressure before them [Pa], at least 0. */
    public FlowWithSlope passage(double pressure, Fluid fluid) {
        double y = pressure - crackPressure;
        double width = ROUNDING * crackPressure;
        double slope = crackPressure == 0 ? 1 : Corner.slope(y, width);
        FlowWithSlope single = one.passage(Corner.ramp(y, width), fluid);
        return new FlowWithSlope(count * single.flowRate(), count * single.slope() * slope);
    }

    /** Flow of all together [m3/s] at a pressure before them [Pa], at least 0. */
    public double flowRate(double pressure, Fluid fluid) {
        return count * one.flowRate(Corner.ramp(pressure - crackPressure, ROUNDING * crackPressure), fluid);
    }
}

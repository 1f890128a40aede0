package org.coldpleat.model.valve;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.FlowLaw;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.model.numerics.BracketedNewton;
import org.coldpleat.model.numerics.Corner;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Anti-drain flap in forward flow: a rubber lip that the oil lifts off its face. {@code x = C (dp - p0)}, capped at the
 * room it has; oil passes the slit under the lip. A small leak keeps the drop finite in slope at no flow.
 *
 * @param compliance C, lift of the lip per pressure difference [m/Pa], above 0
 * @param preload p0, pressure difference that just lifts the lip [Pa], at least 0
 * @param maximumLift [m], above 0
 * @param edgeLength length of the lifted edge [m], above 0
 * @param leak laminar leak when shut, flow times viscosity over pressure difference [m3], above 0
 */
@Source("thin-plate bending; slit law derived here")
@Validity("small deflection; rubber modulus 2-8 MPa at room temperature, stiffer when cold (common practice)")
public record FlapValve(double compliance, double preload, double maximumLift, double edgeLength, double leak)
        implements PressureDropLaw, FlowLaw {
    private static final double ROUNDING = 1e-3;
    private static final int MAX_STEPS = 200;
    private static final int CORNERLESS_STEPS = 4;

    /** Miss, over the flow, from which one more Newton step leaves nothing but rounding [1]: it about squares. */
    private static final double LAST_STEP = 1e-8;

    public FlapValve {
        Require.positive("compliance", compliance, "m/Pa");
        Require.notNegative("preload", preload, "Pa");
        Require.positive("maximumLift", maximumLift, "m");
        Require.positive("edgeLength", edgeLength, "m");
        Require.positive("leak", leak, "m3");
    }

    /**
     * Tip lift per pressure difference of a strip clamped at one end, {@code 1.5 l^4 (1 - v^2)/(E t^3)}.
     *
     * <p>Example: 4 MPa, 1.5 mm thick, 8 mm free, v 0.5: 0.34 mm per kPa.
     *
     * @param freeLength l [m], above 0
     * @param thickness t [m], above 0
     * @param elasticModulus E [Pa], above 0
     * @param poissonRatio v [1], 0 to 0.5
     * @return compliance [m/Pa]
     */
    @Source(
            "wide cantilever under uniform pressure: Roark's Formulas for Stress and Strain, beam w l^4/(8 E I) with E/(1 - v^2); from memory")
    public static double stripCompliance(
            double freeLength, double thickness, double elasticModulus, double poissonRatio) {
        Require.positive("freeLength", freeLength, "m");
        Require.positive("thickness", thickness, "m");
        Require.positive("elasticModulus", elasticModulus, "Pa");
        Require.within("poissonRatio", poissonRatio, 0, 0.5, "1");
        return 1.5
                * Math.pow(freeLength, 4)
                * (1 - poissonRatio * poissonRatio)
                / (elasticModulus * Math.pow(thickness, 3));
    }

    /** Lift of the lip [m] at a pressure difference [Pa]. */
    public double lift(double pressureDifference) {
        double free = compliance * Corner.ramp(pressureDifference - preload, rounding());
        return Corner.capped(free, maximumLift, ROUNDING * maximumLift);
    }

    @Override
    public double flowRate(double pressureDifference, Fluid fluid) {
        double dp = Math.abs(pressureDifference);
        double seep = leak * pressureDifference / fluid.dynamicViscosity();
        return seep + Math.copySign(slit().flowRate(lift(dp), dp, fluid), pressureDifference);
    }

    @Override
    public double flowSlope(double pressureDifference, Fluid fluid) {
        return passage(pressureDifference, fluid).slope();
    }

    @Override
    public FlowWithSlope passage(double pressureDifference, Fluid fluid) {
        double dp = Math.abs(pressureDifference);
        double seep = leak / fluid.dynamicViscosity();
        double free = compliance * Corner.ramp(dp - preload, rounding());
        double rounded = ROUNDING * maximumLift;
        double liftSlope =
                compliance * Corner.slope(dp - preload, rounding()) * Corner.cappedSlope(free, maximumLift, rounded);
        LiftedSlit slit = slit();
        double lift = Corner.capped(free, maximumLift, rounded);
        FlowWithSlope fixed = slit.passage(lift, dp, fluid);
        return new FlowWithSlope(
                seep * pressureDifference + Math.copySign(fixed.flowRate(), pressureDifference),
                seep + fixed.slope() + slit.byLift(lift, fixed, fluid) * liftSlope);
    }

    @Override
    public double pressureDrop(double flowRate, Fluid fluid) {
        return at(flowRate, fluid).pressureDrop();
    }

    @Override
    public double slope(double flowRate, Fluid fluid) {
        return at(flowRate, fluid).slope();
    }

    @Override
    public Drop at(double flowRate, Fluid fluid) {
        double wanted = Math.abs(flowRate);
        if (wanted == 0) {
            return new Drop(0, 1 / flowSlope(0, fluid));
        }
        BracketedNewton newton =
                new BracketedNewton(0, wanted * fluid.dynamicViscosity() / leak, cornerless(wanted, fluid));
        double before = Double.NaN;
        for (int i = 0; ; i++) {
            double dp = newton.point();
            FlowWithSlope found = passage(dp, fluid);
            double miss = wanted - found.flowRate();
            if (Math.abs(miss) <= LAST_STEP * wanted || dp == before || newton.isExhausted() || i == MAX_STEPS) {
                double last = Math.max(0, dp + miss / found.slope());
                return new Drop(Math.copySign(last, flowRate), 1 / found.slope());
            }
            before = dp;
            newton.step(miss, -found.slope());
        }
    }

    @Override
    public DropFollower follower() {
        return new FlapFollower(this);
    }

    /**
     * Difference [Pa] if the lip had no corners and no leak. Both losses of its slit go with the inverse square of the lift, {@code dp x^2 = A}, so a lip in between stands where {@code y^2 (y + p0) = A/C^2} with
     * {@code y = dp - p0}; from above, Newton steps close in on that from one side.
     */
    double cornerless(double flowRate, Fluid fluid) {
        LiftedSlit slit = slit();
        double load = slit.dropTimesSquaredLift(flowRate, fluid);
        double full = load / (maximumLift * maximumLift);
        if (full >= preload + maximumLift / compliance) {
            return full;
        }
        double volume = load / (compliance * compliance);
        double y = Math.min(Math.cbrt(volume), Math.sqrt(volume / preload));
        for (int i = 0; i < CORNERLESS_STEPS; i++) {
            y -= (y * y * (y + preload) - volume) / (y * (3 * y + 2 * preload));
        }
        return preload + y;
    }

    /** Width of the rounded corner [Pa]: a thousandth of the pressure that lifts the lip fully. */
    private double rounding() {
        return ROUNDING * (preload + maximumLift / compliance);
    }

    private LiftedSlit slit() {
        return new LiftedSlit(edgeLength, SpringValve.CURTAIN_DISCHARGE, AdditiveLaw.NONE);
    }
}

package org.coldpleat.model.flow;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Part whose laminar and inertial pressure losses add: {@code dp = mu psi Q + rho b Q |Q|}.
 *
 * <p>Symbols: mu dynamic viscosity [Pa s], rho density [kg/m3], Q flow [m3/s], psi laminar resistance [1/m3], b inertial
 * resistance [1/m4]. For an opening of area A and discharge coefficient Ct, {@code b = 1 / (2 Ct^2 A^2)}. Exact at both
 * ends, smooth, monotone and odd; between the ends it lacks the hump of the discharge coefficient near Re 100, which for
 * a sharp edge is up to 20 % above this law.
 *
 * @param laminar laminar resistance psi [1/m3], at least 0
 * @param inertial inertial resistance b [1/m4], at least 0
 */
@Source(
        "Borutzky, Barnard, Thoma 2002, Simulation Modelling Practice and Theory 10 (same curve, other form); from memory")
@Validity("any flow; incompressible, no cavitation")
public record AdditiveLaw(double laminar, double inertial) implements PressureDropLaw, FlowLaw {
    /** A part that is not there: no drop at any flow. It has no inverse, so it must not be used as a {@link FlowLaw}. */
    public static final AdditiveLaw NONE = new AdditiveLaw(0, 0);

    public AdditiveLaw {
        Require.notNegative("laminar", laminar, "1/m3");
        Require.notNegative("inertial", inertial, "1/m4");
    }

    /**
     * A purely laminar part.
     *
     * @param laminar laminar resistance psi [1/m3]
     */
    public static AdditiveLaw laminarOnly(double laminar) {
        return new AdditiveLaw(laminar, 0);
    }

    /** This part followed by another one: resistances add. */
    public AdditiveLaw plus(AdditiveLaw next) {
        return new AdditiveLaw(laminar + next.laminar, inertial + next.inertial);
    }

    /**
     * A number of such parts in series.
     *
     * @param count [1], at least 0
     */
    public AdditiveLaw times(double count) {
        Require.notNegative("count", count, "1");
        return new AdditiveLaw(laminar * count, inertial * count);
    }

    /**
     * A number of such parts side by side sharing the flow equally; need not be whole.
     *
     * @param count [1], above 0
     */
    public AdditiveLaw parallelOf(double count) {
        Require.positive("count", count, "1");
        return new AdditiveLaw(laminar / count, inertial / (count * count));
    }

    /** True when the part causes no drop at all. */
    public boolean isNone() {
        return laminar == 0 && inertial == 0;
    }

    @Override
    public double pressureDrop(double flowRate, Fluid fluid) {
        return fluid.dynamicViscosity() * laminar * flowRate
                + fluid.density() * inertial * flowRate * Math.abs(flowRate);
    }

    @Override
    public double slope(double flowRate, Fluid fluid) {
        return fluid.dynamicViscosity() * laminar + 2 * fluid.density() * inertial * Math.abs(flowRate);
    }

    @Override
    public double flowRate(double pressureDifference, Fluid fluid) {
        return pressureDifference == 0
                ? 0
                : 2 * pressureDifference / (fluid.dynamicViscosity() * laminar + root(pressureDifference, fluid));
    }

    @Override
    public double flowSlope(double pressureDifference, Fluid fluid) {
        return 1 / root(pressureDifference, fluid);
    }

    @Override
    public FlowWithSlope passage(double pressureDifference, Fluid fluid) {
        double root = root(pressureDifference, fluid);
        double flow =
                pressureDifference == 0 ? 0 : 2 * pressureDifference / (fluid.dynamicViscosity() * laminar + root);
        return new FlowWithSlope(flow, 1 / root);
    }

    private double root(double pressureDifference, Fluid fluid) {
        double c = fluid.dynamicViscosity() * laminar;
        return Math.sqrt(c * c + 4 * fluid.density() * inertial * Math.abs(pressureDifference));
    }
}

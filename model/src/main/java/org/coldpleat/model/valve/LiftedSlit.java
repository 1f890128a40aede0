package org.coldpleat.model.valve;

import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * Slit that a lifted part opens around its edge, in series with a fixed port: flow for a given lift.
 *
 * <p>Laminar: {@code 32/(pi x^2)/P + psi_port}; inertial: {@code 1/(2 (Cd P x)^2) + b_port}, with lift x and edge length P.
 *
 * @param edgeLength P [m], above 0
 * @param dischargeCoefficient Cd of the slit [1], 0 to 1
 * @param port fixed opening in series
 */
@Source("additive law for a sharp slit: Hasimoto 1958 entrance, sharp-edge inertia; derived here")
record LiftedSlit(double edgeLength, double dischargeCoefficient, AdditiveLaw port) {
    /** Below this lift [m], the size of an atom, the slit is shut. */
    private static final double SHUT = 1e-10;

    LiftedSlit {
        Require.positive("edgeLength", edgeLength, "m");
        Require.within("dischargeCoefficient", dischargeCoefficient, 1e-3, 1, "1");
    }

    /** Flow [m3/s] at a lift [m] and a pressure difference [Pa]. */
    double flowRate(double lift, double pressureDifference, Fluid fluid) {
        return lift < SHUT ? 0 : law(lift).flowRate(pressureDifference, fluid);
    }

    /** Flow and its slope at a lift [m] that stays. */
    FlowWithSlope passage(double lift, double pressureDifference, Fluid fluid) {
        return lift < SHUT ? new FlowWithSlope(0, 0) : law(lift).passage(pressureDifference, fluid);
    }

    /** What more lift brings, d(flow)/d(lift) [m2/s], at a lift [m] and the flow it gives. */
    double byLift(double lift, FlowWithSlope at, Fluid fluid) {
        if (lift < SHUT) {
            return 0;
        }
        double q = at.flowRate();
        double laminarFall = 2 * entrance(lift) / lift;
        double inertialFall = 2 * inertial(lift) / lift;
        return at.slope() * q * (fluid.dynamicViscosity() * laminarFall + fluid.density() * inertialFall * Math.abs(q));
    }

    /**
     * Pressure difference times squared lift [Pa m2] at a flow [m3/s] without port, where neither loss depends on the
     * lift in any other way.
     */
    double dropTimesSquaredLift(double flowRate, Fluid fluid) {
        return (fluid.dynamicViscosity() * entrance(1) + fluid.density() * inertial(1) * flowRate) * flowRate;
    }

    private AdditiveLaw law(double lift) {
        return new AdditiveLaw(entrance(lift) + port.laminar(), inertial(lift) + port.inertial());
    }

    private double entrance(double lift) {
        return Openings.thinSlit(lift) / edgeLength;
    }

    private double inertial(double lift) {
        double effective = dischargeCoefficient * edgeLength * lift;
        return 1 / (2 * effective * effective);
    }
}

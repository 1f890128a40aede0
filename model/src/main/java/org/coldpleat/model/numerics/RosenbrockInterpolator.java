package org.coldpleat.model.numerics;

import org.hipparchus.ode.EquationsMapper;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.sampling.AbstractODEStateInterpolator;

/** The way within a step of {@link RosenbrockStep}: a cubic between its ends. */
final class RosenbrockInterpolator extends AbstractODEStateInterpolator {
    private static final long serialVersionUID = 1;

    private final double[] bend;
    private final double[] twist;

    private RosenbrockInterpolator(
            boolean forward,
            ODEStateAndDerivative wholeStart,
            ODEStateAndDerivative wholeEnd,
            ODEStateAndDerivative start,
            ODEStateAndDerivative end,
            EquationsMapper mapper,
            double[] bend,
            double[] twist) {
        super(forward, wholeStart, wholeEnd, start, end, mapper);
        this.bend = bend;
        this.twist = twist;
    }

    /** The way of a whole step, with the weights of s (1-s) and s^2 (1-s) beside the straight line, s from 0 to 1. */
    static RosenbrockInterpolator whole(
            ODEStateAndDerivative start,
            ODEStateAndDerivative end,
            EquationsMapper mapper,
            double[] bend,
            double[] twist) {
        return new RosenbrockInterpolator(true, start, end, start, end, mapper, bend, twist);
    }

    @Override
    protected RosenbrockInterpolator create(
            boolean forward,
            ODEStateAndDerivative wholeStart,
            ODEStateAndDerivative wholeEnd,
            ODEStateAndDerivative start,
            ODEStateAndDerivative end,
            EquationsMapper mapper) {
        return new RosenbrockInterpolator(forward, wholeStart, wholeEnd, start, end, mapper, bend, twist);
    }

    @Override
    protected ODEStateAndDerivative computeInterpolatedStateAndDerivatives(
            EquationsMapper mapper, double time, double theta, double thetaH, double oneMinusThetaH) {
        double[] from = getGlobalPreviousState().getCompleteState();
        double[] to = getGlobalCurrentState().getCompleteState();
        double length =
                getGlobalCurrentState().getTime() - getGlobalPreviousState().getTime();
        double left = 1 - theta;
        double[] state = new double[from.length];
        double[] rate = new double[from.length];
        for (int i = 0; i < state.length; i++) {
            state[i] = left * from[i] + theta * (to[i] + left * (bend[i] + theta * twist[i]));
            rate[i] = (to[i] - from[i] + (1 - 2 * theta) * bend[i] + theta * (2 - 3 * theta) * twist[i]) / length;
        }
        return mapper.mapStateAndDerivative(time, state, rate);
    }
}

package org.coldpleat.model.numerics;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.ode.ExpandableODE;
import org.hipparchus.ode.LocalizedODEFormats;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;

/**
 * Forward integration by steps of {@link RosenbrockStep}, for rates that depend on a few leading components only; the
 * others are integrals along the way. L-stable: a can that is flushed within a second does not hold the steps down to a
 * second once its temperature follows the oil's. Order 4, errors from an embedded solution of order 3.
 */
@Source("Hairer and Wanner 1996, Solving Ordinary Differential Equations II, 2nd ed., section IV.7")
@Validity("rates smooth within a step")
public final class RosenbrockIntegrator extends AdaptiveStepsizeIntegrator {
    private static final double SAFETY = 0.9;
    private static final double GROWTH = 6;
    private static final double REDUCTION = 0.2;

    private final int leading;
    private final double difference;
    private final boolean timed;

    /**
     * An integrator.
     *
     * @param shortest step [s]
     * @param longest step [s]
     * @param tolerance of each component over a step
     * @param leading components the rates depend on, the first ones [1]
     * @param difference of a leading component for the derivatives of the rates
     * @param timed whether the rates depend on the time as well
     */
    public RosenbrockIntegrator(
            double shortest, double longest, double[] tolerance, int leading, double difference, boolean timed) {
        super("RODASP", shortest, longest, tolerance, new double[tolerance.length]);
        this.leading = leading;
        this.difference = difference;
        this.timed = timed;
    }

    @Override
    public ODEStateAndDerivative integrate(ExpandableODE equations, ODEState initialState, double finalTime) {
        sanityChecks(initialState, finalTime);
        setStepStart(initIntegration(equations, initialState, finalTime));
        setIsLastStep(false);
        double wanted = firstStep();
        do {
            ODEStateAndDerivative start = getStepStart();
            RateSlopes slopes = RateSlopes.at(this, start, leading, difference, timed);
            RosenbrockStep step = attempt(start, slopes, Math.min(wanted, finalTime - start.getTime()));
            double error = error(step);
            while (error > 1) {
                step = attempt(start, slopes, filtered(step.length() * factor(error), false));
                error = error(step);
            }
            setStepSize(step.length());
            double time = start.getTime() + step.length();
            double[] end = step.end();
            ODEStateAndDerivative reached =
                    equations.getMapper().mapStateAndDerivative(time, end, computeDerivatives(time, end));
            setStepStart(acceptStep(step.interpolator(reached, equations.getMapper()), finalTime));
            if (!isLastStep()) {
                wanted = filtered(step.length() * factor(error), true);
            }
        } while (!isLastStep());
        ODEStateAndDerivative last = getStepStart();
        resetInternalState();
        return last;
    }

    private double firstStep() {
        double[] state = getStepStart().getCompleteState();
        double[] scale = new double[state.length];
        for (int i = 0; i < scale.length; i++) {
            scale[i] = getStepSizeHelper().getTolerance(i, Math.abs(state[i]));
        }
        return initializeStep(true, RosenbrockStep.ORDER, scale, getStepStart());
    }

    private RosenbrockStep attempt(ODEStateAndDerivative start, RateSlopes slopes, double length) {
        return RosenbrockStep.take(this, start, slopes, length);
    }

    private double filtered(double length, boolean acceptShort) {
        return getStepSizeHelper().filterStep(length, true, acceptShort);
    }

    private static double factor(double error) {
        return Math.min(GROWTH, Math.max(REDUCTION, SAFETY * Math.pow(error, -1.0 / RosenbrockStep.ORDER)));
    }

    /** Root mean square of the errors over their tolerances [1]. */
    private double error(RosenbrockStep step) {
        double[] error = step.error();
        double sum = 0;
        for (int i = 0; i < error.length; i++) {
            double ratio = error[i] / getStepSizeHelper().getTolerance(i, Math.abs(step.end()[i]));
            sum += ratio * ratio;
        }
        double mean = Math.sqrt(sum / error.length);
        if (Double.isNaN(mean)) {
            throw new MathIllegalStateException(
                    LocalizedODEFormats.NAN_APPEARING_DURING_INTEGRATION,
                    step.start().getTime());
        }
        return mean;
    }
}

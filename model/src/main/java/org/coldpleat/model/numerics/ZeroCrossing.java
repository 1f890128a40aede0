package org.coldpleat.model.numerics;

import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** A crossing of zero between two steps, in the form the integrator wants. */
public final class ZeroCrossing implements ODEEventDetector {
    /** What to do at a crossing. */
    @FunctionalInterface
    public interface Answer {
        Action at(boolean increasing);
    }

    /** Accuracy of the time of a crossing [s]. */
    private static final double TIME = 1e-10;

    /** Looks at the ends of the steps only [s]. */
    private static final double CHECK = 1e9;

    private static final int MOST_STEPS = 100;
    private static final int ORDER = 5;

    private final ToDoubleFunction<ODEStateAndDerivative> value;
    private final ODEEventHandler handler;

    public ZeroCrossing(ToDoubleFunction<ODEStateAndDerivative> value, Answer answer) {
        this.value = value;
        handler = (state, detector, increasing) -> answer.at(increasing);
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(CHECK);
    }

    @Override
    public int getMaxIterationCount() {
        return MOST_STEPS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return new BracketingNthOrderBrentSolver(0, TIME, 0, ORDER);
    }

    @Override
    public ODEEventHandler getHandler() {
        return handler;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return value.applyAsDouble(state);
    }
}

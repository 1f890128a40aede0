package org.coldpleat.model.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.junit.jupiter.api.Test;

class RosenbrockIntegratorTest {
    /** Rates of a problem. */
    @FunctionalInterface
    private interface Rates {
        double[] at(double time, double[] state);
    }

    private static OrdinaryDifferentialEquation problem(int size, Rates rates) {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return size;
            }

            @Override
            public double[] computeDerivatives(double time, double[] state) {
                return rates.at(time, state);
            }
        };
    }

    /**
     * Kaps 1981: {@code y1' = -(s + 2) y1 + s y2^2, y2' = y1 - y2 - y2^2}, solved by {@code y1 = exp(-2 t), y2 = exp(-t)} for
     * any stiffness s; with the integral of y2 as a third component.
     */
    private static OrdinaryDifferentialEquation kaps(double stiffness) {
        return problem(3, (t, y) ->
                new double[] {-(stiffness + 2) * y[0] + stiffness * y[1] * y[1], y[0] - y[1] - y[1] * y[1], y[1]});
    }

    private static double[] kapsAt(double time) {
        return new double[] {Math.exp(-2 * time), Math.exp(-time), 1 - Math.exp(-time)};
    }

    private static RosenbrockIntegrator with(double longest, double tolerance, int size, int leading, boolean timed) {
        double[] tolerances = new double[size];
        Arrays.fill(tolerances, tolerance);
        return new RosenbrockIntegrator(1e-12, longest, tolerances, leading, 1e-7, timed);
    }

    private static double[] missOnFixedSteps(double stiffness, double step) {
        RosenbrockIntegrator integrator = with(step, 1e9, 3, 2, false);
        integrator.setInitialStepSize(step);
        double[] end = integrator
                .integrate(kaps(stiffness), new ODEState(0, kapsAt(0)), 1)
                .getPrimaryState();
        double[] known = kapsAt(1);
        return new double[] {Math.abs(end[0] - known[0]), Math.abs(end[1] - known[1]), Math.abs(end[2] - known[2])};
    }

    @Test
    void halvedStepsLeaveASixteenthOfTheError() {
        double[] coarse = missOnFixedSteps(1, 0.05);
        double[] fine = missOnFixedSteps(1, 0.025);
        for (int i = 0; i < 3; i++) {
            double order = Math.log(coarse[i] / fine[i]) / Math.log(2);
            assertEquals(4, order, 0.35, "order of component " + i + ", errors " + coarse[i] + " and " + fine[i]);
        }
    }

    @Test
    void stiffnessDoesNotHoldTheStepsDown() {
        RosenbrockIntegrator integrator = with(10, 1e-7, 3, 2, false);
        double[] end =
                integrator.integrate(kaps(1e6), new ODEState(0, kapsAt(0)), 5).getPrimaryState();
        double[] known = kapsAt(5);
        for (int i = 0; i < 3; i++) {
            // errors of some dozens of steps, each within 1e-7
            assertEquals(known[i], end[i], 3e-6);
        }
        // an explicit method would need a million and more
        assertTrue(integrator.getEvaluations() < 600, "evaluations " + integrator.getEvaluations());
    }

    /** Prothero and Robinson 1974: {@code y' = -s (y - cos t) - sin t}, solved by {@code y = cos t}. */
    @Test
    void ratesThatDependOnTheTimeAreFollowed() {
        RosenbrockIntegrator integrator = with(10, 1e-8, 1, 1, true);
        ODEStateAndDerivative end = integrator.integrate(
                problem(1, (t, y) -> new double[] {-1e4 * (y[0] - Math.cos(t)) - Math.sin(t)}),
                new ODEState(0, new double[] {1}),
                20);
        assertEquals(Math.cos(20), end.getPrimaryState()[0], 1e-6);
        assertTrue(integrator.getEvaluations() < 6000, "evaluations " + integrator.getEvaluations());
    }

    @Test
    void theWayBetweenTheEndsOfAStepIsTrueAsWell() {
        RosenbrockIntegrator integrator = with(10, 1e-8, 3, 2, false);
        double[] worst = new double[2];
        integrator.addStepHandler(step -> {
            double from = step.getPreviousState().getTime();
            double to = step.getCurrentState().getTime();
            for (int i = 0; i <= 8; i++) {
                double time = from + i * (to - from) / 8;
                ODEStateAndDerivative state = step.getInterpolatedState(time);
                worst[0] = Math.max(worst[0], Math.abs(state.getPrimaryState()[1] - Math.exp(-time)));
                worst[1] = Math.max(worst[1], Math.abs(state.getPrimaryDerivative()[1] + Math.exp(-time)));
            }
        });
        integrator.integrate(kaps(1), new ODEState(0, kapsAt(0)), 3);
        // the cubic is of order 3: a few tolerances; its slope loses one order more
        assertTrue(worst[0] < 1e-6, "way " + worst[0]);
        assertTrue(worst[1] < 1e-4, "slope " + worst[1]);
    }
}

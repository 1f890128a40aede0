package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * Smooth stretch of a start between two changes of the discrete state: one integration that ends at its target time or
 * where the first switch changes. Watches the valves that are shut for a swing to their opening pressure and back within
 * one step, which no sign at the step ends shows.
 */
final class StartLeg {
    /** Longest step [s]. */
    private static final double LONGEST_STEP = 600;

    /** Farthest points of the record from one another, over the time since the first turn [1], so that it reads well. */
    private static final double POINT_SPACING = 0.05;

    /** Farthest points of the record from one another [s]. */
    private static final double WIDEST_SPACING = 30;

    /** Volume kept to beside the temperatures, over the oil's own volume and for each kelvin [1/K]. */
    private static final double VOLUME_SHARE = 0.1;

    /** Tolerance below which an explicit method of order 8 is the cheaper one [K]. */
    private static final double FINE = 1e-7;

    /** Step of the temperatures for the derivatives of the rates [K]. */
    private static final double DIFFERENCE = 1e-4;

    private static final double SHORTEST_STEP = 1e-10;
    private static final double EVENT_TIME = 1e-10;
    private static final double EVENT_CHECK = 1e9;
    private static final int EVENT_STEPS = 100;
    /** Difference over opening pressure from which a shut valve is watched between steps [1]. */
    private static final double WATCH_FROM = 0.7;

    /** Excess over the opening pressure beyond which a swing between two step ends counts as an opening [1]. */
    private static final double HIDDEN = 1e-9;

    private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;

    /** Narrows a step to its ten-millionth. */
    private static final int GOLDEN_STEPS = 34;

    private final StartPlant plant;
    private final List<StartSwitch> switches;
    private final List<StartSwitch.Bypass> valves;
    private final double[] slopes;

    /** Points along the way, the ends of the steps among them, the start not. */
    final List<StartRun.Sample> samples = new ArrayList<>();

    /**
     * Highest point of a shut valve found between step ends.
     *
     * @param valve which
     * @param ratio difference over opening pressure [1]
     * @param sample state there
     */
    record Swing(int valve, double ratio, StartRun.Sample sample) {}

    final List<Swing> swings = new ArrayList<>();

    /** The switch that ended the leg, or null. */
    StartSwitch ended;

    /** Whether the leg ended because the gallery is full. */
    boolean filled;

    /** Time within a step at which a valve taken for shut would be open; NaN if none. */
    double hidden = Double.NaN;

    int evaluations;

    StartLeg(StartPlant plant, List<StartSwitch> switches, List<StartSwitch.Bypass> valves) {
        this.plant = plant;
        this.switches = switches;
        this.valves = valves;
        slopes = new double[valves.size()];
    }

    /** Integrates and returns where it ended. */
    ODEState run(double start, double[] state, double target) {
        double[] absolute = tolerances(plant.spec);
        double[] relative = new double[StartPlant.SIZE];
        double shortest = Math.min(SHORTEST_STEP, 1e-3 * (target - start));
        double longest = Math.min(LONGEST_STEP, target - start);
        AdaptiveStepsizeIntegrator integrator = plant.spec.tolerance() < FINE
                ? new DormandPrince853Integrator(shortest, longest, absolute, relative)
                : new RosenbrockIntegrator(
                        shortest,
                        longest,
                        absolute,
                        StartPlant.PUMPED,
                        DIFFERENCE,
                        plant.spec.trace().isPresent());
        for (StartSwitch item : switches) {
            if (item.isLive()) {
                integrator.addEventDetector(new Crossing(
                        s -> item.value(plant.oil(s.getTime(), s.getPrimaryState()), moment(s)), increasing -> {
                            if (increasing == item.isOn()) {
                                return Action.CONTINUE;
                            }
                            ended = item;
                            return Action.STOP;
                        }));
            }
        }
        if (plant.isFilling()) {
            double volume = plant.spec.galleryVolume();
            integrator.addEventDetector(new Crossing(
                    s -> {
                        double[] y = s.getPrimaryState();
                        return (y[StartPlant.FILTERED] + y[StartPlant.UNFILTERED]) / volume - 1;
                    },
                    increasing -> {
                        filled = true;
                        return Action.STOP;
                    }));
        }
        Arrays.fill(slopes, Double.NaN);
        integrator.addStepHandler(this::watch);
        ODEState end = integrator.integrate(new Equations(plant), new ODEState(start, state), target);
        evaluations = integrator.getEvaluations();
        return end;
    }

    private static double[] tolerances(StartUpSpec spec) {
        double heat = spec.tolerance()
                * spec.thermal().oilMass()
                * spec.engine().lubricant().heatCapacity(spec.startTemperature());
        double volume = spec.tolerance()
                * VOLUME_SHARE
                * spec.thermal().oilMass()
                / spec.engine().lubricant().at(spec.startTemperature()).density();
        double[] absolute = new double[StartPlant.SIZE];
        Arrays.fill(absolute, 0, StartPlant.PUMPED, spec.tolerance());
        Arrays.fill(absolute, StartPlant.PUMPED, StartPlant.PUMP_WORK, volume);
        Arrays.fill(absolute, StartPlant.PUMP_WORK, StartPlant.SIZE, heat);
        return absolute;
    }

    private StartPlant.Moment moment(ODEStateAndDerivative state) {
        return plant.at(state.getTime(), state.getPrimaryState());
    }

    private double ratio(StartSwitch.Bypass valve, ODEStateAndDerivative state) {
        return valve.ratio(moment(state));
    }

    private void watch(ODEStateInterpolator step) {
        ODEStateAndDerivative end = step.getCurrentState();
        double from = step.getPreviousState().getTime();
        double to = end.getTime();
        for (int i = 0; i < valves.size(); i++) {
            StartSwitch.Bypass valve = valves.get(i);
            if (valve.isOn()) {
                continue;
            }
            double last = ratio(valve, end);
            double first = ratio(valve, step.getPreviousState());
            if (Math.max(first, last) < WATCH_FROM) {
                slopes[i] = Double.NaN;
                continue;
            }
            double probe = 1e-3 * (to - from);
            double rising =
                    Double.isNaN(slopes[i]) ? ratio(valve, step.getInterpolatedState(from + probe)) - first : slopes[i];
            double falling = last - ratio(valve, step.getInterpolatedState(to - probe));
            slopes[i] = falling;
            if (rising > 0 && falling < 0) {
                follow(step, valve, from, to);
            }
            if (last > 1 + HIDDEN && Double.isNaN(hidden) && ended != valve) {
                hidden = to;
            }
        }
        plant.requirePlausible(end.getPrimaryState());
        int parts = (int) Math.ceil((to - from) / Math.min(WIDEST_SPACING, Math.max(1, POINT_SPACING * to)));
        for (int i = 1; i < parts; i++) {
            samples.add(sample(step.getInterpolatedState(from + i * (to - from) / parts)));
        }
        samples.add(sample(end));
    }

    private StartRun.Sample sample(ODEStateAndDerivative state) {
        return new StartRun.Sample(state.getTime(), state.getPrimaryState().clone(), moment(state));
    }

    /** Golden section toward the highest point of the ratio within a step. */
    private void follow(ODEStateInterpolator step, StartSwitch.Bypass valve, double from, double to) {
        double a = from;
        double b = to;
        double x = a + GOLDEN * (b - a);
        double y = b - GOLDEN * (b - a);
        double atX = ratio(valve, step.getInterpolatedState(x));
        double atY = ratio(valve, step.getInterpolatedState(y));
        for (int i = 0; i < GOLDEN_STEPS && b > a; i++) {
            if (atX > atY) {
                b = y;
                y = x;
                atY = atX;
                x = a + GOLDEN * (b - a);
                atX = ratio(valve, step.getInterpolatedState(x));
            } else {
                a = x;
                x = y;
                atX = atY;
                y = b - GOLDEN * (b - a);
                atY = ratio(valve, step.getInterpolatedState(y));
            }
        }
        ODEStateAndDerivative top = step.getInterpolatedState(atX > atY ? x : y);
        if (ratio(valve, top) > 1 + HIDDEN && Double.isNaN(hidden)) {
            hidden = top.getTime();
        }
        swings.add(new Swing(valve.which, ratio(valve, top), sample(top)));
    }

    /** The rates in the form the integrator wants. */
    private record Equations(StartPlant plant) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return StartPlant.SIZE;
        }

        @Override
        public double[] computeDerivatives(double time, double[] state) {
            return plant.rates(time, state);
        }
    }

    /** What to do at a crossing. */
    @FunctionalInterface
    private interface Answer {
        Action at(boolean increasing);
    }

    /** A crossing of zero in the form the integrator wants. */
    private static final class Crossing implements ODEEventDetector {
        private final ToDoubleFunction<ODEStateAndDerivative> value;
        private final ODEEventHandler handler;

        Crossing(ToDoubleFunction<ODEStateAndDerivative> value, Answer answer) {
            this.value = value;
            handler = (state, detector, increasing) -> answer.at(increasing);
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(EVENT_CHECK);
        }

        @Override
        public int getMaxIterationCount() {
            return EVENT_STEPS;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, EVENT_TIME, 0, 5);
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
}

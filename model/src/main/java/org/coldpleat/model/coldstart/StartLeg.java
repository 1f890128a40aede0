package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.numerics.RosenbrockIntegrator;
import org.coldpleat.model.numerics.ZeroCrossing;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.nonstiff.AdaptiveStepsizeIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * Smooth stretch of a start between two changes of the discrete state: one integration that ends at its target time or
 * where the first switch changes.
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

    private final StartEquations plant;
    private final List<StartSwitch> switches;
    private final List<StartSwitch.Bypass> valves;
    private final SwingWatch watch;

    /** Points along the way, the ends of the steps among them, the start not. */
    final List<StartRun.Sample> samples = new ArrayList<>();

    /** The switch that ended the leg, or null. */
    StartSwitch ended;

    /** Whether the leg ended because the gallery is full. */
    boolean filled;

    int evaluations;

    /** Whether the leg ends where a lid that friction holds turns, so that nothing of it needs keeping before. */
    private boolean turnAwaited;

    StartLeg(StartEquations plant, List<StartSwitch> switches, List<StartSwitch.Bypass> valves) {
        this.plant = plant;
        this.switches = switches;
        this.valves = valves;
        watch = new SwingWatch(plant, valves);
    }

    /** Integrates and returns where it ended. */
    ODEState run(double start, double[] state, double target) {
        double[] absolute = tolerances(plant.spec);
        double[] relative = new double[StartEquations.SIZE];
        double shortest = Math.min(SHORTEST_STEP, 1e-3 * (target - start));
        double longest = Math.min(LONGEST_STEP, target - start);
        AdaptiveStepsizeIntegrator integrator = plant.spec.tolerance() < FINE
                ? new DormandPrince853Integrator(shortest, longest, absolute, relative)
                : new RosenbrockIntegrator(
                        shortest,
                        longest,
                        absolute,
                        StartEquations.PUMPED,
                        DIFFERENCE,
                        plant.spec.trace().isPresent());
        for (StartSwitch item : switches) {
            if (item.isLive()) {
                integrator.addEventDetector(new ZeroCrossing(
                        s -> item.value(plant.oil(s.getTime(), s.getPrimaryState()), moment(s)), increasing -> {
                            if (increasing == item.isOn()) {
                                return Action.CONTINUE;
                            }
                            ended = item;
                            return Action.STOP;
                        }));
            }
        }
        for (StartSwitch.Bypass valve : valves) {
            if (plant.isRising(start, state, valve.which)) {
                turnAwaited = true;
                integrator.addEventDetector(new ZeroCrossing(
                        s -> plant.rise(s.getTime(), s.getPrimaryState(), valve.which), increasing -> Action.STOP));
            }
        }
        if (plant.hydraulics().isFilling()) {
            double volume = plant.spec.galleryVolume();
            integrator.addEventDetector(new ZeroCrossing(
                    s -> {
                        double[] y = s.getPrimaryState();
                        return (y[StartEquations.FILTERED] + y[StartEquations.UNFILTERED]) / volume - 1;
                    },
                    increasing -> {
                        filled = true;
                        return Action.STOP;
                    }));
        }
        integrator.addStepHandler(this::record);
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
        double[] absolute = new double[StartEquations.SIZE];
        Arrays.fill(absolute, 0, StartEquations.PUMPED, spec.tolerance());
        Arrays.fill(absolute, StartEquations.PUMPED, StartEquations.PUMP_WORK, volume);
        Arrays.fill(absolute, StartEquations.PUMP_WORK, StartEquations.SIZE, heat);
        return absolute;
    }

    private StartHydraulics.Moment moment(ODEStateAndDerivative state) {
        return plant.at(state.getTime(), state.getPrimaryState());
    }

    private void record(ODEStateInterpolator step) {
        watch.look(step, ended);
        ODEStateAndDerivative end = step.getCurrentState();
        double from = step.getPreviousState().getTime();
        double to = end.getTime();
        plant.requirePlausible(end.getPrimaryState());
        int parts = (int) Math.ceil((to - from) / Math.min(WIDEST_SPACING, Math.max(1, POINT_SPACING * to)));
        for (int i = 1; i < parts; i++) {
            samples.add(sample(step.getInterpolatedState(from + i * (to - from) / parts)));
        }
        samples.add(sample(end));
        if (!turnAwaited && plant.hydraulics().haveLidsMoved(moment(end))) {
            plant.hydraulics().settleLids(moment(end));
        }
    }

    private StartRun.Sample sample(ODEStateAndDerivative state) {
        return StartRun.Sample.of(state, moment(state));
    }

    /** Highest points of shut valves between the ends of steps. */
    List<SwingWatch.Swing> swings() {
        return watch.swings();
    }

    /** Time within a step at which a valve taken for shut would be open; NaN if none. */
    double hidden() {
        return watch.hidden();
    }

    /** The rates in the form the integrator wants. */
    private record Equations(StartEquations plant) implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return StartEquations.SIZE;
        }

        @Override
        public double[] computeDerivatives(double time, double[] state) {
            return plant.rates(time, state);
        }
    }
}

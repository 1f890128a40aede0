package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.numerics.GoldenSection;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * Watches the valves that are shut for a swing to their opening pressure and back within one step, which no sign at the
 * ends of the step shows. Work object of one leg.
 */
final class SwingWatch {
    /**
     * Highest point of a shut valve found between the ends of a step.
     *
     * @param valve which
     * @param ratio difference over opening pressure [1]
     * @param sample state there
     */
    record Swing(int valve, double ratio, StartRun.Sample sample) {}

    /** Difference over opening pressure from which a shut valve is watched between steps [1]. */
    private static final double WATCH_FROM = 0.7;

    /** Excess over the opening pressure beyond which a swing between two step ends counts as an opening [1]. */
    private static final double HIDDEN = 1e-9;

    /** Part of a step over which the slope at its end is taken [1]. */
    private static final double PROBE = 1e-3;

    /** Stretch to which the place of a highest point is narrowed, over the step [1]. */
    private static final double FINEST = 1e-7;

    private final StartEquations plant;
    private final List<StartSwitch.Bypass> valves;
    private final double[] slopes;
    private final List<Swing> swings = new ArrayList<>();
    private double hidden = Double.NaN;

    SwingWatch(StartEquations plant, List<StartSwitch.Bypass> valves) {
        this.plant = plant;
        this.valves = valves;
        slopes = new double[valves.size()];
        Arrays.fill(slopes, Double.NaN);
    }

    /** Looks at a step; a switch whose crossing ended it is left aside. */
    void look(ODEStateInterpolator step, StartSwitch ended) {
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
            double probe = PROBE * (to - from);
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
    }

    private void follow(ODEStateInterpolator step, StartSwitch.Bypass valve, double from, double to) {
        double middle = from + GoldenSection.CUT * (to - from);
        GoldenSection.Top top = GoldenSection.climb(
                time -> ratio(valve, step.getInterpolatedState(time)),
                from,
                middle,
                to,
                ratio(valve, step.getInterpolatedState(middle)),
                FINEST * (to - from),
                Double.POSITIVE_INFINITY);
        ODEStateAndDerivative state = step.getInterpolatedState(top.at());
        if (top.value() > 1 + HIDDEN && Double.isNaN(hidden)) {
            hidden = state.getTime();
        }
        swings.add(new Swing(valve.which, top.value(), StartRun.Sample.of(state, moment(state))));
    }

    private double ratio(StartSwitch.Bypass valve, ODEStateAndDerivative state) {
        return valve.ratio(moment(state));
    }

    private StartHydraulics.Moment moment(ODEStateAndDerivative state) {
        return plant.at(state.getTime(), state.getPrimaryState());
    }

    List<Swing> swings() {
        return swings;
    }

    /** Time within a step at which a valve taken for shut would be open; NaN if none. */
    double hidden() {
        return hidden;
    }
}

package org.coldpleat.model.coldstart;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * The same start on a fixed step, for checking {@link StartUp} and for timing: classical Runge-Kutta of order 4, valves
 * and fill stage switched at the ends of the steps only. Much slower for the same accuracy.
 *
 * @param closingTime end of the last step with an open bypass valve [s]; none if none opened
 * @param hotTime end of the step in which the oil got hot [s]
 * @param openSeconds steps with an open bypass valve, filling included [s]
 * @param unfilteredVolume [m3]
 * @param filteredVolume [m3]
 * @param oilTemperature at the end [K]
 * @param elementTemperature at the end [K]
 */
@Source("classical Runge-Kutta method, textbook")
@Validity("first order in the step wherever a valve moves; phases should be whole numbers of steps")
public record FixedStepStart(
        OptionalDouble closingTime,
        OptionalDouble hotTime,
        double openSeconds,
        double unfilteredVolume,
        double filteredVolume,
        double oilTemperature,
        double elementTemperature) {
    /**
     * Computes a start.
     *
     * @param step [s], above 0
     */
    public static FixedStepStart run(StartUpSpec spec, double step) {
        Require.positive("step", step, "s");
        StartEquations plant = new StartEquations(spec);
        List<StartSwitch> switches = StartRun.switchesOf(plant);
        List<StartPhase> phases = spec.schedule().phases();
        double[] y = plant.initialState();
        int index = 0;
        double phaseEnd = phases.get(0).duration();
        double open = 0;
        double closed = Double.NaN;
        double hot = Double.NaN;
        int steps = (int) Math.round(spec.end() / step);
        settle(plant, switches, 0, y);
        for (int i = 0; i < steps; i++) {
            double time = i * step;
            boolean wasOpen = plant.hydraulics().isAnyOpen();
            advance(plant, time, y, step);
            double now = (i + 1) * step;
            if (wasOpen) {
                open += step;
                closed = now;
            }
            boolean full = y[StartEquations.FILTERED] + y[StartEquations.UNFILTERED] >= spec.galleryVolume();
            if (plant.hydraulics().isFilling() && full) {
                plant.hydraulics().connect();
            }
            if (now > phaseEnd - 0.5 * step && index < phases.size() - 1) {
                index++;
                phaseEnd += phases.get(index).duration();
                plant.enter(phases.get(index));
            }
            settle(plant, switches, now, y);
            plant.hydraulics().settleLids(plant.at(now, y));
            hot = Double.isNaN(hot) && plant.oil(now, y) >= spec.hotTemperature() ? now : hot;
        }
        return new FixedStepStart(
                Double.isNaN(closed) ? OptionalDouble.empty() : OptionalDouble.of(closed),
                Double.isNaN(hot) ? OptionalDouble.empty() : OptionalDouble.of(hot),
                open,
                y[StartEquations.UNFILTERED],
                y[StartEquations.FILTERED],
                plant.oil(spec.end(), y),
                plant.element(spec.end(), y));
    }

    private static void settle(StartEquations plant, List<StartSwitch> switches, double time, double[] y) {
        for (int pass = 0; pass < 2; pass++) {
            for (StartSwitch item : switches) {
                boolean belongsOn = item.value(plant.oil(time, y), plant.at(time, y)) > 0;
                if (item instanceof StartSwitch.Bypass && belongsOn != item.isOn()) {
                    item.set(belongsOn);
                }
            }
        }
    }

    private static void advance(StartEquations plant, double time, double[] y, double h) {
        double[] a = plant.rates(time, y);
        double[] b = plant.rates(time + h / 2, moved(y, a, h / 2));
        double[] c = plant.rates(time + h / 2, moved(y, b, h / 2));
        double[] d = plant.rates(time + h, moved(y, c, h));
        for (int i = 0; i < y.length; i++) {
            y[i] += h / 6 * (a[i] + 2 * b[i] + 2 * c[i] + d[i]);
        }
    }

    private static double[] moved(double[] y, double[] rate, double h) {
        double[] moved = y.clone();
        for (int i = 0; i < y.length; i++) {
            moved[i] += h * rate[i];
        }
        return moved;
    }
}

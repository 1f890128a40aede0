package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.List;

/**
 * What the engine does from the first turn: phases one after the other, each at a constant speed.
 *
 * @param phases at least one; only the last may be endless
 */
public record StartSchedule(List<StartPhase> phases) {
    /**
     * A sound schedule.
     *
     * @throws IllegalArgumentException on the first of {@link #faults}
     */
    public StartSchedule {
        phases = List.copyOf(phases);
        List<StartFault> faults = faults(phases);
        if (!faults.isEmpty()) {
            StartFault first = faults.get(0);
            throw new IllegalArgumentException("start schedule, phase " + first.phase() + " (from 0): " + first.kind()
                    + ", was " + first.value() + " (durations above 0 s, speeds at least 0 rev/s, heat at least 0 W)");
        }
    }

    /** One endless phase. */
    public static StartSchedule steady(double speed, double heatToMetal, double heatToOil) {
        return new StartSchedule(List.of(StartPhase.endless(speed, heatToMetal, heatToOil)));
    }

    /** All that is wrong with a list of phases, in their order; empty if it makes a schedule. */
    public static List<StartFault> faults(List<StartPhase> phases) {
        List<StartFault> faults = new ArrayList<>();
        if (phases.isEmpty()) {
            faults.add(new StartFault(StartFault.Kind.NO_PHASES, -1, 0));
        }
        boolean turns = phases.isEmpty();
        for (int i = 0; i < phases.size(); i++) {
            StartPhase phase = phases.get(i);
            if (!(phase.duration() > 0)) {
                faults.add(new StartFault(StartFault.Kind.DURATION_NOT_POSITIVE, i, phase.duration()));
            }
            if (phase.isEndless() && i < phases.size() - 1) {
                faults.add(new StartFault(StartFault.Kind.ENDLESS_BEFORE_LAST, i, phase.duration()));
            }
            if (!isSound(phase.speed())) {
                faults.add(new StartFault(StartFault.Kind.SPEED_NEGATIVE, i, phase.speed()));
            }
            if (!isSound(phase.heatToMetal())) {
                faults.add(new StartFault(StartFault.Kind.HEAT_NEGATIVE, i, phase.heatToMetal()));
            }
            if (!isSound(phase.heatToOil())) {
                faults.add(new StartFault(StartFault.Kind.HEAT_NEGATIVE, i, phase.heatToOil()));
            }
            turns |= phase.speed() != 0 || phase.heatToMetal() > 0 || phase.heatToOil() > 0;
        }
        if (!turns) {
            faults.add(new StartFault(StartFault.Kind.NEVER_TURNS, -1, 0));
        }
        return List.copyOf(faults);
    }

    /** End of the last phase [s]; infinite if it is endless. */
    public double duration() {
        double sum = 0;
        for (StartPhase phase : phases) {
            sum += phase.duration();
        }
        return sum;
    }

    private static boolean isSound(double value) {
        return value >= 0 && Double.isFinite(value);
    }
}

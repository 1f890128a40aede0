package org.coldpleat.model.coldstart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.coldpleat.model.thermal.HeatBalance;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;

/** One run through the schedule: leg after leg, with the discrete state settled in between. Used once. */
final class StartRun {
    /** Moment of the record. */
    record Sample(double time, double[] state, StartHydraulics.Moment moment) {
        static Sample of(ODEStateAndDerivative state, StartHydraulics.Moment moment) {
            return new Sample(state.getTime(), state.getPrimaryState(), moment);
        }
    }

    private static final int MOST_LEGS = 20_000;
    private static final double SAME_TIME = 1e-9;
    /** A shut valve this close below its opening pressure at its highest point is called touched [1]. */
    private static final double TOUCH = 1e-4;

    private final StartUpSpec spec;
    private final StartEquations plant;
    private final List<StartSwitch> switches = new ArrayList<>();
    private final List<StartSwitch.Bypass> valves = new ArrayList<>();
    private final StartRecord record;

    private double time;
    private double[] state;
    private final double[] openSeconds = new double[2];
    private double fillTime = Double.NaN;
    private double[] atFill;
    private int evaluations;
    private double metalHeat;
    private double oilHeat;

    StartRun(StartUpSpec spec) {
        this.spec = spec;
        plant = new StartEquations(spec);
        state = plant.initialState();
        atFill = state.clone();
        switches.addAll(switchesOf(plant));
        for (StartSwitch item : switches) {
            if (item instanceof StartSwitch.Bypass valve) {
                valves.add(valve);
            }
        }
        record = new StartRecord(plant, valves);
        if (!plant.hydraulics().isFilling()) {
            fillTime = 0;
        }
    }

    /** All switches of a plant: bypass valves, their stops, relief valves, and the oil being hot. */
    static List<StartSwitch> switchesOf(StartEquations plant) {
        List<StartSwitch> found = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            int which = i;
            plant.hydraulics().valve(i).ifPresent(valve -> {
                found.add(new StartSwitch.Bypass(plant, which, valve));
                found.add(new StartSwitch.Stop(plant, which));
            });
        }
        for (int i = 0; i < plant.spec.engine().reliefs().size(); i++) {
            found.add(
                    new StartSwitch.ReliefValve(i, plant.spec.engine().reliefs().get(i)));
        }
        found.add(new StartSwitch.Hot(plant.spec.hotTemperature()));
        return found;
    }

    StartUpResult run() {
        StartStatus status;
        try {
            status = follow();
        } catch (StartFailure missing) {
            status = StartStatus.CIRCUIT_NOT_SOLVED;
        } catch (MathRuntimeException stalled) {
            status = StartStatus.STEP_TOO_SMALL;
        }
        return result(status);
    }

    private StartStatus follow() {
        List<StartPhase> phases = spec.schedule().phases();
        int index = 0;
        double phaseEnd = phases.get(0).duration();
        note(StartEvent.Kind.PHASE, 0, plant.at(time, state));
        settle(null);
        double detour = Double.NaN;
        for (int legs = 0; legs < MOST_LEGS; legs++) {
            double target = Math.min(spec.end(), phaseEnd);
            if (detour > time + SAME_TIME) {
                target = Math.min(target, detour);
            }
            if (target - time > SAME_TIME) {
                double[] lids = plant.hydraulics().lids();
                StartLeg leg = new StartLeg(plant, switches, valves);
                ODEState end = leg.run(time, state.clone(), target);
                evaluations += leg.evaluations;
                if (leg.hidden() < end.getTime() - SAME_TIME && leg.hidden() > time + SAME_TIME) {
                    detour = leg.hidden();
                    plant.hydraulics().hang(lids);
                    continue;
                }
                accept(leg, end);
                if (leg.filled) {
                    connect();
                } else if (leg.ended != null) {
                    flip(leg.ended, plant.at(time, state));
                    settle(leg.ended);
                    record.keep(new Sample(time, state, plant.at(time, state)));
                    continue;
                } else if (time == detour) {
                    settle(null);
                }
            } else {
                time = target;
            }
            if (time >= spec.end() - SAME_TIME) {
                return StartStatus.COMPLETED;
            }
            if (time >= phaseEnd - SAME_TIME) {
                index++;
                phaseEnd += phases.get(index).duration();
                plant.enter(phases.get(index));
                note(StartEvent.Kind.PHASE, index, plant.at(time, state));
                settle(null);
            }
        }
        return StartStatus.TOO_MANY_EVENTS;
    }

    private void connect() {
        plant.hydraulics().connect();
        fillTime = time;
        atFill = state.clone();
        note(StartEvent.Kind.GALLERY_FILLED, 0, plant.at(time, state));
        settle(null);
    }

    private void accept(StartLeg leg, ODEState end) {
        double seconds = end.getTime() - time;
        metalHeat += seconds * plant.phase().heatToMetal();
        oilHeat += seconds * plant.phase().heatToOil();
        if (plant.hydraulics().isAnyOpen()) {
            openSeconds[plant.hydraulics().isFilling() ? 0 : 1] += seconds;
        }
        for (Sample sample : leg.samples) {
            record.add(sample, sample.time() == end.getTime());
        }
        time = end.getTime();
        state = end.getPrimaryState();
        plant.hydraulics().settleLids(plant.at(time, state));
        for (SwingWatch.Swing swing : leg.swings()) {
            record.ratio(swing.ratio(), swing.sample().time());
            if (swing.ratio() > 1 - TOUCH) {
                record.event(StartEvent.Kind.VALVE_TOUCHED, swing.valve(), swing.sample());
            }
        }
    }

    /** Brings all switches to where they belong now, except the one whose crossing was just located. */
    private void settle(StartSwitch located) {
        Set<StartSwitch> moved = new HashSet<>();
        boolean again = true;
        while (again) {
            again = false;
            StartHydraulics.Moment moment = plant.at(time, state);
            double oil = plant.oil(time, state);
            for (StartSwitch item : switches) {
                boolean belongsOn = item.value(oil, moment) > 0;
                if (item != located && item.isLive() && belongsOn != item.isOn() && moved.add(item)) {
                    flip(item, moment);
                    again = true;
                    break;
                }
            }
        }
        plant.hydraulics().settleLids(plant.at(time, state));
        record.add(new Sample(time, state, plant.at(time, state)), true);
    }

    private void flip(StartSwitch item, StartHydraulics.Moment before) {
        if (item instanceof StartSwitch.Bypass valve && !valve.isOn()) {
            record.ratio(Math.max(1, valve.ratio(before)), time);
        }
        item.set(!item.isOn());
        StartHydraulics.Moment after = item.isLaw() ? plant.at(time, state) : before;
        note(item.isOn() ? item.turnsOn : item.turnsOff, item.which, after);
    }

    private void note(StartEvent.Kind kind, int which, StartHydraulics.Moment moment) {
        record.event(kind, which, new Sample(time, state, moment));
    }

    private StartUpResult result(StartStatus status) {
        double[] begin = plant.initialState();
        boolean neverFull = Double.isNaN(fillTime);
        double[] middle = neverFull ? state : atFill;
        double full = neverFull ? time : fillTime;
        OptionalDouble closed = record.last(StartEvent.Kind.VALVE_CLOSES);
        boolean openAtEnd = plant.hydraulics().isAnyOpen();
        return new StartUpResult(
                status,
                time,
                record.events(),
                tally(full, openSeconds[0], begin, middle),
                tally(time - full, openSeconds[1], middle, state),
                neverFull ? OptionalDouble.empty() : OptionalDouble.of(fillTime),
                openAtEnd ? OptionalDouble.empty() : closed,
                openAtEnd,
                record.last(StartEvent.Kind.HOT_REACHED),
                record.partPeaks(),
                record.dropPeak(),
                record.ratioPeak(),
                record.points(),
                spec.trace().isPresent() ? Optional.empty() : Optional.of(balance(begin)),
                evaluations);
    }

    private static BypassTally tally(double seconds, double open, double[] from, double[] to) {
        return new BypassTally(
                seconds,
                open,
                to[StartEquations.UNFILTERED] - from[StartEquations.UNFILTERED],
                to[StartEquations.FILTERED] - from[StartEquations.FILTERED],
                to[StartEquations.PUMPED] - from[StartEquations.PUMPED]);
    }

    private HeatBalance balance(double[] begin) {
        double[] stored = plant.stored(begin, state);
        return new HeatBalance(
                state[StartEquations.PUMP_WORK],
                state[StartEquations.FILM],
                metalHeat,
                oilHeat,
                state[StartEquations.OIL_LOSS],
                state[StartEquations.METAL_LOSS],
                state[StartEquations.COOLANT_LOSS],
                stored[0],
                stored[1],
                stored[2],
                stored[3]);
    }
}

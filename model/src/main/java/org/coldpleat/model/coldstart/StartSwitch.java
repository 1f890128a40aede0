package org.coldpleat.model.coldstart;

import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.valve.SpringValve;

/** Something that is either on or off during a start and changes where a value passes zero. Used by one thread. */
abstract class StartSwitch {
    final StartEvent.Kind turnsOn;
    final StartEvent.Kind turnsOff;
    final int which;
    private boolean on;

    private StartSwitch(StartEvent.Kind turnsOn, StartEvent.Kind turnsOff, int which) {
        this.turnsOn = turnsOn;
        this.turnsOff = turnsOff;
        this.which = which;
    }

    /** Above zero where the switch belongs on [1]. */
    abstract double value(double oil, StartHydraulics.Moment moment);

    boolean isOn() {
        return on;
    }

    /** Whether it can still change. */
    boolean isLive() {
        return true;
    }

    /** Whether the circuit behaves otherwise once it has changed. */
    boolean isLaw() {
        return false;
    }

    void set(boolean nowOn) {
        on = nowOn;
    }

    /** A bypass valve: opens at its opening pressure, shuts at its closing pressure. */
    static final class Bypass extends StartSwitch {
        private final StartEquations plant;
        private final double opening;
        private final double closing;

        Bypass(StartEquations plant, int which, SpringValve valve) {
            super(StartEvent.Kind.VALVE_OPENS, StartEvent.Kind.VALVE_CLOSES, which);
            this.plant = plant;
            opening = valve.openingPressure();
            closing = valve.shutsAt();
        }

        @Override
        double value(double oil, StartHydraulics.Moment moment) {
            return moment.difference(which) / (isOn() ? closing : opening) - 1;
        }

        /** Difference over opening pressure [1]. */
        double ratio(StartHydraulics.Moment moment) {
            return moment.difference(which) / opening;
        }

        double opening() {
            return opening;
        }

        @Override
        boolean isLaw() {
            return closing < opening;
        }

        @Override
        void set(boolean nowOn) {
            super.set(nowOn);
            plant.hydraulics().mark(which, nowOn);
        }
    }

    /** The stop of a bypass valve's lid. */
    static final class Stop extends StartSwitch {
        private final StartEquations plant;

        Stop(StartEquations plant, int which) {
            super(StartEvent.Kind.FULL_LIFT, StartEvent.Kind.BELOW_FULL_LIFT, which);
            this.plant = plant;
        }

        @Override
        double value(double oil, StartHydraulics.Moment moment) {
            if (!plant.hydraulics().isOpen(which)) {
                return -1;
            }
            return moment.difference(which)
                            / plant.hydraulics().valve(which).orElseThrow().fullLiftPressure()
                    - 1;
        }
    }

    /** A relief valve; an ideal one holds its setting while open, so that its flow tells how far it is open. */
    static final class ReliefValve extends StartSwitch {
        private final Relief relief;

        ReliefValve(int which, Relief relief) {
            super(StartEvent.Kind.RELIEF_OPENS, StartEvent.Kind.RELIEF_CLOSES, which);
            this.relief = relief;
        }

        @Override
        double value(double oil, StartHydraulics.Moment moment) {
            OperatingPoint point = moment.point();
            double flow = point.reliefFlows().get(which);
            if (relief.law().isEmpty() && flow > 0) {
                return flow / point.pumpFlow();
            }
            boolean outlet = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
            return (outlet ? point.pumpPressure() : point.galleryPressure()) / relief.setPressure() - 1;
        }
    }

    /** The oil being hot for the first time. */
    static final class Hot extends StartSwitch {
        private final double temperature;

        Hot(double temperature) {
            super(StartEvent.Kind.HOT_REACHED, StartEvent.Kind.HOT_REACHED, 0);
            this.temperature = temperature;
        }

        @Override
        double value(double oil, StartHydraulics.Moment moment) {
            return oil - temperature;
        }

        @Override
        boolean isLive() {
            return !isOn();
        }
    }
}

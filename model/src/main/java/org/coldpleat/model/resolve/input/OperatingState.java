package org.coldpleat.model.resolve.input;

import org.coldpleat.shared.source.Source;

/**
 * One state of a setting: what the filter is put to.
 *
 * @param setting {@code engine} or {@code flowStand}
 * @param name name of the state
 * @param drive flow [m3/s] on a stand, engine speed [rev/s] in an engine
 * @param metal how warm the metal around the bearings is
 */
public record OperatingState(String setting, String name, double drive, Metal metal) {
    /** How warm the metal of the engine is beside its oil. */
    public enum Metal {
        /** As cold as the oil, as in a start after a night outside. */
        SOAKED,
        /** Ahead of the oil or behind it by what running brings about. */
        RUNNING
    }

    /** Fastest engine speed that is taken for a start where a state does not say how warm its metal is [rev/s]: 1300 rpm. */
    @Source("common practice, no source: first idles lie below, driving above")
    private static final double FASTEST_FIRST_IDLE = 1300.0 / 60;

    public static final String ENGINE = "engine";
    public static final String FLOW_STAND = "flowStand";

    /** A state whose metal follows from its speed. */
    public static OperatingState of(String setting, String name, double drive) {
        boolean running = setting.equals(ENGINE) && drive > FASTEST_FIRST_IDLE;
        return new OperatingState(setting, name, drive, running ? Metal.RUNNING : Metal.SOAKED);
    }

    /** The same state at another drive. */
    public OperatingState withDrive(double other) {
        return new OperatingState(setting, name, other, metal);
    }

    public boolean isEngine() {
        return setting.equals(ENGINE);
    }
}

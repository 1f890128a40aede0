package org.coldpleat.model.resolve.input;

/**
 * One state of a setting: what the filter is put to.
 *
 * @param setting {@code engine} or {@code flowStand}
 * @param name name of the state
 * @param drive flow [m3/s] on a stand, engine speed [rev/s] in an engine
 */
public record OperatingState(String setting, String name, double drive) {
    public static final String ENGINE = "engine";
    public static final String FLOW_STAND = "flowStand";

    public boolean isEngine() {
        return setting.equals(ENGINE);
    }
}

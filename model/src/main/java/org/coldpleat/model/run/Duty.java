package org.coldpleat.model.run;

/**
 * One state of a setting: what the filter is put to.
 *
 * @param setting {@code engine} or {@code flowStand}
 * @param name name of the state
 * @param drive flow [m3/s] on a stand, engine speed [rev/s] in an engine
 */
record Duty(String setting, String name, double drive) {
    static final String ENGINE = "engine";
    static final String FLOW_STAND = "flowStand";

    boolean isEngine() {
        return setting.equals(ENGINE);
    }
}

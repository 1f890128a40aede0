package org.coldpleat.model.bench;

import org.coldpleat.shared.quantity.Require;

/**
 * One line of a falling-head log.
 *
 * @param time since the start [s]
 * @param head height of the oil level above the free outlet [m], above 0
 * @param temperature of the oil in the filter [K]
 */
public record DrainReading(double time, double head, double temperature) {
    public DrainReading {
        Require.notNegative("time", time, "s");
        Require.positive("head", head, "m");
        Require.positive("temperature", temperature, "K");
    }
}

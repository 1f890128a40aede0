package org.coldpleat.shared.casefile;

/**
 * One reading of a logged start.
 *
 * @param time since the first turn of the engine [s]
 * @param temperature of the oil [K]
 */
public record LoggedTemperature(double time, double temperature) {}

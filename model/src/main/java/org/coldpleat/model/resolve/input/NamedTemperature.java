package org.coldpleat.model.resolve.input;

/**
 * An oil temperature the reader wants to see by name.
 *
 * @param name such as {@code winter start}
 * @param temperature [K]
 */
public record NamedTemperature(String name, double temperature) {}

package org.coldpleat.model.flow;

/**
 * Pressure drop together with its slope at one flow.
 *
 * @param pressureDrop pressure before minus pressure after [Pa]
 * @param slope d(pressure drop)/d(flow) [Pa s/m3]
 */
public record Drop(double pressureDrop, double slope) {}

package org.coldpleat.model.flow;

/**
 * Flow through a part together with its slope at one pressure difference.
 *
 * @param flowRate volume flow [m3/s]
 * @param slope d(flow)/d(pressure difference) [m3/(s Pa)]
 */
public record FlowWithSlope(double flowRate, double slope) {}

package org.coldpleat.model.coldstart.plan;

/**
 * What a filter holds that keeps a temperature of its own.
 *
 * @param oilVolume oil in the can [m3]; 0 if its size is not known, the filter then has the temperature of the oil
 * @param solidHeat heat capacity of can and element [J/K]
 */
public record HoldUp(double oilVolume, double solidHeat) {}

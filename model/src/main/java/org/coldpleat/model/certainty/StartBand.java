package org.coldpleat.model.certainty;

/**
 * A result of a start with its band. The band leans to either side by how far the unknowns move the result that way; a
 * time or volume ends at 0.
 *
 * @param value best estimate [SI]
 * @param low low end of the 95 % band [SI]
 * @param high high end [SI]
 */
public record StartBand(double value, double low, double high) {}

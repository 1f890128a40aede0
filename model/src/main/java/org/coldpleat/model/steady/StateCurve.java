package org.coldpleat.model.steady;

/**
 * One candidate in one state over oil temperature; arrays of equal length, coldest first.
 *
 * @param temperature [K]
 * @param pressureDrop drop of the whole filter [Pa]
 * @param valveDifference what the faces of the bypass valve see [Pa]; NaN without a valve
 * @param bypassShare share of the oil that goes round the medium [1]
 */
public record StateCurve(double[] temperature, double[] pressureDrop, double[] valveDifference, double[] bypassShare) {}

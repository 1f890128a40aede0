package org.coldpleat.model.pleat;

/** Resistance of one pack over the resistance of its medium, prepared once for many values. Immutable. */
public interface PackCurve {
    /**
     * One point of the curve.
     *
     * @param mediumResistance thickness over permeability [1/m], above 0
     */
    Point at(double mediumResistance);

    /** The pack as a whole with such a medium; see {@link #at}. */
    PackSummary summary(double mediumResistance);

    /** Medium that the oil passes, whatever it resists [m2]. */
    double effectiveArea();

    /**
     * A point of the curve.
     *
     * @param resistance pressure drop of the pack over viscosity and flow [1/m3]
     * @param slope d ln(pack resistance) / d ln(medium resistance) [1], above 0
     */
    record Point(double resistance, double slope) {}
}

package org.coldpleat.model.pleat;

/** A pack of filter medium that oil creeps through: gives its resistance from the resistance of the medium. */
public sealed interface PackModel permits PleatPack, FlatPack {
    /** The resistance of the pack over that of a medium that is the same everywhere. */
    PackCurve curve();

    /**
     * The pack as a whole with the same medium everywhere.
     *
     * @param mediumResistance thickness over permeability [1/m], above 0
     */
    default PackSummary summary(double mediumResistance) {
        return curve().summary(mediumResistance);
    }

    /**
     * Solves the pack with the same medium everywhere, in cells: what {@link #solve(double[])} gives for equal cells, which
     * differs from {@link #summary} by what the cells are off.
     *
     * @param mediumResistance thickness over permeability [1/m], above 0
     */
    PackResult solve(double mediumResistance);

    /**
     * Solves the pack with a medium resistance per cell, as dirt leaves it.
     *
     * @param mediumResistance [1/m], double[cells], above 0; cell 0 at the inlet end of the leg; at least 2 cells. Cell
     *     sizes are those of {@link PackResult#cellAreas()} for the same number of cells.
     */
    PackResult solve(double[] mediumResistance);

    /** Medium that the oil passes, whatever it resists [m2]. */
    double effectiveArea();

    /** Pack resistance: pressure drop over viscosity and flow [1/m3], for a medium resistance [1/m]. */
    default double resistance(double mediumResistance) {
        return curve().at(mediumResistance).resistance();
    }
}

package org.coldpleat.model.loading;

import java.util.Arrays;
import java.util.List;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * Dirt in an element, cell by cell along the pleat leg and by size class. What falls on a cell follows the flow through
 * it: a crowded pack takes dirt at the ends of its legs first; as those resist more, the flow turns to the middle, and in
 * the end it is even. Medium outside the cells (the folds) takes the rest of the flow with its dirt, which is kept in
 * the books but resists as the cell beside it.
 *
 * <p>Dirt raises the resistance across the sheet and along it alike: a pack model that lets oil creep inside the sheet
 * divides its in-plane permeability by the same ratio as the through-plane one.
 *
 * @param cellAreas area of medium of each cell [m2], double[cells], in the order of the pleat pack, above 0
 * @param massPerArea dirt per area [kg/m2], double[cells][classes], at least 0
 * @param foldMass dirt caught outside the cells [kg], double[classes], at least 0
 */
@Source("dirt follows the local flow: derived here, for particles without inertia")
public record ElementLoad(double[] cellAreas, double[][] massPerArea, double[] foldMass) {
    /** What rounding may leave of the sum of the flow shares [1]. */
    private static final double SUM_TOLERANCE = 1e-9;

    /** Fullness from where on a notice is given [1]: a complete-blocking medium resists tenfold there. */
    private static final double NEARLY_PLUGGED = 0.9;

    public ElementLoad {
        cellAreas = cellAreas.clone();
        massPerArea = copy(massPerArea);
        foldMass = foldMass.clone();
        Require.atLeast("number of cells", cellAreas.length, 1, "1");
        Require.entries("massPerArea", massPerArea.length, cellAreas.length);
        for (double cellArea : cellAreas) {
            Require.positive("cellAreas", cellArea, "m2");
        }
        for (double[] cell : massPerArea) {
            Require.entries("massPerArea of a cell", cell.length, foldMass.length);
            for (double mass : cell) {
                Require.notNegative("massPerArea", mass, "kg/m2");
            }
        }
        for (double mass : foldMass) {
            Require.notNegative("foldMass", mass, "kg");
        }
    }

    /** A clean element with its cell areas [m2], double[cells], and a number of size classes. */
    public static ElementLoad clean(double[] cellAreas, int classes) {
        return new ElementLoad(cellAreas, new double[cellAreas.length][classes], new double[classes]);
    }

    /** A clean element of a total area [m2] in one cell: medium alone, no pleat channels. */
    public static ElementLoad clean(double area, int classes) {
        return clean(new double[] {area}, classes);
    }

    @Override
    public double[] cellAreas() {
        return cellAreas.clone();
    }

    @Override
    public double[][] massPerArea() {
        return copy(massPerArea);
    }

    @Override
    public double[] foldMass() {
        return foldMass.clone();
    }

    /** Number of cells along the leg. */
    public int cells() {
        return cellAreas.length;
    }

    /** Number of size classes. */
    public int classes() {
        return foldMass.length;
    }

    /**
     * Share of the element flow through each cell [1], double[cells]; what is left to 1 passes outside the cells.
     *
     * <p>Where legs touch, oil that came through a fold or farther out can cross back within the sheets. It left its dirt
     * where it came in, so such a cell has no share.
     *
     * @param relativeFaceVelocities face velocity over the mean one (flow over effective area) [1], double[cells]
     * @param effectiveArea area that the mean is taken over [m2], above 0
     */
    public double[] flowShares(double[] relativeFaceVelocities, double effectiveArea) {
        Require.entries("relativeFaceVelocities", relativeFaceVelocities.length, cells());
        Require.positive("effectiveArea", effectiveArea, "m2");
        double[] shares = new double[cells()];
        for (int cell = 0; cell < shares.length; cell++) {
            shares[cell] = Math.max(0, relativeFaceVelocities[cell]) * cellAreas[cell] / effectiveArea;
        }
        return shares;
    }

    /** The element after dirt came with evenly spread flow, none outside the cells: [kg], double[classes]. */
    public ElementLoad deposit(double[] mass) {
        double area = Arrays.stream(cellAreas).sum();
        return deposit(Arrays.stream(cellAreas).map(cell -> cell / area).toArray(), mass);
    }

    /**
     * The element after dirt came.
     *
     * @param localFlowShare share of the element flow through each cell [1], double[cells], at least 0, sum at most 1
     * @param mass dirt caught by the whole element [kg], double[classes], at least 0
     */
    public ElementLoad deposit(double[] localFlowShare, double[] mass) {
        Require.entries("localFlowShare", localFlowShare.length, cells());
        Require.entries("mass", mass.length, classes());
        double sum = 0;
        for (double share : localFlowShare) {
            sum += Require.notNegative("localFlowShare", share, "1");
        }
        if (sum > 1 + SUM_TOLERANCE) {
            throw new IllegalArgumentException("localFlowShare must sum to at most 1 [1], sum was " + sum);
        }
        double[][] loaded = copy(massPerArea);
        double[] outside = foldMass.clone();
        for (int i = 0; i < mass.length; i++) {
            Require.notNegative("mass", mass[i], "kg");
            for (int cell = 0; cell < loaded.length; cell++) {
                loaded[cell][i] += mass[i] * localFlowShare[cell] / cellAreas[cell];
            }
            outside[i] += mass[i] * Math.max(0, 1 - sum);
        }
        return new ElementLoad(cellAreas, loaded, outside);
    }

    /** Dirt in the element by class [kg], double[classes], folds included. */
    public double[] massByClass() {
        double[] mass = foldMass.clone();
        for (int cell = 0; cell < cells(); cell++) {
            for (int i = 0; i < mass.length; i++) {
                mass[i] += massPerArea[cell][i] * cellAreas[cell];
            }
        }
        return mass;
    }

    /** All dirt in the element [kg]. */
    public double mass() {
        return Arrays.stream(massByClass()).sum();
    }

    /** Resistance ratio R/R0 of each cell [1], double[cells], from the dirt of all classes together. */
    public double[] resistanceRatios(BlockingLaw law) {
        double[] ratios = new double[cells()];
        for (int cell = 0; cell < ratios.length; cell++) {
            ratios[cell] = law.resistanceRatio(Arrays.stream(massPerArea[cell]).sum());
        }
        return ratios;
    }

    /** Resistance ratio of the medium as a whole [1]: cells side by side under one pressure difference. */
    public double mediumRatio(BlockingLaw law) {
        double[] ratios = resistanceRatios(law);
        double area = 0;
        double conductance = 0;
        for (int cell = 0; cell < ratios.length; cell++) {
            area += cellAreas[cell];
            conductance += cellAreas[cell] / ratios[cell];
        }
        return area / conductance;
    }

    /** Dirt of the fullest cell over the limit mass of the law [1]; 0 for a law without a limit. */
    public double fullness(BlockingLaw law) {
        double fullest = 0;
        for (double[] cell : massPerArea) {
            fullest = Math.max(fullest, Arrays.stream(cell).sum());
        }
        return fullest / law.limitMass();
    }

    /** Findings: the element is nearly plugged. */
    public List<Notice> notices(BlockingLaw law, String place) {
        double fullness = fullness(law);
        if (fullness < NEARLY_PLUGGED) {
            return List.of();
        }
        return List.of(Notice.of(
                "loading.elementBlocked", Severity.CAUTION, place, Amount.mass(mass()), Amount.percent(fullness)));
    }

    private static double[][] copy(double[][] values) {
        return Arrays.stream(values).map(double[]::clone).toArray(double[][]::new);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ElementLoad that
                && Arrays.equals(cellAreas, that.cellAreas)
                && Arrays.deepEquals(massPerArea, that.massPerArea)
                && Arrays.equals(foldMass, that.foldMass);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(cellAreas) + Arrays.deepHashCode(massPerArea);
    }

    @Override
    public String toString() {
        return "ElementLoad[" + cells() + " cells, " + mass() + " kg]";
    }
}

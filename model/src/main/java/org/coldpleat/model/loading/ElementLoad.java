package org.coldpleat.model.loading;

import static org.coldpleat.model.loading.Limits.above;
import static org.coldpleat.model.loading.Limits.atLeast;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.source.Source;

/**
 * Dirt in an element, cell by cell along the pleat leg and by size class. Cells have equal areas of medium and lie in
 * the order of the pleat pack. What falls on a cell follows the flow through it: a crowded pack takes dirt at the ends
 * of its legs first, and as those resist more, the flow evens out.
 *
 * <p>Dirt raises the resistance across the sheet and along it alike: a pack model that lets oil creep inside the sheet
 * divides its in-plane permeability by the same ratio as the through-plane one.
 *
 * @param area effective area of medium of the element [m2], above 0
 * @param massPerArea dirt per area [kg/m2], double[cells][classes], at least 0
 */
@Source("dirt follows the local flow: derived here, for particles without inertia")
public record ElementLoad(double area, double[][] massPerArea) {
    /** What rounding may leave of the sum of the flow shares [1]. */
    private static final double SUM_TOLERANCE = 1e-9;

    /** Fullness from where on a notice is given [1]: a complete-blocking medium resists tenfold there. */
    private static final double NEARLY_PLUGGED = 0.9;

    public ElementLoad {
        above(area, 0, "area", "m2");
        massPerArea = copy(massPerArea);
        atLeast(massPerArea.length, 1, "number of cells", "[1]");
        for (double[] cell : massPerArea) {
            Limits.sameLength(massPerArea[0].length, cell.length, "massPerArea of a cell");
            for (double mass : cell) {
                atLeast(mass, 0, "massPerArea", "kg/m2");
            }
        }
    }

    /** A clean element with a number of cells along the leg and of size classes. */
    public static ElementLoad clean(double area, int cells, int classes) {
        return new ElementLoad(area, new double[cells][classes]);
    }

    @Override
    public double[][] massPerArea() {
        return copy(massPerArea);
    }

    /** Number of cells along the leg. */
    public int cells() {
        return massPerArea.length;
    }

    /** Number of size classes. */
    public int classes() {
        return massPerArea[0].length;
    }

    /** The element after dirt came with evenly spread flow: [kg], double[classes]. */
    public ElementLoad deposit(double[] mass) {
        double[] even = new double[cells()];
        Arrays.fill(even, 1.0 / cells());
        return deposit(even, mass);
    }

    /**
     * The element after dirt came.
     *
     * @param localFlowShare share of the element flow through each cell [1], double[cells], at least 0, summing to 1
     * @param mass dirt caught [kg], double[classes], at least 0
     */
    public ElementLoad deposit(double[] localFlowShare, double[] mass) {
        Limits.sameLength(cells(), localFlowShare.length, "localFlowShare");
        Limits.sameLength(classes(), mass.length, "mass");
        double sum = 0;
        for (double share : localFlowShare) {
            sum += atLeast(share, 0, "localFlowShare", "[1]");
        }
        if (Math.abs(sum - 1) > SUM_TOLERANCE) {
            throw new IllegalArgumentException("localFlowShare must sum to 1 [1], sum was " + sum);
        }
        double cellArea = area / cells();
        double[][] loaded = copy(massPerArea);
        for (int cell = 0; cell < loaded.length; cell++) {
            for (int i = 0; i < mass.length; i++) {
                loaded[cell][i] += atLeast(mass[i], 0, "mass", "kg") * localFlowShare[cell] / cellArea;
            }
        }
        return new ElementLoad(area, loaded);
    }

    /** Dirt in the element by class [kg], double[classes]. */
    public double[] massByClass() {
        double[] mass = new double[classes()];
        for (double[] cell : massPerArea) {
            for (int i = 0; i < mass.length; i++) {
                mass[i] += cell[i] * area / cells();
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
        double conductance = 0;
        for (double ratio : resistanceRatios(law)) {
            conductance += 1 / ratio / cells();
        }
        return 1 / conductance;
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
                "loading.elementBlocked",
                Severity.CAUTION,
                place,
                String.format(Locale.ROOT, "%.3g g", mass() * 1000),
                String.format(Locale.ROOT, "%.0f %%", 100 * fullness)));
    }

    private static double[][] copy(double[][] values) {
        return Arrays.stream(values).map(double[]::clone).toArray(double[][]::new);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ElementLoad that
                && area == that.area
                && Arrays.deepEquals(massPerArea, that.massPerArea);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(area) + Arrays.deepHashCode(massPerArea);
    }

    @Override
    public String toString() {
        return "ElementLoad[" + cells() + " cells, " + mass() + " kg]";
    }
}

package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.coldpleat.model.flow.Fluid;

/** What a rig sees besides the medium: parts in series, area and channels, each with the uncertainty of the sheet. */
final class Surroundings {
    private final BuiltCandidate best;
    private final List<BuiltCandidate> moved;

    /**
     * Surroundings of a medium.
     *
     * @param best candidate as written
     * @param moved the same with one of its unknowns at a time moved by one standard uncertainty, the medium kept
     */
    Surroundings(BuiltCandidate best, List<BuiltCandidate> moved) {
        this.best = best;
        this.moved = List.copyOf(moved);
    }

    /**
     * Flow of an oil.
     *
     * @param flow [m3/s], above 0
     * @param fluid oil
     */
    record Point(double flow, Fluid fluid) {}

    /**
     * Parts in series with the pack.
     *
     * @param laminar laminar resistance [1/m3]
     * @param laminarUncertainty its standard uncertainty [1/m3]
     * @param inertial inertial resistance [1/m4]
     * @param inertialUncertainty its standard uncertainty [1/m4]
     */
    record Series(double laminar, double laminarUncertainty, double inertial, double inertialUncertainty) {}

    /** Pack and channels at a medium resistance kept: relative standard uncertainty [1]. */
    double geometryLnSigma() {
        return spread(one -> Math.log(one.pack().resistance()));
    }

    /** Effective area [m2]. */
    double effectiveArea() {
        return best.pack().effectiveArea();
    }

    /** Computed series parts as a rig that fits a laminar and an inertial loss at these points would see them. */
    Series series(List<Point> points) {
        double[] sum = split(best, points);
        return new Series(sum[0], spread(one -> split(one, points)[0]), sum[1], spread(one -> split(one, points)[1]));
    }

    private double spread(ToDoubleFunction<BuiltCandidate> quantity) {
        double own = quantity.applyAsDouble(best);
        double square = 0;
        for (BuiltCandidate one : moved) {
            double change = quantity.applyAsDouble(one) - own;
            square += change * change;
        }
        return Math.sqrt(square);
    }

    /** Least squares of the computed drops, weighted by their size: laminar and inertial part, neither below 0. */
    private static double[] split(BuiltCandidate candidate, List<Point> points) {
        List<double[]> rows = new ArrayList<>();
        for (Point point : points) {
            var state = candidate.filter().withoutBypass().solve(point.flow(), point.fluid());
            double drop = state.totalDrop() - state.elementDrop();
            if (drop > 0) {
                rows.add(new double[] {
                    point.fluid().dynamicViscosity() * point.flow() / drop,
                    point.fluid().density() * point.flow() * point.flow() / drop
                });
            }
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double x = 0;
        double y = 0;
        for (double[] row : rows) {
            xx += row[0] * row[0];
            xy += row[0] * row[1];
            yy += row[1] * row[1];
            x += row[0];
            y += row[1];
        }
        double determinant = xx * yy - xy * xy;
        if (rows.size() >= 2 && determinant > 1e-9 * xx * yy) {
            double laminar = (x * yy - y * xy) / determinant;
            double inertial = (y * xx - x * xy) / determinant;
            if (laminar >= 0 && inertial >= 0) {
                return new double[] {laminar, inertial};
            }
            if (laminar < 0) {
                return new double[] {0, y / yy};
            }
        }
        return new double[] {xx > 0 ? x / xx : 0, 0};
    }
}

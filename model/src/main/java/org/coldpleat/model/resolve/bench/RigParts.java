package org.coldpleat.model.resolve.bench;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;

/** What a rig sees besides the medium: parts in series, area and channels, each with the uncertainty of the sheet. */
public final class RigParts {
    private final BuiltCandidate best;
    private final List<BuiltCandidate> moved;
    private final boolean flapHeld;

    /**
     * RigParts of a medium.
     *
     * @param best candidate as written
     * @param moved the same with one of its unknowns at a time moved by one standard uncertainty, the medium kept
     * @param flapHeld true if the anti-drain flap was out of the way of the oil
     */
    public RigParts(BuiltCandidate best, List<BuiltCandidate> moved, boolean flapHeld) {
        this.best = best;
        this.moved = List.copyOf(moved);
        this.flapHeld = flapHeld;
    }

    /** The same with the anti-drain flap held open or taken out. */
    RigParts withFlapHeld(boolean held) {
        return new RigParts(best, moved, held);
    }

    /**
     * Flow of an oil.
     *
     * @param flow [m3/s], above 0
     * @param fluid oil
     */
    record Point(double flow, Fluid fluid) {}

    /** Pack and channels at a medium resistance kept: relative standard uncertainty [1]. */
    double geometryLnSigma() {
        double square = 0;
        for (BuiltCandidate one : moved) {
            double change = Math.log(one.pack().resistance() / best.pack().resistance());
            square += change * change;
        }
        return Math.sqrt(square);
    }

    /** Effective area [m2]. */
    double effectiveArea() {
        return best.pack().effectiveArea();
    }

    /** Computed drop of the parts in series with the pack at each point [Pa]. */
    double[] seriesDrops(List<Point> points) {
        return seriesDrops(best, points);
    }

    private double[] seriesDrops(BuiltCandidate candidate, List<Point> points) {
        FilterAssembly filter = candidate.filter().withoutBypass();
        FilterAssembly seen = flapHeld ? withoutFlap(filter) : filter;
        return points.stream()
                .mapToDouble(point -> {
                    var state = seen.solve(point.flow(), point.fluid());
                    return state.totalDrop() - state.elementDrop();
                })
                .toArray();
    }

    private static FilterAssembly withoutFlap(FilterAssembly filter) {
        return new FilterAssembly(
                filter.inletHoles(),
                AdditiveLaw.NONE,
                filter.annulusResistance(),
                filter.elementResistance(),
                filter.tubeOpenings(),
                filter.centerTube(),
                filter.outletBore(),
                filter.elementValve(),
                filter.elementValveLocation(),
                filter.blockValve());
    }

    /** What the drops of the series parts amount to as a laminar resistance in a fit of such points [1/m3]. */
    double seriesLaminar(List<Point> points) {
        return laminar(points, seriesDrops(best, points));
    }

    /** Inertial resistance of the series parts as a fit of such points would see it [1/m4]; 0 for a single point. */
    double seriesInertial(List<Point> points) {
        return points.size() < 2 ? 0 : fit(points, seriesDrops(best, points))[1];
    }

    /** Standard uncertainty of the laminar resistance of the pack that comes with the series parts [1/m3]. */
    double seriesUncertainty(List<Point> points) {
        double[] own = seriesDrops(best, points);
        double square = 0;
        for (BuiltCandidate one : moved) {
            double[] change = seriesDrops(one, points);
            for (int i = 0; i < change.length; i++) {
                change[i] -= own[i];
            }
            double laminar = laminar(points, change);
            square += laminar * laminar;
        }
        return Math.sqrt(square);
    }

    private static double laminar(List<Point> points, double[] drops) {
        return fit(points, drops)[0];
    }

    /** Laminar and inertial coefficient of drops, relative least squares as the readings are weighted. */
    private static double[] fit(List<Point> points, double[] drops) {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double x = 0;
        double y = 0;
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < drops.length; i++) {
            Point point = points.get(i);
            double viscous = point.fluid().dynamicViscosity() * point.flow();
            rows.add(
                    new double[] {1, point.fluid().density() * point.flow() * point.flow() / viscous, drops[i] / viscous
                    });
        }
        for (double[] row : rows) {
            xx += row[0] * row[0];
            xy += row[0] * row[1];
            yy += row[1] * row[1];
            x += row[0] * row[2];
            y += row[1] * row[2];
        }
        double determinant = xx * yy - xy * xy;
        return rows.size() >= 2 && determinant > 1e-9 * xx * yy
                ? new double[] {(x * yy - y * xy) / determinant, (y * xx - x * xy) / determinant}
                : new double[] {x / xx, 0};
    }
}

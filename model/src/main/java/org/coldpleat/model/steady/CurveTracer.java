package org.coldpleat.model.steady;

import java.util.Optional;
import org.coldpleat.model.circuit.OperatingPoint;

/** Follows one candidate in one operating state over a range of oil temperature, from warm to cold. */
public final class CurveTracer {
    public static final int POINTS = 161;

    private CurveTracer() {}

    /**
     * What was met on the way.
     *
     * @param curve coldest point first
     * @param last the coldest solved point, from which others nearby can start
     * @param starvedUpTo warmest oil temperature at which the gallery is starved [K]; NaN if at none
     * @param suctionLimitedUpTo warmest at which the pickup limits the pump [K]; NaN if at none
     */
    public record Traced(
            StateCurve curve, Optional<OperatingPoint> last, double starvedUpTo, double suctionLimitedUpTo) {}

    public static Traced trace(StateModel model, double from, double to) {
        double[] temperature = new double[POINTS];
        double[] drop = new double[POINTS];
        double[] difference = new double[POINTS];
        double[] share = new double[POINTS];
        StateSolver solver = model.solver();
        double starved = Double.NaN;
        double suctionLimited = Double.NaN;
        for (int i = POINTS - 1; i >= 0; i--) {
            double at = from + (to - from) * i / (POINTS - 1);
            boolean answer = solver.at(at);
            if (solver.isStarved() && Double.isNaN(starved)) {
                starved = at;
            }
            if (solver.isSuctionLimited() && Double.isNaN(suctionLimited)) {
                suctionLimited = at;
            }
            temperature[i] = at;
            drop[i] = answer ? solver.totalDrop() : Double.NaN;
            difference[i] = answer && model.hasValve() ? solver.leadingDifference() : Double.NaN;
            share[i] = answer ? solver.bypassShare() : Double.NaN;
        }
        Optional<OperatingPoint> last = solver.point().near();
        return new Traced(new StateCurve(temperature, drop, difference, share), last, starved, suctionLimited);
    }
}

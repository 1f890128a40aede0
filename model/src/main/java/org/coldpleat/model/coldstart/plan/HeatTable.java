package org.coldpleat.model.coldstart.plan;

import java.util.List;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Heat of combustion over engine speed: in proportion between the stated speeds, from nothing at standstill; above the
 * fastest stated speed it grows on as it did last; whoever uses that says so.
 *
 * @param points by rising speed
 */
@Source("common practice, no source: fuel burnt for each turn at equal load is about the same")
@Validity("load as at the stated speeds")
record HeatTable(List<Point> points) {
    /**
     * Heat at one engine speed.
     *
     * @param speed [rev/s], above 0
     * @param toMetal [W], at least 0
     * @param toOil [W], at least 0
     */
    record Point(double speed, double toMetal, double toOil) {}

    static final HeatTable NONE = new HeatTable(List.of());

    HeatTable {
        points = List.copyOf(points);
    }

    /** Heat at an engine speed [rev/s]. */
    Point at(double speed) {
        Point low = new Point(0, 0, 0);
        for (Point high : points) {
            if (speed <= high.speed()) {
                double share = (speed - low.speed()) / (high.speed() - low.speed());
                return new Point(
                        speed,
                        low.toMetal() + share * (high.toMetal() - low.toMetal()),
                        low.toOil() + share * (high.toOil() - low.toOil()));
            }
            low = high;
        }
        return beyond(speed);
    }

    /** Fastest stated speed [rev/s]; 0 if none is. */
    double fastest() {
        return points.isEmpty() ? 0 : points.get(points.size() - 1).speed();
    }

    /** On with the slope of the last stretch, but never below 0. */
    private Point beyond(double speed) {
        if (points.isEmpty()) {
            return new Point(speed, 0, 0);
        }
        Point last = points.get(points.size() - 1);
        Point before = points.size() > 1 ? points.get(points.size() - 2) : new Point(0, 0, 0);
        double share = (speed - last.speed()) / (last.speed() - before.speed());
        return new Point(
                speed,
                Math.max(0, last.toMetal() + share * (last.toMetal() - before.toMetal())),
                Math.max(0, last.toOil() + share * (last.toOil() - before.toOil())));
    }
}

package org.coldpleat.model.run;

import java.util.List;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Heat of combustion over engine speed: in proportion between the stated speeds, from nothing at standstill; above the
 * fastest stated speed it grows on in proportion to speed.
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
        double factor = low.speed() == 0 ? 0 : speed / low.speed();
        return new Point(speed, factor * low.toMetal(), factor * low.toOil());
    }
}

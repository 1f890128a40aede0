package org.coldpleat.model.oil;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.OilResolver.Point;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Shown;

/** Holds a stated viscosity index against the points of an oil. */
final class IndexCheck {
    private IndexCheck() {}

    /**
     * A finding if the line through two points has another index than the stated one, by more than point and index
     * uncertainties together explain at 95 %.
     *
     * @param place of the finding
     * @param points the two low-shear points of the line
     * @param stated index
     */
    static Optional<Notice> against(String place, List<Point> points, StatedIndex stated) {
        OptionalDouble computed = index(points, 0, 0);
        if (computed.isEmpty()) {
            return Optional.empty();
        }
        double variance = square(stated.standardUncertainty());
        for (int i = 0; i < points.size(); i++) {
            OptionalDouble moved = index(points, i, points.get(i).anchor().lnUncertainty());
            variance += square(moved.orElse(computed.getAsDouble()) - computed.getAsDouble());
        }
        double difference = computed.getAsDouble() - stated.value();
        double explained = COVERAGE_95 * Math.sqrt(variance);
        return Math.abs(difference) <= explained
                ? Optional.empty()
                : Optional.of(Notice.of(
                        "oil.indexDisagrees",
                        Severity.WARNING,
                        place,
                        Shown.count(Math.round(computed.getAsDouble())),
                        Shown.count(Math.round(stated.value())),
                        Shown.count(Math.round(explained))));
    }

    private static OptionalDouble index(List<Point> points, int moved, double lnStep) {
        double[] viscosities = points.stream().mapToDouble(Point::viscosity).toArray();
        viscosities[moved] *= Math.exp(lnStep);
        if (!(viscosities[0] > viscosities[1])) {
            return OptionalDouble.empty();
        }
        return StatedIndex.of(WaltherCurve.through(
                points.get(0).temperature(), viscosities[0], points.get(1).temperature(), viscosities[1]));
    }

    private static double square(double value) {
        return value * value;
    }
}

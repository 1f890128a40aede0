package org.coldpleat.model.oil;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coldpleat.model.oil.OilResolver.Point;
import org.coldpleat.model.oil.OilResult.Refused;
import org.coldpleat.model.oil.curve.WaltherScale;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;

/** Checks that stated points can belong to one oil. */
final class PointCheck {
    private PointCheck() {}

    /** First point outside the allowed temperatures [K] or viscosities. */
    static Optional<Refused> eachWithin(List<Point> points, double coldest, double hottest) {
        for (Point point : points) {
            if (!(point.temperature() >= coldest && point.temperature() <= hottest)) {
                return Optional.of(refused(OilFault.TEMPERATURE_OUT_OF_RANGE, List.of(point)));
            }
            if (!(point.viscosity() >= WaltherScale.MIN_VISCOSITY && point.viscosity() <= WaltherScale.MAX_VISCOSITY)) {
                return Optional.of(refused(OilFault.VISCOSITY_OUT_OF_RANGE, List.of(point)));
            }
        }
        return Optional.empty();
    }

    /** First pair of neighbors, in rising order of temperature, that lie too close [K] or do not thin. */
    static Optional<Refused> falling(List<Point> points, double leastDistance) {
        for (int i = 1; i < points.size(); i++) {
            Point colder = points.get(i - 1);
            Point warmer = points.get(i);
            if (warmer.temperature() - colder.temperature() < leastDistance) {
                return Optional.of(refused(OilFault.SAME_TEMPERATURE, List.of(colder, warmer)));
            }
            if (!(warmer.viscosity() < colder.viscosity())) {
                return Optional.of(refused(OilFault.NOT_FALLING, List.of(colder, warmer)));
            }
        }
        return Optional.empty();
    }

    /** A refusal that names the points at fault, each by viscosity and temperature. */
    static Refused refused(OilFault fault, List<Point> points) {
        return new Refused(
                fault,
                points.stream().map(Point::position).toList(),
                points.stream()
                        .flatMap(point -> Stream.of(
                                        OilNotices.viscosity(point.anchor()),
                                        new Amount(Look.PLAIN_TEMPERATURE, point.temperature()))
                                .map(Shown::text))
                        .toList());
    }
}

package org.coldpleat.model.loading.service;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.coldpleat.model.loading.ElementLoad;
import org.coldpleat.model.loading.sump.SumpState;

/**
 * Course of a service life.
 *
 * @param status how it ended
 * @param points states in the order of time, clean first
 * @param end dirt by class at the end
 * @param load dirt in the element at the end
 * @param steps steps taken [1]
 */
public record ServiceCourse(Status status, List<Point> points, SumpState end, ElementLoad load, int steps) {
    /** How a service life ended. */
    public enum Status {
        /** The horizon was reached. */
        HORIZON,
        /** The element resists so much that its blocking law says nothing beyond. */
        ELEMENT_LIMIT
    }

    /**
     * One moment.
     *
     * @param time running time [s]
     * @param packRatio resistance of the pack over its clean one [1]
     * @param retained dirt in the element [kg]
     * @param concentration dirt in the oil by class [kg/m3], double[classes]
     * @param unfilteredVolume oil that went round the medium up to now [m3]
     * @param pumpedVolume oil through filter and valves up to now [m3]
     */
    public record Point(
            double time,
            double packRatio,
            double retained,
            double[] concentration,
            double unfilteredVolume,
            double pumpedVolume) {
        public Point {
            concentration = concentration.clone();
        }

        @Override
        public double[] concentration() {
            return concentration.clone();
        }

        /** Dirt in the oil, all classes [kg/m3]. */
        public double dirt() {
            return Arrays.stream(concentration).sum();
        }

        /** Share of all oil so far that went round the medium [1]. */
        public double unfilteredShare() {
            return pumpedVolume == 0 ? 0 : unfilteredVolume / pumpedVolume;
        }
    }

    public ServiceCourse {
        points = List.copyOf(points);
    }

    /**
     * Running time [s] at which the pack reaches a resistance ratio [1]; none if it does not. Exact for ratios that the
     * run was asked to meet, else interpolated in the logarithm of the ratio.
     */
    public OptionalDouble timeAtRatio(double packRatio) {
        for (int i = 0; i < points.size(); i++) {
            Point to = points.get(i);
            if (to.packRatio() >= packRatio * (1 - SAME)) {
                if (i == 0) {
                    return OptionalDouble.of(0);
                }
                Point from = points.get(i - 1);
                double u = Math.log(packRatio / from.packRatio()) / Math.log(to.packRatio() / from.packRatio());
                return OptionalDouble.of(from.time() + Math.min(1, u) * (to.time() - from.time()));
            }
        }
        return OptionalDouble.empty();
    }

    /** Ratios nearer than this are the same [1]. */
    private static final double SAME = 1e-9;

    /** Resistance of the pack over its clean one [1] at a running time [s], between the points in its logarithm; NaN beyond the end. */
    public double packRatioAt(double time) {
        return between(time, Point::packRatio, true);
    }

    /** Share of all oil up to a running time [s] that went round the medium [1]; NaN beyond the end. */
    public double unfilteredShareAt(double time) {
        return between(time, Point::unfilteredVolume, false) / between(time, Point::pumpedVolume, false);
    }

    private double between(double time, ToDoubleFunction<Point> value, boolean logarithmic) {
        Point before = points.get(0);
        for (Point point : points) {
            if (point.time() >= time) {
                double span = point.time() - before.time();
                double u = span == 0 ? 0 : (time - before.time()) / span;
                double low = value.applyAsDouble(before);
                double high = value.applyAsDouble(point);
                return logarithmic ? low * Math.pow(high / low, u) : low + u * (high - low);
            }
            before = point;
        }
        return Double.NaN;
    }

    /** Last moment. */
    public Point last() {
        return points.get(points.size() - 1);
    }

    /** Place among the points of the moment at or next behind a running time [s]; the last one beyond the end. */
    public int indexAt(double time) {
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).time() >= time) {
                return i;
            }
        }
        return points.size() - 1;
    }
}

package org.coldpleat.model.oil;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.oil.OilResolver.Point;
import org.coldpleat.model.oil.curve.BiasedWaltherCurve;
import org.coldpleat.model.oil.curve.ColdAnchoredCurve;
import org.coldpleat.model.oil.curve.FadedLine;
import org.coldpleat.model.oil.curve.QuadraticWaltherCurve;
import org.coldpleat.model.oil.curve.ViscosityCurve;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Puts the band of a viscosity curve together: how far oils of the class lie off, the uncertainty of each point carried
 * through the curve, and with a cold anchor the distances of the Vogel curve from two others through the same points, each
 * read as a 95 % half-width: the quadratic curve, and the Walther line with its misfit fading out. Between a cold anchor
 * and the warm points the half-width of the class fades out linearly toward the anchor; below the anchor it grows by what
 * it grows there without one.
 */
@Source("common practice, no source; classes see ColdClass")
@Validity("-40..150 degrees C")
final class Spreads {
    private static final double SMALLEST_SHARE = 1e-4;

    private final ViscosityCurve curve;
    private final List<Point> points;
    private final List<Rival> rivals;

    private Spreads(ClassedLine line, ViscosityCurve curve, List<Point> points) {
        this.curve = curve;
        this.points = points;
        rivals = rivals(line, points);
    }

    /**
     * A curve that one unknown could have made instead.
     *
     * @param curve the other curve
     * @param deviations how many standard deviations of the unknown it stands for [1]
     * @param below temperature below which it counts [K]
     */
    private record Rival(ViscosityCurve curve, double deviations, double below) {
        double lnDeviation(double temperature, double central) {
            return temperature < below ? Math.log(curve.kinematicViscosity(temperature) / central) / deviations : 0;
        }
    }

    /**
     * The band of the typical oil of a grade.
     *
     * @param line of the typical oil
     * @param lnSigma standard uncertainty of ln(n) between oils of the grade [1]
     */
    static ViscosityBand ofGrade(ClassedLine line, double lnSigma) {
        return ViscosityBand.of(
                line.curve(),
                temperature -> Math.hypot(line.thicker(temperature) / COVERAGE_95, lnSigma),
                temperature -> Math.hypot(line.thinner(temperature) / COVERAGE_95, lnSigma),
                new double[0]);
    }

    /**
     * The band of a curve through two points, or three of which the first is cold.
     *
     * @param line through the two warmest points
     * @param curve through all of them
     * @param points in rising order of temperature
     */
    static ViscosityBand ofPoints(ClassedLine line, ViscosityCurve curve, List<Point> points) {
        Spreads spreads = new Spreads(line, curve, points);
        double[] kinks = points.stream().mapToDouble(Point::temperature).toArray();
        return ViscosityBand.of(
                curve,
                temperature -> spreads.lnSigma(temperature, line::thicker),
                temperature -> spreads.lnSigma(temperature, line::thinner),
                kinks);
    }

    private double lnSigma(double temperature, DoubleUnaryOperator side) {
        double central = curve.kinematicViscosity(temperature);
        double sum = square(ofClass(temperature, side) / COVERAGE_95);
        for (Rival rival : rivals) {
            sum += square(rival.lnDeviation(temperature, central));
        }
        return Math.sqrt(sum);
    }

    private double ofClass(double temperature, DoubleUnaryOperator side) {
        double coldest = points.get(0).temperature();
        double low = points.get(points.size() - 2).temperature();
        double halfWidth = side.applyAsDouble(temperature);
        if (points.size() == 2 || temperature >= low) {
            return halfWidth;
        }
        double floor = ClassCurve.FLOOR;
        return temperature > coldest
                ? Math.hypot(floor, (halfWidth - floor) * (temperature - coldest) / (low - coldest))
                : Math.max(floor, floor + halfWidth - side.applyAsDouble(coldest));
    }

    private static List<Rival> rivals(ClassedLine line, List<Point> points) {
        List<Rival> rivals = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            movedPoint(line, points, i).ifPresent(rivals::add);
        }
        if (points.size() == 3) {
            double low = points.get(1).temperature();
            rivals.add(new Rival(secondOpinion(points), COVERAGE_95, low));
            rivals.add(new Rival(fadedLine(points), COVERAGE_95, low));
        }
        return rivals;
    }

    /** The curve with one point moved by its uncertainty, or by so much less that the points still make a curve. */
    private static Optional<Rival> movedPoint(ClassedLine line, List<Point> points, int position) {
        double lnUncertainty = points.get(position).anchor().lnUncertainty();
        if (lnUncertainty == 0) {
            return Optional.empty();
        }
        for (double share = 1; share > SMALLEST_SHARE; share /= 2) {
            for (double deviations : new double[] {share, -share}) {
                double[] viscosities =
                        points.stream().mapToDouble(Point::viscosity).toArray();
                viscosities[position] *= Math.exp(deviations * lnUncertainty);
                Optional<? extends ViscosityCurve> curve = curve(line, points, viscosities);
                if (curve.isPresent()) {
                    return Optional.of(new Rival(curve.get(), deviations, Double.POSITIVE_INFINITY));
                }
            }
        }
        return Optional.empty();
    }

    /** The curve with other viscosities at its points, of the same bias. */
    private static Optional<? extends ViscosityCurve> curve(
            ClassedLine line, List<Point> points, double[] viscosities) {
        int last = points.size() - 1;
        double low = points.get(last - 1).temperature();
        double high = points.get(last).temperature();
        Optional<BiasedWaltherCurve> warm = BiasedWaltherCurve.through(
                low,
                viscosities[last - 1],
                high,
                viscosities[last],
                line.curve().beta(),
                ColdClass.EXPONENT);
        return last == 1 || viscosities[0] <= viscosities[1]
                ? warm.filter(curve -> last == 1)
                : warm.flatMap(curve ->
                        ColdAnchoredCurve.below(curve, points.get(0).temperature(), viscosities[0], low, high));
    }

    /** The quadratic curve through the three points, or the line through the two colder ones if that does not fall. */
    private static ViscosityCurve secondOpinion(List<Point> points) {
        Point cold = points.get(0);
        Point low = points.get(1);
        Point high = points.get(2);
        Optional<QuadraticWaltherCurve> quadratic = QuadraticWaltherCurve.through(
                cold.temperature(),
                cold.viscosity(),
                low.temperature(),
                low.viscosity(),
                high.temperature(),
                high.viscosity());
        return quadratic.isPresent()
                ? quadratic.get()
                : WaltherCurve.through(cold.temperature(), cold.viscosity(), low.temperature(), low.viscosity());
    }

    private static ViscosityCurve fadedLine(List<Point> points) {
        Point low = points.get(1);
        Point high = points.get(2);
        return FadedLine.through(
                WaltherCurve.through(low.temperature(), low.viscosity(), high.temperature(), high.viscosity()),
                low.temperature(),
                points.get(0).temperature(),
                points.get(0).viscosity());
    }

    private static double square(double value) {
        return value * value;
    }
}

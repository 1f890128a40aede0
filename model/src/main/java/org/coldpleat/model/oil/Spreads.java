package org.coldpleat.model.oil;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.OilResolver.Point;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Puts the band of a viscosity curve together: the extrapolation rule, the uncertainty of each point carried through the
 * curve, and with a cold anchor the distances of the Vogel curve from two others through the same points, each read as
 * a 95 % half-width: the quadratic curve, and the Walther line with its misfit fading out. Between a cold anchor and the warm points the extrapolation rule fades out linearly toward the
 * anchor.
 */
@Source("common practice, no source; rule see ExtrapolationRule")
@Validity("-40..150 degrees C")
final class Spreads {
    /** Cold end of the rule for a grade without winter half [K]: -10 degrees C. */
    private static final double COLD_END_WITHOUT_WINTER = 263.15;

    private static final double TEMPERATURE_40 = 313.15;

    private static final double SMALLEST_SHARE = 1e-4;

    private Spreads() {}

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

    static ViscosityBand ofGrade(SaeGrade grade, double lnSigma) {
        double coldEnd = grade.winter().map(WinterGrade::pumpingTemperature).orElse(COLD_END_WITHOUT_WINTER);
        return ViscosityBand.of(
                temperature -> Math.hypot(ExtrapolationRule.lnSigmaOfGrade(temperature, coldEnd), lnSigma),
                new double[0]);
    }

    /** The band of a curve through two points, or three of which the first is cold, in rising order of temperature. */
    static ViscosityBand ofPoints(ViscosityCurve curve, List<Point> points) {
        List<Rival> rivals = rivals(points);
        double[] kinks = points.stream().mapToDouble(Point::temperature).toArray();
        return ViscosityBand.of(temperature -> lnSigma(curve, points, rivals, temperature), kinks);
    }

    private static double lnSigma(ViscosityCurve curve, List<Point> points, List<Rival> rivals, double temperature) {
        double central = curve.kinematicViscosity(temperature);
        double sum = square(extrapolation(curve, points, temperature));
        for (Rival rival : rivals) {
            sum += square(rival.lnDeviation(temperature, central));
        }
        return Math.sqrt(sum);
    }

    private static double extrapolation(ViscosityCurve curve, List<Point> points, double temperature) {
        double viscosity40 = curve.kinematicViscosity(TEMPERATURE_40);
        double coldest = points.get(0).temperature();
        double low = points.get(points.size() - 2).temperature();
        double high = points.get(points.size() - 1).temperature();
        if (points.size() == 2 || temperature >= low || temperature <= coldest) {
            return ExtrapolationRule.lnSigma(temperature, coldest, high, viscosity40);
        }
        double floor = ExtrapolationRule.FLOOR / COVERAGE_95;
        double beyondFloor = ExtrapolationRule.lnSigma(temperature, low, high, viscosity40) - floor;
        return Math.hypot(floor, beyondFloor * (temperature - coldest) / (low - coldest));
    }

    private static List<Rival> rivals(List<Point> points) {
        List<Rival> rivals = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            movedPoint(points, i).ifPresent(rivals::add);
        }
        if (points.size() == 3) {
            double low = points.get(1).temperature();
            rivals.add(new Rival(secondOpinion(points), COVERAGE_95, low));
            rivals.add(new Rival(fadedLine(points), COVERAGE_95, low));
        }
        return rivals;
    }

    /** The curve with one point moved by its uncertainty, or by so much less that the points still make a curve. */
    private static Optional<Rival> movedPoint(List<Point> points, int position) {
        double lnUncertainty = points.get(position).anchor().lnUncertainty();
        if (lnUncertainty == 0) {
            return Optional.empty();
        }
        for (double share = 1; share > SMALLEST_SHARE; share /= 2) {
            for (double deviations : new double[] {share, -share}) {
                double[] viscosities =
                        points.stream().mapToDouble(Point::viscosity).toArray();
                viscosities[position] *= Math.exp(deviations * lnUncertainty);
                Optional<? extends ViscosityCurve> curve = curve(points, viscosities);
                if (curve.isPresent()) {
                    return Optional.of(new Rival(curve.get(), deviations, Double.POSITIVE_INFINITY));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<? extends ViscosityCurve> curve(List<Point> points, double[] viscosities) {
        int last = points.size() - 1;
        for (int i = 0; i < last; i++) {
            if (viscosities[i] <= viscosities[i + 1]) {
                return Optional.empty();
            }
        }
        double low = points.get(last - 1).temperature();
        double high = points.get(last).temperature();
        if (last == 1) {
            return Optional.of(WaltherCurve.through(low, viscosities[0], high, viscosities[1]));
        }
        double cold = points.get(0).temperature();
        return ColdAnchoredCurve.through(cold, viscosities[0], low, viscosities[1], high, viscosities[2]);
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

package org.coldpleat.model.oil;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.coldpleat.model.oil.curve.BiasedWaltherCurve;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * The curve of one class of oils through two points, and how far oils of the class lie from it: half-widths of ln(n) that
 * hold 95 of 100 oils, the points taken as exact.
 *
 * <p>Below two points at or above 40 degrees C: the floor of the line plus the half-width of the class, counted from the
 * lower point on if that is warmer than 40 degrees C. Where a point lies below 40 degrees C the curve is made again with a
 * bias smaller and greater by the half-width, and the distance of those two is the half-width: small between the points,
 * growing below them and, where both are cold, above them too.
 *
 * @param pair the points
 * @param coldClass the class
 * @param curve its curve through the points
 * @param colder curves of another bias that count below the points
 * @param warmer curves of another bias that count from the lower point on
 */
@Source("derived here from the oils of ColdClass; floor read from product sheets (names withheld), handbook tables and"
        + " Mylona et al. 2014")
@Validity("-40..150 degrees C")
record ClassCurve(
        LinePair pair, ColdClass coldClass, BiasedWaltherCurve curve, List<Rival> colder, List<Rival> warmer) {
    /** Half-width of ln(n) wherever the line is good [1]. */
    static final double FLOOR = Math.log(1.03);

    /** The same between two points below 40 degrees C: three oils measured there lie -3.0, +2.6 and -0.2 % off. */
    private static final double COLD_FLOOR = Math.log(1.04);

    /** Distance above the upper point from which the floor grows, and over which it doubles [K]. */
    @Source("common practice, no source")
    private static final double HOT_REACH = 50;

    private static final double SMALLEST_SHARE = 1e-3;

    ClassCurve {
        Objects.requireNonNull(pair, "pair");
        Objects.requireNonNull(coldClass, "coldClass");
        Objects.requireNonNull(curve, "curve");
        colder = List.copyOf(colder);
        warmer = List.copyOf(warmer);
    }

    /**
     * The curve with another bias.
     *
     * @param curve through the same points
     * @param share of the half-width of the class by which its bias differs [1]
     */
    private record Rival(BiasedWaltherCurve curve, double share) {
        double distance(double lnCentral, double temperature, int side) {
            return side * (Math.log(curve.kinematicViscosity(temperature)) - lnCentral) / share;
        }
    }

    /** The curve of a class through two points; empty if no falling line goes through them without its bias. */
    static Optional<ClassCurve> of(LinePair pair, ColdClass coldClass) {
        return pair.curve(coldClass)
                .map(curve -> new ClassCurve(
                        pair,
                        coldClass,
                        curve,
                        rivals(pair, coldClass, curve.beta(), coldClass.exponent()),
                        rivals(pair, coldClass, curve.beta(), ColdClass.EXPONENT)));
    }

    private static List<Rival> rivals(LinePair pair, ColdClass coldClass, double beta, double exponent) {
        return pair.low() >= BiasedWaltherCurve.BIAS_BEGINS
                ? List.of()
                : Stream.of(-coldClass.thicker(), coldClass.thinner())
                        .flatMap(step -> rival(pair, beta, step, exponent).stream())
                        .toList();
    }

    /** The curve with its bias moved by a step, or by so much less that a falling line still goes through the points. */
    private static Optional<Rival> rival(LinePair pair, double beta, double step, double exponent) {
        for (double share = 1; share > SMALLEST_SHARE; share /= 2) {
            Optional<BiasedWaltherCurve> curve = pair.curve(beta + share * step, exponent);
            if (curve.isPresent()) {
                return Optional.of(new Rival(curve.get(), share));
            }
        }
        return Optional.empty();
    }

    /** The curve with a bias smaller and greater by the half-width of the class; none where both points are warm. */
    List<BiasedWaltherCurve> besides() {
        return warmer.stream().map(Rival::curve).toList();
    }

    /**
     * Half-width of ln(n) [1].
     *
     * @param temperature [K]
     * @param side 1 toward thicker oil, -1 toward thinner
     */
    double halfWidth(double temperature, int side) {
        double floor = pair.isCold() ? COLD_FLOOR : FLOOR;
        if (temperature < pair.low()) {
            return floor + below(temperature, side);
        }
        double distance = distance(warmer, temperature, side);
        if (temperature <= pair.high()) {
            return Math.hypot(floor, distance);
        }
        double beyond = pair.isCold() ? 0 : Math.max(0, temperature - pair.high() - HOT_REACH);
        return Math.max(floor, Math.hypot(FLOOR * (1 + beyond / HOT_REACH), distance));
    }

    private double below(double temperature, int side) {
        double raise = pair.low() - BiasedWaltherCurve.BIAS_BEGINS;
        return raise < 0
                ? distance(colder, temperature, side)
                : (side > 0 ? coldClass.thicker() : coldClass.thinner()) * coldClass.growth(temperature - raise);
    }

    private double distance(List<Rival> rivals, double temperature, int side) {
        double lnCentral = Math.log(curve.kinematicViscosity(temperature));
        double distance = 0;
        for (Rival rival : rivals) {
            distance = Math.max(distance, rival.distance(lnCentral, temperature, side));
        }
        return distance;
    }
}

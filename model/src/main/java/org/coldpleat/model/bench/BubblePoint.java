package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.bench.BenchEstimate.Status;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * First steady stream of bubbles through a wetted medium: diameter of the largest hole. Says nothing about efficiency or
 * capacity.
 */
@Source("ISO 2942 and ASTM F316 for the principle; d = 4 gamma cos(theta)/dp (Young, Laplace)")
@Validity("fully wetted medium, slow rise of pressure, holes well above 1 micrometer")
public final class BubblePoint {
    private static final List<String> CAUTIONS =
            List.of("bench.caution.alcoholFire", "bench.caution.alcoholVapor", "bench.caution.lowPressureOnly");
    private static final String PLACE = "bubble point";

    private BubblePoint() {}

    /**
     * The wetting liquid.
     *
     * @param surfaceTension [N/m]
     * @param density [kg/m3]
     * @param contactAngle [rad]; 0 for alcohol on paper or glass
     */
    public record Liquid(Measured surfaceTension, double density, double contactAngle) {
        public Liquid {
            Require.positive("surfaceTension", surfaceTension.value(), "N/m");
            Require.positive("density", density, "kg/m3");
            Require.within("contactAngle", contactAngle, 0, 1.5, "rad");
        }
    }

    /**
     * One spot.
     *
     * @param pressure of the air at the first steady stream, above ambient [Pa]
     * @param depth of the liquid over the spot [m]
     */
    public record Spot(double pressure, double depth) {
        public Spot {
            Require.positive("pressure", pressure, "Pa");
            Require.notNegative("depth", depth, "m");
        }
    }

    /** Pressure that a depth of liquid takes up [Pa]; 77 Pa for 10 mm of 785 kg/m3. */
    public static double immersionPressure(double depth, double density) {
        return density * Gravity.FREE_FALL * depth;
    }

    /** Diameter of the hole that bubbles at a pressure difference [m]; 50 micrometers for 1736 Pa and 21.7 mN/m. */
    public static double holeDiameter(double pressureDifference, double surfaceTension, double contactAngle) {
        return 4
                * surfaceTension
                * Math.cos(contactAngle)
                / Require.positive("pressureDifference", pressureDifference, "Pa");
    }

    /**
     * Largest hole [m] over all spots tried.
     *
     * @param spots at least 1
     * @param pressureUncertainty standard uncertainty of a pressure [Pa]
     * @param depthUncertainty standard uncertainty of a depth [m]
     */
    public static BenchEstimate evaluate(
            List<Spot> spots, Liquid liquid, double pressureUncertainty, double depthUncertainty) {
        if (spots.isEmpty()) {
            throw new IllegalArgumentException("spots must be at least 1, had none");
        }
        List<Notice> notices = new ArrayList<>();
        int first = 0;
        double least = Double.MAX_VALUE;
        double most = 0;
        for (int i = 0; i < spots.size(); i++) {
            Spot spot = spots.get(i);
            double left = spot.pressure - immersionPressure(spot.depth, liquid.density);
            if (left < least) {
                least = left;
                first = i;
            }
            most = Math.max(most, left);
        }
        if (!(least > 0)) {
            notices.add(Notice.of("bench.bubble.belowImmersion", Severity.WARNING, PLACE, Shown.rows(List.of(first))));
            return BenchEstimate.refused(notices);
        }
        notices.add(Notice.of("bench.bubble.largestHole", Severity.INFO, PLACE));
        List<Integer> conflicts = new ArrayList<>();
        if (spots.size() > 2 && most > 2 * least) {
            conflicts.add(first);
            notices.add(Notice.of(
                    "bench.bubble.oneWeakSpot",
                    Severity.WARNING,
                    PLACE,
                    new Amount(Look.SHARP_PRESSURE, least),
                    new Amount(Look.SHARP_PRESSURE, most)));
        }
        double immersion = immersionPressure(spots.get(first).depth, liquid.density);
        double diameter = holeDiameter(least, liquid.surfaceTension.value(), liquid.contactAngle);
        double depthEffect = immersionPressure(depthUncertainty, liquid.density) / least;
        List<Correction> corrections = List.of(
                new Correction("immersion", immersion / least, depthEffect),
                new Correction("pressure", 0, pressureUncertainty / least),
                new Correction(
                        "surfaceTension",
                        0,
                        liquid.surfaceTension.standardUncertainty() / liquid.surfaceTension.value()));
        return BenchEstimate.ofFactor(
                Status.USABLE, Kind.LENGTH, diameter, spots.size(), corrections, conflicts, notices);
    }

    /**
     * What to expect.
     *
     * @param largestHole guessed [m]
     * @param depth of the liquid [m]
     * @param resolution of the manometer [Pa]
     * @param otherLnSigma surface tension and depth together [1]
     * @param presentLnSigma what is known of the hole now [1]
     */
    public static Plan plan(
            double largestHole,
            double depth,
            Liquid liquid,
            double resolution,
            double otherLnSigma,
            double presentLnSigma) {
        double difference = holeDiameter(largestHole, liquid.surfaceTension.value(), liquid.contactAngle);
        double expected = difference + immersionPressure(depth, liquid.density);
        return Plan.of(
                Kind.GAUGE_PRESSURE,
                expected,
                TEN_MINUTES,
                expected / difference,
                resolution,
                otherLnSigma,
                presentLnSigma,
                CAUTIONS);
    }

    /** Time to wet, raise the pressure slowly and watch [s]. */
    @Source("common practice, no source")
    private static final double TEN_MINUTES = 600;
}

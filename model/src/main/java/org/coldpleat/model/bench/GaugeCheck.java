package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * What the difference of two dial gauges is worth.
 *
 * @param halfWidth of the difference [Pa], root sum of squares of the rated errors
 * @param relative half-width over the difference [1]
 * @param suggestedFullScale full scale of one differential gauge that would hold the difference [Pa]
 * @param suggestedHalfWidth what that gauge would leave, at the better of the two ratings [Pa]
 * @param notices findings
 */
@Source("ASME B40.100: dial gauges are rated in percent of full scale; combination after JCGM 100:2008, 5.1.2")
@Validity("gauges within their rating, read at standstill of the needle")
public record GaugeCheck(
        double halfWidth, double relative, double suggestedFullScale, double suggestedHalfWidth, List<Notice> notices) {
    /** Relative half-width above which a difference is not worth fitting [1]. */
    @Source("common practice, no source")
    private static final double USEFUL = 0.1;

    public GaugeCheck {
        notices = List.copyOf(notices);
    }

    /**
     * A gauge.
     *
     * @param fullScale [Pa]
     * @param rating permitted error as a share of full scale [1], such as 0.02
     */
    public record Dial(double fullScale, double rating) {
        public Dial {
            Require.positive("fullScale", fullScale, "Pa");
            Require.within("rating", rating, 0, 0.2, "1");
        }

        double permitted() {
            return fullScale * rating;
        }
    }

    /**
     * Checks a pair; two 0 to 100 psi dials of 2 % leave +-2.8 psi of a difference of 5 psi.
     *
     * @param before gauge before the filter
     * @param after gauge after it
     * @param difference read or expected [Pa], above 0
     */
    public static GaugeCheck of(Dial before, Dial after, double difference) {
        Require.positive("difference", difference, "Pa");
        double half = Math.hypot(before.permitted(), after.permitted());
        double relative = half / difference;
        double fullScale = 1.5 * difference;
        double better = fullScale * Math.min(before.rating, after.rating);
        List<Notice> notices = new ArrayList<>();
        if (relative > USEFUL) {
            notices.add(Notice.of(
                    "bench.gauge.useDifferential",
                    Severity.WARNING,
                    "gauges",
                    new Amount(Look.SHARP_PRESSURE, difference),
                    new Amount(Look.SHARP_PRESSURE, half),
                    new Amount(Look.PERCENT, relative),
                    new Amount(Look.SHARP_PRESSURE, fullScale),
                    new Amount(Look.SHARP_PRESSURE, better)));
        }
        if (difference < 0.1 * Math.min(before.fullScale, after.fullScale)) {
            notices.add(Notice.of("bench.gauge.lowEnd", Severity.INFO, "gauges"));
        }
        return new GaugeCheck(half, relative, fullScale, better, notices);
    }
}

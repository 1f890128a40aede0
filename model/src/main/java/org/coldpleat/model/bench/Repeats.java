package org.coldpleat.model.bench;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.source.Source;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Repeated readings of the same thing, the number always in sight.
 *
 * @param count number of readings n
 * @param mean [unit of the readings]
 * @param standardDeviation of a single reading; empty for one reading
 * @param halfWidth of the 95 % interval of the mean; empty for one reading
 * @param notices findings
 */
public record Repeats(
        int count, double mean, OptionalDouble standardDeviation, OptionalDouble halfWidth, List<Notice> notices) {
    public Repeats {
        notices = List.copyOf(notices);
    }

    /** Summarizes readings, at least 1. */
    public static Repeats of(double... readings) {
        int count = readings.length;
        if (count == 0) {
            throw new IllegalArgumentException("readings must be at least 1, had none");
        }
        double mean = Arrays.stream(readings).average().orElseThrow();
        if (count == 1) {
            return new Repeats(
                    1,
                    mean,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of(Notice.of("bench.repeats.single", Severity.WARNING, "repeats")));
        }
        double squares =
                Arrays.stream(readings).map(r -> (r - mean) * (r - mean)).sum();
        double deviation = Math.sqrt(squares / (count - 1));
        double half = halfWidthFactor(count) * deviation;
        List<Notice> notices = count < 5
                ? List.of(Notice.of(
                        "bench.repeats.few",
                        Severity.INFO,
                        "repeats",
                        Text.count(count),
                        Text.number(halfWidthFactor(count))))
                : List.of();
        return new Repeats(count, mean, OptionalDouble.of(deviation), OptionalDouble.of(half), notices);
    }

    /** Half-width of the 95 % interval of the mean in standard deviations of one reading: 9.0, 2.5, 1.2 for 2, 3, 5. */
    @Source("Student 1908, Biometrika 6:1; JCGM 100:2008 (GUM), G.3.2")
    public static double halfWidthFactor(int count) {
        if (count < 2) {
            throw new IllegalArgumentException("count must be at least 2 for an interval, was " + count);
        }
        return new TDistribution(count - 1).inverseCumulativeProbability(0.975) / Math.sqrt(count);
    }

    /**
     * Readings needed for the mean to be known so well.
     *
     * @param standardDeviation of one reading
     * @param halfWidth wanted of the 95 % interval, in the same unit, at least a thirtieth of the deviation
     * @return smallest number, at least 2
     */
    public static int needed(double standardDeviation, double halfWidth) {
        if (!(standardDeviation >= 0) || !(halfWidth > 0) || standardDeviation > 30 * halfWidth) {
            throw new IllegalArgumentException("halfWidth must be above 0 and at least 1/30 of the deviation, was "
                    + halfWidth + " with " + standardDeviation);
        }
        int count = 2;
        while (halfWidthFactor(count) * standardDeviation > halfWidth) {
            count++;
        }
        return count;
    }
}

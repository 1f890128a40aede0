package org.coldpleat.validation.coverage;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Reads true values with stated errors and writes them as a user would. Work object of one teardown. */
final class Bench {
    private final SplittableRandom random;
    private final boolean exact;

    /**
     * A bench.
     *
     * @param random source of reading errors
     * @param exact true to write the true values; the same random numbers are used up
     */
    Bench(SplittableRandom random, boolean exact) {
        this.random = random;
        this.exact = exact;
    }

    /** A value read with an error anywhere within limits that the sheet states. */
    String within(double truth, double limit, String unit) {
        double error = limit * (2 * random.nextDouble() - 1);
        return exact ? plain(truth, unit) : number(truth + error) + " " + unit + " ± " + number(limit) + " " + unit;
    }

    /** The same with the limit as a share of the reading, left out of the sheet since it is the usual one. */
    String usual(double truth, double share, String unit) {
        double error = share * (2 * random.nextDouble() - 1);
        return plain(exact ? truth : truth * (1 + error), unit);
    }

    /** A reading whose usual absolute limit is left out of the sheet. */
    String usualWithin(double truth, double limit, String unit) {
        double error = limit * (2 * random.nextDouble() - 1);
        return plain(exact ? truth : truth + error, unit);
    }

    /** A value stated with a normal error of its logarithm, left out of the sheet since it is the usual one. */
    String usualFactor(double truth, double lnSigma, String unit) {
        double score = random.nextGaussian();
        return plain(exact ? truth : truth * Math.exp(lnSigma * score), unit);
    }

    /** Repeated readings with a normal scatter. */
    String repeated(double truth, double scatter, int times, String unit) {
        double[] readings = IntStream.range(0, times)
                .mapToDouble(i -> truth + scatter * random.nextGaussian())
                .toArray();
        return exact
                ? plain(truth, unit)
                : "["
                        + IntStream.range(0, times)
                                .mapToObj(i -> plain(readings[i], unit))
                                .collect(Collectors.joining(", "))
                        + "]";
    }

    /** A count that is one off, up or down, once in three times: as wide as the usual plus or minus one. */
    String counted(int truth) {
        double place = random.nextDouble();
        int error = place < 1 / 6.0 ? -1 : place < 1 / 3.0 ? 1 : 0;
        return Integer.toString(exact ? truth : truth + error);
    }

    private static String plain(double value, String unit) {
        return number(value) + " " + unit;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.7g", value);
    }
}

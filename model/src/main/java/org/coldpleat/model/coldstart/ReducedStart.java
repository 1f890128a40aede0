package org.coldpleat.model.coldstart;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Table of starts over start temperature and resistance of the element, for use where thousands of starts are counted, such
 * as in the service life of a loading element. Linear between its points in temperature and in the logarithm of the
 * resistance. Its errors are measured against full starts in the middle of every cell. Equality is identity.
 */
@Source("bilinear interpolation, textbook")
@Validity("within the table; outside, the nearest edge is given and marked as such")
public final class ReducedStart {
    /**
     * Outcome of a start.
     *
     * @param unfilteredVolume oil round the medium, fill stage included [m3]
     * @param filteredVolume oil through the medium [m3]
     * @param openSeconds time with an open bypass valve [s]
     * @param inside whether the table covers what was asked for
     */
    public record Outcome(double unfilteredVolume, double filteredVolume, double openSeconds, boolean inside) {}

    /**
     * Largest difference between table and full starts in the middle of its cells.
     *
     * @param unfilteredVolume [m3]
     * @param filteredVolume [m3]
     * @param openSeconds [s]
     */
    public record Errors(double unfilteredVolume, double filteredVolume, double openSeconds) {}

    private final double[] temperatures;
    private final double[] logMultipliers;
    /** Rows by temperature, columns by multiplier, then unfiltered, filtered, seconds. */
    private final double[][][] table;

    private final Errors errors;

    private ReducedStart(double[] temperatures, double[] logMultipliers, double[][][] table, Errors errors) {
        this.temperatures = temperatures;
        this.logMultipliers = logMultipliers;
        this.table = table;
        this.errors = errors;
    }

    /**
     * Computes a table; the starts are spread over the free processors.
     *
     * @param startTemperatures [K], strictly rising, at least two
     * @param multipliers of the element's resistance [1], above 0, strictly rising, at least two
     * @throws IllegalArgumentException if the axes are no axes or a start has no answer
     */
    public static ReducedStart of(StartUpSpec spec, double[] startTemperatures, double[] multipliers) {
        requireAxis("startTemperatures", startTemperatures);
        requireAxis("multipliers", multipliers);
        double[] logs = Arrays.stream(multipliers).map(Math::log).toArray();
        double[][][] table = runs(spec, startTemperatures, logs);
        ReducedStart unchecked = new ReducedStart(startTemperatures.clone(), logs, table, new Errors(0, 0, 0));
        double[] middleTemperatures = middles(startTemperatures);
        double[] middleLogs = middles(logs);
        double[][][] full = runs(spec, middleTemperatures, middleLogs);
        double[] worst = new double[3];
        for (int i = 0; i < middleTemperatures.length; i++) {
            for (int j = 0; j < middleLogs.length; j++) {
                for (int k = 0; k < 3; k++) {
                    double found = unchecked.value(middleTemperatures[i], middleLogs[j], k);
                    worst[k] = Math.max(worst[k], Math.abs(found - full[i][j][k]));
                }
            }
        }
        return new ReducedStart(unchecked.temperatures, logs, table, new Errors(worst[0], worst[1], worst[2]));
    }

    /** Measured errors of the table. */
    public Errors errors() {
        return errors;
    }

    /**
     * Outcome of a start.
     *
     * @param startTemperature [K]
     * @param multiplier of the resistance of the element [1], above 0
     */
    public Outcome at(double startTemperature, double multiplier) {
        double log = Math.log(Require.positive("multiplier", multiplier, "1"));
        return new Outcome(
                value(startTemperature, log, 0),
                value(startTemperature, log, 1),
                value(startTemperature, log, 2),
                covers(temperatures, startTemperature) && covers(logMultipliers, log));
    }

    private double value(double temperature, double log, int which) {
        int i = cell(temperatures, temperature);
        int j = cell(logMultipliers, log);
        double u = part(temperatures, i, temperature);
        double v = part(logMultipliers, j, log);
        double low = (1 - v) * table[i][j][which] + v * table[i][j + 1][which];
        double high = (1 - v) * table[i + 1][j][which] + v * table[i + 1][j + 1][which];
        return (1 - u) * low + u * high;
    }

    private static double[][][] runs(StartUpSpec spec, double[] temperatures, double[] logs) {
        double[][][] found = new double[temperatures.length][logs.length][];
        IntStream.range(0, temperatures.length * logs.length).parallel().forEach(n -> {
            int i = n / logs.length;
            int j = n % logs.length;
            double resistance = spec.filter().elementResistance() * Math.exp(logs[j]);
            StartUpSpec one =
                    spec.coldSoakedAt(temperatures[i]).withFilter(spec.filter().withElementResistance(resistance));
            StartUpResult result = StartUp.run(one);
            if (!result.status().isAnswer()) {
                throw new IllegalArgumentException("a start from " + temperatures[i] + " K with " + Math.exp(logs[j])
                        + " times the resistance must have an answer, was " + result.status());
            }
            BypassTally total = result.total();
            found[i][j] = new double[] {total.unfilteredVolume(), total.filteredVolume(), total.openSeconds()};
        });
        return found;
    }

    private static void requireAxis(String name, double[] axis) {
        if (axis.length < 2) {
            throw new IllegalArgumentException(name + " must be at least 2, were " + axis.length);
        }
        for (int i = 0; i < axis.length; i++) {
            Require.positive(name, axis[i], "in SI");
            if (i > 0) {
                Require.positive("step of " + name, axis[i] - axis[i - 1], "in SI");
            }
        }
    }

    private static double[] middles(double[] axis) {
        double[] middles = new double[axis.length - 1];
        for (int i = 0; i < middles.length; i++) {
            middles[i] = 0.5 * (axis[i] + axis[i + 1]);
        }
        return middles;
    }

    private static int cell(double[] axis, double x) {
        int found = Arrays.binarySearch(axis, x);
        int below = found >= 0 ? found : -found - 2;
        return Math.min(Math.max(below, 0), axis.length - 2);
    }

    private static double part(double[] axis, int cell, double x) {
        double part = (x - axis[cell]) / (axis[cell + 1] - axis[cell]);
        return Math.min(Math.max(part, 0), 1);
    }

    private static boolean covers(double[] axis, double x) {
        double slack = 1e-12 * Math.abs(axis[axis.length - 1]);
        return x >= axis[0] - slack && x <= axis[axis.length - 1] + slack;
    }
}

package org.coldpleat.model.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.circuit.OperatingPoint;

/**
 * Logarithm of the ratio of valve difference to opening pressure, valve held shut, of a candidate in an operating state with nothing
 * moved. Draws differ from it smoothly, so it tells a search where to look and where there is nothing to be found.
 *
 * @param from coldest temperature [K]
 * @param to warmest [K]
 * @param values logarithm of the ratio [1] at even steps; {@code NaN} where there is no answer
 * @param points the circuit there, as starts for draws
 */
public record GuideCurve(double from, double to, double[] values, List<Optional<OperatingPoint>> points) {
    private static final int CELLS = 96;
    private static final double SMALLEST_RATIO = 1e-12;

    /** The curve of a model that has a valve. */
    public static GuideCurve of(StateModel model, double from, double to) {
        double[] values = new double[CELLS + 1];
        List<Optional<OperatingPoint>> points = new ArrayList<>();
        StateSolver solver = model.heldShutSolver();
        for (int i = CELLS; i >= 0; i--) {
            values[i] = logRatio(solver.ratioAt(from + (to - from) * i / CELLS));
            points.add(0, solver.point().near());
        }
        return new GuideCurve(from, to, values, List.copyOf(points));
    }

    /** Logarithm of the ratio [1] of a point held shut; {@code NaN} without an answer. */
    static double logRatio(double ratio) {
        return Math.log(Math.max(SMALLEST_RATIO, ratio));
    }

    /** True if every point has an answer. */
    public boolean isWhole() {
        for (double value : values) {
            if (Double.isNaN(value)) {
                return false;
            }
        }
        return true;
    }

    /** Number of the last grid point. */
    int last() {
        return values.length - 1;
    }

    /** Temperature of a grid point [K]. */
    double temperature(int i) {
        return from + (to - from) * i / last();
    }

    /** Grid point at or below a temperature [K]. */
    int below(double temperature) {
        return Math.max(0, Math.min(last() - 1, (int) ((temperature - from) / (to - from) * last())));
    }

    /** Value between grid points, linear [1]. */
    double at(double temperature) {
        int i = below(temperature);
        double share = (temperature - temperature(i)) / (temperature(i + 1) - temperature(i));
        return values[i] + share * (values[i + 1] - values[i]);
    }

    /** Greatest slope less the least one between two temperatures [1/K]. */
    double bend(double cold, double warm) {
        double greatest = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        int end = below(warm);
        for (int i = below(cold); i <= end; i++) {
            double rise = values[i + 1] - values[i];
            greatest = Math.max(greatest, rise);
            least = Math.min(least, rise);
        }
        return (greatest - least) * last() / (to - from);
    }

    /** Where it falls through 0 from open to shut at the warmest, or where it comes nearest [K]. */
    double likeliest() {
        int top = last();
        for (int i = last(); i >= 0; i--) {
            if (values[i] > 0) {
                return i == last()
                        ? to
                        : temperature(i)
                                + (temperature(i + 1) - temperature(i)) * values[i] / (values[i] - values[i + 1]);
            }
            top = values[i] > values[top] ? i : top;
        }
        return temperature(top);
    }

    /** The circuit with nothing moved at the grid point nearest to a temperature [K]. */
    public Optional<OperatingPoint> near(double temperature) {
        int i = below(temperature);
        return points.get(temperature - temperature(i) > temperature(i + 1) - temperature ? i + 1 : i);
    }
}

package org.coldpleat.validation.published;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.loading.BlockingLaw;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * One measured loading run: fed bulk dust per area [mm] and pressure drop [Pa], from where the flow was up.
 *
 * @param dust grade of the dust
 * @param flow median flow [L/min]
 * @param cleanPressureDrop clean drop at the median face velocity [Pa]
 * @param depth fed bulk volume over area [mm]
 * @param pressureDrop as recorded [Pa], zero not corrected
 */
record DustLoadingRun(String dust, double flow, double cleanPressureDrop, double[] depth, double[] pressureDrop) {
    /** Clean drop of the mat at 0.3 m/s (1080 m3/(h m2)) by its data sheet, scaled linearly with the face velocity. */
    private static final double CLEAN_PA_PER_M_S = 25 / 0.3;

    /** Below this share of the median face velocity the blower is still starting. */
    private static final double FLOW_UP = 0.8;

    /** Starting values of K [1/mm]; the best of all fits counts. */
    private static final double[] STARTS = {0.1, 0.2, 0.4, 0.6, 0.9, 1.5, 2, 3, 6, 20};

    /**
     * A fit of K and of the zero of the pressure reading.
     *
     * @param coefficient K [1/mm]
     * @param relativeError root mean square deviation over the range of the readings [1]
     */
    record Fit(double coefficient, double relativeError) {}

    double endPressureDrop() {
        return pressureDrop[pressureDrop.length - 1];
    }

    Fit fit(double exponent) {
        Fit best = new Fit(Double.NaN, Double.POSITIVE_INFINITY);
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double reading : pressureDrop) {
            low = Math.min(low, reading);
            high = Math.max(high, reading);
        }
        for (double start : STARTS) {
            // start inside the reach of the law: K m below 0.9 of the plugging mass
            double reach = 0.9 * new BlockingLaw(exponent, 1).limitMass() / depth[depth.length - 1];
            Optimum optimum =
                    new LevenbergMarquardtOptimizer().optimize(problem(exponent, Math.log(Math.min(start, reach))));
            double error = optimum.getRMS() / (high - low);
            if (error < best.relativeError) {
                best = new Fit(Math.exp(optimum.getPoint().getEntry(0)), error);
            }
        }
        return best;
    }

    private LeastSquaresProblem problem(double exponent, double lnStart) {
        return new LeastSquaresBuilder()
                .start(new double[] {lnStart, -15})
                .model(model(exponent))
                .target(pressureDrop)
                .maxEvaluations(2000)
                .maxIterations(1000)
                .build();
    }

    private MultivariateJacobianFunction model(double exponent) {
        return point -> {
            BlockingLaw law = new BlockingLaw(exponent, Math.exp(Math.min(point.getEntry(0), 5)));
            double[] value = new double[depth.length];
            double[][] slope = new double[depth.length][2];
            for (int i = 0; i < depth.length; i++) {
                // a plugged medium reads as the end of any gauge: keeps the search finite, far off every reading
                double ratio = Math.min(law.resistanceRatio(depth[i]), 1e4);
                value[i] = cleanPressureDrop * ratio + point.getEntry(1);
                // d ratio / d ln K = m d ratio / d m
                slope[i][0] = ratio == 1e4 ? 0 : cleanPressureDrop * depth[i] * law.slope(depth[i]);
                slope[i][1] = 1;
            }
            return new Pair<RealVector, org.hipparchus.linear.RealMatrix>(
                    new ArrayRealVector(value, false), new Array2DRowRealMatrix(slope, false));
        };
    }

    static List<DustLoadingRun> all() {
        Map<String, List<String[]>> lines = new LinkedHashMap<>();
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                DustLoadingRun.class.getResourceAsStream("filter_loading_air_dust.csv"), StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("run,"))
                    .map(line -> line.split(",", -1))
                    .forEach(cells -> lines.computeIfAbsent(cells[0], run -> new ArrayList<>())
                            .add(cells));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return lines.values().stream().map(DustLoadingRun::of).toList();
    }

    private static DustLoadingRun of(List<String[]> rows) {
        double medianVelocity = median(column(rows, 3));
        List<String[]> up = rows.stream()
                .filter(cells -> Double.parseDouble(cells[3]) > FLOW_UP * medianVelocity)
                .toList();
        return new DustLoadingRun(
                up.get(0)[1], median(column(rows, 2)), CLEAN_PA_PER_M_S * medianVelocity, column(up, 6), column(up, 8));
    }

    private static double median(double[] values) {
        return new org.hipparchus.stat.descriptive.rank.Median().evaluate(values);
    }

    private static double[] column(List<String[]> rows, int index) {
        return rows.stream()
                .mapToDouble(cells -> Double.parseDouble(cells[index]))
                .toArray();
    }
}

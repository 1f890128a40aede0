package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.bench.RobustFit;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Certified nonlinear fits of the NIST Statistical Reference Datasets; source in the head of each resource. */
class NonlinearRegressionTest {
    private static final String SOURCE = "NIST Statistical Reference Datasets, certified values";

    private record Dataset(double[][] starts, double[] certified, double[] deviations, double[][] x, double[] y) {}

    private static Dataset read(String name) {
        List<double[]> parameters = new ArrayList<>();
        List<double[]> readings = new ArrayList<>();
        try (InputStream in = NonlinearRegressionTest.class.getResourceAsStream("strd/" + name + ".csv")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                List<String> cells = List.of(line.split(",", -1));
                if (cells.get(0).equals("parameter")) {
                    parameters.add(numbers(cells));
                } else if (cells.get(0).equals("reading")) {
                    readings.add(numbers(cells));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Dataset(
                new double[][] {column(parameters, 0), column(parameters, 1)},
                column(parameters, 2),
                column(parameters, 3),
                readings.stream().map(r -> new double[] {r[1]}).toArray(double[][]::new),
                column(readings, 0));
    }

    private static double[] numbers(List<String> cells) {
        return cells.stream().skip(1).mapToDouble(Double::parseDouble).toArray();
    }

    private static double[] column(List<double[]> rows, int index) {
        return rows.stream().mapToDouble(r -> r[index]).toArray();
    }

    private static double value(String name, double x, double[] b) {
        return switch (name) {
            case "Misra1a" -> b[0] * (1 - Math.exp(-b[1] * x));
            case "Rat43" -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3]);
            case "MGH17" -> b[0] + b[1] * Math.exp(-x * b[3]) + b[2] * Math.exp(-x * b[4]);
            case "Kirby2" -> (b[0] + x * (b[1] + x * b[2])) / (1 + x * (b[3] + x * b[4]));
            default -> (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6])));
        };
    }

    private static RobustFit.Result fit(String name, Dataset data, int start) {
        double[] ones = new double[data.y.length];
        Arrays.fill(ones, 1);
        return RobustFit.fit(
                (x, b) -> value(name, x[0], b), data.x, data.y, ones, data.starts[start], RobustFit.Loss.LEAST_SQUARES);
    }

    /**
     * Certified parameters to 1e-7 and their standard deviations to 1e-5: the certified values carry 11 digits, of which
     * slopes by differences leave at least these.
     */
    @ParameterizedTest
    @CsvSource({
        "Misra1a,0",
        "Misra1a,1",
        "Rat43,0",
        "Rat43,1",
        "MGH17,1",
        "Kirby2,0",
        "Kirby2,1",
        "Hahn1,0",
        "Hahn1,1",
        "Thurber,0",
        "Thurber,1"
    })
    void certifiedValues(String name, int start) {
        Dataset data = read(name);
        RobustFit.Result fit = fit(name, data, start);
        assertTrue(fit.converged());
        assertEquals(data.y.length - data.certified.length, fit.degreesOfFreedom());
        for (int i = 0; i < data.certified.length; i++) {
            check("parameters of " + name)
                    .at("start " + (start + 1) + ", b" + (i + 1))
                    .expected(data.certified[i], "1")
                    .computed(fit.parameters()[i])
                    .withinRelative(1e-7, "certified to 11 digits, of which slopes by differences leave these");
            check("standard deviations of parameters of " + name)
                    .at("start " + (start + 1) + ", b" + (i + 1))
                    .expected(data.deviations[i], "1")
                    .computed(fit.scatterUncertainty(i))
                    .withinRelative(1e-5, "certified to 11 digits, of which slopes by differences leave these");
        }
    }

    /**
     * From the far start of MGH17 the exponentials vanish and the normal matrix is singular. Many solvers stop there;
     * either the certified minimum is found or the fit must not look better than it is.
     */
    @Test
    void hopelessStartIsNotTakenForAMinimum() {
        Dataset data = read("MGH17");
        RobustFit.Result fit = fit("MGH17", data, 0);
        double squares = Arrays.stream(fit.residuals()).map(r -> r * r).sum();
        boolean certified = fit.converged() && Math.abs(squares - 5.4648946975e-5) < 1e-9;
        boolean honest =
                !fit.converged() || !Double.isFinite(fit.scatterUncertainty(4)) || fit.scatterUncertainty(4) > 1;
        assertTrue(certified || honest, "squares " + squares);
        assertFalse(certified && honest);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.CONFIDENCE, quantity, SOURCE);
    }
}

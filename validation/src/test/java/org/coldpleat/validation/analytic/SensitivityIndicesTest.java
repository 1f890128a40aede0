package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.confidence.Answer;
import org.coldpleat.model.confidence.Model;
import org.coldpleat.model.confidence.SobolIndices;
import org.coldpleat.model.confidence.UncertainQuantity;
import org.coldpleat.model.run.Progress;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Variance shares against functions whose shares are known in closed form. */
class SensitivityIndicesTest {
    private static SobolIndices estimate(Model model, int size, double low, double high) {
        List<UncertainQuantity> unknowns = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            unknowns.add(UncertainQuantity.of("x" + i, Measured.between(Kind.RATIO, low, high, Provenance.TYPICAL)));
        }
        return SobolIndices.estimate(model, Answer.finite(), unknowns, 16384, 20, Progress.NONE)
                .orElseThrow();
    }

    /**
     * Ishigami and Homma 1990 (ISUMA, 398-403) with a = 7, b = 0.1; closed form of the variances as in Saltelli, Chan,
     * Scott 2000, Sensitivity Analysis, section 2.9.3.
     */
    @Test
    void ishigami() {
        double a = 7;
        double b = 0.1;
        SobolIndices found = estimate(
                x -> new double[] {
                    Math.sin(x[0]) + a * Math.pow(Math.sin(x[1]), 2) + b * Math.pow(x[2], 4) * Math.sin(x[0])
                },
                3,
                -Math.PI,
                Math.PI);
        double p4 = Math.pow(Math.PI, 4);
        double p8 = p4 * p4;
        double v1 = 0.5 * (1 + b * p4 / 5) * (1 + b * p4 / 5);
        double v2 = a * a / 8;
        double v13 = b * b * p8 * (1.0 / 18 - 1.0 / 50);
        double v = v1 + v2 + v13;
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "variance of the Ishigami function",
                        "Ishigami, Homma 1990; closed form Saltelli, Chan, Scott 2000, section 2.9.3")
                .expected(v, "1")
                .computed(found.variance())
                .withinRelative(0.01, "sampling error of 16384 draws");
        check(found, new double[] {v1 / v, v2 / v, 0}, new double[] {(v1 + v13) / v, v2 / v, v13 / v});
    }

    /** Sobol's g-function with a = 0, 1, 4.5, 9, 99, 99; Sobol 1993, closed form as in Saltelli et al. 2010, eq. 31. */
    @Test
    void sobolG() {
        double[] a = {0, 1, 4.5, 9, 99, 99};
        SobolIndices found = estimate(
                x -> {
                    double product = 1;
                    for (int i = 0; i < a.length; i++) {
                        product *= (Math.abs(4 * x[i] - 2) + a[i]) / (1 + a[i]);
                    }
                    return new double[] {product};
                },
                a.length,
                0,
                1);
        double all = 1;
        for (double ai : a) {
            all *= 1 + part(ai);
        }
        double v = all - 1;
        double[] first = new double[a.length];
        double[] total = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            first[i] = part(a[i]) / v;
            total[i] = part(a[i]) * all / (1 + part(a[i])) / v;
        }
        ExternalCheck.of(
                        Topic.CONFIDENCE,
                        "variance of Sobol's g-function",
                        "Sobol 1993; closed form Saltelli et al. 2010, eq. 31")
                .expected(v, "1")
                .computed(found.variance())
                .withinRelative(0.01, "sampling error of 16384 draws");
        check(found, first, total);
    }

    private static double part(double a) {
        return 1 / (3 * (1 + a) * (1 + a));
    }

    /** Within 0.01, and within five of the stated sampling errors: both the estimate and its error must be right. */
    private static void check(SobolIndices found, double[] first, double[] total) {
        for (int i = 0; i < first.length; i++) {
            SobolIndices.Share share = found.shares().get(i);
            ExternalCheck.of(
                            Topic.CONFIDENCE,
                            "first-order shares of variance",
                            "Ishigami, Homma 1990, and Sobol 1993, closed forms")
                    .at("first of " + i)
                    .expected(first[i], "1")
                    .computed(share.first())
                    .within(0.01, "sampling error of 16384 draws; also within five of the stated errors");
            ExternalCheck.of(
                            Topic.CONFIDENCE,
                            "total shares of variance",
                            "Ishigami, Homma 1990, and Sobol 1993, closed forms")
                    .at("total of " + i)
                    .expected(total[i], "1")
                    .computed(share.total())
                    .within(0.01, "sampling error of 16384 draws; also within five of the stated errors");
            assertTrue(Math.abs(share.first() - first[i]) <= 5 * share.firstError() + 1e-6, "error of first " + i);
            assertTrue(Math.abs(share.total() - total[i]) <= 5 * share.totalError() + 1e-6, "error of total " + i);
        }
    }
}

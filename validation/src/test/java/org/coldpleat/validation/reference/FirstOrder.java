package org.coldpleat.validation.reference;

import java.util.List;
import org.coldpleat.model.confidence.Model;
import org.coldpleat.model.confidence.UncertainQuantity;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * First-order propagation of uncertainty: a cross-check of the draws for answers that are nearly linear.
 *
 * @param answers values of the model at the best estimates [SI]
 * @param sensitivities slope of each answer by each unknown, [answer][unknown]
 * @param contributions slope times standard uncertainty, [answer][unknown]
 * @param covariance of the answers, [answer][answer]
 */
@Source("JCGM 100:2008 (GUM), 5.1.2, 5.2.2 (equation 13) and 5.1.3")
@Validity("answers nearly linear over two standard uncertainties of each unknown; outside it is silently too narrow")
public record FirstOrder(double[] answers, double[][] sensitivities, double[][] contributions, double[][] covariance) {
    /** Step of the central difference as a share of the standard uncertainty [1]. */
    private static final double STEP = 1e-3;

    /** Propagates independent unknowns. */
    public static FirstOrder propagate(Model model, List<UncertainQuantity> unknowns) {
        int size = unknowns.size();
        double[][] identity = new double[size][size];
        double[] values = new double[size];
        double[] uncertainties = new double[size];
        for (int j = 0; j < size; j++) {
            identity[j][j] = 1;
            values[j] = unknowns.get(j).value().value();
            uncertainties[j] = unknowns.get(j).value().standardUncertainty();
        }
        return propagate(model, values, uncertainties, identity);
    }

    /**
     * Propagates estimates with a correlation matrix.
     *
     * @param model function from values to answers
     * @param values best estimates [SI]
     * @param uncertainties standard uncertainties [SI], at least 0
     * @param correlation symmetric matrix of correlation coefficients [1], ones on the diagonal
     */
    public static FirstOrder propagate(Model model, double[] values, double[] uncertainties, double[][] correlation) {
        int size = values.length;
        if (uncertainties.length != size || correlation.length != size) {
            throw new IllegalArgumentException("uncertainties and correlation must match " + size + " values");
        }
        double[] answers = model.answers(values.clone());
        int count = answers.length;
        double[][] slopes = new double[count][size];
        double[][] contributions = new double[count][size];
        for (int j = 0; j < size; j++) {
            if (!(uncertainties[j] > 0)) {
                continue;
            }
            double[] up = values.clone();
            double[] down = values.clone();
            up[j] += STEP * uncertainties[j];
            down[j] -= STEP * uncertainties[j];
            double width = up[j] - down[j];
            if (!(width > 0)) {
                throw new IllegalArgumentException("uncertainty " + uncertainties[j] + " of value " + values[j]
                        + " is lost in rounding; shift the origin of that unknown");
            }
            double[] above = model.answers(up);
            double[] below = model.answers(down);
            for (int k = 0; k < count; k++) {
                slopes[k][j] = (above[k] - below[k]) / width;
                contributions[k][j] = slopes[k][j] * uncertainties[j];
            }
        }
        double[][] covariance = new double[count][count];
        for (int k = 0; k < count; k++) {
            for (int l = 0; l < count; l++) {
                for (int i = 0; i < size; i++) {
                    for (int j = 0; j < size; j++) {
                        covariance[k][l] += contributions[k][i] * contributions[l][j] * correlation[i][j];
                    }
                }
            }
        }
        return new FirstOrder(answers, slopes, contributions, covariance);
    }

    /** Combined standard uncertainty of one answer [SI]. */
    public double standardUncertainty(int answer) {
        return Math.sqrt(Math.max(0, covariance[answer][answer]));
    }

    /** Correlation coefficient of two answers [1]. */
    public double correlation(int first, int second) {
        return covariance[first][second] / Math.sqrt(covariance[first][first] * covariance[second][second]);
    }

    /**
     * Effective degrees of freedom of one answer, for independent unknowns.
     *
     * @param answer which answer
     * @param degreesOfFreedom of each unknown; infinite where the uncertainty is exact
     */
    @Source("JCGM 100:2008 (GUM), G.4.1, equation G.2b (Welch-Satterthwaite)")
    public double effectiveDegreesOfFreedom(int answer, double[] degreesOfFreedom) {
        double sum = 0;
        for (int j = 0; j < degreesOfFreedom.length; j++) {
            sum += Math.pow(contributions[answer][j], 4) / degreesOfFreedom[j];
        }
        return Math.pow(standardUncertainty(answer), 4) / sum;
    }
}

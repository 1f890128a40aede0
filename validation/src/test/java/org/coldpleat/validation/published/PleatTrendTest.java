package org.coldpleat.validation.published;

import java.util.Arrays;
import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.ChannelFactor;
import org.junit.jupiter.api.Test;

/** Trends of published pleat studies. Only directions: their numbers were not at hand. */
class PleatTrendTest {
    private static final double DEPTH = 15e-3;
    private static final double THICKNESS = 0.6e-3;
    private static final double PANEL_WIDTH = 0.2;

    /** Pressure drop over viscosity and flow of a panel of parallel-legged pleats, by pleat count. */
    private static double panel(int count, double mediumResistance) {
        double gap = PANEL_WIDTH / count / 2 - THICKNESS;
        PleatGeometry pleat = PleatGeometry.rectangular(DEPTH, THICKNESS, gap, gap, PleatEnds.FOLDED);
        return new PleatPack(pleat, count, 0.1).resistance(mediumResistance);
    }

    private static int bestCount(double mediumResistance) {
        int best = 10;
        for (int count = 10; count < PANEL_WIDTH / 2 / THICKNESS - 1; count++) {
            if (panel(count, mediumResistance) < panel(best, mediumResistance)) {
                best = count;
            }
        }
        return best;
    }

    @Test
    void bestPleatCountExistsAndRisesAsPermeabilityFalls() {
        // Chen, Pui, Liu 1995, Aerosol Sci. Technol. 23, 579 (abstract): the loss rises at small count by face velocity
        // and
        // at large count by viscous drag; the optimum count rises with decreasing permeability
        int previous = 0;
        for (double permeability : new double[] {4e-11, 2e-11, 1e-11, 5e-12}) {
            double resistance = THICKNESS / permeability;
            int best = bestCount(resistance);
            String source = "Chen, Pui, Liu 1995, Aerosol Sci. Technol. 23, 579 (abstract)";
            String direction = "direction only: the numbers of the study were not at hand";
            ExternalCheck.of(Topic.PLEATS, "best pleat count of a panel as permeability falls", source)
                    .at("permeability " + permeability + " m2")
                    .computed(best, "pleats")
                    .above(previous, direction + "; the limit is the best count of the more open sheet");
            ExternalCheck.of(Topic.PLEATS, "resistance of half the best pleat count over the least", source)
                    .at("permeability " + permeability + " m2")
                    .computed(panel(best / 2, resistance) / panel(best, resistance), "1")
                    .above(1.1, direction);
            ExternalCheck.of(Topic.PLEATS, "resistance of 160 pleats over the least", source)
                    .at("permeability " + permeability + " m2")
                    .computed(panel(160, resistance) / panel(best, resistance), "1")
                    .above(1.1, direction);
            previous = best;
        }
    }

    @Test
    void sharpPleatsResistMoreThanParallelOnesOfTheSameMeanGap() {
        // Scientific Reports 12:20331, 2022 (abstract): at equal pleat ratio U pleats lose less pressure than V pleats.
        // gamma 0.01: 1.0760 against 1.0533, derived here
        double[] uniform = new double[400];
        double mouth = 1e-3;
        double gamma = 0.01;
        double length = 1;
        Arrays.fill(uniform, 24 * length * length / (gamma * mouth * mouth * mouth));
        double sharp = new PleatPack(PleatGeometry.vee(length, 1e-4, mouth, PleatEnds.PLUGGED), 1, 1)
                .withClosure(PleatClosure.PLAIN)
                .solve(uniform)
                .channelFactor();
        double parallel = ChannelFactor.equalGaps(ChannelFactor.channelParameter(length, mouth / 2, uniform[0]));
        ExternalCheck.of(
                        Topic.PLEATS,
                        "sharp pleats over parallel ones of the same mean gap",
                        "Scientific Reports 12:20331, 2022 (abstract)")
                .computed(sharp / parallel, "1")
                .above(1, "direction only: the numbers of the study were not at hand");
        ExternalCheck.of(Topic.PLEATS, "channel factor of sharp pleats at gamma 0.01", "derived here")
                .expected(1.0760, "1")
                .computed(sharp)
                .within(5e-5, "half the last digit");
        ExternalCheck.of(Topic.PLEATS, "channel factor of parallel gaps at gamma 0.01", "derived here")
                .expected(1.0533, "1")
                .computed(parallel)
                .within(5e-5, "half the last digit");
    }
}

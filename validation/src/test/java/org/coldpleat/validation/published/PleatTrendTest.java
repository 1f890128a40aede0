package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.coldpleat.model.pleat.ChannelFactor;
import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
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
            assertTrue(best > previous, "best count " + best + " after " + previous);
            assertTrue(panel(best / 2, resistance) > 1.1 * panel(best, resistance));
            assertTrue(panel(160, resistance) > 1.1 * panel(best, resistance));
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
        assertTrue(sharp > parallel, sharp + " above " + parallel);
        assertTrue(Math.abs(sharp - 1.0760) < 5e-5 && Math.abs(parallel - 1.0533) < 5e-5, sharp + " " + parallel);
    }
}

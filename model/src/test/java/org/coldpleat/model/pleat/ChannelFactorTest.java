package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ChannelFactorTest {
    private static final double DEPTH = 20e-3;

    /** Channel factor of solid walls and sealed ends by integration; gamma = 24 L^2/(R b^3) fixes the gaps b. */
    private static IntegratedPleat integrated(double upstreamGamma, double downstreamGamma) {
        double medium = 1e7;
        double up = Math.cbrt(24 * DEPTH * DEPTH / (medium * upstreamGamma));
        double down = Math.cbrt(24 * DEPTH * DEPTH / (medium * downstreamGamma));
        PleatGeometry pleat = PleatGeometry.rectangular(DEPTH, 1e-4, up, down, PleatEnds.PLUGGED);
        return new IntegratedPleat(pleat, PleatClosure.PLAIN, medium);
    }

    private static double factor(IntegratedPleat pleat) {
        return pleat.total / (1e7 / (2 * DEPTH));
    }

    @Test
    void parametersFollowFromDepthGapAndMedium() {
        // 24 x 12^2/(2.5e7 x 0.6e-3^3) x 1e-6 = 0.64; lambda^2 is twice that
        assertEquals(0.64, ChannelFactor.gamma(12e-3, 0.6e-3, 2.5e7), 1e-14);
        assertEquals(Math.sqrt(1.28), ChannelFactor.channelParameter(12e-3, 0.6e-3, 2.5e7), 1e-14);
    }

    @Test
    void closedFormsSolveTheEquations() {
        for (double gamma : new double[] {1e-3, 0.1, 1, 8}) {
            double equal = factor(integrated(gamma, gamma));
            assertEquals(equal, ChannelFactor.equalGaps(Math.sqrt(2 * gamma)), 1e-9 * equal);
            double unequal = factor(integrated(gamma, 3 * gamma));
            assertEquals(unequal, ChannelFactor.unequalGaps(gamma, 3 * gamma), 1e-9 * unequal);
            assertEquals(unequal, ChannelFactor.unequalGaps(3 * gamma, gamma), 1e-9 * unequal);
        }
    }

    @Test
    void faceVelocityFollowsTheEquationsAndHasTheMeanOne() {
        double lambda = 3;
        IntegratedPleat pleat = integrated(4.5, 4.5);
        for (double place = 0; place <= 1; place += 0.125) {
            double expected = pleat.difference(place) / (1e7 / (2 * DEPTH));
            assertEquals(expected, ChannelFactor.equalGapsFaceVelocity(lambda, place), 1e-6, "place " + place);
        }
    }

    @Test
    void wideChannelsTakeTheMediumEvenly() {
        assertEquals(1, ChannelFactor.equalGapsFaceVelocity(0, 0));
        assertEquals(1, ChannelFactor.equalGapsFaceVelocity(0.9e-6, 0.5));
        // 1 + lambda^2/12 at the ends
        assertEquals(1 + 1e-4 / 12, ChannelFactor.equalGapsFaceVelocity(1e-2, 0), 1e-9);
        assertEquals(1, ChannelFactor.equalGaps(0));
        assertEquals(1, ChannelFactor.unequalGaps(0, 0));
    }

    @Test
    void seriesOfWideChannelsMeetsTheClosedForm() {
        // 1 + l^2/3 - l^4/720 + l^6/30240: the series of l^2/4 + (l/2) coth(l/2)
        assertEquals(1 + 0.009 * 0.009 / 3 - Math.pow(0.009, 4) / 720, ChannelFactor.equalGaps(0.009), 1e-15);
        double l = 0.05;
        assertEquals(1 + l * l / 3 - Math.pow(l, 4) / 720 + Math.pow(l, 6) / 30240, ChannelFactor.equalGaps(l), 1e-13);
        assertEquals(
                ChannelFactor.equalGaps(0.0099),
                ChannelFactor.unequalGaps(0.0099 * 0.0099 / 2, 0.0099 * 0.0099 / 2),
                1e-9);
    }

    @Test
    void longChannelsDoNotOverflow() {
        // only the mouths work: lambda^2/4 + lambda/2
        assertEquals(1e8 / 4 + 1e4 / 2, ChannelFactor.equalGaps(1e4), 1e-6);
        assertEquals(1e8 / 4 + 1e4 / 2, ChannelFactor.unequalGaps(0.5e8, 0.5e8), 1e-6);
        assertEquals(5e3, ChannelFactor.equalGapsFaceVelocity(1e4, 0), 1e-9);
        assertEquals(0, ChannelFactor.equalGapsFaceVelocity(1e4, 0.5), 1e-300);
    }

    @Test
    void evenFlowBoundsTheFactorFromAbove() {
        // 1 + int g1 (1 - s)^2 + g2 s^2 ds
        assertEquals(1 + 0.3 / 3 + 0.6 / 3, ChannelFactor.uniformFluxBound(0.3, 0.6), 1e-15);
        assertTrue(ChannelFactor.unequalGaps(0.3, 0.6) < ChannelFactor.uniformFluxBound(0.3, 0.6));
    }

    @Test
    void bestGapIsTheRootOfItsQuartic() {
        for (double medium : new double[] {5e6, 2.5e7, 3e8}) {
            double gap = ChannelFactor.optimumGap(12e-3, 0.6e-3, medium);
            double k = 16 * 12e-3 * 12e-3 / medium;
            assertEquals(2 * k * gap + 3 * k * 0.6e-3, Math.pow(gap, 4), 1e-12 * Math.pow(gap, 4));
        }
    }

    @Test
    void bestGapHasTheLeastDropOfItsNeighbors() {
        // drop of a panel of even flow: pitch 2 (b + t) over the factor's bound, at constant flow per panel width
        double gap = ChannelFactor.optimumGap(12e-3, 0.6e-3, 2.5e7);
        assertTrue(panelDrop(gap) < panelDrop(0.99 * gap) && panelDrop(gap) < panelDrop(1.01 * gap));
    }

    private static double panelDrop(double gap) {
        double gamma = 24 * 12e-3 * 12e-3 / (2.5e7 * gap * gap * gap);
        return (gap + 0.6e-3) * (1 + 2 * gamma / 3);
    }
}

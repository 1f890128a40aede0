package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.coldpleat.model.pleat.PackResult;
import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.ChannelFactor;
import org.junit.jupiter.api.Test;

/**
 * Closed forms, tables and bounds of the textbook limit (solid walls, sealed ends, free mouths), all derived here and
 * checked by a boundary-value solver when they were made.
 */
class ChannelFactorTest {
    private static final String SOURCE = "derived here";

    /** Depth so large against the gaps that the leg angle vanishes. */
    private static final double DEPTH = 1;

    private static final double GAP = 1e-3;

    private static double mediumResistance(double gamma) {
        return 24 * DEPTH * DEPTH / (gamma * GAP * GAP * GAP);
    }

    private static PackResult solve(double mouth1, double end1, double end2, double mouth2, double gamma, int cells) {
        PleatGeometry pleat = new PleatGeometry(
                DEPTH,
                1e-4,
                mouth1 * GAP,
                end1 * GAP,
                end2 * GAP,
                mouth2 * GAP,
                3 * GAP,
                3 * GAP,
                0,
                PleatEnds.PLUGGED);
        double[] uniform = new double[cells];
        Arrays.fill(uniform, mediumResistance(gamma));
        return new PleatPack(pleat, 1, 1).withClosure(PleatClosure.PLAIN).solve(uniform);
    }

    private static double limit(double mouth1, double end1, double end2, double mouth2, double gamma) {
        return (4 * solve(mouth1, end1, end2, mouth2, gamma, 1600).channelFactor()
                        - solve(mouth1, end1, end2, mouth2, gamma, 800).channelFactor())
                / 3;
    }

    @Test
    void equalGapsFollowTheClosedForm() {
        double[][] table = {
            {0.1, 1.0033332},
            {0.3, 1.0299888},
            {0.5, 1.0832470},
            {1, 1.3319767},
            {2, 2.3130353},
            {3, 3.9071871},
            {5, 8.7839183}
        };
        for (double[] row : table) {
            // Eight printed digits
            check("channel factor of equal gaps")
                    .at("lambda " + row[0])
                    .expected(row[1], "1")
                    .computed(ChannelFactor.equalGaps(row[0]))
                    .within(6e-8, "half the last of eight digits");
            check("channel factor of equal gaps, finite volumes")
                    .at("lambda " + row[0])
                    .expected(row[1], "1")
                    .computed(limit(1, 1, 1, 1, row[0] * row[0] / 2))
                    .within(1e-6, "extrapolated from two grids");
        }
        check("face velocity of equal gaps at the end")
                .expected(1.3130, "1")
                .computed(ChannelFactor.equalGapsFaceVelocity(2, 0))
                .within(5e-5, "half the last digit");
        check("face velocity of equal gaps in the middle")
                .expected(0.8509, "1")
                .computed(ChannelFactor.equalGapsFaceVelocity(2, 0.5))
                .within(5e-5, "half the last digit");
    }

    @Test
    void faceVelocityOfTheFiniteVolumesFollowsTheClosedForm() {
        double[] velocity = solve(1, 1, 1, 1, 2, 200).relativeFaceVelocities();
        for (int i = 0; i < 200; i++) {
            double left = (1 - Math.cos(Math.PI * i / 200)) / 2;
            double right = (1 - Math.cos(Math.PI * (i + 1) / 200)) / 2;
            // Cells hold means; second order at 200 cells is well below 1e-4
            check("face velocity along equal gaps, finite volumes")
                    .at("cell " + i)
                    .expected(ChannelFactor.equalGapsFaceVelocity(2, (left + right) / 2), "1")
                    .computed(velocity[i])
                    .within(1e-4, "cells hold means; second order at 200 cells");
        }
    }

    @Test
    void unequalGapsFollowTheClosedForm() {
        check("channel factor of unequal gaps, 0.5 and 0.5")
                .expected(1.3319767, "1")
                .computed(ChannelFactor.unequalGaps(0.5, 0.5))
                .within(6e-8, "half the last digit");
        check("channel factor of unequal gaps, 1 and 4")
                .expected(2.5103838, "1")
                .computed(ChannelFactor.unequalGaps(1, 4))
                .within(6e-8, "half the last digit");
        check("channel factor of unequal gaps, 4 and 1")
                .expected(2.5103838, "1")
                .computed(ChannelFactor.unequalGaps(4, 1))
                .within(6e-8, "half the last digit");
        check("channel factor of unequal gaps, 0.2 and 2")
                .expected(1.6715915, "1")
                .computed(ChannelFactor.unequalGaps(0.2, 2.0))
                .within(6e-8, "half the last digit");
        double narrow = Math.cbrt(1.0 / 4);
        check("channel factor of unequal gaps, finite volumes")
                .expected(2.5103838, "1")
                .computed(limit(1, 1, narrow, narrow, 1))
                .within(1e-6, "extrapolated from two grids");
    }

    @Test
    void seriesAndClosedFormMeet() {
        check("series and closed form at their joint")
                .expected(ChannelFactor.equalGaps(0.00999), "1")
                .computed(ChannelFactor.equalGaps(0.01001))
                .within(2e-7, "slope between the two points");
        check("series of unequal gaps")
                .expected(1 + 0.01 * 0.01 / 3, "1")
                .computed(ChannelFactor.unequalGaps(0.5e-4, 0.5e-4 + 1e-12))
                .within(1e-9, "next term");
        check("channel factor of wide gaps")
                .expected(1, "1")
                .computed(ChannelFactor.unequalGaps(0, 0))
                .within(0, "exact");
    }

    @Test
    void sharpPleatsFollowTheTable() {
        // Exact integrals of the drag in extended precision give 3.9934265 at gamma 1
        double[][] table = {
            {0.003, 1.02893, 1.0229},
            {0.01, 1.07600, 1.0558},
            {0.03, 1.17942, 1.1180},
            {0.1, 1.45640, 1.2472},
            {0.3, 2.09081, 1.4452},
            {1, 3.99343, 1.7616},
            {3, 9.0232, 2.1137}
        };
        for (double[] row : table) {
            // Printed digits: half the last
            double band = row[0] == 3 ? 5.1e-5 : 5.1e-6;
            check("channel factor of sharp pleats")
                    .at("gamma " + row[0])
                    .expected(row[1], "1")
                    .computed(limit(1, 0, 0, 1, row[0]))
                    .within(band, "half the last digit");
            double[] velocity = solve(1, 0, 0, 1, row[0], 801).relativeFaceVelocities();
            check("face velocity of sharp pleats at mid-depth")
                    .at("gamma " + row[0])
                    .expected(row[2], "1")
                    .computed(velocity[400])
                    .within(5.5e-5, "half the last digit and the cell");
        }
    }

    @Test
    void bluntPleatsFollowTheTable() {
        double[] share = {0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 1};
        double[] tenth = {1.40285, 1.33666, 1.26495, 1.19015, 1.15087, 1.10903, 1.06661};
        double[] one = {3.84918, 3.64510, 3.33612, 2.84271, 2.49986, 2.08961, 1.66136};
        for (int i = 0; i < share.length; i++) {
            check("channel factor of blunt pleats, gamma 0.1")
                    .at("end " + share[i])
                    .expected(tenth[i], "1")
                    .computed(limit(1, share[i], share[i], 1, 0.1))
                    .within(5.1e-6, "half the last digit");
            check("channel factor of blunt pleats, gamma 1")
                    .at("end " + share[i])
                    .expected(one[i], "1")
                    .computed(limit(1, share[i], share[i], 1, 1))
                    .within(5.1e-6, "half the last digit");
        }
    }

    @Test
    void radialPackHasItsLeastPressureDropBetween55And60Pleats() {
        // Straight radial legs: both gaps pi r/N - t, inner radius 20, outer 33, height 80, t 0.6 mm, k 2.184e-11 m2,
        // 0.010 Pa s, 10 L/min
        int[] counts = {40, 55, 65, 70, 75};
        double[] innerGap = {0.971, 0.542, 0.367, 0.298, 0.238};
        double[] factor = {1.04085, 1.19681, 1.54106, 1.91041, 2.56827};
        double[] drop = {572.8, 479.0, 521.9, 600.8, 753.8};
        for (int i = 0; i < counts.length; i++) {
            double inner = Math.PI * 20e-3 / counts[i] - 0.6e-3;
            double outer = Math.PI * 33e-3 / counts[i] - 0.6e-3;
            check("inner gap of a radial pack")
                    .at("N " + counts[i])
                    .expected(innerGap[i] * 1e-3, "m")
                    .computed(inner)
                    .within(0.5e-6, "half the last digit");
            PleatGeometry pleat = new PleatGeometry(
                    13e-3,
                    0.6e-3,
                    outer,
                    inner,
                    outer,
                    inner,
                    2 * (outer + 0.6e-3),
                    2 * (inner + 0.6e-3),
                    0,
                    PleatEnds.PLUGGED);
            // The table leaves the leg angle out of the leg length: R cos(theta) is what enters
            double resistance = 0.6e-3 / 2.184e-11 / pleat.legCosine();
            double[] uniform = new double[800];
            Arrays.fill(uniform, resistance);
            PackResult result = new PleatPack(pleat, counts[i], 80e-3)
                    .withClosure(PleatClosure.PLAIN)
                    .solve(uniform);
            check("channel factor of a radial pack")
                    .at("N " + counts[i])
                    .expected(factor[i], "1")
                    .computed(result.channelFactor())
                    .within(1.5e-5, "last digit, and 800 cells");
            check("pressure drop of a radial pack")
                    .at("N " + counts[i])
                    .expected(drop[i], "Pa")
                    .computed(result.whole().pressureDrop(0.010, 1e-2 / 60))
                    .within(0.06, "half the last digit");
        }
    }

    @Test
    void anyTaperStaysBetweenOneAndTheUniformFluxBound() {
        SplittableRandom random = new SplittableRandom(11);
        for (int n = 0; n < 300; n++) {
            double[] gap = random.doubles(4, 0.2, 2).toArray();
            double gamma = Math.exp(-6 + 8 * random.nextDouble());
            double factor = solve(gap[0], gap[1], gap[2], gap[3], gamma, 200).channelFactor();
            double bound = uniformFluxBound(gap, gamma);
            // Second-order cells: at 200 cells the factor is exact within a few 1e-5
            assertTrue(factor > 1 && factor < bound * (1 + 1e-4), factor + " under " + bound);
        }
        // N = 55 of the table above
        double inner = Math.PI * 20 / 55 - 0.6;
        double outer = Math.PI * 33 / 55 - 0.6;
        double gamma = 24 * 13 * 13 * 2.184e-11 * 1e6 / 0.6;
        check("bound of uniform flux of a radial pack of 55 pleats")
                .expected(1.19767, "1")
                .computed(uniformFluxBound(new double[] {outer, inner, outer, inner}, gamma))
                .within(5.1e-6, "half the last digit");
    }

    /** 1 + int [g1 (1-s)^2 + g2 s^2] ds by Simpson's rule. */
    private static double uniformFluxBound(double[] gap, double gamma) {
        int steps = 2000;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double s = (double) i / steps;
            double up = gap[0] + (gap[1] - gap[0]) * s;
            double down = gap[2] + (gap[3] - gap[2]) * s;
            double value = gamma * ((1 - s) * (1 - s) / (up * up * up) + s * s / (down * down * down));
            sum += value * (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return 1 + sum / (3 * steps);
    }

    @Test
    void wideChannelsLeaveTheMediumAlone() {
        check("channel factor of very wide gaps")
                .expected(1, "1")
                .computed(ChannelFactor.equalGaps(1e-4))
                .within(1e-8, "next term");
        PleatGeometry wide = PleatGeometry.rectangular(10e-3, 0.5e-3, 50e-3, 50e-3, PleatEnds.PLUGGED);
        PackResult result = new PleatPack(wide, 20, 0.1).solve(2.5e7);
        check("channel factor of a wide pack")
                .expected(1, "1")
                .computed(result.channelFactor())
                .within(1e-6, "next term");
        // dP -> mu Q t/(k A)
        check("pressure drop of a wide pack")
                .expected(0.01 * 1e-4 * 2.5e7 / (20 * 2 * 10e-3 * 0.1), "Pa")
                .computed(result.whole().pressureDrop(0.01, 1e-4))
                .within(1e-6 * 625, "next term");
    }

    @Test
    void bestGapOfAPanelFollowsTheQuartic() {
        // Depth 12 mm; permeability and thickness, expected gap and channel factor 1 + 16 k L^2/(t b^3)
        double[][] table = {
            {2.18e-11, 0.6e-3, 0.722e-3, 1.222},
            {8.2e-12, 0.6e-3, 0.550e-3, 1.189},
            {2.7e-12, 0.5e-3, 0.412e-3, 1.177}
        };
        for (double[] row : table) {
            double resistance = row[1] / row[0];
            double gap = ChannelFactor.optimumGap(12e-3, row[1], resistance);
            check("best gap of a panel")
                    .at("k " + row[0] + " m2")
                    .expected(row[2], "m")
                    .computed(gap)
                    .within(0.6e-6, "half the last digit");
            double gamma = ChannelFactor.gamma(12e-3, gap, resistance);
            check("channel factor at the best gap")
                    .at("k " + row[0] + " m2")
                    .expected(row[3], "1")
                    .computed(ChannelFactor.uniformFluxBound(gamma, gamma))
                    .within(1e-3, "last digit");
        }
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.PLEATS, quantity, SOURCE);
    }
}

package org.coldpleat.model.pleat;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * The corrected two-channel model of one pleat with the same medium everywhere, solved as what it is: of all ways through
 * the pleat, the oil takes the one that dissipates least. With the upstream share q of the flow along the leg,
 *
 * <pre>
 *   E[q] = int [q; 1-q]' M^-1 [q; 1-q] dx + (R cos(theta)/2) int q'^2 dx + folds, stubs and mouths,
 *   M = [[C_u + m, m/2], [m/2, C_d + m]]
 * </pre>
 *
 * <p>and its least value is the resistance of the pleat. q is a polynomial of fourth degree in each element of
 * {@link PleatMesh}; the error of the resistance goes with the square of that of q. As q makes E least, the slope of E with
 * the medium resistance is that at fixed q.
 */
@Source("least dissipation of creeping flow: H. von Helmholtz 1868 (from memory); equations of TwoChannelSolver")
@Validity("as TwoChannelSolver; discretization error below 4e-6, but 1e-4 for sharp edges of sheets that carry no oil")
final class UniformPleat {
    private static final int SIZE = QuarticElement.SIZE;
    private static final int POINTS = QuarticElement.POINTS;
    private static final int TRIANGLE = QuarticElement.TRIANGLE;

    private final PleatGeometry geometry;
    private final PleatClosure closure;
    private final double thickness;
    private final double cosine;

    /** Length of each element along the depth [m]. */
    private final double[] length;

    /** Clear gaps at the Gauss points [m]. */
    private final double[] upstreamGap;

    private final double[] downstreamGap;

    UniformPleat(PleatGeometry geometry, PleatClosure closure) {
        this.geometry = geometry;
        this.closure = closure;
        thickness = geometry.thickness();
        cosine = geometry.legCosine();
        double[] mesh = PleatMesh.of(geometry);
        length = new double[mesh.length - 1];
        upstreamGap = new double[length.length * POINTS];
        downstreamGap = new double[length.length * POINTS];
        double leg = geometry.legLength();
        for (int e = 0; e < length.length; e++) {
            double share = mesh[e + 1] - mesh[e];
            length[e] = share * leg;
            for (int i = 0; i < POINTS; i++) {
                double place = mesh[e] + share * QuarticElement.PLACE[i];
                upstreamGap[e * POINTS + i] = closure.gapFactor() * geometry.upstreamGap(place);
                downstreamGap[e * POINTS + i] = closure.gapFactor() * geometry.downstreamGap(place);
            }
        }
    }

    /**
     * Pressure drop of one pleat over viscosity and flow per unit height [1/m2], and its slope in logarithms.
     *
     * @param mediumResistance [1/m], above 0
     */
    PackCurve.Point at(double mediumResistance) {
        return new Solution(mediumResistance).point();
    }

    /** The pleat with one medium. */
    private final class Solution {
        private final PleatFolds folds;
        private final double inPlane;
        private final double slip;
        private final double sheet;
        private final double across;
        private final double[] upstream = new double[upstreamGap.length];
        private final double[] downstream = new double[upstreamGap.length];
        private final double[] inverse = new double[upstreamGap.length];
        private final double[] triangle = new double[length.length * TRIANGLE];
        private final double[] load = new double[length.length * SIZE];
        private double total;
        private double rise;

        Solution(double resistance) {
            folds = PleatFolds.of(geometry, closure, resistance, resistance);
            inPlane = closure.inPlaneRatio() * thickness / resistance;
            slip = Math.sqrt(inPlane) / closure.slipCoefficient();
            sheet = 2.0 / 3 * inPlane * thickness * cosine;
            across = resistance * cosine / 2;
            for (int e = 0; e < length.length; e++) {
                drag(e);
                crossing(e);
                condense(e);
            }
            double[] flow = flow();
            for (int e = 0; e < length.length; e++) {
                dissipation(e, shape(e, flow));
            }
            ends(flow[0], flow[length.length]);
        }

        PackCurve.Point point() {
            return new PackCurve.Point(total, rise / total);
        }

        /** Friction in the channels of an element, by Gauss's rule. */
        private void drag(int e) {
            for (int i = 0; i < POINTS; i++) {
                int at = e * POINTS + i;
                double up = SlipChannel.conductance(upstreamGap[at], slip, inPlane) + sheet;
                double down = SlipChannel.conductance(downstreamGap[at], slip, inPlane) + sheet;
                double one = 1 / (up * down - sheet * sheet / 4);
                upstream[at] = up;
                downstream[at] = down;
                inverse[at] = one;
                double weight = QuarticElement.WEIGHT[i] * length[e] * one;
                double both = weight * (up + down + sheet);
                double second = weight * (up + sheet / 2);
                for (int k = 0; k < TRIANGLE; k++) {
                    triangle[e * TRIANGLE + k] += both * QuarticElement.PRODUCT[i * TRIANGLE + k];
                }
                for (int k = 0; k < SIZE; k++) {
                    load[e * SIZE + k] += second * QuarticElement.VALUE[i * SIZE + k];
                }
            }
        }

        /** Flow through the medium of an element. */
        private void crossing(int e) {
            double stiffness = across / length[e];
            int first = e * TRIANGLE;
            triangle[first] += stiffness;
            triangle[first + 1] -= stiffness;
            triangle[first + 2] += stiffness;
            for (int k = 2; k < SIZE; k++) {
                triangle[first + row(k) + k] += QuarticElement.BUBBLE_STIFFNESS * stiffness;
            }
        }

        /** Takes the bubbles of an element out of its equations. */
        private void condense(int e) {
            int first = e * TRIANGLE;
            for (int k = SIZE - 1; k > 1; k--) {
                int pivot = first + row(k);
                for (int j = 0; j < k; j++) {
                    double ratio = triangle[pivot + j] / triangle[pivot + k];
                    load[e * SIZE + j] -= ratio * load[e * SIZE + k];
                    for (int l = 0; l <= j; l++) {
                        triangle[first + row(j) + l] -= ratio * triangle[pivot + l];
                    }
                }
            }
        }

        /** Upstream share of the flow where elements meet [1]. */
        private double[] flow() {
            int last = length.length;
            double[] diagonal = new double[last + 1];
            double[] beside = new double[last + 1];
            double[] flow = new double[last + 1];
            boolean folded = folds.near() > 0;
            // a plug is a fold that passes nothing: the share at that end is given
            diagonal[0] = folded ? folds.inletStub() + 1 / folds.near() : 0;
            flow[0] = folded ? 1 / folds.near() : 0;
            for (int e = 0; e < last; e++) {
                int first = e * TRIANGLE;
                diagonal[e] += triangle[first];
                beside[e + 1] = triangle[first + 1];
                diagonal[e + 1] = triangle[first + 2];
                flow[e] += load[e * SIZE];
                flow[e + 1] = load[e * SIZE + 1];
            }
            if (folded) {
                diagonal[last] += folds.outletStub() + 1 / folds.far();
                flow[last] += folds.outletStub();
            } else {
                diagonal[0] = 1;
                flow[0] = 1;
                diagonal[last] = 1;
                flow[last] = 0;
                flow[1] -= beside[1];
                beside[1] = 0;
                beside[last] = 0;
            }
            for (int e = 1; e <= last; e++) {
                double ratio = beside[e] / diagonal[e - 1];
                diagonal[e] -= ratio * beside[e];
                flow[e] -= ratio * flow[e - 1];
            }
            flow[last] /= diagonal[last];
            for (int e = last - 1; e >= 0; e--) {
                flow[e] = (flow[e] - beside[e + 1] * flow[e + 1]) / diagonal[e];
            }
            return flow;
        }

        /** Upstream share of the flow along an element, by its functions. */
        private double[] shape(int e, double[] flow) {
            double[] shape = new double[SIZE];
            shape[0] = flow[e];
            shape[1] = flow[e + 1];
            for (int k = 2; k < SIZE; k++) {
                int pivot = e * TRIANGLE + row(k);
                double rest = load[e * SIZE + k];
                for (int l = 0; l < k; l++) {
                    rest -= triangle[pivot + l] * shape[l];
                }
                shape[k] = rest / triangle[pivot + k];
            }
            return shape;
        }

        private void dissipation(int e, double[] shape) {
            for (int i = 0; i < POINTS; i++) {
                int at = e * POINTS + i;
                double q = 0;
                for (int k = 0; k < SIZE; k++) {
                    q += shape[k] * QuarticElement.VALUE[i * SIZE + k];
                }
                double first = (downstream[at] * q - sheet / 2 * (1 - q)) * inverse[at];
                double second = (upstream[at] * (1 - q) - sheet / 2 * q) * inverse[at];
                double weight = QuarticElement.WEIGHT[i] * length[e];
                total += weight * (first * q + second * (1 - q));
                double firstFall = SlipChannel.conductanceFall(upstreamGap[at], slip, inPlane) + sheet;
                double secondFall = SlipChannel.conductanceFall(downstreamGap[at], slip, inPlane) + sheet;
                rise += weight * (first * first * firstFall + first * second * sheet + second * second * secondFall);
            }
            double step = shape[1] - shape[0];
            double bubbles = shape[2] * shape[2] + shape[3] * shape[3] + shape[4] * shape[4];
            double through = across / length[e] * (step * step + QuarticElement.BUBBLE_STIFFNESS * bubbles);
            total += through;
            rise += through;
        }

        private void ends(double inlet, double outlet) {
            if (folds.near() > 0) {
                double through = (1 - inlet) * (1 - inlet) / folds.near() + outlet * outlet / folds.far();
                total += through
                        + folds.inletStub() * inlet * inlet
                        + folds.outletStub() * (1 - outlet) * (1 - outlet)
                        + folds.mouthLoss();
                rise += through
                        + folds.stubRise()[0] * inlet * inlet
                        + folds.stubRise()[1] * (1 - outlet) * (1 - outlet)
                        + folds.mouthRise();
            }
        }

        private static int row(int k) {
            return k * (k + 1) / 2;
        }
    }
}

package org.coldpleat.model.pleat;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Finite volumes for the corrected two-channel model of one pleat, any straight leg, a medium resistance per cell.
 *
 * <p>Per unit height, viscosity and total flow of the pleat, with q the upstream share of the flow (channel and half
 * the sheet), D = p_u - p_d and m = (2/3) k_x t cos(theta):
 *
 * <pre>
 *   [q; 1-q] = -[[C_u + m, m/2], [m/2, C_d + m]] [p_u'; p_d'],   q' = -2 D / (R cos(theta))
 *   D' = -A q + B (1-q),  A = (C_d + 1.5 m)/det,  B = (C_u + 1.5 m)/det,  det = (C_u + m)(C_d + m) - m^2/4
 * </pre>
 *
 * <p>Cells are clustered toward both ends by a cosine; D lives in cells, q on faces; A and B are averaged over each half
 * cell by two Gauss points with the permeability of that cell. One tridiagonal solve; the flow is of second order in cell
 * size, the resistance of fourth, since it is taken from what the flow dissipates.
 */
@Source("derived here: lubrication theory with slip walls and in-plane Darcy flow, checked against 2-D Stokes-Brinkman")
@Validity("gap/depth below 0.13; pressure across the sheet nearly linear (error below 0.6 % while lambda t < 1)")
final class TwoChannelSolver {
    private static final double GAUSS_POINT = 0.5 / Math.sqrt(3);

    /** Gauss points of a cell, two in each half, from its inlet end [1]. */
    private static final int POINTS = 4;

    private static final double[] POINT = {
        0.25 - GAUSS_POINT / 2, 0.25 + GAUSS_POINT / 2, 0.75 - GAUSS_POINT / 2, 0.75 + GAUSS_POINT / 2
    };

    /** How the flow may bend within a cell at these points [1], and the integral of the square of the slope of that. */
    private static final double[] BEND = bends();

    private static final double BEND_STIFFNESS = 16.0 / 3;

    private static final double[] USUAL_ENDS = cellEnds(PleatPack.DEFAULT_CELLS);

    private final PleatGeometry geometry;
    private final PleatClosure closure;
    private final double[] resistance;
    private final int cells;
    private final double legLength;
    private final double cosine;

    /** Integrals from cell center to cell center (half cells at the ends): of A and B [1/m2]. */
    private final double[] upstreamDrag;

    private final double[] downstreamDrag;

    /** A and B at the Gauss points of each cell, four by four, times their weight [1/m2]; integral of (m/2)/det. */
    private final double[] upstreamWeight;

    private final double[] downstreamWeight;
    private double coupling;

    /** Cell widths along the depth [m]. */
    final double[] width;

    /** Pressure difference across the leg in each cell over viscosity and flow per unit height [1/m2]. */
    final double[] difference;

    private final PleatFolds folds;

    /** Share of the flow through each fold [1]. */
    double nearFoldShare;

    double farFoldShare;

    /** Pressure drop over viscosity and flow per unit height of one pleat [1/m2]. */
    double pleatResistance;

    TwoChannelSolver(PleatGeometry geometry, PleatClosure closure, double[] resistance) {
        this.geometry = geometry;
        this.closure = closure;
        this.resistance = resistance;
        cells = resistance.length;
        legLength = geometry.legLength();
        cosine = geometry.legCosine();
        width = new double[cells];
        difference = new double[cells];
        upstreamDrag = new double[cells + 1];
        downstreamDrag = new double[cells + 1];
        upstreamWeight = new double[POINTS * cells];
        downstreamWeight = new double[POINTS * cells];
        integrateDrag();
        folds = PleatFolds.of(geometry, closure, resistance[0], resistance[cells - 1]);
        solve();
    }

    private double sheetConductance(double inPlanePermeability, double legCosine) {
        return 2.0 / 3 * inPlanePermeability * geometry.thickness() * legCosine;
    }

    private static double[] bends() {
        double[] bends = new double[POINTS];
        for (int point = 0; point < POINTS; point++) {
            bends[point] = 4 * POINT[point] * (1 - POINT[point]);
        }
        return bends;
    }

    /** Where each cell ends, over the depth [1]. */
    private static double[] cellEnds(int cells) {
        double[] ends = new double[cells];
        for (int i = 0; i < cells; i++) {
            ends[i] = (1 - Math.cos(Math.PI * (i + 1) / cells)) / 2;
        }
        return ends;
    }

    private void integrateDrag() {
        double[] ends = cells == PleatPack.DEFAULT_CELLS ? USUAL_ENDS : cellEnds(cells);
        double left = 0;
        double inPlane = 0;
        double slipLength = 0;
        double sheet = 0;
        for (int i = 0; i < cells; i++) {
            double right = ends[i];
            width[i] = (right - left) * legLength;
            double half = (right - left) / 2;
            if (i == 0 || resistance[i] != resistance[i - 1]) {
                inPlane = closure.inPlaneRatio() * geometry.thickness() / resistance[i];
                slipLength = Math.sqrt(inPlane) / closure.slipCoefficient();
                sheet = sheetConductance(inPlane, cosine);
            }
            addHalfCell(i, POINTS * i, left + half / 2, half, inPlane, slipLength, sheet);
            addHalfCell(i + 1, POINTS * i + 2, left + 1.5 * half, half, inPlane, slipLength, sheet);
            left = right;
        }
    }

    private void addHalfCell(int face, int first, double middle, double share, double inPlane, double slip, double m) {
        double weight = share * legLength / 2;
        double factor = closure.gapFactor();
        for (int point = 0; point <= 1; point++) {
            double place = middle + (2 * point - 1) * GAUSS_POINT * share;
            double up = SlipChannel.conductance(factor * geometry.upstreamGap(place), slip, inPlane);
            double down = SlipChannel.conductance(factor * geometry.downstreamGap(place), slip, inPlane);
            double scale = weight / (up * down + m * (up + down + 0.75 * m));
            upstreamWeight[first + point] = (down + 1.5 * m) * scale;
            downstreamWeight[first + point] = (up + 1.5 * m) * scale;
            upstreamDrag[face] += upstreamWeight[first + point];
            downstreamDrag[face] += downstreamWeight[first + point];
            coupling += 0.5 * m * scale;
        }
    }

    private void solve() {
        double[] diagonal = new double[cells];
        double[] face = new double[cells + 1];
        for (int i = 0; i < cells; i++) {
            diagonal[i] = 2 * width[i] / (resistance[i] * cosine);
        }
        for (int i = 1; i < cells; i++) {
            face[i] = 1 / (upstreamDrag[i] + downstreamDrag[i]);
            double source = downstreamDrag[i] * face[i];
            diagonal[i - 1] += face[i];
            diagonal[i] += face[i];
            difference[i - 1] -= source;
            difference[i] += source;
        }
        int last = cells - 1;
        double nearSum = 1 + folds.near() * (upstreamDrag[0] + downstreamDrag[0] + folds.inletStub());
        double nearDrag = upstreamDrag[0] + folds.inletStub();
        diagonal[0] += folds.near() / nearSum;
        difference[0] += 1 - folds.near() * nearDrag / nearSum;
        double farSum = 1 + folds.far() * (upstreamDrag[cells] + downstreamDrag[cells] + folds.outletStub());
        double farDrag = downstreamDrag[cells] + folds.outletStub();
        diagonal[last] += folds.far() / farSum;
        difference[last] -= folds.far() * farDrag / farSum;
        for (int i = 1; i < cells; i++) {
            double ratio = face[i] / diagonal[i - 1];
            diagonal[i] -= ratio * face[i];
            difference[i] += ratio * difference[i - 1];
        }
        difference[last] /= diagonal[last];
        for (int i = last - 1; i >= 0; i--) {
            difference[i] = (difference[i] + face[i + 1] * difference[i + 1]) / diagonal[i];
        }
        nearFoldShare = folds.near() * (difference[0] + nearDrag) / nearSum;
        farFoldShare = folds.far() * (difference[last] + farDrag) / farSum;
        conserve();
        pleatResistance = dissipation();
    }

    /** Mends what rounding takes from the balance of the whole flow, up to 1e-8 where wide channels tie all cells to one. */
    private void conserve() {
        double passed = 0;
        for (int i = 0; i < cells; i++) {
            passed += 2 * width[i] * difference[i] / (resistance[i] * cosine);
        }
        double factor = (1 - nearFoldShare - farFoldShare) / passed;
        for (int i = 0; i < cells; i++) {
            difference[i] *= factor;
        }
    }

    /**
     * What this flow dissipates. It is least for the true flow, so its error goes with the square of that of the flow;
     * within a cell the flow bends as costs least.
     */
    private double dissipation() {
        double flow = 1 - nearFoldShare;
        double total = folds.mouthLoss() - coupling + folds.inletStub() * flow * flow;
        for (int i = 0; i < cells; i++) {
            double across = resistance[i] * cosine / 2;
            double loss = difference[i] * width[i] / across;
            double stiffness = across / width[i];
            double bend = bend(POINTS * i, flow, loss, stiffness);
            total += stiffness * (loss * loss + BEND_STIFFNESS * bend * bend);
            for (int point = 0; point < POINTS; point++) {
                double q = flow - loss * POINT[point] + bend * BEND[point];
                total += upstreamWeight[POINTS * i + point] * q * q
                        + downstreamWeight[POINTS * i + point] * (1 - q) * (1 - q);
            }
            flow -= loss;
        }
        total += folds.outletStub() * (1 - farFoldShare) * (1 - farFoldShare);
        return folds.near() > 0
                ? total + nearFoldShare * nearFoldShare / folds.near() + farFoldShare * farFoldShare / folds.far()
                : total;
    }

    private double bend(int first, double flow, double loss, double stiffness) {
        double resists = BEND_STIFFNESS * stiffness;
        double drives = 0;
        for (int point = 0; point < POINTS; point++) {
            double straight = flow - loss * POINT[point];
            double up = upstreamWeight[first + point];
            double down = downstreamWeight[first + point];
            resists += (up + down) * BEND[point] * BEND[point];
            drives += (down * (1 - straight) - up * straight) * BEND[point];
        }
        return drives / resists;
    }

    /** Resistance of the medium alone, all channels wide open [1/m2]. */
    double mediumResistance() {
        double conductance = folds.near() + folds.far();
        for (int i = 0; i < cells; i++) {
            conductance += 2 * width[i] / (resistance[i] * cosine);
        }
        return 1 / conductance;
    }
}

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
 * cell by two Gauss points with the permeability of that cell. One tridiagonal solve; second order in cell size.
 */
@Source("derived here: lubrication theory with slip walls and in-plane Darcy flow, checked against 2-D Stokes-Brinkman")
@Validity("gap/depth below 0.13; pressure across the sheet nearly linear (error below 0.6 % while lambda t < 1)")
final class TwoChannelSolver {
    private static final double GAUSS_POINT = 0.5 / Math.sqrt(3);
    private static final double[] USUAL_ENDS = cellEnds(PleatPack.DEFAULT_CELLS);

    private final PleatGeometry geometry;
    private final PleatClosure closure;
    private final double[] resistance;
    private final int cells;
    private final double legLength;
    private final double cosine;

    /** Integrals from cell center to cell center (half cells at the ends): of A, B and (m/2)/det [1/m2]. */
    private final double[] upstreamDrag;

    private final double[] downstreamDrag;
    private final double[] coupling;

    /** Cell widths along the depth [m]. */
    final double[] width;

    /** Pressure difference across the leg in each cell over viscosity and flow per unit height [1/m2]. */
    final double[] difference;

    /** Conductance of the near fold (closes the downstream channel) and of the far one [m2]. */
    final double nearFold;

    final double farFold;

    /** Share of the flow through each fold [1]. */
    double nearFoldShare;

    double farFoldShare;

    /** Pressure drop over viscosity and flow per unit height of one pleat [1/m2]. */
    double pleatResistance;

    private final double inletStub;
    private final double outletStub;
    private final double mouthLoss;

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
        coupling = new double[cells + 1];
        integrateDrag();
        if (geometry.ends() == PleatEnds.FOLDED) {
            double thickness = geometry.thickness();
            double near = thickness / resistance[0];
            double far = thickness / resistance[cells - 1];
            double factor = closure.gapFactor();
            double nearWidth = factor * geometry.downstreamGap(0);
            double farWidth = factor * geometry.upstreamGap(1);
            nearFold = SlipChannel.foldConductance(nearWidth, thickness, near, closure.foldsOpen());
            farFold = SlipChannel.foldConductance(farWidth, thickness, far, closure.foldsOpen());
            inletStub = stub(geometry.upstreamGap(0), geometry.upstreamMouth() - geometry.upstreamEnd(), near);
            outletStub = stub(geometry.downstreamGap(1), geometry.downstreamMouth() - geometry.downstreamEnd(), far);
            mouthLoss = SlipChannel.mouthLoss(factor * geometry.upstreamGap(0), geometry.inletPitch(), near)
                    + SlipChannel.mouthLoss(factor * geometry.downstreamGap(1), geometry.outletPitch(), far);
        } else {
            nearFold = 0;
            farFold = 0;
            inletStub = 0;
            outletStub = 0;
            mouthLoss = 0;
        }
        solve();
    }

    /** Resistance of the stretch between the fold crests, gap half a thickness outside the leg end [1/m2]. */
    private double stub(double gapAtEnd, double taper, double permeability) {
        double thickness = geometry.thickness();
        double gap = Math.max(geometry.gapFloor(), gapAtEnd + taper / legLength * thickness / 2);
        double inPlane = closure.inPlaneRatio() * permeability;
        double conductance = SlipChannel.conductance(
                closure.gapFactor() * gap, Math.sqrt(inPlane) / closure.slipCoefficient(), inPlane);
        return thickness / (conductance + sheetConductance(inPlane, 1));
    }

    private double sheetConductance(double inPlanePermeability, double legCosine) {
        return 2.0 / 3 * inPlanePermeability * geometry.thickness() * legCosine;
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
            addHalfCell(i, left + half / 2, half, inPlane, slipLength, sheet);
            addHalfCell(i + 1, left + 1.5 * half, half, inPlane, slipLength, sheet);
            left = right;
        }
    }

    private void addHalfCell(int face, double middle, double share, double inPlane, double slip, double m) {
        double weight = share * legLength / 2;
        for (int point = -1; point <= 1; point += 2) {
            double place = middle + point * GAUSS_POINT * share;
            double factor = closure.gapFactor();
            double up = SlipChannel.conductance(factor * geometry.upstreamGap(place), slip, inPlane);
            double down = SlipChannel.conductance(factor * geometry.downstreamGap(place), slip, inPlane);
            double scale = weight / (up * down + m * (up + down + 0.75 * m));
            upstreamDrag[face] += (down + 1.5 * m) * scale;
            downstreamDrag[face] += (up + 1.5 * m) * scale;
            coupling[face] += 0.5 * m * scale;
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
        double nearSum = 1 + nearFold * (upstreamDrag[0] + downstreamDrag[0] + inletStub);
        double nearDrag = upstreamDrag[0] + inletStub;
        diagonal[0] += nearFold / nearSum;
        difference[0] += 1 - nearFold * nearDrag / nearSum;
        double farSum = 1 + farFold * (upstreamDrag[cells] + downstreamDrag[cells] + outletStub);
        double farDrag = downstreamDrag[cells] + outletStub;
        diagonal[last] += farFold / farSum;
        difference[last] -= farFold * farDrag / farSum;
        for (int i = 1; i < cells; i++) {
            double ratio = face[i] / diagonal[i - 1];
            diagonal[i] -= ratio * face[i];
            difference[i] += ratio * difference[i - 1];
        }
        difference[last] /= diagonal[last];
        for (int i = last - 1; i >= 0; i--) {
            difference[i] = (difference[i] + face[i + 1] * difference[i + 1]) / diagonal[i];
        }
        nearFoldShare = nearFold * (difference[0] + nearDrag) / nearSum;
        farFoldShare = farFold * (difference[last] + farDrag) / farSum;
        sumPressures(face);
    }

    /**
     * Adds up along a path: inlet mouth and stub, upstream channel to the middle of the leg, across it, downstream channel,
     * outlet stub and mouth. It stays out of the narrow tips, where small flows meet huge drags.
     */
    private void sumPressures(double[] face) {
        int middle = cells / 2;
        double total = difference[middle];
        for (int i = 0; i <= cells; i++) {
            double q;
            if (i == 0) {
                q = 1 - nearFoldShare;
            } else if (i == cells) {
                q = farFoldShare;
            } else {
                q = (difference[i - 1] - difference[i] + downstreamDrag[i]) * face[i];
            }
            total += (i <= middle ? upstreamDrag[i] * q : downstreamDrag[i] * (1 - q)) - coupling[i];
        }
        pleatResistance = total + inletStub * (1 - nearFoldShare) + outletStub * (1 - farFoldShare) + mouthLoss;
    }

    /** Resistance of the medium alone, all channels wide open [1/m2]. */
    double mediumResistance() {
        double conductance = nearFold + farFold;
        for (int i = 0; i < cells; i++) {
            conductance += 2 * width[i] / (resistance[i] * cosine);
        }
        return 1 / conductance;
    }
}

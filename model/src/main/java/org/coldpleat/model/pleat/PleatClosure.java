package org.coldpleat.model.pleat;

import org.coldpleat.shared.source.Source;

/**
 * What the two-channel equations cannot know about the medium and the folds.
 *
 * @param slipCoefficient Beavers-Joseph coefficient alpha [1]: slip length = sqrt(in-plane permeability) / alpha;
 *     {@code Double.POSITIVE_INFINITY} for no slip
 * @param inPlaneRatio in-plane over through-plane permeability [1]; 0 for no flow along the sheet
 * @param foldsOpen true if oil passes through the folds, false if they are sealed
 * @param gapFactor factor on both channel gaps [1], for their uncertainty
 */
@Source("G. S. Beavers and D. D. Joseph 1967, J. Fluid Mech. 30, 197 (slip proportional to shear); range from memory")
public record PleatClosure(double slipCoefficient, double inPlaneRatio, boolean foldsOpen, double gapFactor) {
    /** Slip coefficient 1, isotropic medium, open folds, gaps as given. */
    public static final PleatClosure DEFAULT = new PleatClosure(1, 1, true, 1);

    /** No slip and no flow along the sheet: plane channel friction and Darcy wall alone. */
    public static final PleatClosure PLAIN = new PleatClosure(Double.POSITIVE_INFINITY, 0, true, 1);

    /** Lowest plausible slip coefficient [1]. */
    @Source("from memory: Beavers-Joseph coefficients of 0.1 to 4 are quoted; below 0.5 only for very open foams")
    public static final double SLIP_COEFFICIENT_LOW = 0.5;

    /** Highest plausible slip coefficient [1]. */
    @Source("from memory: upper end of the quoted Beavers-Joseph coefficients")
    public static final double SLIP_COEFFICIENT_HIGH = 4;

    /** Lowest plausible in-plane ratio [1]. */
    @Source("derived here: fibers lie in the sheet, so the sheet is at least as open along as across")
    public static final double IN_PLANE_RATIO_LOW = 1;

    /** Highest plausible in-plane ratio [1]. */
    @Source("common practice, no source")
    public static final double IN_PLANE_RATIO_HIGH = 4;

    /** Half-width of the band of the gap factor [1]. */
    @Source("common practice, no source: folding tolerance of pleated elements")
    public static final double GAP_FACTOR_HALF_WIDTH = 0.1;

    /** Channel gap below which slip and in-plane flow matter and are poorly known [m]. */
    @Source("derived here: from 2-D Stokes-Brinkman runs with slip coefficients 0.5 to 4 and in-plane ratios 1 to 4")
    public static final double NARROW_GAP = 0.2e-3;

    public PleatClosure {
        if (!(slipCoefficient > 0)) {
            throw new IllegalArgumentException("slipCoefficient must be above 0 [1], was " + slipCoefficient);
        }
        if (!(inPlaneRatio >= 0) || Double.isInfinite(inPlaneRatio)) {
            throw new IllegalArgumentException("inPlaneRatio must be finite and at least 0 [1], was " + inPlaneRatio);
        }
        if (!(gapFactor > 0) || Double.isInfinite(gapFactor)) {
            throw new IllegalArgumentException("gapFactor must be finite and above 0 [1], was " + gapFactor);
        }
    }
}

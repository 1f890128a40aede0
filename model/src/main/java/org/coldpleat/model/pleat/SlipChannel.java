package org.coldpleat.model.pleat;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Creeping flow along a plane channel between two sheets of fibrous medium, and through its mouth and its closing fold.
 * All conductances are per unit pleat height and unit viscosity.
 */
@Validity("Reynolds number of the channel below about 1; gap small against the pleat depth (below 0.13 of it)")
public final class SlipChannel {
    /** Loss of a slit mouth of vanishing width, times the gap squared [1]. */
    @Source("derived here: 2-D Stokes runs of plenum and slit; thin-slit theory gives 16/pi = 5.09 (from memory)")
    private static final double MOUTH_LOSS = 4.99;

    /** Conductance of the two corners of a sealed or sharp fold over the permeability [1]. */
    @Source("derived here: twice 0.46 per corner, checked by 2-D runs with sealed folds; 2 ln 2/pi = 0.44 without cap")
    private static final double SEALED_FOLD = 0.92;

    /** What an open fold adds at its corners [1]; with the sealed part 2 x 0.54, the shape factor of adjoining walls. */
    @Source("heat-transfer shape factor tables, edge of adjoining walls 0.54 D (from memory)")
    private static final double OPEN_FOLD_EDGES = 0.16;

    /** Fold width in thicknesses over which the edge part builds up, inverse [1]. */
    @Source("derived here: fitted to 2-D runs between sharp and blunt folds")
    private static final double EDGE_BUILD_UP = 5;

    private SlipChannel() {}

    /**
     * Conductance of a channel with slip at both walls and the boundary layer inside the sheets:
     * {@code C = h^3/12 + h^2 b/2 + 2 h k_x}; replaces {@code h^3/12} of solid walls. For slip coefficient 1 nearly
     * {@code (h + 2 sqrt(k_x))^3/12}.
     *
     * @param gap clear gap h [m], at least 0
     * @param slipLength b = sqrt(k_x)/alpha [m]
     * @param inPlanePermeability k_x [m2]
     * @return flow per unit height over (pressure gradient / viscosity) [m3]
     */
    @Source("derived here: plane Poiseuille flow with Beavers-Joseph (1967) slip; exact for Brinkman walls at alpha = 1"
            + " up to order k_x^1.5")
    public static double conductance(double gap, double slipLength, double inPlanePermeability) {
        return gap * (gap * (gap / 12 + slipLength / 2) + 2 * inPlanePermeability);
    }

    /**
     * How the conductance of a channel falls as the logarithm of the medium resistance rises, {@code h^2 b/4 + 2 h k_x}.
     *
     * @param gap clear gap h [m], at least 0
     * @param slipLength b = sqrt(k_x)/alpha [m]
     * @param inPlanePermeability k_x [m2]
     * @return fall of {@link #conductance} [m3]
     */
    @Source("derived here: k_x goes with the inverse of the medium resistance, b with its root")
    static double conductanceFall(double gap, double slipLength, double inPlanePermeability) {
        return gap * (gap * slipLength / 4 + 2 * inPlanePermeability);
    }

    /**
     * Loss of the mouth between plenum and channel, {@code e(h/P)/h^2} with
     * {@code e(x) = 4.99 (1 - 0.41 x^2 - 0.13 x^4)}, but never more than the loss of oil that leaves or enters through
     * the sheet faces beside the mouth instead, of order {@code 1/k}.
     *
     * @param gap clear gap at the mouth [m], at least 0
     * @param pitch pleat pitch at the mouth [m]
     * @param permeability of the medium beside the mouth [m2]
     * @return pressure loss over (viscosity x flow per unit height) [1/m2]
     */
    @Validity("gap/pitch 0 to 0.8; below a gap of sqrt(5 k), a few micrometers, limited to 1/k")
    @Source("derived here: own 2-D Stokes runs")
    public static double mouthLoss(double gap, double pitch, double permeability) {
        double shape = mouthShape(gap, pitch);
        return shape / Math.max(gap * gap, shape * permeability);
    }

    /** Rise of {@link #mouthLoss} with the logarithm of the medium resistance [1/m2]. */
    static double mouthRise(double gap, double pitch, double permeability) {
        return gap * gap < mouthShape(gap, pitch) * permeability ? 1 / permeability : 0;
    }

    private static double mouthShape(double gap, double pitch) {
        double blockage = Math.min(1, gap / pitch);
        double square = blockage * blockage;
        return MOUTH_LOSS * (1 - square * (0.41 + 0.13 * square));
    }

    /**
     * Darcy conductance of the fold that closes a channel, {@code k [0.92 + f (w/t + 0.16 min(1, 5 w/t))]}.
     *
     * @param width clear width w of the closed channel end [m], 0 for a sharp V
     * @param thickness t [m]
     * @param permeability k [m2]
     * @param open f = 1 for an open fold, 0 for a sealed one
     * @return flow per unit height over (pressure difference / viscosity) [m2]
     */
    @Source("derived here: shape factors, checked by 2-D Stokes-Brinkman runs with open and sealed folds")
    public static double foldConductance(double width, double thickness, double permeability, boolean open) {
        double ratio = width / thickness;
        double through = open ? ratio + OPEN_FOLD_EDGES * Math.min(1, EDGE_BUILD_UP * ratio) : 0;
        return permeability * (SEALED_FOLD + through);
    }
}

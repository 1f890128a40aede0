package org.coldpleat.model.pleat;

import java.util.Objects;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * One pleat in cross section: two straight legs of medium between an upstream and a downstream channel. The gaps are
 * linear along the leg between the fold ends. A gap may come out negative when the legs do not fit: then they touch,
 * see {@link #upstreamGap} and {@link #downstreamGap}.
 *
 * @param pleatDepth overall depth from crest to crest, folds of one thickness each included [m]
 * @param thickness thickness of the medium [m]
 * @param upstreamMouth clear upstream gap at the inlet end of the legs [m]
 * @param upstreamEnd clear upstream gap at its closed end, inside the far fold [m]
 * @param downstreamEnd clear downstream gap at its closed end, inside the near fold [m]
 * @param downstreamMouth clear downstream gap at the outlet end of the legs [m]
 * @param inletPitch distance from pleat to pleat at the inlet end of the legs [m]
 * @param outletPitch distance from pleat to pleat at the outlet end of the legs [m]
 * @param gapFloor gap that embossing keeps open even where the legs would touch [m], 0 for none
 * @param ends folds or plugs
 */
@Validity("pleatDepth above two thicknesses (folded) or above 0 (plugged); leg angle below about 15 degrees")
public record PleatGeometry(
        double pleatDepth,
        double thickness,
        double upstreamMouth,
        double upstreamEnd,
        double downstreamEnd,
        double downstreamMouth,
        double inletPitch,
        double outletPitch,
        double gapFloor,
        PleatEnds ends) {
    public PleatGeometry {
        Objects.requireNonNull(ends, "ends");
        Require.positive("thickness", thickness, "m");
        Require.positive("pleatDepth", pleatDepth, "m");
        if (ends == PleatEnds.FOLDED && !(pleatDepth > 2 * thickness)) {
            throw new IllegalArgumentException("pleatDepth " + pleatDepth + " m must exceed two thicknesses, "
                    + 2 * thickness + " m, to leave room for the folds");
        }
        requireFinite("upstreamMouth", upstreamMouth);
        requireFinite("upstreamEnd", upstreamEnd);
        requireFinite("downstreamEnd", downstreamEnd);
        requireFinite("downstreamMouth", downstreamMouth);
        Require.positive("inletPitch", inletPitch, "m");
        Require.positive("outletPitch", outletPitch, "m");
        if (!(gapFloor >= 0) || Double.isInfinite(gapFloor)) {
            throw new IllegalArgumentException("gapFloor must be finite and at least 0 m, was " + gapFloor);
        }
    }

    /** Parallel legs in a flat panel with gaps [m] above 0. */
    public static PleatGeometry rectangular(
            double pleatDepth, double thickness, double upstreamGap, double downstreamGap, PleatEnds ends) {
        double pitch = upstreamGap + downstreamGap + 2 * thickness;
        return new PleatGeometry(
                pleatDepth, thickness, upstreamGap, upstreamGap, downstreamGap, downstreamGap, pitch, pitch, 0, ends);
    }

    /** Sharp V pleats in a flat panel, both mouths of the same clear width [m]. */
    public static PleatGeometry vee(double pleatDepth, double thickness, double mouth, PleatEnds ends) {
        double legLength = ends == PleatEnds.FOLDED ? pleatDepth - 2 * thickness : pleatDepth;
        double pitch = mouth + 2 * thickness * Math.hypot(1, mouth / (2 * legLength));
        return new PleatGeometry(pleatDepth, thickness, mouth, 0, 0, mouth, pitch, pitch, 0, ends);
    }

    /**
     * Pleats on a round core, flow from outside in.
     *
     * <p>{@code P(r) = 2 r tan(pi/N)}, {@code tau = t/cos(theta)}; at the outer fold end the downstream gap is the
     * outer fold width, at the inner fold end the upstream gap is the inner fold width, and everywhere
     * {@code upstream + downstream = P(r) - 2 tau}.
     *
     * @param outerRadius over the crests [m]
     * @param innerRadius at the inner crests [m]
     * @param pleatCount number of pleats [1], at least 3
     * @param thickness [m]
     * @param outerFoldWidth clear width left inside the outer folds [m], 0 for a sharp crease
     * @param innerFoldWidth clear width left inside the inner folds [m], 0 for a sharp crease
     * @param gapFloor gap kept open by embossing [m]
     * @param ends folds or plugs
     */
    @Source("derived here: straight legs tangent to both folds; checked against 2-D Stokes-Brinkman runs")
    public static PleatGeometry radial(
            double outerRadius,
            double innerRadius,
            double pleatCount,
            double thickness,
            double outerFoldWidth,
            double innerFoldWidth,
            double gapFloor,
            PleatEnds ends) {
        double fold = ends == PleatEnds.FOLDED ? thickness : 0;
        double legLength = requireLegLength(outerRadius, innerRadius, fold, thickness);
        double halfAngle = requireHalfAngle(pleatCount);
        double outerPitch = 2 * (outerRadius - fold) * Math.tan(halfAngle);
        double innerPitch = 2 * (innerRadius + fold) * Math.tan(halfAngle);
        double tau = legThicknessAcross(outerPitch - outerFoldWidth - innerFoldWidth, legLength, thickness);
        return new PleatGeometry(
                outerRadius - innerRadius,
                thickness,
                outerPitch - 2 * tau - outerFoldWidth,
                innerFoldWidth,
                outerFoldWidth,
                innerPitch - 2 * tau - innerFoldWidth,
                outerPitch,
                innerPitch,
                gapFloor,
                ends);
    }

    /** Pleats on a round core with the legs pushed together: constant downstream gap [m], set by spacers or embossing. */
    @Source("derived here: upstream gap P(r) - 2 tau - downstream gap")
    public static PleatGeometry radialLegsTogether(
            double outerRadius,
            double innerRadius,
            double pleatCount,
            double thickness,
            double downstreamGap,
            PleatEnds ends) {
        double fold = ends == PleatEnds.FOLDED ? thickness : 0;
        requireLegLength(outerRadius, innerRadius, fold, thickness);
        double halfAngle = requireHalfAngle(pleatCount);
        double outerPitch = 2 * (outerRadius - fold) * Math.tan(halfAngle);
        double innerPitch = 2 * (innerRadius + fold) * Math.tan(halfAngle);
        double tau = thickness / Math.cos(halfAngle);
        return new PleatGeometry(
                outerRadius - innerRadius,
                thickness,
                outerPitch - 2 * tau - downstreamGap,
                innerPitch - 2 * tau - downstreamGap,
                downstreamGap,
                downstreamGap,
                outerPitch,
                innerPitch,
                0,
                ends);
    }

    /** Length of the two-channel stretch along the depth, without the folds [m]. */
    public double legLength() {
        return ends == PleatEnds.FOLDED ? pleatDepth - 2 * thickness : pleatDepth;
    }

    /** Cosine of the angle between a leg and the depth direction [1]. */
    public double legCosine() {
        double tangent = (upstreamMouth - upstreamEnd) / (2 * legLength());
        return 1 / Math.sqrt(1 + tangent * tangent);
    }

    /** The same pleat with another embossing height [m]. */
    public PleatGeometry withGapFloor(double value) {
        return new PleatGeometry(
                pleatDepth,
                thickness,
                upstreamMouth,
                upstreamEnd,
                downstreamEnd,
                downstreamMouth,
                inletPitch,
                outletPitch,
                value,
                ends);
    }

    /**
     * Number of pleats on the round core [1], from the taper of the pitch; not a whole number where the count was not sure.
     *
     * @throws IllegalArgumentException if the pack is flat
     */
    public double pleatCount() {
        double halfAngle = Math.atan((inletPitch - outletPitch) / (2 * legLength()));
        if (!(halfAngle > 0)) {
            throw new IllegalArgumentException(
                    "pleats must sit on a round core to be counted; the pitch does not taper");
        }
        return Math.PI / halfAngle;
    }

    /**
     * Other number of pleats of the same medium on the same core within the same outer diameter; fold widths stay. A pack
     * whose downstream gap is the same along the leg keeps that gap.
     *
     * @param count number of pleats [1], at least 3
     * @throws IllegalArgumentException if the pack is flat
     */
    @Source("derived here: the radii follow from pitch and count, then as for a new round pack")
    public PleatGeometry withPleatCount(double count) {
        return onCore(count, 0, thickness);
    }

    /**
     * As many pleats on the same core, with legs so many times as long.
     *
     * @param factor [1], above 0
     * @throws IllegalArgumentException if the pack is flat
     */
    public PleatGeometry deeper(double factor) {
        return onCore(pleatCount(), (factor - 1) * legLength(), thickness);
    }

    /**
     * As many pleats between the same diameters, of a medium so many times as thick.
     *
     * @param factor [1], above 0
     * @throws IllegalArgumentException if the pack is flat or the folds leave no room
     */
    public PleatGeometry thicker(double factor) {
        return onCore(pleatCount(), 0, factor * thickness);
    }

    private PleatGeometry onCore(double count, double outward, double thick) {
        double pitchPerRadius = 2 * Math.tan(requireHalfAngle(pleatCount()));
        double fold = ends == PleatEnds.FOLDED ? thickness : 0;
        double outerRadius = inletPitch / pitchPerRadius + fold + outward;
        double innerRadius = outletPitch / pitchPerRadius - fold;
        return downstreamEnd == downstreamMouth
                ? radialLegsTogether(outerRadius, innerRadius, count, thick, downstreamEnd, ends)
                        .withGapFloor(gapFloor)
                : radial(outerRadius, innerRadius, count, thick, downstreamEnd, upstreamEnd, gapFloor, ends);
    }

    /**
     * Clear downstream gap at a place along the leg [m]. Where the straight legs would cross, they touch instead: the
     * gap is the floor, and what the legs leave free stays in the other channel. Where even both gaps together do not
     * fit, both are the floor (the medium is taken to yield, its resistance unchanged).
     *
     * @param share place along the leg [1], 0 at the inlet end, 1 at the outlet end
     */
    public double downstreamGap(double share) {
        double upstream = upstreamMouth + (upstreamEnd - upstreamMouth) * share;
        double downstream = downstreamEnd + (downstreamMouth - downstreamEnd) * share;
        return Math.max(gapFloor, Math.min(downstream, upstream + downstream - gapFloor));
    }

    /** Clear upstream gap at a place along the leg [m]; see {@link #downstreamGap}. */
    public double upstreamGap(double share) {
        double upstream = upstreamMouth + (upstreamEnd - upstreamMouth) * share;
        double downstream = downstreamEnd + (downstreamMouth - downstreamEnd) * share;
        return Math.max(gapFloor, Math.min(upstream, upstream + downstream - gapFloor));
    }

    /** True where the straight legs would leave less than the gap floor in a channel, so that contact or embossing holds. */
    public boolean floorHolds(double share) {
        double upstream = upstreamMouth + (upstreamEnd - upstreamMouth) * share;
        double downstream = downstreamEnd + (downstreamMouth - downstreamEnd) * share;
        return Math.min(upstream, downstream) < gapFloor;
    }

    /**
     * Share of the pleat depth over which the legs fill the pitch, {@code P < 2 t} [1]. For pleats on a core this is
     * the stretch with {@code pi r/N < t} (with the tangent in place of the arc).
     */
    public double crowdedShare() {
        double slope = (inletPitch - outletPitch) / legLength();
        double fold = (pleatDepth - legLength()) / 2;
        double outerPitch = inletPitch + slope * fold;
        double innerPitch = outletPitch - slope * fold;
        double outer = outerPitch - 2 * thickness;
        double inner = innerPitch - 2 * thickness;
        if (outer >= 0 && inner >= 0) {
            return 0;
        }
        if (outer <= 0 && inner <= 0) {
            return 1;
        }
        double crossed = Math.min(outer, inner);
        return -crossed / Math.abs(outer - inner);
    }

    private static double legThicknessAcross(double room, double legLength, double thickness) {
        // 2 L tan(theta) = room - 2 t / cos(theta), solved for tan(theta)
        double tangent = (room * legLength
                        - thickness * Math.sqrt(room * room + 4 * legLength * legLength - 4 * thickness * thickness))
                / (2 * (legLength * legLength - thickness * thickness));
        return thickness * Math.hypot(1, tangent);
    }

    private static double requireLegLength(double outerRadius, double innerRadius, double fold, double thickness) {
        Require.positive("innerRadius", innerRadius, "m");
        Require.positive("thickness", thickness, "m");
        double length = outerRadius - innerRadius - 2 * fold;
        if (!(length > thickness)) {
            throw new IllegalArgumentException("outerRadius " + outerRadius + " m must exceed innerRadius "
                    + innerRadius + " m by more than " + (2 * fold + thickness) + " m (folds and one thickness)");
        }
        return length;
    }

    private static double requireHalfAngle(double pleatCount) {
        if (!(pleatCount >= 3) || Double.isInfinite(pleatCount)) {
            throw new IllegalArgumentException("pleatCount must be at least 3, was " + pleatCount);
        }
        return Math.PI / pleatCount;
    }

    private static void requireFinite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be finite [m], was " + value);
        }
    }
}

package org.coldpleat.model.pleat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;

/**
 * A solved pack. Everything here is geometry and medium resistance: the pressure drop is {@code viscosity x resistance x
 * flow}.
 *
 * @param resistance pressure drop over viscosity and flow [1/m3]
 * @param mediumResistance the same with all channels wide open, medium and folds alone [1/m3]
 * @param effectiveArea medium area open to flow, folds included [m2]
 * @param crowdedShare share of the pleat depth over which the legs fill the pitch [1]
 * @param touchingShare share of the leg on which a channel is closed by contact [1]
 * @param smallestUpstreamGap along the leg, at cell centers [m]; NaN if the channels are unknown
 * @param smallestDownstreamGap along the leg, at cell centers [m]; NaN if the channels are unknown
 * @param foldShare share of the flow that passes through the folds [1]
 * @param relativeFaceVelocities face velocity over the mean one (flow / effective area) [1], double[cells], inlet end
 *     first
 * @param cellAreas medium area of each cell, both legs of all pleats [m2], double[cells]; folds not included
 * @param flags what to know about the result
 */
public record PackResult(
        double resistance,
        double mediumResistance,
        double effectiveArea,
        double crowdedShare,
        double touchingShare,
        double smallestUpstreamGap,
        double smallestDownstreamGap,
        double foldShare,
        double[] relativeFaceVelocities,
        double[] cellAreas,
        Set<PackFlag> flags) {
    public PackResult {
        relativeFaceVelocities = relativeFaceVelocities.clone();
        cellAreas = cellAreas.clone();
        flags = Set.copyOf(flags);
    }

    @Override
    public double[] relativeFaceVelocities() {
        return relativeFaceVelocities.clone();
    }

    @Override
    public double[] cellAreas() {
        return cellAreas.clone();
    }

    /** Channel factor: pack resistance over that of the medium alone [1], at least 1. */
    public double channelFactor() {
        return resistance / mediumResistance;
    }

    /** Number of cells along the leg [1]. */
    public int cells() {
        return cellAreas.length;
    }

    /** True if no gaps were known and the pack counts as medium alone. */
    public boolean channelsUnknown() {
        return flags.contains(PackFlag.CHANNELS_UNKNOWN);
    }

    /** Pressure drop [Pa] of oil of a viscosity [Pa s] at a flow [m3/s]. */
    public double pressureDrop(double dynamicViscosity, double flowRate) {
        return dynamicViscosity * resistance * flowRate;
    }

    /** Face velocity [m/s] in each cell at a flow [m3/s], double[cells]. */
    public double[] faceVelocities(double flowRate) {
        double[] velocity = relativeFaceVelocities();
        for (int i = 0; i < velocity.length; i++) {
            velocity[i] *= flowRate / effectiveArea;
        }
        return velocity;
    }

    /** Findings in words, about a place such as the name of a candidate. */
    public List<Notice> notices(String place) {
        List<Notice> notices = new ArrayList<>();
        if (channelsUnknown()) {
            notices.add(Notice.of("pleat.channelsUnknown", Severity.WARNING, place));
        }
        if (flags.contains(PackFlag.CROWDED)) {
            notices.add(Notice.of("pleat.crowded", Severity.WARNING, place, Amount.percent(crowdedShare)));
        }
        if (flags.contains(PackFlag.LEGS_TOUCH)) {
            notices.add(Notice.of("pleat.legsTouch", Severity.WARNING, place, Amount.percent(touchingShare)));
        }
        if (flags.contains(PackFlag.GAP_FLOOR_HOLDS)) {
            notices.add(Notice.of("pleat.gapFloorHolds", Severity.INFO, place));
        }
        if (flags.contains(PackFlag.NARROW_GAP)) {
            notices.add(Notice.of("pleat.narrowGap", Severity.WARNING, place));
        }
        return List.copyOf(notices);
    }
}

package org.coldpleat.model.pleat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;

/**
 * A pack as a whole. Everything here is geometry and medium resistance: the pressure drop is {@code viscosity x resistance
 * x flow}.
 *
 * @param resistance pressure drop over viscosity and flow [1/m3]
 * @param mediumResistance the same with all channels wide open, medium and folds alone [1/m3]
 * @param effectiveArea medium area open to flow, folds included [m2]
 * @param crowdedShare share of the pleat depth over which the legs fill the pitch [1]
 * @param touchingShare share of the leg on which a channel is closed by contact [1]
 * @param smallestUpstreamGap along the leg, at cell centers [m]; NaN if the channels are unknown
 * @param smallestDownstreamGap along the leg, at cell centers [m]; NaN if the channels are unknown
 * @param flags what to know about the pack
 */
public record PackSummary(
        double resistance,
        double mediumResistance,
        double effectiveArea,
        double crowdedShare,
        double touchingShare,
        double smallestUpstreamGap,
        double smallestDownstreamGap,
        Set<PackFlag> flags) {
    public PackSummary {
        flags = Set.copyOf(flags);
    }

    /** Channel factor: pack resistance over that of the medium alone [1], at least 1. */
    public double channelFactor() {
        return resistance / mediumResistance;
    }

    /** True if no gaps were known and the pack counts as medium alone. */
    public boolean channelsUnknown() {
        return flags.contains(PackFlag.CHANNELS_UNKNOWN);
    }

    /** Pressure drop [Pa] of oil of a viscosity [Pa s] at a flow [m3/s]. */
    public double pressureDrop(double dynamicViscosity, double flowRate) {
        return dynamicViscosity * resistance * flowRate;
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

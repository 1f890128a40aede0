package org.coldpleat.model.filter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;

/**
 * Filter at one flow.
 *
 * @param converged whether the split of the flow was found; if not, the numbers must not be used
 * @param totalFlow through filter and valves together [m3/s]
 * @param totalDrop over the whole filter [Pa]
 * @param slope d(total drop)/d(total flow) [Pa s/m3]
 * @param partDrops along the filtered path in the order of {@link FilterPart}, as the medium sees them on average [Pa];
 *     they add up to the total drop
 * @param mediumFlow through the pack [m3/s]
 * @param elementValve valve inside the filter
 * @param blockValve valve parallel to the whole filter
 */
public record FilterState(
        boolean converged,
        double totalFlow,
        double totalDrop,
        double slope,
        Map<FilterPart, Double> partDrops,
        double mediumFlow,
        ValveState elementValve,
        ValveState blockValve) {
    public FilterState {
        partDrops = Collections.unmodifiableMap(new EnumMap<>(partDrops));
    }

    /** Drop of one part [Pa]. */
    public double partDrop(FilterPart part) {
        return partDrops.get(part);
    }

    /** Drop over the pleat pack [Pa]. */
    public double elementDrop() {
        return partDrop(FilterPart.PLEAT_PACK);
    }

    /** Flow through all bypass valves [m3/s]. */
    public double bypassFlow() {
        return elementValve.flowRate() + blockValve.flowRate();
    }

    /**
     * Share of the total flow that is not filtered [1], leaks of shut valves included; 0 at no flow, and where a leak runs
     * backward, since that oil has been filtered.
     */
    public double bypassShare() {
        return totalFlow == 0 ? 0 : Math.max(0, bypassFlow() / totalFlow);
    }

    /** The valve closest to opening or furthest open. */
    public ValveState leadingValve() {
        return elementValve.ratio() >= blockValve.ratio() ? elementValve : blockValve;
    }

    /** Whether any bypass valve is open. */
    public boolean isBypassOpen() {
        return elementValve.isOpen() || blockValve.isOpen();
    }

    /** What a reader of this state should know. */
    public List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (!converged) {
            notices.add(Notice.of("filter.notConverged", Severity.WARNING, "filter"));
        }
        if (totalFlow < 0) {
            notices.add(
                    Notice.of("filter.flowsBackward", Severity.WARNING, "filter", new Amount(Look.FLOW, -totalFlow)));
        }
        for (ValveState valve : List.of(elementValve, blockValve)) {
            if (valve.isLiftedFully()) {
                Amount difference = new Amount(Look.PLAIN_PRESSURE, valve.pressureDifference());
                notices.add(Notice.of("valve.liftedFully", Severity.INFO, "filter", difference));
            }
        }
        if (!elementValve.present() && !blockValve.present()) {
            Amount drop = new Amount(Look.PLAIN_PRESSURE, elementDrop());
            notices.add(Notice.of("filter.noBypassValve", Severity.CAUTION, "filter", drop));
        }
        return List.copyOf(notices);
    }

    /** Flow that is unaccounted for, relative to the total flow [1]. */
    public double flowResidual() {
        double lost = totalFlow - mediumFlow - bypassFlow();
        return lost == 0 ? 0 : Math.abs(lost / totalFlow);
    }

    /** Mismatch of total drop and sum of the parts, relative to the total drop [1]. */
    public double pressureResidual() {
        double sum = 0;
        for (double part : partDrops.values()) {
            sum += part;
        }
        return sum == totalDrop ? 0 : Math.abs((sum - totalDrop) / totalDrop);
    }
}

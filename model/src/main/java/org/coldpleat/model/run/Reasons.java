package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.valve.SpringValve;

/**
 * Why one candidate opens earlier than another: each of their differences is put into the first candidate alone, and the
 * change of its ratio of valve difference to opening pressure is what that difference is worth.
 */
final class Reasons {
    /** Least change of the logarithm of the ratio that is worth a sentence [1]. */
    private static final double WORTH_SAYING = 0.03;

    private final SharedModel shared;
    private final Duty duty;
    private final double temperature;

    Reasons(SharedModel shared, Duty duty, double temperature) {
        this.shared = shared;
        this.duty = duty;
        this.temperature = temperature;
    }

    /**
     * One difference and what it is worth.
     *
     * @param code what differs: {@code area}, {@code resistance}, {@code channels}, {@code opening} or {@code passages}
     * @param logEffect how much it raises the logarithm of the first candidate's ratio over the second's [1]
     */
    record Reason(String code, double logEffect) {
        /** Factor on the ratio [1]. */
        double factor() {
            return Math.exp(logEffect);
        }
    }

    /** Differences that make the first open earlier or later than the second, largest first. */
    List<Reason> between(BuiltCandidate first, BuiltCandidate second) {
        double own = logRatio(first.filter());
        List<Reason> reasons = new ArrayList<>();
        double pack = first.filter().elementResistance();
        double area = first.pack().effectiveArea() / second.pack().effectiveArea();
        double resistance = second.mediumResistance() / first.mediumResistance();
        double channels = second.pack().channelFactor() / first.pack().channelFactor();
        double explained = 0;
        explained += add(reasons, "area", own - withPack(first, pack * area));
        explained += add(reasons, "resistance", own - withPack(first, pack * resistance));
        explained += add(reasons, "channels", own - withPack(first, pack * channels));
        Optional<FilterAssembly> reset = withOpening(first.filter(), second.filter());
        if (reset.isPresent()) {
            explained += add(reasons, "opening", own - logRatio(reset.get()));
        }
        double whole = own - logRatio(second.filter());
        add(reasons, "passages", whole - explained);
        reasons.removeIf(reason -> !(Math.abs(reason.logEffect()) >= WORTH_SAYING));
        reasons.sort(Comparator.comparingDouble((Reason reason) -> -Math.abs(reason.logEffect()))
                .thenComparing(Reason::code));
        return List.copyOf(reasons);
    }

    private static double add(List<Reason> reasons, String code, double logEffect) {
        reasons.add(new Reason(code, logEffect));
        return logEffect;
    }

    private double withPack(BuiltCandidate candidate, double packResistance) {
        return logRatio(candidate.filter().withElementResistance(packResistance));
    }

    private static Optional<FilterAssembly> withOpening(FilterAssembly first, FilterAssembly second) {
        if (first.elementValve().isEmpty() || second.elementValve().isEmpty()) {
            return Optional.empty();
        }
        SpringValve valve = first.elementValve().get();
        double pressure = second.elementValve().get().openingPressure();
        return Optional.of(first.withBypass(first.elementValveLocation(), valve.withOpeningPressure(pressure)));
    }

    private double logRatio(FilterAssembly filter) {
        DutyModel model = new DutyModel(shared, filter, duty);
        return Math.log(model.ratio(model.heldShutAt(temperature, Optional.empty())));
    }
}

package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.resolve.input.Duty;
import org.coldpleat.model.steady.DutyModel;
import org.coldpleat.model.valve.SpringValve;

/**
 * Why one candidate opens earlier than another: their differences are put into the first candidate, and the change of
 * its ratio of valve difference to opening pressure is what a difference is worth.
 */
public final class Reasons {
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
    record Reason(String code, double logEffect) {}

    /**
     * Differences that make the first open earlier or later than the second, largest first. Each is the mean of its worth
     * when the differences are put into the first candidate one after the other in one order and in the reverse order, so
     * that together they make up the whole.
     */
    List<Reason> between(BuiltCandidate first, BuiltCandidate second) {
        List<Step> steps = steps(first, second);
        double[] worth = new double[steps.size()];
        addWorth(first.filter(), steps, worth, false);
        addWorth(first.filter(), steps, worth, true);
        List<Reason> reasons = new ArrayList<>();
        for (int i = 0; i < worth.length; i++) {
            if (Math.abs(worth[i]) >= WORTH_SAYING) {
                reasons.add(new Reason(steps.get(i).code(), worth[i]));
            }
        }
        reasons.sort(Comparator.comparingDouble((Reason reason) -> -Math.abs(reason.logEffect()))
                .thenComparing(Reason::code));
        return List.copyOf(reasons);
    }

    /** One difference and how to put it into a filter. */
    public record Step(String code, UnaryOperator<FilterAssembly> change) {}

    /** What differs between two candidates, in a fixed order; all steps together make the first filter the second. */
    public static List<Step> steps(BuiltCandidate first, BuiltCandidate second) {
        double area = first.pack().effectiveArea() / second.pack().effectiveArea();
        double resistance = second.mediumResistance() / first.mediumResistance();
        double channels = second.pack().channelFactor() / first.pack().channelFactor();
        return List.of(
                new Step("area", filter -> withPack(filter, area)),
                new Step("resistance", filter -> withPack(filter, resistance)),
                new Step("channels", filter -> withPack(filter, channels)),
                new Step("opening", filter -> withOpening(filter, second.filter())),
                new Step("passages", filter -> withPassages(filter, second.filter())));
    }

    private void addWorth(FilterAssembly start, List<Step> steps, double[] worth, boolean reverse) {
        FilterAssembly filter = start;
        double before = logRatio(filter);
        for (int k = 0; k < worth.length; k++) {
            int i = reverse ? worth.length - 1 - k : k;
            filter = steps.get(i).change().apply(filter);
            double after = logRatio(filter);
            worth[i] += (before - after) / 2;
            before = after;
        }
    }

    private static FilterAssembly withPack(FilterAssembly filter, double factor) {
        return filter.withElementResistance(filter.elementResistance() * factor);
    }

    private static FilterAssembly withOpening(FilterAssembly filter, FilterAssembly other) {
        if (filter.elementValve().isEmpty() || other.elementValve().isEmpty()) {
            return filter;
        }
        double pressure = other.elementValve().get().openingPressure();
        SpringValve valve = filter.elementValve().get().withOpeningPressure(pressure);
        return filter.withBypass(filter.elementValveLocation(), valve);
    }

    /** Everything of the other filter but its pack and, where both have a valve inside, its opening pressure. */
    private static FilterAssembly withPassages(FilterAssembly filter, FilterAssembly other) {
        return withOpening(other.withElementResistance(filter.elementResistance()), filter);
    }

    private double logRatio(FilterAssembly filter) {
        DutyModel model = new DutyModel(shared, filter, duty);
        return Math.log(model.ratio(model.heldShutAt(temperature, Optional.empty())));
    }
}

package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.DesignState;

/**
 * Why one candidate opens earlier than another: their differences are put into the first candidate, and the change of
 * its ratio of valve difference to opening pressure is what a difference is worth.
 */
public final class Reasons {
    /** Least change of the logarithm of the ratio that is worth a sentence [1]. */
    private static final double WORTH_SAYING = 0.03;

    private final ResolvedCase resolved;
    private final OperatingState operatingState;
    private final double temperature;

    Reasons(ResolvedCase resolved, OperatingState operatingState, double temperature) {
        this.resolved = resolved;
        this.operatingState = operatingState;
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
    List<Reason> between(int first, int second) {
        List<Step> steps =
                steps(resolved.candidates().get(first), resolved.candidates().get(second));
        Design design = Design.of(resolved, first);
        double[] worth = new double[steps.size()];
        addWorth(design, steps, worth, false);
        addWorth(design, steps, worth, true);
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

    /** One difference and how to put it into a candidate. */
    public record Step(String code, UnaryOperator<CandidateChange> change) {}

    /** What differs between two candidates, in a fixed order; all steps together make the first filter the second. */
    public static List<Step> steps(BuiltCandidate first, BuiltCandidate second) {
        double area = first.pack().effectiveArea() / second.pack().effectiveArea();
        double resistance = second.mediumResistance() / first.mediumResistance();
        double channels = second.pack().channelFactor() / first.pack().channelFactor();
        double opening = opening(first, second);
        return List.of(
                new Step("area", change -> change.timesPack(area)),
                new Step("resistance", change -> change.timesPack(resistance)),
                new Step("channels", change -> change.timesPack(channels)),
                new Step("opening", change -> change.timesOpening(opening)),
                new Step("passages", change -> change.withShell(second.filter())));
    }

    /** Opening pressure of the valve in the second over that in the first [1]; 1 unless both have one. */
    private static double opening(BuiltCandidate first, BuiltCandidate second) {
        return first.filter()
                .elementValve()
                .flatMap(one ->
                        second.filter().elementValve().map(other -> other.openingPressure() / one.openingPressure()))
                .orElse(1.0);
    }

    private void addWorth(Design first, List<Step> steps, double[] worth, boolean reverse) {
        Design design = first;
        double before = logRatio(design);
        for (int k = 0; k < worth.length; k++) {
            int i = reverse ? worth.length - 1 - k : k;
            design = design.changed(steps.get(i).change());
            double after = logRatio(design);
            worth[i] += (before - after) / 2;
            before = after;
        }
    }

    private double logRatio(Design design) {
        return Math.log(DesignState.of(design, operatingState).valveRatio(temperature));
    }
}

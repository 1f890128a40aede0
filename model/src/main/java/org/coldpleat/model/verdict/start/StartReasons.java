package org.coldpleat.model.verdict.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.verdict.Reasons;

/**
 * Why one candidate stays open longer than another in a start: its differences are replaced by those of the other, one
 * after the other, and the start is computed anew each time. What a difference is worth is the mean of its worth in one
 * order and in the reverse order, so that together they make up the whole difference of the open times.
 */
final class StartReasons {
    static final String HOLD_UP = "holdUp";

    /** Least worth of a difference that gets a sentence [s]. */
    private static final double WORTH_SAYING = 1;

    private final ResolvedCase resolved;
    private final StartPlan plan;

    StartReasons(ResolvedCase resolved, StartPlan plan) {
        this.resolved = resolved;
        this.plan = plan;
    }

    /**
     * One difference and what it is worth.
     *
     * @param code what differs
     * @param seconds how much longer it keeps the first candidate open [s]
     */
    record Reason(String code, double seconds) {}

    /** Differences that make the first stay open longer or shorter than the second, largest first. */
    List<Reason> between(int first, int second) {
        List<Reasons.Step> steps = Reasons.steps(
                resolved.candidates().get(first), resolved.candidates().get(second));
        double[] worth = new double[steps.size() + 1];
        addWorth(first, second, steps, worth, false);
        addWorth(first, second, steps, worth, true);
        List<Reason> reasons = new ArrayList<>();
        for (int i = 0; i < worth.length; i++) {
            if (Math.abs(worth[i]) >= WORTH_SAYING) {
                reasons.add(new Reason(i < steps.size() ? steps.get(i).code() : HOLD_UP, worth[i]));
            }
        }
        reasons.sort(Comparator.comparingDouble((Reason reason) -> -Math.abs(reason.seconds()))
                .thenComparing(Reason::code));
        return List.copyOf(reasons);
    }

    private void addWorth(int first, int second, List<Reasons.Step> steps, double[] worth, boolean reverse) {
        Design design = Design.of(resolved, first);
        int held = first;
        double before = seconds(design, held);
        for (int k = 0; k < worth.length; k++) {
            int i = reverse ? worth.length - 1 - k : k;
            if (i < steps.size()) {
                design = design.changed(steps.get(i).change());
            } else {
                held = second;
            }
            double after = seconds(design, held);
            worth[i] += (before - after) / 2;
            before = after;
        }
    }

    /** Open time of a filter that holds what a candidate holds [s]; NaN if it cannot be computed. */
    private double seconds(Design design, int held) {
        return StartQuantity.OPEN_SECONDS.of(
                StartUp.run(plan.spec(design.shared(), design.built(), held, plan.model())));
    }
}

package org.coldpleat.model.sizing;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;

/**
 * What {@code size} finds.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param digest SHA-256 of the case text, hexadecimal
 * @param candidate name of the candidate
 * @param variable what was sized
 * @param target kind of the target, by name
 * @param state state of the target
 * @param temperature oil temperature of the target [K]
 * @param limit share [1] or pressure [Pa] of the target; NaN if it has none
 * @param confidence chance with which the target is to hold [1], if asked for
 * @param draws number of draws
 * @param seed of the draws
 * @param present value of the filter as it is [SI]; NaN for a grade
 * @param conditions clean, then loaded if asked for
 * @param verdicts sentences
 * @param assumptions typical and guessed values behind the result
 * @param notices findings, cautions last
 */
public record SizingResult(
        String title,
        boolean invented,
        String digest,
        String candidate,
        Variable variable,
        String target,
        String state,
        double temperature,
        double limit,
        OptionalDouble confidence,
        int draws,
        long seed,
        double present,
        List<Condition> conditions,
        List<Verdict> verdicts,
        List<Assumption> assumptions,
        List<Notice> notices) {
    /** What can be sized. */
    public enum Variable {
        /** Unfolded medium, one side [m2]. */
        AREA,
        /** Number of pleats [1]. */
        PLEATS,
        /** Opening pressure of the bypass valve [Pa]. */
        OPENING,
        /** Resistance of the medium [1/m]. */
        RESISTANCE,
        /** Oil by grade. */
        GRADE
    }

    /** How a search ended. */
    public enum Status {
        /** A value was found at which the target begins to hold. */
        FOUND,
        /** The target holds over the whole range that was looked at. */
        ALWAYS,
        /** It holds nowhere in that range. */
        NEVER,
        /** The circuit gave no converged answer. */
        UNRESOLVED;

        /** True if the question has an answer. */
        public boolean isAnswer() {
            return this == FOUND || this == ALWAYS;
        }
    }

    public SizingResult {
        conditions = List.copyOf(conditions);
        verdicts = List.copyOf(verdicts);
        assumptions = List.copyOf(assumptions);
        notices = List.copyOf(notices);
    }

    /** True if every condition has an answer. */
    public boolean isAnswered() {
        return conditions.stream().allMatch(Condition::isAnswered);
    }

    /**
     * The answer for the filter clean or with dirt.
     *
     * @param loaded true with dirt
     * @param dirt in the medium [kg]
     * @param loadRatio how many times its clean value the medium of the present filter resists [1]
     * @param best answer on the best estimate
     * @param band middle and 95 % band of the answer over the draws [SI]; infinite or zero at an end that no value meets or
     *     every value meets
     * @param sure answer that holds with the chance asked for, if one was
     * @param presentOpening warmest open temperature of the filter as it is [K], infinite if never or always
     * @param presentChance chance that the filter as it is meets the target [1]
     * @param unanswered share of draws without an answer, counted as not meeting the target [1]
     * @param low least value looked at [SI]
     * @param high greatest value looked at [SI]
     * @param options values side by side, in rising order
     */
    public record Condition(
            boolean loaded,
            double dirt,
            double loadRatio,
            Answer best,
            Quantiles band,
            List<Answer> sure,
            double presentOpening,
            double presentChance,
            double unanswered,
            double low,
            double high,
            List<Option> options) {
        public Condition {
            sure = List.copyOf(sure);
            options = List.copyOf(options);
        }

        /** True if there is a value for everything that was asked. */
        public boolean isAnswered() {
            return best.status().isAnswer()
                    && sure.stream().allMatch(one -> one.status().isAnswer());
        }
    }

    /**
     * One answer.
     *
     * @param status how the search ended
     * @param label name of the value, such as a grade; empty for a number
     * @param value just meets the target [SI]; NaN if none does, or all do
     * @param opening warmest open temperature there on the best estimate [K]; infinite if never or always
     * @param chance that the target holds there [1]
     * @param reachable where nothing meets the target, the value that comes nearest [SI], else NaN
     * @param reachableLabel its name
     * @param reachableOpening its warmest open temperature [K], else NaN
     */
    public record Answer(
            Status status,
            String label,
            double value,
            double opening,
            double chance,
            double reachable,
            String reachableLabel,
            double reachableOpening) {}

    /**
     * One value on the way.
     *
     * @param label name, empty for a number
     * @param value [SI]; for a grade its viscosity at the temperature of the target [Pa s]
     * @param opening warmest open temperature on the best estimate [K], infinite if never or always
     * @param holds true if the target holds on the best estimate
     * @param chance that it holds [1]
     * @param packResistance of the pack, dirt included [1/m3]
     * @param crowdedShare share of the pleat depth over which the legs fill the pitch [1]
     */
    public record Option(
            String label,
            double value,
            double opening,
            boolean holds,
            double chance,
            double packResistance,
            double crowdedShare) {}
}

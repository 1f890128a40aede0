package org.coldpleat.model.certainty.measurement;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;

/**
 * What a home or bench test of a candidate would show and be worth.
 *
 * @param candidate name
 * @param test key of the test, as in the case file
 * @param conditions what it is planned for, such as temperature and head
 * @param target key of the quantity it is to tell
 * @param presentLnSigma relative standard uncertainty with which that is known now [1]
 * @param reading what is read
 * @param expected expected reading [SI]
 * @param duration how long the readings take [s]
 * @param resolution scale step of the reading that is planned with [SI]
 * @param reachedLnSigma relative standard uncertainty the test would reach with it [1]
 * @param resolutionNeeded coarsest step with which the test would know better than is known now [SI]; empty if it cannot
 * @param cautions keys of the cautions to read first
 */
public record TestPlan(
        String candidate,
        String test,
        List<Condition> conditions,
        String target,
        double presentLnSigma,
        Kind reading,
        double expected,
        double duration,
        double resolution,
        double reachedLnSigma,
        OptionalDouble resolutionNeeded,
        List<String> cautions) {
    public TestPlan {
        conditions = List.copyOf(conditions);
        cautions = List.copyOf(cautions);
    }

    /**
     * One condition.
     *
     * @param key what it is
     * @param value its value
     */
    public record Condition(String key, Measured value) {}
}

package org.coldpleat.model.certainty;

import java.util.List;
import org.coldpleat.shared.quantity.Measured;

/**
 * What a case takes an engine for of which kind and size are known, and what is worth asking its owner.
 *
 * @param values every value of engine, start and service, in the order of the case
 * @param state name of the state that the cold answer belongs to
 * @param temperature of the oil of that answer [K]
 * @param ratio difference across the shut valve over its opening pressure [1]; NaN if the circuit gives no answer
 * @param lnSigma standard uncertainty of the logarithm of the ratio from all unknowns of the case, first order [1]
 * @param engineLnSigma the same from the unknowns of the engine alone [1]
 * @param questions what the owner may know, by what it would bring, most first; what is stated is not asked
 */
public record EngineProfile(
        List<Value> values,
        String state,
        double temperature,
        double ratio,
        double lnSigma,
        double engineLnSigma,
        List<Question> questions) {
    public EngineProfile {
        values = List.copyOf(values);
        questions = List.copyOf(questions);
    }

    /**
     * A value of the engine.
     *
     * @param path field path in the case
     * @param value with its spread
     * @param sureness how sure it is: a (several sources agree) to d (a guess); empty if the case states it
     * @param source where it comes from; empty if the case states it
     */
    public record Value(String path, Measured value, String sureness, String source) {
        /** True if the case states it. */
        public boolean isStated() {
            return sureness.isEmpty();
        }
    }

    /**
     * Something that the owner may know.
     *
     * @param about key of it: relief, hotIdle, jets or pump
     * @param share of the variance of the logarithm of the ratio that comes from the engine [1]
     * @param lnSigmaAfter what would be left of {@code engineLnSigma} if it were known exactly [1]
     */
    public record Question(String about, double share, double lnSigmaAfter) {}
}

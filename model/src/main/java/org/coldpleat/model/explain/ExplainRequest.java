package org.coldpleat.model.explain;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which number is to be explained.
 *
 * @param candidate name of a candidate of the case
 * @param state name of a state of the case; the first one if empty
 * @param quantity key of the number; the opening temperature if empty
 * @param temperature oil temperature [K], for a number that belongs to one; a named temperature of the case if empty
 */
public record ExplainRequest(
        String candidate, Optional<String> state, Optional<String> quantity, OptionalDouble temperature) {
    public ExplainRequest {
        Objects.requireNonNull(candidate, "candidate");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(temperature, "temperature");
    }

    /** The opening temperature of a candidate in the first state. */
    public static ExplainRequest of(String candidate) {
        return new ExplainRequest(candidate, Optional.empty(), Optional.empty(), OptionalDouble.empty());
    }

    /** The same in another state. */
    public ExplainRequest in(String newState) {
        return new ExplainRequest(candidate, Optional.of(newState), quantity, temperature);
    }

    /** Another number of the same candidate. */
    public ExplainRequest about(String newQuantity) {
        return new ExplainRequest(candidate, state, Optional.of(newQuantity), temperature);
    }

    /** The same at another oil temperature [K]. */
    public ExplainRequest at(double newTemperature) {
        return new ExplainRequest(candidate, state, quantity, OptionalDouble.of(newTemperature));
    }
}

package org.coldpleat.model.confidence;

import java.util.Objects;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;
import org.hipparchus.special.Erf;

/**
 * One quantity that is not known exactly.
 *
 * @param name unique name within a run
 * @param value best estimate with spread
 * @param shared true if all candidates of a comparison share it (the oil, the engine), so that its draws cancel
 * @param group label under which sensitivities are added up; unknowns that one measurement would settle share a group
 */
public record Unknown(String name, Measured value, boolean shared, String group) {
    public Unknown {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(group, "group");
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of an unknown must not be blank");
        }
    }

    /** An unknown that belongs to one candidate and forms its own group. */
    public static Unknown of(String name, Measured value) {
        return new Unknown(name, value, false, name);
    }

    /** An unknown all candidates share, in its own group. */
    public static Unknown sharedBy(String name, Measured value) {
        return new Unknown(name, value, true, name);
    }

    /**
     * Value at a probability.
     *
     * @param probability cumulative probability [1], strictly between 0 and 1
     * @return the quantile in the SI unit of the value
     */
    @Source("JCGM 101:2008, 6.4.2 (rectangular), 6.4.7 (normal), C.1 (inverse of the distribution function)")
    public double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must lie strictly between 0 and 1, was " + probability);
        }
        return switch (value.spread()) {
            case NONE -> value.value();
            case RECTANGULAR -> value.value() + (2 * probability - 1) * value.halfWidth();
            case NORMAL -> value.value() + normalScore(probability) * value.halfWidth();
            case LOG_NORMAL -> value.value() * Math.exp(normalScore(probability) * value.halfWidth());
        };
    }

    /** True if the unknown has a spread at all. */
    public boolean spreads() {
        return value.standardUncertainty() > 0;
    }

    /** Standard normal quantile [1]; accurate also far out in the lower tail. */
    static double normalScore(double probability) {
        return probability < 0.5
                ? -Math.sqrt(2) * Erf.erfcInv(2 * probability)
                : Math.sqrt(2) * Erf.erfcInv(2 * (1 - probability));
    }

    /** Standard normal distribution function [1]. */
    static double normalProbability(double score) {
        return 0.5 * Erf.erfc(-score / Math.sqrt(2));
    }
}

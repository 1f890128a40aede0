package org.coldpleat.model.confidence;

import java.util.Objects;
import org.coldpleat.model.numerics.StandardNormal;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;

/**
 * One quantity that is not known exactly.
 *
 * @param name unique name within a run
 * @param value best estimate with spread
 * @param shared true if all candidates of a comparison share it (the oil, the engine), so that its draws cancel
 * @param group label under which sensitivities are added up; unknowns that one measurement would settle share a group
 * @param upwardOnly true if the true value can only lie above; its distribution is then half a normal one
 * @param lowest least possible value [SI], or negative infinity; the distribution is cut off there
 * @param highest greatest possible value [SI], or positive infinity
 */
public record UncertainQuantity(
        String name, Measured value, boolean shared, String group, boolean upwardOnly, double lowest, double highest) {
    /** An unknown with a distribution on both sides and without limits. */
    public UncertainQuantity(String name, Measured value, boolean shared, String group) {
        this(name, value, shared, group, false, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    public UncertainQuantity {
        if (!(lowest <= value.value() && value.value() <= highest)) {
            throw new IllegalArgumentException(
                    name + " must lie between " + lowest + " and " + highest + ", was " + value.value());
        }
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(group, "group");
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of an unknown must not be blank");
        }
    }

    /** An unknown that belongs to one candidate and forms its own group. */
    public static UncertainQuantity of(String name, Measured value) {
        return new UncertainQuantity(name, value, false, name);
    }

    /** An unknown all candidates share, in its own group. */
    public static UncertainQuantity sharedBy(String name, Measured value) {
        return new UncertainQuantity(name, value, true, name);
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
        double below = Double.isInfinite(lowest) ? 0 : distribution(lowest);
        double above = Double.isInfinite(highest) ? 1 : distribution(highest);
        double inside = below + probability * (above - below);
        return whole(Math.max(Double.MIN_NORMAL, Math.min(Math.nextDown(1.0), inside)));
    }

    /** Cumulative probability of a value before the limits cut [1]. */
    private double distribution(double at) {
        double away = at - value.value();
        if (value.halfWidth() == 0) {
            return away >= 0 ? 1 : 0;
        }
        if (upwardOnly) {
            return Math.max(0, 2 * StandardNormal.probability(away / value.standardUncertainty()) - 1);
        }
        return switch (value.spread()) {
            case NONE -> away >= 0 ? 1 : 0;
            case RECTANGULAR -> Math.max(0, Math.min(1, 0.5 + 0.5 * away / value.halfWidth()));
            case NORMAL -> StandardNormal.probability(away / value.halfWidth());
            case LOG_NORMAL ->
                at > 0 ? StandardNormal.probability(Math.log(at / value.value()) / value.halfWidth()) : 0;
        };
    }

    private double whole(double probability) {
        if (upwardOnly) {
            return value.value() + StandardNormal.score(0.5 + 0.5 * probability) * value.standardUncertainty();
        }
        return switch (value.spread()) {
            case NONE -> value.value();
            case RECTANGULAR -> value.value() + (2 * probability - 1) * value.halfWidth();
            case NORMAL -> value.value() + StandardNormal.score(probability) * value.halfWidth();
            case LOG_NORMAL -> value.value() * Math.exp(StandardNormal.score(probability) * value.halfWidth());
        };
    }

    /** True if the unknown has a spread at all. */
    public boolean spreads() {
        return value.standardUncertainty() > 0;
    }
}

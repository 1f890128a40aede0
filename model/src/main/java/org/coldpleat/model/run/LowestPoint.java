package org.coldpleat.model.run;

import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.numerics.GoldenSection;

/** The lowest value near a place that is lower than its neighbors. */
public final class LowestPoint {
    private LowestPoint() {}

    /**
     * Follows a value down by golden section.
     *
     * @param value looked for
     * @param left place on the left
     * @param middle place between, at an end of the stretch where the lowest may lie there
     * @param right place on the right
     * @param known value in the middle
     * @param finest stretch that is fine enough
     * @return lowest value found; not a number if a place on the way has no answer
     */
    public static double near(
            DoubleUnaryOperator value, double left, double middle, double right, double known, double finest) {
        return -GoldenSection.climb(
                        x -> -value.applyAsDouble(x), left, middle, right, -known, finest, Double.POSITIVE_INFINITY)
                .value();
    }
}

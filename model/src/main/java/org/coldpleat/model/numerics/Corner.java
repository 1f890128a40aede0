package org.coldpleat.model.numerics;

import org.coldpleat.shared.source.Source;

/**
 * Ramp {@code max(0, y)} whose corner is rounded by a cubic over 0 to width: exactly 0 below 0, exactly y from width on, at
 * most 0.15 width too low between. Nothing moves before 0, so that "open" keeps its meaning.
 */
@Source("derived here: Hermite cubic y^2 (2 w - y)/w^2")
public final class Corner {
    private Corner() {}

    /** The ramp at y, with the width of its corner in the unit of y, at least 0; width 0 is the sharp corner. */
    public static double ramp(double y, double width) {
        if (y <= 0) {
            return 0;
        }
        return y >= width ? y : y * y * (2 * width - y) / (width * width);
    }

    /** Derivative of the ramp [1], at most 4/3. */
    public static double slope(double y, double width) {
        if (y <= 0) {
            return 0;
        }
        return y >= width ? 1 : y * (4 * width - 3 * y) / (width * width);
    }

    /** The lesser of y and limit, rounded below the limit: never above it, exactly y up to limit less width. */
    public static double capped(double y, double limit, double width) {
        return limit - ramp(limit - y, width);
    }

    /** Derivative of the capped value [1]. */
    public static double cappedSlope(double y, double limit, double width) {
        return slope(limit - y, width);
    }
}

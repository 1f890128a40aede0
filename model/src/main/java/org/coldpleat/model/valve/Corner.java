package org.coldpleat.model.valve;

import org.coldpleat.shared.source.Source;

/** Ramp {@code max(0, y)} with its corner rounded by a parabola over +-width: exact outside, at most width/4 too high. */
@Source("derived here")
final class Corner {
    private Corner() {}

    static double ramp(double y, double width) {
        if (y <= -width) {
            return 0;
        }
        return y >= width ? y : (y + width) * (y + width) / (4 * width);
    }

    static double slope(double y, double width) {
        if (y <= -width) {
            return 0;
        }
        return y >= width ? 1 : (y + width) / (2 * width);
    }
}

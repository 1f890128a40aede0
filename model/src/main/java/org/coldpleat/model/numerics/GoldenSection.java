package org.coldpleat.model.numerics;

import java.util.function.DoubleUnaryOperator;
import org.coldpleat.shared.source.Source;

/** Follows a value to its top by golden section, from three places of which the middle one is highest. */
@Source("golden section search, textbook")
public final class GoldenSection {
    /** Smaller part of a stretch cut in the golden ratio [1]. */
    public static final double CUT = (3 - Math.sqrt(5)) / 2;

    private GoldenSection() {}

    /**
     * A place and the value there.
     *
     * @param at where
     * @param value there; not a number if a place on the way has no answer
     */
    public record Top(double at, double value) {}

    /**
     * Looks for the top.
     *
     * @param value looked for
     * @param left place on the left
     * @param middle place between, at an end of the stretch where the top may lie there
     * @param right place on the right
     * @param known value in the middle
     * @param finest stretch that is fine enough
     * @param enough the search ends at the first better value above this
     */
    public static Top climb(
            DoubleUnaryOperator value,
            double left,
            double middle,
            double right,
            double known,
            double finest,
            double enough) {
        double a = left;
        double b = middle;
        double c = right;
        double best = known;
        while (c - a > finest) {
            boolean wideLeft = b - a > c - b;
            double x = wideLeft ? b - CUT * (b - a) : b + CUT * (c - b);
            double found = value.applyAsDouble(x);
            if (Double.isNaN(found)) {
                return new Top(x, Double.NaN);
            }
            if (found > best) {
                a = wideLeft ? a : b;
                c = wideLeft ? b : c;
                b = x;
                best = found;
                if (best > enough) {
                    break;
                }
            } else if (wideLeft) {
                a = x;
            } else {
                c = x;
            }
        }
        return new Top(b, best);
    }
}

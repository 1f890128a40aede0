package org.coldpleat.model.bench;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.source.Source;

/**
 * What a test would show if the guess were right.
 *
 * @param reading what is read
 * @param expected expected reading [SI]
 * @param duration how long the readings take [s]
 * @param lnSigma relative standard uncertainty the test would reach with the stated resolution [1]
 * @param resolutionNeeded coarsest scale step of the reading [SI] with which the test would know better than is known
 *     now; empty if the other uncertainties of the test alone are larger
 * @param cautions keys of the cautions to read first
 */
public record Plan(
        Kind reading,
        double expected,
        double duration,
        double lnSigma,
        OptionalDouble resolutionNeeded,
        List<String> cautions) {
    public Plan {
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(resolutionNeeded, "resolutionNeeded");
        cautions = List.copyOf(cautions);
    }

    /**
     * A plan from its parts.
     *
     * @param sensitivity relative change of the estimate per relative change of the reading [1]
     * @param resolution scale step at hand [SI]
     * @param otherLnSigma relative standard uncertainty from all else [1]
     * @param presentLnSigma relative standard uncertainty of what is known now [1]
     */
    @Source("JCGM 100:2008 (GUM), F.2.2.1: a scale step d stands for a standard uncertainty d/sqrt(12)")
    static Plan of(
            Kind reading,
            double expected,
            double duration,
            double sensitivity,
            double resolution,
            double otherLnSigma,
            double presentLnSigma,
            List<String> cautions) {
        double step = Math.sqrt(12);
        double room = presentLnSigma * presentLnSigma - otherLnSigma * otherLnSigma;
        OptionalDouble needed = room > 0
                ? OptionalDouble.of(step * Math.abs(expected / sensitivity) * Math.sqrt(room))
                : OptionalDouble.empty();
        double reached = Math.hypot(otherLnSigma, sensitivity * resolution / (step * expected));
        return new Plan(reading, expected, duration, reached, needed, cautions);
    }
}

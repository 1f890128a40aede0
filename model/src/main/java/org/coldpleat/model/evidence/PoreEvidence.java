package org.coldpleat.model.evidence;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.List;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Medium resistance from a pore size, as a bundle of straight capillaries: {@code k = (1 - c) d^2/32}. Weak: it gives the
 * order of size, and says so in its spread.
 */
@Source("Hagen-Poiseuille flow in straight pores of one size (textbook)")
@Validity("order of size; factor 3 with a mean flow pore, more with a bubble point")
public final class PoreEvidence {
    /** Standard uncertainty of ln R from a mean flow pore [1]: factor 3 as 95 % band. */
    @Source(
            "common practice, no source; derived here: typical cellulose lies at 0.8, typical glass at 3.6 times the bundle")
    public static final double BUNDLE_LN_SIGMA = Math.log(3) / COVERAGE_95;

    /** Largest pore over mean flow pore [1]. */
    @Source("common practice, no source: 1.5 to 3 for filter papers")
    private static final double LARGEST_OVER_MEAN = 2.1;

    /** Standard uncertainty of ln of that ratio [1], range rectangular in the logarithm. */
    private static final double LARGEST_OVER_MEAN_LN_SIGMA = Math.log(2) / (2 * Math.sqrt(3));

    private PoreEvidence() {}

    /** Evidence from the first bubble: largest pore [m], solidity [1] and thickness [m]. */
    public static ResistanceEvidence ofBubblePoint(
            String label, Measured largestPore, Measured solidity, Measured thickness) {
        return bundle(
                EvidenceKind.BUBBLE_POINT,
                label,
                largestPore,
                largestPore.value() / LARGEST_OVER_MEAN,
                LARGEST_OVER_MEAN_LN_SIGMA,
                solidity,
                thickness);
    }

    private static ResistanceEvidence bundle(
            EvidenceKind kind,
            String label,
            Measured read,
            double meanPore,
            double poreLnSigma,
            Measured solidity,
            Measured thickness) {
        double permeability = (1 - solidity.value()) * meanPore * meanPore / 32;
        double porosityLnSigma = solidity.standardUncertainty() / (1 - solidity.value());
        double readLnSigma = ResistanceEvidence.relative(read);
        double thicknessLnSigma = ResistanceEvidence.relative(thickness);
        double square = BUNDLE_LN_SIGMA * BUNDLE_LN_SIGMA
                + 4 * (poreLnSigma * poreLnSigma + readLnSigma * readLnSigma)
                + porosityLnSigma * porosityLnSigma
                + thicknessLnSigma * thicknessLnSigma;
        return new ResistanceEvidence(
                kind,
                label,
                thickness.value() / permeability,
                Math.sqrt(square),
                List.of(
                        ResistanceEvidence.ingredient("poreSize", read),
                        ResistanceEvidence.ingredient("solidity", solidity),
                        ResistanceEvidence.ingredient("thickness", thickness)));
    }
}

package org.coldpleat.model.evidence;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.List;
import org.coldpleat.model.medium.DaviesPermeability;
import org.coldpleat.model.medium.HappelPerpendicularPermeability;
import org.coldpleat.model.medium.KuwabaraPermeability;
import org.coldpleat.model.medium.Solidity;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Medium resistance from the structure of the sheet: solidity and fiber diameter through the laws of Davies, Kuwabara and
 * Happel (fibers across the flow), geometric mean of the three. The law of Tomadakis and Robertson is left out: below a
 * solidity of 0.1, where glass media lie, it is several times too open.
 */
@Validity("solidity 0.01 to 0.3; a fiber diameter that stands for the flow, not the width of a ribbon")
public final class StructureEvidence {
    /** Standard uncertainty of ln k of any such law for a real sheet [1]: a factor two as 95 % band. */
    @Source("derived here: C. E. Wheat 1963, Can. J. Chem. Eng. (glass papers) and Davies 1952 agree within a factor 2")
    public static final double LAW_LN_SIGMA = Math.log(2) / COVERAGE_95;

    /** Step of the logarithm for the slopes [1]; small against any spread, large against rounding. */
    private static final double STEP = 1e-4;

    private StructureEvidence() {}

    /** Evidence from solidity [1], fiber diameter [m] and thickness [m], each known by itself. */
    public static ResistanceEvidence of(String label, Measured solidity, Measured fiberDiameter, Measured thickness) {
        double slope = logSlope(solidity.value());
        double spread = norm(
                slope * ResistanceEvidence.relative(solidity),
                2 * ResistanceEvidence.relative(fiberDiameter),
                ResistanceEvidence.relative(thickness));
        return evidence(label, solidity.value(), fiberDiameter, thickness, spread);
    }

    /**
     * Evidence from basis weight [kg/m2], fiber density [kg/m3], fiber diameter [m] and thickness [m]: a thicker reading
     * means a longer way and a lighter sheet, which act against each other.
     */
    public static ResistanceEvidence ofSheet(
            String label, Measured basisWeight, Measured fiberDensity, Measured fiberDiameter, Measured thickness) {
        double solidity = Solidity.of(basisWeight.value(), fiberDensity.value(), thickness.value());
        double slope = logSlope(solidity);
        double spread = norm(
                slope * ResistanceEvidence.relative(basisWeight),
                slope * ResistanceEvidence.relative(fiberDensity),
                2 * ResistanceEvidence.relative(fiberDiameter),
                (1 - slope) * ResistanceEvidence.relative(thickness));
        return evidence(label, solidity, fiberDiameter, thickness, spread);
    }

    private static ResistanceEvidence evidence(
            String label, double solidity, Measured fiberDiameter, Measured thickness, double inputs) {
        double davies = Math.log(DaviesPermeability.normalizedPermeability(solidity));
        double kuwabara = Math.log(KuwabaraPermeability.normalizedPermeability(solidity));
        double happel = Math.log(HappelPerpendicularPermeability.normalizedPermeability(solidity));
        double mean = (davies + kuwabara + happel) / 3;
        double scatter = norm(davies - mean, kuwabara - mean, happel - mean) / Math.sqrt(2);
        double diameter = fiberDiameter.value();
        double median = thickness.value() / (Math.exp(mean) * diameter * diameter);
        return new ResistanceEvidence(
                EvidenceKind.STRUCTURE,
                label,
                median,
                norm(LAW_LN_SIGMA, scatter, inputs),
                List.of(
                        ResistanceEvidence.ratio("solidity", solidity),
                        ResistanceEvidence.ingredient("fiberDiameter", fiberDiameter),
                        ResistanceEvidence.ingredient("thickness", thickness),
                        ResistanceEvidence.ratio("davies", Math.exp(davies)),
                        ResistanceEvidence.ratio("kuwabara", Math.exp(kuwabara)),
                        ResistanceEvidence.ratio("happelPerpendicular", Math.exp(happel)),
                        ResistanceEvidence.ratio("lawScatter", scatter)));
    }

    /** True for a solidity [1] within the range of the laws, 0.01 to 0.3. */
    static boolean lawsHold(double solidity) {
        return solidity >= 0.01 && solidity <= 0.3;
    }

    /** Slope of ln R over ln solidity [1], at fixed thickness. */
    private static double logSlope(double solidity) {
        return (logMean(solidity * Math.exp(-STEP)) - logMean(solidity * Math.exp(STEP))) / (2 * STEP);
    }

    private static double logMean(double solidity) {
        return (Math.log(DaviesPermeability.normalizedPermeability(solidity))
                        + Math.log(KuwabaraPermeability.normalizedPermeability(solidity))
                        + Math.log(HappelPerpendicularPermeability.normalizedPermeability(solidity)))
                / 3;
    }

    private static double norm(double... parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part * part;
        }
        return Math.sqrt(sum);
    }
}

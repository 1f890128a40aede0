package org.coldpleat.model.evidence;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.List;
import java.util.Objects;
import org.coldpleat.model.medium.FiberFamily;
import org.coldpleat.model.medium.MediumResistance;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Source;

/**
 * One source of knowledge about the medium resistance R, as a log-normal.
 *
 * @param kind where it comes from
 * @param label which one, as the user calls it; empty if there is only one of its kind
 * @param median of R [1/m], above 0
 * @param lnSigma standard uncertainty of ln R [1], above 0
 * @param ingredients what it was computed from
 */
public record ResistanceEvidence(
        EvidenceKind kind, String label, double median, double lnSigma, List<Ingredient> ingredients) {
    /** Smallest standard uncertainty of ln R that any reading is believed to have [1]. */
    @Source("common practice, no source: sheets differ by a few percent from place to place")
    public static final double LEAST_LN_SIGMA = 0.02;

    public ResistanceEvidence {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(label, "label");
        ingredients = List.copyOf(ingredients);
        if (!(median > 0) || Double.isInfinite(median)) {
            throw new IllegalArgumentException("median must be finite and above 0 1/m, was " + median);
        }
        if (!(lnSigma > 0) || Double.isInfinite(lnSigma)) {
            throw new IllegalArgumentException("lnSigma must be finite and above 0 [1], was " + lnSigma);
        }
    }

    /** Evidence from a resistance with its spread, as a bench, a test evaluation or a data sheet gives it [1/m]. */
    public static ResistanceEvidence of(EvidenceKind kind, String label, Measured resistance) {
        return new ResistanceEvidence(
                kind,
                label,
                resistance.value(),
                Math.max(LEAST_LN_SIGMA, relative(resistance)),
                List.of(ingredient("mediumResistance", resistance)));
    }

    /** Evidence from a stated permeability [m2] and thickness [m]. */
    public static ResistanceEvidence ofPermeability(String label, Measured permeability, Measured thickness) {
        double lnSigma = Math.hypot(relative(permeability), relative(thickness));
        return new ResistanceEvidence(
                EvidenceKind.PERMEABILITY,
                label,
                MediumResistance.of(thickness.value(), permeability.value()),
                Math.max(LEAST_LN_SIGMA, lnSigma),
                List.of(ingredient("permeability", permeability), ingredient("thickness", thickness)));
    }

    /** Evidence from what is typical of a fiber family: the order of size only. */
    public static ResistanceEvidence ofFamily(FiberFamily family) {
        Measured resistance = family.typical().resistance();
        return new ResistanceEvidence(
                EvidenceKind.FAMILY,
                family.name(),
                resistance.value(),
                resistance.halfWidth(),
                List.of(ingredient("airPermeability", family.typical().airPermeability())));
    }

    /** Lower end of the 95 % band [1/m]. */
    public double low() {
        return median * Math.exp(-COVERAGE_95 * lnSigma);
    }

    /** Upper end of the 95 % band [1/m]. */
    public double high() {
        return median * Math.exp(COVERAGE_95 * lnSigma);
    }

    static double relative(Measured value) {
        return value.spread() == Spread.LOG_NORMAL ? value.halfWidth() : value.standardUncertainty() / value.value();
    }

    static Ingredient ingredient(String key, Measured value) {
        return new Ingredient(key, value.kind(), value.value());
    }

    static Ingredient ratio(String key, double value) {
        return new Ingredient(key, Kind.RATIO, value);
    }
}

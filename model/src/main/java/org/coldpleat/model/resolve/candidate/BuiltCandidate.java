package org.coldpleat.model.resolve.candidate;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.evidence.EvidenceCombination;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.model.pleat.PackSummary;
import org.coldpleat.shared.notice.Notice;

/**
 * A candidate in computing form.
 *
 * @param name name
 * @param filter filter with the valve inside it; a valve in the engine block is added by the duty
 * @param pack clean pleat pack
 * @param packModel the pack for any resistance of the medium
 * @param grossArea unfolded medium, one side, after allowances [m2]
 * @param freeShare share of it that no cap or glue bead hides [1]
 * @param foldShare share of the strip that the folds take [1]; 0 if it lies flat
 * @param mediumResistance [1/m]
 * @param evidence what the resistance rests on
 * @param thickness [m], if known
 * @param basisWeight [kg/m2], if known
 * @param solidity [1], if known
 * @param notices findings
 */
public record BuiltCandidate(
        String name,
        FilterAssembly filter,
        PackSummary pack,
        PackModel packModel,
        double grossArea,
        double freeShare,
        double foldShare,
        double mediumResistance,
        EvidenceCombination evidence,
        OptionalDouble thickness,
        OptionalDouble basisWeight,
        OptionalDouble solidity,
        List<Notice> notices) {
    public BuiltCandidate {
        notices = List.copyOf(notices);
    }

    /** The same candidate with another filter around its medium. */
    public BuiltCandidate withFilter(FilterAssembly other) {
        return new BuiltCandidate(
                name,
                other,
                pack,
                packModel,
                grossArea,
                freeShare,
                foldShare,
                mediumResistance,
                evidence,
                thickness,
                basisWeight,
                solidity,
                notices);
    }

    /**
     * The same evidence with another filter around another pack.
     *
     * @param model the other pack
     * @param resistance of its medium [1/m]
     * @param gross unfolded medium, one side [m2]
     * @param thick times the thickness, and with it the basis weight [1], above 0
     */
    public BuiltCandidate changed(
            FilterAssembly other, PackModel model, double resistance, double gross, double thick) {
        return new BuiltCandidate(
                name,
                other,
                model.summary(resistance),
                model,
                gross,
                freeShare,
                foldShare * thick,
                resistance,
                evidence,
                times(thickness, thick),
                times(basisWeight, thick),
                solidity,
                notices);
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    /** Darcy permeability [m2], if the thickness is known. */
    public OptionalDouble permeability() {
        return thickness.isPresent()
                ? OptionalDouble.of(thickness.getAsDouble() / mediumResistance)
                : OptionalDouble.empty();
    }
}

package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.evidence.EvidenceCombination;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.valve.SpringValve;

/** Says what the bench sheet of a candidate amounts to. */
final class SheetWriter {
    private SheetWriter() {}

    static CandidateSheet sheet(ResolvedCase resolved, Variants variants, int position) {
        BuiltCandidate candidate = resolved.candidates().get(position);
        OperatingState last =
                resolved.operatingStates().get(resolved.operatingStates().size() - 1);
        double hot = resolved.warmestNamed();
        StateModel model = new StateModel(resolved.shared(), candidate.filter(), last);
        double hotDrop = model.at(hot).filter().totalDrop();
        double hotSpread = Variants.norm(variants.contributions(position, last, 1, moved ->
                        new double[] {moved.at(hot).filter().totalDrop()})
                .get(0));
        return new CandidateSheet(
                band(variants, position, BuiltCandidate::grossArea, candidate.grossArea()),
                band(
                        variants,
                        position,
                        one -> one.pack().effectiveArea(),
                        candidate.pack().effectiveArea()),
                candidate.basisWeight(),
                candidate.solidity(),
                new Band(
                        candidate.mediumResistance(),
                        candidate.mediumResistance() * candidate.evidence().lnSigma()),
                candidate.permeability(),
                evidence(candidate.evidence()),
                band(
                        variants,
                        position,
                        one -> one.pack().channelFactor(),
                        candidate.pack().channelFactor()),
                candidate.pack().crowdedShare(),
                new Band(hotDrop, hotSpread),
                new CandidateSheet.HotReference(last.name(), hot),
                openingPressure(variants, position, model));
    }

    private static Band band(Variants variants, int position, ToDoubleFunction<BuiltCandidate> quantity, double value) {
        return new Band(value, Variants.norm(variants.ownContributions(position, quantity)));
    }

    /** Opening pressure of the valve that opens first: the one with the lower pressure. */
    private static Optional<Band> openingPressure(Variants variants, int position, StateModel model) {
        Optional<SpringValve> own = model.filter().elementValve();
        Optional<SpringValve> block = model.filter().blockValve();
        if (own.isEmpty()) {
            return block.map(valve -> Band.exact(valve.openingPressure()));
        }
        if (block.isPresent() && block.get().openingPressure() < own.get().openingPressure()) {
            return Optional.of(Band.exact(block.get().openingPressure()));
        }
        return Optional.of(band(
                variants,
                position,
                one -> one.filter().elementValve().orElseThrow().openingPressure(),
                own.get().openingPressure()));
    }

    private static List<CandidateSheet.EvidenceLine> evidence(EvidenceCombination combination) {
        List<CandidateSheet.EvidenceLine> lines = new ArrayList<>();
        for (int i = 0; i < combination.members().size(); i++) {
            var member = combination.members().get(i);
            lines.add(new CandidateSheet.EvidenceLine(
                    member.kind().name().toLowerCase(Locale.ROOT),
                    member.median(),
                    member.lnSigma(),
                    combination.weights().get(i)));
        }
        return lines;
    }
}

package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.model.evidence.EvidenceKind;
import org.coldpleat.model.evidence.Ingredient;
import org.coldpleat.model.evidence.ResistanceEvidence;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;

/** Builds the chains behind the pleat pack of a candidate: medium resistance, area, channel factor. */
final class MediumExplainer {
    private final ResolvedCase resolved;
    private final int position;
    private final BuiltCandidate candidate;
    private final Section sheet;

    MediumExplainer(ResolvedCase resolved, int position, BuiltCandidate candidate, Section sheet) {
        this.resolved = resolved;
        this.position = position;
        this.candidate = candidate;
        this.sheet = sheet;
    }

    Explanation pack() {
        return ChainEnds.link(
                "packResistance",
                Kind.LAMINAR_RESISTANCE,
                candidate.pack().resistance(),
                List.of(resistance(), channels(), area()));
    }

    Explanation resistance() {
        List<Explanation> evidence = new ArrayList<>();
        for (ResistanceEvidence member : candidate.evidence().members()) {
            List<Explanation> ingredients = new ArrayList<>();
            for (Ingredient ingredient : member.ingredients()) {
                ingredients.add(new Explanation(
                        "ingredient", ingredient.key(), ingredient.kind(), ingredient.value(), List.of()));
            }
            if (!member.kind().equals(EvidenceKind.AIR_TEST) || !member.label().isEmpty()) {
                ingredients.addAll(BenchChainEnds.of(sheet, member.kind()));
            }
            evidence.add(new Explanation(
                    "evidence." + member.kind().name().toLowerCase(Locale.ROOT),
                    member.label(),
                    Kind.MEDIUM_RESISTANCE,
                    member.median(),
                    ChainEnds.link("", Kind.MEDIUM_RESISTANCE, member.median(), member.lnSigma(), List.of())
                            .spread(),
                    "",
                    ingredients));
        }
        evidence.addAll(mediumLeaves());
        return ChainEnds.link(
                "mediumResistance",
                Kind.MEDIUM_RESISTANCE,
                candidate.mediumResistance(),
                candidate.evidence().lnSigma(),
                evidence);
    }

    private List<Explanation> mediumLeaves() {
        Optional<Section> medium = sheet.section("medium");
        List<Explanation> leaves = new ArrayList<>(ChainEnds.of(
                medium,
                "resistance",
                "permeability",
                "thickness",
                "basisWeight",
                "fiberDensity",
                "fiberDiameter",
                "mass"));
        leaves.addAll(ChainEnds.of(
                medium.flatMap(one -> one.section("airTest")), "pressure", "velocity", "flow", "area", "temperature"));
        leaves.addAll(ChainEnds.of(medium.flatMap(one -> one.section("sample")), "mass", "length", "width"));
        leaves.addAll(ChainEnds.of(medium.flatMap(one -> one.section("flowBench")), "resistance"));
        resolved.assumptions().stream()
                .filter(one -> one.candidate() == position && one.path().contains(".medium."))
                .filter(one -> one.value().written().isEmpty())
                .forEach(one -> leaves.add(ChainEnds.assumed(one)));
        return leaves;
    }

    /** Room between two legs at the core [m]: pitch there less two thicknesses; below 0 the legs touch. */
    private Optional<Double> coreGap() {
        Optional<Double> core = sheet.section("element")
                .flatMap(one -> one.quantity("insideDiameter"))
                .map(Measured::value);
        Optional<Double> count =
                sheet.section("pleats").flatMap(one -> one.quantity("count")).map(Measured::value);
        if (core.isEmpty() || count.isEmpty() || candidate.thickness().isEmpty()) {
            return Optional.empty();
        }
        double thickness = candidate.thickness().getAsDouble();
        return Optional.of((core.get() + 2 * thickness) * Math.tan(Math.PI / count.get()) - 2 * thickness);
    }

    Explanation area() {
        List<Explanation> inputs = new ArrayList<>();
        Optional<Section> medium = sheet.section("medium");
        Optional<Section> strip = medium.flatMap(one -> one.section("strip"));
        inputs.addAll(ChainEnds.of(strip, "length", "width"));
        strip.ifPresent(one -> one.sections("allowances")
                .forEach(allowance -> inputs.addAll(ChainEnds.of(Optional.of(allowance), "by"))));
        inputs.addAll(ChainEnds.of(medium, "statedArea"));
        inputs.addAll(ChainEnds.of(sheet.section("pleats"), "count", "depth", "height", "buriedPerEnd"));
        Explanation gross = ChainEnds.link("grossArea", Kind.AREA, candidate.grossArea(), inputs);
        return ChainEnds.link("mediumArea", Kind.AREA, candidate.pack().effectiveArea(), List.of(gross));
    }

    Explanation channels() {
        List<Explanation> inputs =
                new ArrayList<>(ChainEnds.of(sheet.section("element"), "outsideDiameter", "insideDiameter"));
        inputs.addAll(ChainEnds.of(sheet.section("pleats"), "count", "downstreamGap", "gapFloor"));
        inputs.addAll(ChainEnds.of(sheet.section("medium"), "thickness"));
        inputs.add(
                ChainEnds.link("crowdedShare", Kind.FRACTION, candidate.pack().crowdedShare(), List.of()));
        coreGap().ifPresent(gap -> inputs.add(ChainEnds.link("coreGap", Kind.LENGTH, gap, List.of())));
        return ChainEnds.link("channelFactor", Kind.RATIO, candidate.pack().channelFactor(), inputs);
    }
}

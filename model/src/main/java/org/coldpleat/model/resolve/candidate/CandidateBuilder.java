package org.coldpleat.model.resolve.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.evidence.EvidenceCombination;
import org.coldpleat.model.evidence.ResistanceEvidence;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.medium.FiberFamily;
import org.coldpleat.model.pleat.FlatPack;
import org.coldpleat.model.pleat.PackCurve;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Makes a candidate from its bench sheet. */
public final class CandidateBuilder {
    /** Path below a candidate under which the combined medium resistance is known as an unknown. */
    public static final String RESISTANCE = "medium.combinedResistance";

    /** Strip length that each pleat loses in its two folds, in thicknesses [1]. */
    @Source("derived here: edge shape factor of adjoining walls, 2-D Stokes-Brinkman runs")
    private static final double FOLD_LOSS = 1.84;

    private CandidateBuilder() {}

    /** Label of the family that stands in until the tests of a sheet without other evidence are evaluated. */
    static final String NOTHING_KNOWN = "nothing known";

    /**
     * Builds a candidate.
     *
     * @param bench what its tests gave
     * @param weighed what the medium resistance rests on in the build as written; empty for that build itself. Taken where
     *     this build moves the resistance and no test of the whole filter follows the geometry
     */
    public static BuiltCandidate candidate(
            Section sheet, Inputs inputs, BenchEvidence bench, Optional<EvidenceCombination> weighed) {
        String name = sheet.text("name").orElseThrow();
        List<Notice> notices = new ArrayList<>();
        Optional<Section> medium = sheet.section("medium");
        MediumBuilder builder =
                medium.map(section -> new MediumBuilder(section, inputs, bench)).orElseThrow();
        Optional<Measured> thickness = builder.thickness();
        AreaBuilder.Areas areas = AreaBuilder.areas(sheet, thickness, inputs, name);
        notices.addAll(areas.notices());
        Optional<Measured> basisWeight =
                builder.basisWeight(OptionalDouble.of(areas.gross().value()));
        PackModel packModel = pack(sheet, thickness, areas, inputs);
        PackCurve curve = packModel.curve();
        String resistancePath = sheet.path() + "." + RESISTANCE;
        MediumBuilder.Resistance known = weighed.filter(
                        one -> inputs.moves(resistancePath) && bench.rigs().isEmpty())
                .map(one -> new MediumBuilder.Resistance(one, one.lnSigma(), Optional.empty()))
                .or(() -> builder.resistance(basisWeight, thickness, curve, weighed))
                .orElseGet(CandidateBuilder::nothingKnown);
        EvidenceCombination evidence = known.combination();
        notices.addAll(evidence.notices(name));
        bench.reports().forEach(report -> notices.addAll(warnings(report, name)));
        double resistance = known.sheet().isPresent()
                ? blended(known.sheet().get(), bench, curve, sheet.path(), inputs)
                : followed(known, weighed, resistancePath, inputs);
        var pack = curve.summary(resistance);
        notices.addAll(pack.notices(name));
        FilterBuilder filterBuilder = new FilterBuilder(sheet, inputs, bench);
        FilterAssembly filter = filterBuilder.build(pack.resistance());
        if (!filterBuilder.leftOut().isEmpty()) {
            notices.add(Notice.of("filter.partsLeftOut", Severity.WARNING, name, names(filterBuilder.leftOut())));
        }
        return new BuiltCandidate(
                name,
                filter,
                pack,
                packModel,
                areas.gross().value(),
                areas.effective() / areas.gross().value(),
                packModel instanceof PleatPack pleats
                        ? foldShare(
                                pleats.geometry().pleatCount(),
                                pleats.geometry().thickness(),
                                areas)
                        : 0,
                resistance,
                evidence,
                Inputs.number(thickness),
                Inputs.number(basisWeight),
                Inputs.number(builder.solidity(basisWeight, thickness)),
                filterBuilder.leftOut(),
                notices);
    }

    /** Moved as a factor, so that what follows the geometry still follows it. */
    private static double followed(
            MediumBuilder.Resistance known, Optional<EvidenceCombination> weighed, String path, Inputs inputs) {
        double now = known.combination().median();
        double best = weighed.map(EvidenceCombination::median).orElse(now);
        Measured spread = Measured.factor(Kind.MEDIUM_RESISTANCE, best, known.ownLnSigma(), Provenance.MEASURED);
        return now * inputs.derived(path, spread) / best;
    }

    /** Medium resistance with which the channels of this build give the pack that sheet and rigs together say. */
    private static double blended(
            EvidenceCombination sheet, BenchEvidence bench, PackCurve pack, String path, Inputs inputs) {
        PackBlend blend = PackBlend.of(bench.rigs(), sheet, pack);
        double medium = inputs.derived(
                path + "." + RESISTANCE,
                Measured.factor(Kind.MEDIUM_RESISTANCE, sheet.median(), sheet.lnSigma(), Provenance.MEASURED));
        double read = inputs.derived(path + "." + PackBlend.READING, blend.reading());
        PackCurve.Point computed = pack.at(medium);
        double wanted = blend.resistance(computed.resistance(), read);
        double start = medium * Math.pow(wanted / computed.resistance(), 1 / computed.slope());
        return PackInverse.of(pack, wanted, start).mediumResistance();
    }

    private static MediumBuilder.Resistance nothingKnown() {
        ResistanceEvidence typical = ResistanceEvidence.ofFamily(FiberFamily.CELLULOSE);
        EvidenceCombination alone = EvidenceCombination.combine(List.of(new ResistanceEvidence(
                typical.kind(), NOTHING_KNOWN, typical.median(), typical.lnSigma(), typical.ingredients())));
        return new MediumBuilder.Resistance(alone, alone.lnSigma(), Optional.empty());
    }

    /** True if no evidence was left for the medium of a candidate. */
    public static boolean isNothingKnown(BuiltCandidate candidate) {
        return candidate.evidence().members().get(0).label().equals(NOTHING_KNOWN);
    }

    private static List<Notice> warnings(TestReport report, String name) {
        return report.notices().stream()
                .filter(notice -> notice.severity() != Severity.INFO)
                .map(notice -> new Notice(
                        notice.code(),
                        notice.severity(),
                        notice.place().equals(name) ? name : name + ", " + notice.place(),
                        notice.values()))
                .toList();
    }

    private static String names(List<FilterPart> parts) {
        return String.join(
                ", ",
                parts.stream()
                        .map(part -> NoticeText.text("part." + part.name(), List.of()))
                        .toList());
    }

    private static PackModel pack(Section sheet, Optional<Measured> thickness, AreaBuilder.Areas areas, Inputs inputs) {
        Optional<Section> pleats = sheet.section("pleats");
        Optional<Section> element = sheet.section("element");
        if (pleats.isEmpty()
                || element.isEmpty()
                || thickness.isEmpty()
                || areas.height().isEmpty()) {
            return new FlatPack(areas.effective());
        }
        OptionalDouble count = inputs.value(pleats.get(), "count");
        OptionalDouble outer = inputs.value(element.get(), "outsideDiameter");
        OptionalDouble inner = inputs.value(element.get(), "insideDiameter");
        double t = thickness.get().value();
        if (count.isEmpty() || outer.isEmpty() || inner.isEmpty()) {
            return new FlatPack(areas.effective());
        }
        PleatGeometry geometry = geometry(
                pleats.get(), outer.getAsDouble() / 2, inner.getAsDouble() / 2, count.getAsDouble(), t, inputs);
        PleatClosure closure = new PleatClosure(
                inputs.constant("pleat.slipCoefficient"),
                inputs.constant("pleat.inPlaneRatio"),
                !pleats.get().flag("foldsSealed").orElse(false),
                inputs.constant("pleat.gapFactor"));
        return new PleatPack(
                        geometry,
                        (int) Math.round(count.getAsDouble()),
                        areas.height().getAsDouble())
                .withClosure(closure)
                .withStatedArea(areas.effective() * (1 - foldShare(count.getAsDouble(), t, areas)));
    }

    private static double foldShare(double count, double thickness, AreaBuilder.Areas areas) {
        return areas.stripLength().isPresent()
                ? FOLD_LOSS * thickness * count / areas.stripLength().getAsDouble()
                : 0;
    }

    private static PleatGeometry geometry(
            Section pleats, double outer, double inner, double count, double thickness, Inputs inputs) {
        OptionalDouble together = inputs.value(pleats, "downstreamGap");
        if (together.isPresent()) {
            return PleatGeometry.radialLegsTogether(
                    outer, inner, count, thickness, together.getAsDouble(), PleatEnds.FOLDED);
        }
        return PleatGeometry.radial(
                outer,
                inner,
                count,
                thickness,
                inputs.valueOr(pleats, "outerFoldWidth", 0),
                inputs.valueOr(pleats, "innerFoldWidth", 0),
                inputs.valueOr(pleats, "gapFloor", 0),
                PleatEnds.FOLDED);
    }
}

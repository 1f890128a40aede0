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
import org.coldpleat.model.pleat.PackCurve;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/** Makes a candidate from its bench sheet. */
public final class CandidateBuilder {
    /** Path below a candidate under which the combined medium resistance is known as an unknown. */
    public static final String RESISTANCE = "medium.combinedResistance";

    private CandidateBuilder() {}

    /** Label of the family that stands in until the tests of a sheet without other evidence are evaluated. */
    static final String NOTHING_KNOWN = "nothing known";

    /**
     * Builds a candidate.
     *
     * @param blockValve true if the engine has a bypass valve in its block
     * @param bench what its tests gave
     * @param weighed what the medium resistance rests on in the build as written; empty for that build itself. Taken where
     *     this build moves the resistance and no test of the whole filter follows the geometry
     */
    public static BuiltCandidate candidate(
            Section sheet,
            boolean blockValve,
            Inputs inputs,
            BenchEvidence bench,
            Optional<EvidenceCombination> weighed) {
        String name = sheet.text("name").orElseThrow();
        List<Notice> notices = new ArrayList<>();
        Optional<Section> medium = sheet.section("medium");
        MediumBuilder builder =
                medium.map(section -> new MediumBuilder(section, inputs, bench)).orElseThrow();
        Optional<Measured> thickness = builder.thickness();
        PartReader parts = new PartReader(sheet, inputs);
        AreaBuilder.Areas areas = AreaBuilder.areas(parts, thickness, name);
        notices.addAll(areas.notices());
        Optional<Measured> basisWeight = builder.basisWeight(OptionalDouble.of(areas.gross()));
        FilterSizes sizes = new FilterSizes(parts, areas.gross(), thickness);
        PackBuilder.Pack made =
                parts.present("pleats") ? PackBuilder.pleated(parts, sizes, areas) : PackBuilder.flat(areas);
        boolean usualPack = parts.asked() > 0;
        PackCurve curve = made.model().curve();
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
        BypassPlace place = BypassPlace.of(sheet, blockValve);
        place.notice(name).ifPresent(notices::add);
        FilterBuilder filterBuilder = new FilterBuilder(parts, sizes, bench);
        FilterAssembly filter = filterBuilder.build(pack.resistance(), place.location());
        List<FilterPart> usual = new ArrayList<>(filterBuilder.usual());
        if (usualPack) {
            usual.add(0, FilterPart.PLEAT_PACK);
        }
        if (!usual.isEmpty()) {
            notices.add(Notice.of("filter.partsUsual", Severity.WARNING, name, names(usual)));
        }
        return new BuiltCandidate(
                name,
                filter,
                pack,
                made.model(),
                areas.gross(),
                areas.effective() / areas.gross(),
                made.foldShare(),
                resistance,
                evidence,
                Inputs.number(thickness),
                Inputs.number(basisWeight),
                Inputs.number(builder.solidity(basisWeight, thickness)),
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
}

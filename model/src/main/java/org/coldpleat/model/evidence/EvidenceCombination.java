package org.coldpleat.model.evidence;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Several sources of knowledge about R put together.
 *
 * @param median of R [1/m]
 * @param lnSigma standard uncertainty of ln R [1]
 * @param members what went in, strongest kind first, whatever the order given
 * @param weights share of each member in the mean of ln R [1], as in members, sum 1
 * @param birgeRatio square root of chi-square over its degrees of freedom [1]; 0 for a single member
 * @param conflict true if the members differ by more than their spreads allow (5 % level)
 * @param disagreeing the members that stand apart from the rest, if in conflict
 */
public record EvidenceCombination(
        double median,
        double lnSigma,
        List<ResistanceEvidence> members,
        List<Double> weights,
        double birgeRatio,
        boolean conflict,
        List<ResistanceEvidence> disagreeing) {
    /** Level of the chi-square test [1]. */
    @Source("common practice, no source")
    private static final double CONFLICT_LEVEL = 0.05;

    /** Order that does not depend on the order of input. */
    private static final Comparator<ResistanceEvidence> CANONICAL = Comparator.comparing(ResistanceEvidence::kind)
            .thenComparingDouble(ResistanceEvidence::lnSigma)
            .thenComparingDouble(ResistanceEvidence::median)
            .thenComparing(ResistanceEvidence::label);

    public EvidenceCombination {
        members = List.copyOf(members);
        weights = List.copyOf(weights);
        disagreeing = List.copyOf(disagreeing);
    }

    /**
     * Combines by precision weighting in ln R. Differences beyond the stated spreads widen the result by the Birge ratio;
     * in conflict the 95 % band is widened further until it reaches one standard uncertainty beyond the median of every
     * member (for a weak kind beside a reading: until it touches its 68 % band), so that none is averaged away. The same members in any order give the same bits.
     *
     * @throws IllegalArgumentException if there is nothing to combine
     */
    @Source("R. T. Birge 1932, Phys. Rev. 40, 207 (ratio of external to internal consistency); widening derived here")
    @Validity("members independent of each other; log-normal each")
    public static EvidenceCombination combine(List<ResistanceEvidence> evidence) {
        if (evidence.isEmpty()) {
            throw new IllegalArgumentException("evidence must name at least 1 source of knowledge, had 0");
        }
        List<ResistanceEvidence> members = evidence.stream().sorted(CANONICAL).toList();
        double precision =
                members.stream().mapToDouble(EvidenceCombination::precision).sum();
        List<Double> weights =
                members.stream().map(member -> precision(member) / precision).toList();
        double mean = mean(members, precision);
        int freedom = members.size() - 1;
        double chiSquare = 0;
        double reach = 0;
        for (ResistanceEvidence member : members) {
            double distance = Math.abs(Math.log(member.median()) - mean);
            chiSquare += distance * distance * precision(member);
            reach = Math.max(reach, distance + (rough(member, members) ? -1 : 1) * member.lnSigma());
        }
        double birge = freedom > 0 ? Math.sqrt(chiSquare / freedom) : 0;
        boolean conflict = freedom > 0
                && 1 - new ChiSquaredDistribution(freedom).cumulativeProbability(chiSquare) < CONFLICT_LEVEL;
        double lnSigma = Math.max(1, birge) / Math.sqrt(precision);
        if (conflict) {
            lnSigma = Math.max(lnSigma, reach / COVERAGE_95);
        }
        List<ResistanceEvidence> apart = conflict ? apart(members) : List.of();
        return new EvidenceCombination(Math.exp(mean), lnSigma, members, weights, birge, conflict, apart);
    }

    /** Lower end of the 95 % band of R [1/m]. */
    public double low() {
        return median * Math.exp(-COVERAGE_95 * lnSigma);
    }

    /** Upper end of the 95 % band of R [1/m]. */
    public double high() {
        return median * Math.exp(COVERAGE_95 * lnSigma);
    }

    /** Findings in words, about a place such as the name of a candidate. */
    public List<Notice> notices(String place) {
        List<Notice> notices = new ArrayList<>();
        if (conflict) {
            List<Shown> names = disagreeing.stream()
                    .map(member ->
                            Shown.several(" ", List.of(Shown.word(name(member)), Amount.resistance(member.median()))))
                    .toList();
            notices.add(Notice.of(
                    "medium.evidenceConflict", Severity.WARNING, place, Shown.several("; ", names), factor()));
        }
        if (members.stream().allMatch(member -> member.kind().isWeak())) {
            notices.add(Notice.of("medium.evidenceWeak", Severity.WARNING, place, factor()));
        }
        for (ResistanceEvidence member : members) {
            member.ingredients().stream()
                    .filter(part -> member.kind() == EvidenceKind.STRUCTURE
                            && part.key().equals("solidity")
                            && !StructureEvidence.lawsHold(part.value()))
                    .forEach(part -> notices.add(Notice.of(
                            "medium.solidityOutsideLaws",
                            Severity.WARNING,
                            place,
                            new Amount(Look.PLAIN_RATIO, part.value()))));
        }
        return List.copyOf(notices);
    }

    /** Factor up and down of the 95 % band. */
    private Amount factor() {
        return Amount.ratio(Math.exp(COVERAGE_95 * lnSigma));
    }

    private static String name(ResistanceEvidence member) {
        String kind = member.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return member.label().isEmpty() ? kind : kind + " (" + member.label() + ")";
    }

    /** A weak member beside a reading of this very sheet: the result need only touch it. */
    private static boolean rough(ResistanceEvidence member, List<ResistanceEvidence> members) {
        return member.kind().isWeak()
                && !members.stream().allMatch(other -> other.kind().isWeak());
    }

    private static double precision(ResistanceEvidence member) {
        return 1 / (member.lnSigma() * member.lnSigma());
    }

    private static double mean(List<ResistanceEvidence> members, double precision) {
        double sum = 0;
        for (ResistanceEvidence member : members) {
            sum += Math.log(member.median()) * precision(member);
        }
        return sum / precision;
    }

    /** Members that lie outside what the others together allow; if none does by itself, the one farthest out. */
    private static List<ResistanceEvidence> apart(List<ResistanceEvidence> members) {
        List<ResistanceEvidence> apart = new ArrayList<>();
        ResistanceEvidence farthest = members.get(0);
        double most = 0;
        for (ResistanceEvidence member : members) {
            List<ResistanceEvidence> others = new ArrayList<>(members);
            others.remove(member);
            double precision =
                    others.stream().mapToDouble(EvidenceCombination::precision).sum();
            double distance = Math.abs(Math.log(member.median()) - mean(others, precision))
                    / Math.hypot(member.lnSigma(), 1 / Math.sqrt(precision));
            if (distance > COVERAGE_95) {
                apart.add(member);
            }
            if (distance > most) {
                most = distance;
                farthest = member;
            }
        }
        return apart.isEmpty() ? List.of(farthest) : apart;
    }
}

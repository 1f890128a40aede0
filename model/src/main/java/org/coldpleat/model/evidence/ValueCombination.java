package org.coldpleat.model.evidence;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Several independent sources of one positive value put together, such as a printed opening pressure and a scale test.
 *
 * @param value the combined value, log-normal
 * @param members what went in, most certain first, whatever the order given
 * @param weights share of each member in the mean of the logarithm [1], sum 1
 * @param birgeRatio square root of chi-square over its degrees of freedom [1]; 0 for a single member
 * @param conflict true if the members differ by more than their spreads allow (5 % level)
 */
public record ValueCombination(
        Measured value, List<Member> members, List<Double> weights, double birgeRatio, boolean conflict) {
    @Source("common practice, no source")
    private static final double CONFLICT_LEVEL = 0.05;

    public ValueCombination {
        members = List.copyOf(members);
        weights = List.copyOf(weights);
    }

    /**
     * One source.
     *
     * @param name key of its name
     * @param value with a spread; above 0
     */
    public record Member(String name, Measured value) {
        /** Standard uncertainty of the natural logarithm [1]. */
        public double lnSigma() {
            double sigma = value.spread() == Spread.LOG_NORMAL
                    ? value.halfWidth()
                    : value.standardUncertainty() / value.value();
            return Math.max(ResistanceEvidence.LEAST_LN_SIGMA, sigma);
        }
    }

    /**
     * Combines by precision weighting in the logarithm. In conflict the 95 % band reaches one standard uncertainty beyond
     * every member, so that none is averaged away. The same members in any order give the same bits.
     *
     * @throws IllegalArgumentException if there is nothing to combine or a value is not above 0
     */
    @Source("R. T. Birge 1932, Phys. Rev. 40, 207; widening derived here")
    @Validity("members independent of each other, spreads below about a third of the value")
    public static ValueCombination combine(Kind kind, List<Member> sources) {
        if (sources.isEmpty()
                || sources.stream().anyMatch(member -> !(member.value().value() > 0))) {
            throw new IllegalArgumentException("sources must be at least 1 and above 0, had " + sources);
        }
        List<Member> members = sources.stream()
                .sorted(Comparator.comparingDouble(Member::lnSigma)
                        .thenComparingDouble(member -> member.value().value())
                        .thenComparing(Member::name))
                .toList();
        double precision =
                members.stream().mapToDouble(ValueCombination::precision).sum();
        double mean = 0;
        List<Double> weights = new ArrayList<>();
        for (Member member : members) {
            weights.add(precision(member) / precision);
            mean += precision(member) / precision * Math.log(member.value().value());
        }
        double chiSquare = 0;
        double reach = 0;
        for (Member member : members) {
            double distance = Math.abs(Math.log(member.value().value()) - mean);
            chiSquare += distance * distance * precision(member);
            reach = Math.max(reach, distance + member.lnSigma());
        }
        int freedom = members.size() - 1;
        double birge = freedom > 0 ? Math.sqrt(chiSquare / freedom) : 0;
        boolean conflict = freedom > 0
                && 1 - new ChiSquaredDistribution(freedom).cumulativeProbability(chiSquare) < CONFLICT_LEVEL;
        double lnSigma = Math.max(1, birge) / Math.sqrt(precision);
        if (conflict) {
            lnSigma = Math.max(lnSigma, reach / COVERAGE_95);
        }
        Measured value = Measured.factor(kind, Math.exp(mean), lnSigma, Provenance.MEASURED);
        return new ValueCombination(value, members, weights, birge, conflict);
    }

    private static double precision(Member member) {
        return 1 / (member.lnSigma() * member.lnSigma());
    }
}

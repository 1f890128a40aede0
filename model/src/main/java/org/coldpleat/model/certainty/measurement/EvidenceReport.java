package org.coldpleat.model.certainty.measurement;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.shared.quantity.Kind;

/**
 * What is known of one candidate, and from where.
 *
 * @param candidate name
 * @param tests all home and bench tests, in the order of the catalog
 * @param combined medium resistance first, then opening pressure and spring rate where a valve was pushed
 */
public record EvidenceReport(String candidate, List<TestReport> tests, List<Combined> combined) {
    public EvidenceReport {
        tests = List.copyOf(tests);
        combined = List.copyOf(combined);
    }

    /** A test by its key. */
    public Optional<TestReport> test(String key) {
        return tests.stream().filter(report -> report.test().equals(key)).findFirst();
    }

    /** A combined quantity by its key. */
    public Optional<Combined> combined(String key) {
        return combined.stream().filter(one -> one.quantity().equals(key)).findFirst();
    }

    /**
     * Several sources of one quantity put together.
     *
     * @param quantity key of the quantity
     * @param kind what it measures
     * @param median [SI]
     * @param lnSigma standard uncertainty of its natural logarithm [1]
     * @param birgeRatio square root of chi-square over its degrees of freedom [1]; 0 for a single source
     * @param conflict true if the sources differ by more than their spreads allow
     * @param members the sources
     */
    public record Combined(
            String quantity,
            Kind kind,
            double median,
            double lnSigma,
            double birgeRatio,
            boolean conflict,
            List<Member> members) {
        public Combined {
            members = List.copyOf(members);
        }
    }

    /**
     * One source.
     *
     * @param name key of its kind
     * @param label which one; empty if there is only one of its kind
     * @param median [SI]
     * @param lnSigma standard uncertainty of its natural logarithm [1]
     * @param weight share of the combined value [1]
     * @param apart true if it is one of those that disagree
     */
    public record Member(String name, String label, double median, double lnSigma, double weight, boolean apart) {}
}

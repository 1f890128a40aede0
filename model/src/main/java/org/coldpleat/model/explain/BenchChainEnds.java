package org.coldpleat.model.explain;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Stream;
import org.coldpleat.model.evidence.EvidenceKind;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;

/** Raw readings of home and bench tests as ends of a chain of reasons, one line for each row. */
final class BenchChainEnds {
    private BenchChainEnds() {}

    /** Readings behind evidence of a kind, in the order of the file; none if it does not come from a test. */
    static List<Explanation> of(Section sheet, EvidenceKind kind) {
        return switch (kind) {
            case FLOW_BENCH -> of(sheet, "flowBench");
            case DRAIN_TEST -> of(sheet, "drainTest");
            case AIR_TEST -> of(sheet, "airTest");
            case BUBBLE_POINT -> of(sheet, "bubblePoint");
            case STRUCTURE -> of(sheet, "fiberSizing");
            case STATED, PERMEABILITY, FAMILY -> List.of();
        };
    }

    /** Readings of one test of a sheet; none if the sheet has no such test. */
    static List<Explanation> of(Section sheet, String test) {
        return sheet.section("tests").flatMap(tests -> tests.section(test)).stream()
                .flatMap(BenchChainEnds::readings)
                .toList();
    }

    private static Stream<Explanation> readings(Section section) {
        return Stream.concat(row(section), section.below().stream().flatMap(BenchChainEnds::readings));
    }

    private static Stream<Explanation> row(Section section) {
        StringJoiner written = new StringJoiner(", ", section.path() + ", line " + section.line() + ": ", "");
        section.quantities().forEach((key, value) -> written.add(key + " " + value.written()));
        return section.quantities().isEmpty()
                ? Stream.empty()
                : Stream.of(new Explanation(
                        "reading", "", Kind.RATIO, Double.NaN, Optional.empty(), written.toString(), List.of()));
    }
}

package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.typical.DefaultSpreads;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;

/** Ends of a chain of reasons: what was read, printed, told or assumed, with its place in the case file. */
final class ChainEnds {
    private ChainEnds() {}

    /** ChainEnds for those of the keys that a section has. */
    static List<Explanation> of(Optional<Section> section, String... keys) {
        List<Explanation> leaves = new ArrayList<>();
        section.ifPresent(one -> {
            for (String key : keys) {
                one.quantity(key).ifPresent(value -> leaves.add(leaf(one, key, value)));
            }
        });
        return leaves;
    }

    private static Explanation leaf(Section section, String key, Measured written) {
        Measured complete = DefaultSpreads.complete(section.pathOf(key), written);
        String provenance = written.provenance().name().toLowerCase(Locale.ROOT);
        String origin = section.pathOf(key) + ", line " + section.lineOf(key) + ", " + provenance
                + (written.written().isEmpty() ? "" : ": " + written.written());
        return new Explanation(
                "input", section.pathOf(key), written.kind(), written.value(), spread(complete), origin, List.of());
    }

    /** A value the model stands in with. */
    static Explanation assumed(Assumption assumption) {
        return new Explanation(
                "assumed",
                assumption.path(),
                assumption.value().kind(),
                assumption.value().value(),
                spread(assumption.value()),
                assumption.value().provenance().name().toLowerCase(Locale.ROOT),
                List.of());
    }

    private static Optional<Measured> spread(Measured value) {
        return Optional.of(value).filter(one -> one.spread() != Spread.NONE && one.halfWidth() > 0);
    }

    /** A computed link. */
    static Explanation link(String key, Kind kind, double value, List<Explanation> inputs) {
        return new Explanation(key, "", kind, value, inputs);
    }

    /** A computed link with its spread. */
    static Explanation link(String key, Kind kind, double value, double lnSigma, List<Explanation> inputs) {
        Measured spread = Measured.factor(kind, value, lnSigma, Provenance.MEASURED);
        return new Explanation(key, "", kind, value, spread(spread), "", inputs);
    }
}

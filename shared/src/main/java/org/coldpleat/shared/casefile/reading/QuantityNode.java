package org.coldpleat.shared.casefile.reading;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coldpleat.shared.casefile.Entry;
import org.coldpleat.shared.casefile.FileProblems;
import org.coldpleat.shared.casefile.Place;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.casefile.Tree;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.NearestWord;
import org.coldpleat.shared.quantity.QuantityProblem;
import org.coldpleat.shared.quantity.QuantityReading;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;

/** Reads what stands in place of a quantity: a text, a list of readings, a group of keys, or the word typical or unknown. */
public final class QuantityNode {
    /** Words in place of a quantity that ask for what is usual. */
    private static final Set<String> TYPICAL = Set.of("typical", "unknown");

    private final FileProblems problems;

    QuantityNode(FileProblems problems) {
        this.problems = problems;
    }

    Entry entry(Tree tree, SchemaNode schema, Place place, Provenance provenance) {
        if (tree instanceof Keys keys) {
            return fromKeys(keys, schema, place, provenance);
        }
        return fromText(tree, tree.whole(), "", schema, place, provenance, Optional.empty());
    }

    private Entry fromText(
            Tree at,
            String text,
            String plusMinus,
            SchemaNode schema,
            Place place,
            Provenance provenance,
            Optional<String> note) {
        Entry nothing = Entry.empty(at);
        if (TYPICAL.contains(text.strip().toLowerCase(Locale.ROOT))) {
            if (!schema.typicalOffered()) {
                problems.add(place, at.line(), at.column(), "typical.notOffered");
                return nothing;
            }
            if (!plusMinus.isEmpty()) {
                problems.add(place, at.line(), at.column(), "typical.withSpread");
                return nothing;
            }
            return nothing.withQuantity(Optional.empty(), true, note);
        }
        Kind kind = schema.kind().orElseThrow();
        QuantityReading reading = QuantityText.parse(text, kind, provenance);
        if (!plusMinus.isEmpty() && reading.value().isPresent()) {
            if (reading.value().get().spread() != Spread.NONE) {
                problems.add(place, at.line(), at.column(), "spread.twice", text.strip());
                return nothing;
            }
            reading = QuantityText.parse(text + " ± " + plusMinus, kind, provenance);
        }
        if (reading.problem().isPresent()) {
            QuantityProblem problem = reading.problem().get();
            String[] values = problem.values().stream().map(FileProblems::cut).toArray(String[]::new);
            problems.add(place, at.line(), at.column(), problem.code(), values);
            return nothing;
        }
        Measured measured = reading.value().orElseThrow();
        checkLimits(measured, schema, place, at);
        return nothing.withQuantity(Optional.of(measured), false, note);
    }

    private Entry fromKeys(Keys keys, SchemaNode schema, Place place, Provenance inherited) {
        Map<String, Tree> given = new HashMap<>();
        boolean broken = false;
        for (Pair pair : keys.pairs()) {
            String key = pair.key().text();
            if (!SchemaNode.QUANTITY_KEYS.contains(key)) {
                broken = true;
                Optional<String> near = NearestWord.to(key, SchemaNode.QUANTITY_KEYS);
                String code = near.isPresent() ? "key.unknown.near" : "key.unknown";
                problems.add(
                        place.key(FileProblems.cut(key)),
                        pair.key().line(),
                        pair.key().column(),
                        code,
                        FileProblems.cut(key),
                        String.join(", ", SchemaNode.QUANTITY_KEYS),
                        near.orElse(""));
            } else if (given.putIfAbsent(key, pair.value()) != null) {
                broken = true;
                problems.add(
                        place.key(key), pair.key().line(), pair.key().column(), "key.twice", key, keys.line() + "");
            }
        }
        Tree value = given.get("value");
        if (value == null || (value instanceof Scalar scalar && scalar.isBlank())) {
            if (!broken) {
                problems.add(place.key("value"), keys.line(), keys.column(), "quantity.valueMissing");
            }
            return Entry.empty(keys);
        }
        if (broken) {
            return Entry.empty(keys);
        }
        if (value instanceof Keys) {
            problems.add(place.key("value"), value.line(), value.column(), "type.text.foundKeys", "");
            return Entry.empty(keys);
        }
        Optional<Provenance> provenance = provenance(given.get("provenance"), place);
        return fromText(
                value,
                value.whole(),
                given.containsKey("plusMinus") ? given.get("plusMinus").whole().strip() : "",
                schema,
                place,
                provenance.orElse(inherited),
                Optional.ofNullable(given.get("note")).map(Tree::whole));
    }

    private Optional<Provenance> provenance(Tree tree, Place place) {
        if (tree == null) {
            return Optional.empty();
        }
        String word = tree.whole().strip();
        if (SchemaNode.PROVENANCES.contains(word)) {
            return Optional.of(Provenance.valueOf(word.toUpperCase(Locale.ROOT)));
        }
        Optional<String> near = NearestWord.to(word, SchemaNode.PROVENANCES);
        problems.add(
                place.key("provenance"),
                tree.line(),
                tree.column(),
                near.isPresent() ? "choice.unknown.near" : "choice.unknown",
                FileProblems.cut(word),
                String.join(", ", SchemaNode.PROVENANCES),
                near.orElse(""));
        return Optional.empty();
    }

    private void checkLimits(Measured measured, SchemaNode schema, Place place, Tree at) {
        Optional<SchemaNode.Limit> lower = schema.lower();
        Optional<SchemaNode.Limit> upper = schema.upper();
        double value = measured.value();
        boolean low = lower.isPresent()
                && (lower.get().included()
                        ? value < slack(lower.get().si(), -1)
                        : value <= lower.get().si());
        boolean high = upper.isPresent() && value > slack(upper.get().si(), 1);
        if (low || high) {
            String code = "range"
                    + lower.map(limit -> limit.included() ? ".from" : ".above").orElse("")
                    + (upper.isPresent() ? ".to" : "");
            problems.add(
                    place,
                    at.line(),
                    at.column(),
                    code,
                    FileProblems.cut(measured.written()),
                    lower.map(SchemaNode.Limit::written).orElse(""),
                    upper.map(SchemaNode.Limit::written).orElse(""));
            return;
        }
        boolean positive =
                lower.isPresent() && lower.get().si() >= 0 && schema.kind().orElseThrow() != Kind.TEMPERATURE;
        if (positive && measured.spread() == Spread.RECTANGULAR && measured.low() < 0) {
            problems.add(place, at.line(), at.column(), "range.spread", FileProblems.cut(measured.written()));
        }
    }

    /** A limit with room for the rounding of unit factors. */
    private static double slack(double limit, int direction) {
        return limit + direction * 1e-12 * Math.abs(limit);
    }
}

package org.coldpleat.shared.casefile.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.casefile.Entry;
import org.coldpleat.shared.casefile.FileProblems;
import org.coldpleat.shared.casefile.Place;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.Tree;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;
import org.coldpleat.shared.casefile.Tree.Spoiled;
import org.coldpleat.shared.quantity.NearestWord;
import org.coldpleat.shared.source.Provenance;

/** Goes through a tree along the catalog, keeps what it understands and notes every problem. */
public final class CaseWalker {
    private static final List<String> YES = List.of("true", "yes");
    private static final List<String> NO = List.of("false", "no");

    private final FileProblems problems;
    private final QuantityNode quantities;

    CaseWalker(FileProblems problems) {
        this.problems = problems;
        this.quantities = new QuantityNode(problems);
    }

    /**
     * The section that a group of keys makes.
     *
     * @param before what stood there in an earlier version of the file that had no problems; taken where it reads the same
     */
    Section section(Keys keys, SchemaNode schema, Place place, Provenance inherited, Optional<Section> before) {
        if (before.isPresent() && before.get().isOf(keys, place)) {
            return before.get();
        }
        Provenance provenance = schema.provenance().orElse(inherited);
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (Pair pair : pairs(keys, place)) {
            String key = pair.key().text();
            SchemaNode below = schema.properties().get(key);
            if (below == null) {
                unknown(pair.key(), schema, place);
            } else if (!(pair.value() instanceof Scalar scalar && scalar.isBlank())) {
                entries.put(
                        key, entry(pair.value(), below, place.key(key), provenance, before.map(old -> old.entry(key))));
            }
        }
        for (String key : schema.required()) {
            if (!entries.containsKey(key)) {
                String words = schema.properties().get(key).description();
                problems.add(place.key(key), keys.line(), keys.column(), "key.missing", key, words);
            }
        }
        return new Section(place, keys, schema, entries);
    }

    /** The pairs that can stand: doubled keys and values split by a decimal comma are noted and left out. */
    private List<Pair> pairs(Keys keys, Place place) {
        List<Pair> kept = new ArrayList<>();
        Map<String, Integer> first = new HashMap<>();
        List<Pair> all = keys.pairs();
        for (int i = 0; i < all.size(); i++) {
            Pair pair = all.get(i);
            Scalar key = pair.key();
            Integer before = first.putIfAbsent(key.text(), key.line());
            if (before != null) {
                problems.add(
                        place.key(key.text()), key.line(), key.column(), "key.twice", key.text(), before.toString());
                continue;
            }
            if (keys.inline() && i + 1 < all.size() && all.get(i + 1).isTail() && pair.value() instanceof Scalar head) {
                String whole = head.text() + "," + all.get(i + 1).key().text();
                problems.add(
                        place.key(key.text()),
                        head.line(),
                        head.column(),
                        "yaml.decimalComma",
                        whole,
                        key.text(),
                        whole.replace(',', '.'));
                kept.add(new Pair(key, new Spoiled(head.line(), head.column(), head.start(), head.end())));
                i++;
                continue;
            }
            kept.add(pair);
        }
        return kept;
    }

    private void unknown(Scalar key, SchemaNode schema, Place place) {
        List<String> known = List.copyOf(schema.properties().keySet());
        Optional<String> near = NearestWord.to(key.text(), known);
        String allowed = String.join(", ", known);
        Place at = place.key(FileProblems.cut(key.text()));
        if (near.isPresent()) {
            problems.add(
                    at,
                    key.line(),
                    key.column(),
                    "key.unknown.near",
                    FileProblems.cut(key.text()),
                    allowed,
                    near.get());
        } else {
            problems.add(at, key.line(), key.column(), "key.unknown", FileProblems.cut(key.text()), allowed);
        }
    }

    private Entry entry(Tree tree, SchemaNode schema, Place place, Provenance inherited, Optional<Entry> before) {
        Entry nothing = Entry.empty(tree);
        if (tree instanceof Spoiled) {
            return nothing;
        }
        Provenance provenance = schema.provenance().orElse(inherited);
        return switch (schema.type()) {
            case QUANTITY -> quantities.entry(tree, schema, place, provenance);
            case SECTION -> {
                if (SectionForms.plain(tree, schema) instanceof Keys keys) {
                    yield nothing.withSection(section(keys, schema, place, provenance, before.flatMap(Entry::section)));
                }
                wrongType(
                        tree,
                        "keys",
                        place,
                        String.join(", ", schema.properties().keySet()));
                yield nothing;
            }
            case LIST ->
                list(
                        tree,
                        schema,
                        place,
                        provenance,
                        before.map(Entry::sections).orElse(List.of()));
            case TEXT, CHOICE, FLAG, INTEGER -> {
                if (tree instanceof Scalar scalar) {
                    yield scalar(scalar, schema, place);
                }
                wrongType(tree, "text", place, "");
                yield nothing;
            }
        };
    }

    private Entry list(Tree tree, SchemaNode schema, Place place, Provenance provenance, List<Section> before) {
        Entry nothing = Entry.empty(tree);
        if (!(tree instanceof Items items)) {
            wrongType(tree, "list", place, "");
            return nothing;
        }
        int count = items.items().size();
        if (count < schema.fewest()) {
            problems.add(place, tree.line(), tree.column(), "list.tooFew", count + "", schema.fewest() + "");
        }
        if (count > schema.most()) {
            problems.add(place, tree.line(), tree.column(), "list.tooMany", count + "", schema.most() + "");
        }
        SchemaNode each = schema.items().orElseThrow();
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < Math.min(count, schema.most()); i++) {
            Tree item = items.items().get(i);
            Place at = place.item(i, name(item));
            if (item instanceof Keys keys) {
                Optional<Section> old = i < before.size() ? Optional.of(before.get(i)) : Optional.empty();
                sections.add(section(keys, each, at, each.provenance().orElse(provenance), old));
            } else {
                wrongType(item, "keys", at, String.join(", ", each.properties().keySet()));
            }
        }
        return nothing.withSections(sections);
    }

    private static String name(Tree item) {
        if (item instanceof Keys keys) {
            for (Pair pair : keys.pairs()) {
                if (pair.key().text().equals("name") && pair.value() instanceof Scalar scalar) {
                    return FileProblems.cut(scalar.text());
                }
            }
        }
        return "";
    }

    private Entry scalar(Scalar scalar, SchemaNode schema, Place place) {
        Entry nothing = Entry.empty(scalar);
        String text = scalar.text().strip();
        switch (schema.type()) {
            case TEXT -> {
                if (text.length() < schema.shortest()) {
                    problems.add(place, scalar.line(), scalar.column(), "text.empty");
                } else if (text.length() > schema.longest()) {
                    problems.add(
                            place,
                            scalar.line(),
                            scalar.column(),
                            "text.tooLong",
                            text.length() + "",
                            schema.longest() + "");
                }
                return nothing.withText(text);
            }
            case FLAG -> {
                String word = text.toLowerCase(Locale.ROOT);
                if (YES.contains(word) || NO.contains(word)) {
                    return nothing.withFlag(YES.contains(word));
                }
                problems.add(place, scalar.line(), scalar.column(), "flag.unknown", FileProblems.cut(text));
                return nothing;
            }
            case INTEGER -> {
                return nothing.withText(text);
            }
            default -> {
                if (!schema.choices().contains(text)) {
                    choice(text, schema, scalar, place);
                    return nothing;
                }
                return nothing.withText(text);
            }
        }
    }

    private void choice(String text, SchemaNode schema, Scalar at, Place place) {
        String allowed = String.join(", ", schema.choices());
        Optional<String> near = NearestWord.to(text, schema.choices());
        if (near.isPresent()) {
            problems.add(
                    place, at.line(), at.column(), "choice.unknown.near", FileProblems.cut(text), allowed, near.get());
        } else {
            problems.add(place, at.line(), at.column(), "choice.unknown", FileProblems.cut(text), allowed);
        }
    }

    private void wrongType(Tree tree, String wanted, Place place, String allowed) {
        if (tree instanceof Items) {
            problems.add(place, tree.line(), tree.column(), "type." + wanted + ".foundList", allowed);
        } else if (tree instanceof Keys) {
            problems.add(place, tree.line(), tree.column(), "type." + wanted + ".foundKeys", allowed);
        } else if (tree instanceof Scalar scalar) {
            problems.add(
                    place,
                    tree.line(),
                    tree.column(),
                    "type." + wanted + ".foundText",
                    allowed,
                    FileProblems.cut(scalar.text()));
        }
    }
}

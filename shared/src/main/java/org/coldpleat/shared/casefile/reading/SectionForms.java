package org.coldpleat.shared.casefile.reading;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.casefile.Tree;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;

/**
 * Short ways to write a section: {@code none} for one that can be said not to be there, and a list of two for one that
 * can have a second of its kind.
 */
final class SectionForms {
    private static final String NONE = "none";
    private static final String PRESENT = "present";
    private static final String SECOND = "second";

    private SectionForms() {}

    /** The same in keys where it is one of the short ways, else the tree as it is. */
    static Tree plain(Tree tree, SchemaNode schema) {
        if (tree instanceof Scalar scalar
                && scalar.text().strip().equals(NONE)
                && schema.properties().containsKey(PRESENT)) {
            return keys(tree, List.of(new Pair(word(tree, PRESENT), word(tree, "false"))));
        }
        if (tree instanceof Items items
                && items.items().size() == 2
                && items.items().get(0) instanceof Keys first
                && schema.properties().containsKey(SECOND)) {
            List<Pair> pairs = new ArrayList<>(first.pairs());
            pairs.add(new Pair(word(items.items().get(1), SECOND), items.items().get(1)));
            return keys(tree, pairs);
        }
        return tree instanceof Items items
                        && items.items().size() == 1
                        && schema.properties().containsKey(SECOND)
                ? items.items().get(0)
                : tree;
    }

    private static Keys keys(Tree at, List<Pair> pairs) {
        return new Keys(pairs, false, at.line(), at.column(), at.start(), at.end());
    }

    private static Scalar word(Tree at, String text) {
        return new Scalar(text, true, at.line(), at.column(), at.start(), at.end());
    }
}

package org.coldpleat.shared.casefile.writing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.shared.casefile.Tree;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;

/** Every value of a tree as it was typed, by its path; blank ones are left out. */
final class DraftValues {
    private DraftValues() {}

    static Map<String, String> of(Tree tree) {
        Map<String, String> values = new LinkedHashMap<>();
        collect(tree, "", values);
        return Collections.unmodifiableMap(values);
    }

    private static void collect(Tree tree, String path, Map<String, String> values) {
        if (tree instanceof Keys keys) {
            List<Pair> pairs = keys.pairs();
            for (int i = 0; i < pairs.size(); i++) {
                Pair pair = pairs.get(i);
                String below = path.isEmpty()
                        ? pair.key().text()
                        : path + "." + pair.key().text();
                if (hasTail(keys, i)) {
                    put(
                            values,
                            below,
                            typed(pair.value()) + "," + pairs.get(i + 1).key().text());
                    i++;
                } else {
                    collect(pair.value(), below, values);
                }
            }
        } else if (tree instanceof Items items && !isReadings(items)) {
            for (int i = 0; i < items.items().size(); i++) {
                collect(items.items().get(i), path + "[" + i + "]", values);
            }
        } else {
            put(values, path, typed(tree));
        }
    }

    private static void put(Map<String, String> values, String path, String text) {
        String free = path;
        for (int again = 2; values.containsKey(free); again++) {
            free = path + " (" + again + ")";
        }
        if (!text.isEmpty()) {
            values.put(free, text);
        }
    }

    /** True if a decimal comma has split the value of a pair in braces, so that the next pair is its tail. */
    static boolean hasTail(Keys keys, int pair) {
        return keys.inline()
                && pair + 1 < keys.pairs().size()
                && keys.pairs().get(pair).value() instanceof Scalar
                && keys.pairs().get(pair + 1).isTail();
    }

    /** Index behind the value of a pair, its tail included. */
    static int end(Keys keys, int pair) {
        Pair last = keys.pairs().get(hasTail(keys, pair) ? pair + 1 : pair);
        return Math.max(last.key().end(), last.value().end());
    }

    /** True for a list of bare values, such as readings. */
    static boolean isReadings(Items items) {
        return !items.items().isEmpty()
                && items.items().stream().allMatch(item -> item instanceof Scalar one && !one.isBlank());
    }

    /** What was typed for a value; empty if it was left blank. */
    static String typed(Tree tree) {
        if (tree instanceof Items items) {
            return items.items().isEmpty() ? "" : items.whole();
        }
        return tree instanceof Scalar scalar && !scalar.isBlank()
                ? scalar.text().strip()
                : "";
    }
}

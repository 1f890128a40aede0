package org.coldpleat.shared.casefile.writing;

import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.casefile.Tree;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;
import org.coldpleat.shared.casefile.catalog.CasePath;
import org.coldpleat.shared.casefile.catalog.CasePath.Step;
import org.coldpleat.shared.casefile.catalog.CaseSchema;

/** Writes one value into the text of a draft where its field stands, and makes the field where there is none. */
final class DraftWriter {
    private final String text;
    private final DraftLines lines;
    private final CasePath path;
    private final String raw;

    /** @param raw the value as YAML wants it at its place */
    DraftWriter(String text, CasePath path, String raw) {
        this.text = text;
        this.lines = new DraftLines(text);
        this.path = path;
        this.raw = raw;
    }

    /** The text with the value in it. */
    String written(Optional<Tree> root) {
        if (root.isPresent() && root.get() instanceof Keys keys) {
            return keys(keys, 0);
        }
        String rest = text.isEmpty() || text.endsWith("\n") ? text : text + lines.lineBreak();
        return rest + path.steps().get(0).key() + ":" + value(1, 0, false) + lines.lineBreak();
    }

    private String keys(Keys keys, int step) {
        String key = path.steps().get(step).key();
        for (int i = 0; i < keys.pairs().size(); i++) {
            if (keys.pairs().get(i).key().text().equals(key)) {
                return pair(keys, i, step + 1);
            }
        }
        return newPair(keys, step);
    }

    /** Goes on at the value of a pair. */
    private String pair(Keys keys, int index, int step) {
        Tree value = keys.pairs().get(index).value();
        int colon = lines.colon(keys.pairs().get(index).key().end()) + 1;
        int end = Math.max(colon, DraftValues.end(keys, index));
        int indent = lines.column(keys.start());
        if (step == path.steps().size()) {
            boolean near = lines.isGap(colon, Math.max(colon, value.start()));
            return near ? lines.splice(colon, end, spaced(raw)) : lines.splice(value.start(), end, raw);
        }
        Step next = path.steps().get(step);
        if (!next.isEntry() && value instanceof Keys below) {
            return keys(below, step);
        }
        if (next.isEntry() && value instanceof Items list) {
            return entry(list, keys.inline(), step);
        }
        if (keys.inline()) {
            return lines.splice(colon, end, value(step, indent, true));
        }
        // what stands in place of a section stays as a remark
        String old = text.substring(colon, end).strip();
        boolean blank = value instanceof Scalar scalar && scalar.isBlank();
        String remark = blank ? "" : " # " + old.replaceAll("\\R", lines.lineBreak() + "# ");
        String kept = text.substring(end, lines.lineEnd(end));
        return lines.splice(colon, lines.lineEnd(end), remark + kept + value(step, indent, false));
    }

    private String entry(Items list, boolean inlineAround, int step) {
        int number = path.steps().get(step).entry();
        boolean inline = !list.raw().isEmpty();
        List<Tree> items = list.items();
        if (number == items.size()) {
            return inline ? newInlineEntry(list, step) : newEntry(list, step);
        }
        Tree item = items.get(number);
        boolean last = step + 1 == path.steps().size();
        if (!last && item instanceof Keys keys && !(keys.pairs().isEmpty() && !inline && !inlineAround)) {
            return keys(keys, step + 1);
        }
        if (inline) {
            return lines.splice(
                    item.start(), item.end(), item(step + 1, 0, true).strip());
        }
        int dash = lines.dash(list, number);
        return lines.splice(dash + 1, Math.max(dash + 1, item.end()), item(step + 1, lines.column(dash), false));
    }

    private String newEntry(Items list, int step) {
        int count = list.items().size();
        int column = lines.column(lines.dash(list, count - 1));
        int end = lines.lineEnd(list.end());
        boolean apart = count > 1
                && text.substring(list.items().get(count - 2).end(), lines.dash(list, count - 1))
                        .matches("(?s).*\\R[ \\t]*\\R.*");
        String head = lines.lineBreak() + (apart ? lines.lineBreak() : "") + DraftLines.blanks(column) + "-";
        return lines.splice(end, end, head + item(step + 1, column, false));
    }

    private String newInlineEntry(Items list, int step) {
        boolean first = list.items().isEmpty();
        int at = first
                ? list.start() + 1
                : list.items().get(list.items().size() - 1).end();
        return lines.splice(
                at, at, (first ? "" : ", ") + item(step + 1, 0, true).strip());
    }

    /** A new key behind the last of those that stand before it in the catalog. */
    private String newPair(Keys keys, int step) {
        String key = path.steps().get(step).key();
        List<Pair> pairs = keys.pairs();
        String own = key + ":" + value(step + 1, lines.column(keys.start()), keys.inline());
        if (pairs.isEmpty()) {
            return lines.splice(keys.start() + 1, keys.start() + 1, own);
        }
        int before = before(keys, step, key);
        int end = DraftValues.end(keys, before);
        Pair last = pairs.get(before);
        if (DraftValues.typed(last.value()).isEmpty() && last.value() instanceof Scalar) {
            end = Math.max(end, lines.colon(last.key().end()) + 1);
        }
        if (keys.inline()) {
            return lines.splice(end, end, ", " + own);
        }
        int at = lines.lineEnd(end);
        return lines.splice(at, at, lines.lineBreak() + DraftLines.blanks(lines.column(keys.start())) + own);
    }

    private int before(Keys keys, int step, String key) {
        List<String> order = path.head(step)
                .schema(CaseSchema.ROOT)
                .filter(node -> node.type() == SchemaNode.Type.SECTION)
                .map(node -> List.copyOf(node.properties().keySet()))
                .orElse(SchemaNode.QUANTITY_KEYS);
        int before = -1;
        for (int i = 0; i < keys.pairs().size(); i++) {
            int place = order.indexOf(keys.pairs().get(i).key().text());
            if (place >= 0 && place < order.indexOf(key)) {
                before = i;
            }
        }
        return Math.max(before, 0);
    }

    /** What stands behind the colon of a key: the value, or the section or list that leads to it. */
    private String value(int step, int indent, boolean inline) {
        if (step == path.steps().size()) {
            return spaced(raw);
        }
        Step next = path.steps().get(step);
        if (next.isEntry()) {
            return inline
                    ? " [" + item(step + 1, 0, true).strip() + "]"
                    : lines.lineBreak() + DraftLines.blanks(indent + 2) + "-" + item(step + 1, indent + 2, false);
        }
        String below = next.key() + ":" + value(step + 1, indent + 2, inline || isQuantity(step));
        return inline || isQuantity(step)
                ? " {" + below + "}"
                : lines.lineBreak() + DraftLines.blanks(indent + 2) + below;
    }

    /** What stands behind the dash of a list entry whose dash is in a column. */
    private String item(int step, int column, boolean inline) {
        if (step == path.steps().size()) {
            return spaced(raw);
        }
        boolean row = inline
                || path.head(step)
                        .schema(CaseSchema.ROOT)
                        .map(DraftWriter::isRow)
                        .orElse(true);
        String below = path.steps().get(step).key() + ":" + value(step + 1, column + 2, row);
        return row ? " {" + below + "}" : " " + below;
    }

    private boolean isQuantity(int step) {
        return path.head(step)
                .schema(CaseSchema.ROOT)
                .map(node -> node.type() == SchemaNode.Type.QUANTITY)
                .orElse(false);
    }

    /** True for entries that hold bare values only, so that they read best on one line. */
    private static boolean isRow(SchemaNode entry) {
        return entry.properties().values().stream()
                .noneMatch(node -> node.type() == SchemaNode.Type.SECTION || node.type() == SchemaNode.Type.LIST);
    }

    private static String spaced(String raw) {
        return raw.isEmpty() ? "" : " " + raw;
    }
}

package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.CasePath.Step;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Scalar;

/** Takes fields and list entries out of the text of a draft, and moves and doubles entries. Remarks stay. */
final class DraftRemover {
    private final DraftLines lines;
    private final String text;

    DraftRemover(String text) {
        this.text = text;
        this.lines = new DraftLines(text);
    }

    /** The node at a path; empty if nothing stands there. */
    static Optional<Tree> find(Optional<Tree> root, CasePath path) {
        Tree at = root.orElse(null);
        for (Step step : path.steps()) {
            if (step.isEntry()) {
                boolean there =
                        at instanceof Items list && step.entry() < list.items().size();
                at = there ? ((Items) at).items().get(step.entry()) : null;
            } else {
                int pair = at instanceof Keys keys ? pair(keys, step.key()) : -1;
                at = pair < 0 ? null : ((Keys) at).pairs().get(pair).value();
            }
        }
        return Optional.ofNullable(at);
    }

    private static int pair(Keys keys, String key) {
        for (int i = 0; i < keys.pairs().size(); i++) {
            if (keys.pairs().get(i).key().text().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    /** The text without a field; without the section around it if nothing else is in there. */
    String without(Optional<Tree> root, CasePath path) {
        int last = path.steps().size() - 1;
        CasePath around = path.head(last);
        Keys keys = (Keys) find(root, around).orElseThrow();
        if (keys.pairs().size() == 1
                && last > 0
                && !around.steps().get(last - 1).isEntry()) {
            return without(root, around);
        }
        int i = pair(keys, path.steps().get(last).key());
        return keys.inline() ? withoutInline(keys, i) : withoutLines(keys, i);
    }

    private String withoutInline(Keys keys, int i) {
        int start = keys.pairs().get(i).key().start();
        int end = end(keys, i);
        int tail = DraftValues.hasTail(keys, i) ? 2 : 1;
        if (i > 0) {
            return lines.splice(end(keys, i - 1), end, "");
        }
        boolean only = i + tail >= keys.pairs().size();
        return lines.splice(start, only ? end : keys.pairs().get(i + tail).key().start(), "");
    }

    private int end(Keys keys, int i) {
        int pair = i > 0 && DraftValues.hasTail(keys, i - 1) ? i - 1 : i;
        return Math.max(
                DraftValues.end(keys, pair),
                lines.colon(keys.pairs().get(pair).key().end()) + 1);
    }

    private String withoutLines(Keys keys, int i) {
        int start = keys.pairs().get(i).key().start();
        int colon = lines.colon(keys.pairs().get(i).key().end()) + 1;
        int end = Math.max(colon, keys.pairs().get(i).value().end());
        boolean behindDash = !lines.isGap(lines.lineStart(start), start);
        boolean alone = keys.pairs().size() == 1;
        boolean remarks = lines.remarkBehind(end)
                || (keys.pairs().get(i).value() instanceof Scalar && lines.remarkBetween(colon, end));
        if (behindDash && alone) {
            return lines.splice(start, end, "{}");
        }
        if (behindDash) {
            int next = keys.pairs().get(i + 1).key().start();
            boolean gap = lines.isGap(end, next);
            return gap ? lines.splice(start, next, "") : lines.splice(colon, end, "");
        }
        if (remarks) {
            return lines.splice(colon, end, "");
        }
        return lines.splice(lines.lineStart(start), lines.nextLine(end), "");
    }

    /** The text without an entry of a list of several. */
    String withoutEntry(Items list, int entry) {
        List<Tree> items = list.items();
        if (!list.raw().isEmpty()) {
            return entry > 0
                    ? lines.splice(items.get(entry - 1).end(), items.get(entry).end(), "")
                    : lines.splice(items.get(0).start(), items.get(1).start(), "");
        }
        int start = lines.lineStart(lines.dash(list, entry));
        int end = chunkEnd(list, entry);
        // the blank line that set the entry apart goes with it
        while (entry + 1 < items.size()
                && end < text.length()
                && lines.isGap(end, lines.lineEnd(end))
                && start > 0
                && lines.isGap(lines.lineStart(start - 1), start)) {
            end = lines.nextLine(end);
        }
        if (entry + 1 == items.size()) {
            while (start > 0 && lines.isGap(lines.lineStart(start - 1), start)) {
                start = lines.lineStart(start - 1);
            }
        }
        return lines.splice(start, end, "");
    }

    /** The text with a copy of an entry behind the last one. */
    String withCopy(Items list, int entry) {
        List<Tree> items = list.items();
        int last = items.size() - 1;
        if (!list.raw().isEmpty()) {
            String copy =
                    text.substring(items.get(entry).start(), items.get(entry).end());
            return lines.splice(items.get(last).end(), items.get(last).end(), ", " + copy);
        }
        int from = lines.lineStart(lines.dash(list, entry));
        String copy = text.substring(from, lines.lineEnd(chunkLast(list, entry)));
        boolean apart = last > 0
                && text.substring(items.get(last - 1).end(), lines.dash(list, last))
                        .matches("(?s).*\\R[ \\t]*\\R.*");
        int at = lines.lineEnd(chunkLast(list, last));
        return lines.splice(at, at, lines.lineBreak() + (apart ? lines.lineBreak() : "") + copy);
    }

    /** The text with the entries of a list in another order; what stands between them stays where it is. */
    String reordered(Items list, List<Integer> order) {
        List<int[]> chunks = new ArrayList<>();
        boolean inline = !list.raw().isEmpty();
        for (int i = 0; i < list.items().size(); i++) {
            Tree item = list.items().get(i);
            chunks.add(
                    inline
                            ? new int[] {item.start(), item.end()}
                            : new int[] {lines.dash(list, i), lines.lineEnd(chunkLast(list, i))});
        }
        StringBuilder out = new StringBuilder(text.substring(0, chunks.get(0)[0]));
        for (int i = 0; i < chunks.size(); i++) {
            int[] own = chunks.get(order.get(i));
            out.append(text, own[0], own[1]);
            int next = i + 1 < chunks.size() ? chunks.get(i + 1)[0] : text.length();
            out.append(text, chunks.get(i)[1], next);
        }
        return out.toString();
    }

    private int chunkLast(Items list, int entry) {
        return Math.max(lines.dash(list, entry) + 1, list.items().get(entry).end());
    }

    private int chunkEnd(Items list, int entry) {
        return lines.nextLine(chunkLast(list, entry));
    }
}

package org.coldpleat.ui.text;

import java.util.ArrayList;
import java.util.List;

/** A chain of values as an indented list, from the answer down to what was read off the bench. */
final class ExplainText {
    private static final int DEEPEST_INDENT = 12;
    private static final String STEP = "  ";

    private final List<String> lines = new ArrayList<>();

    private ExplainText() {}

    static String of(ExplainedLink chain) {
        ExplainText page = new ExplainText();
        page.link(chain, 0);
        return String.join("\n", page.lines) + "\n";
    }

    private void link(ExplainedLink link, int depth) {
        put(depth, link.headline());
        link.lines().forEach(line -> put(depth + 1, line));
        link.below().forEach(one -> link(one, depth + 1));
    }

    private void put(int depth, String text) {
        String indent = STEP.repeat(Math.min(depth, DEEPEST_INDENT));
        List<String> wrapped = Table.wrap(text, CompareText.WIDTH - indent.length() - STEP.length());
        lines.add(indent + wrapped.get(0));
        wrapped.stream().skip(1).forEach(line -> lines.add(indent + STEP + line));
    }
}

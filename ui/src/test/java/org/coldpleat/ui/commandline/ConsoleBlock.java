package org.coldpleat.ui.commandline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A command on a page with what it prints. A remark before the block, which readers of the page do not see, says what is
 * shown: {@code <!-- show: ^ => 3; Verdict => blank -->} shows three lines from the start, then from the first line with
 * "Verdict" to the next empty line; {@code <!-- exit: 3 -->} names another exit code than 0. What is left out is marked.
 *
 * @param command the command line, without the program
 * @param show what is shown; empty for everything
 * @param exit exit code
 * @param output what the page shows
 */
record ConsoleBlock(List<String> command, String show, int exit, String output) {
    static final String LEFT_OUT = "[...]";
    private static final Pattern BLOCK = Pattern.compile(
            "((?:<!-- (?:show|exit): [^\n]* -->\n)*)```console\n\\$ \\./coldpleat ([^\n]*)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern REMARK = Pattern.compile("<!-- (show|exit): ([^\n]*) -->");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** All blocks of a page, in order. */
    static List<ConsoleBlock> of(String page) {
        return BLOCK.matcher(page).results().map(ConsoleBlock::of).toList();
    }

    private static ConsoleBlock of(MatchResult found) {
        String show = "";
        int exit = 0;
        Matcher remark = REMARK.matcher(found.group(1));
        while (remark.find()) {
            if (remark.group(1).equals("show")) {
                show = remark.group(2);
            } else {
                exit = Integer.parseInt(remark.group(2).strip());
            }
        }
        return new ConsoleBlock(words(found.group(2)), show, exit, found.group(3));
    }

    /** The page with other outputs in its blocks. */
    static String rewritten(String page, List<String> outputs) {
        int[] next = {0};
        return BLOCK.matcher(page)
                .replaceAll(found -> Matcher.quoteReplacement(found.group(1) + "```console\n$ ./coldpleat "
                        + found.group(2) + "\n" + outputs.get(next[0]++) + "```"));
    }

    private static List<String> words(String line) {
        return WORD.matcher(line)
                .results()
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .toList();
    }

    /** What the page has to show of an output. */
    String shown(String printed) {
        List<String> lines = printed.lines().map(String::stripTrailing).toList();
        List<String> kept = new ArrayList<>();
        int at = 0;
        for (String part : show.isEmpty() ? new String[] {"^ => end"} : show.split(";", -1)) {
            String[] ends = part.split("=>", -1);
            int from = ends[0].strip().equals("^") ? 0 : find(lines, ends[0].strip(), at);
            int to = end(lines, ends[1].strip().toLowerCase(Locale.ROOT), from);
            if (from > at) {
                kept.add(LEFT_OUT);
            }
            kept.addAll(lines.subList(from, to));
            at = to;
        }
        if (at < lines.size()) {
            kept.add(LEFT_OUT);
        }
        return String.join("\n", kept) + "\n";
    }

    private static int find(List<String> lines, String text, int from) {
        for (int i = from; i < lines.size(); i++) {
            if (lines.get(i).contains(text)) {
                return i;
            }
        }
        throw new IllegalStateException("no line with \"" + text + "\" in\n" + String.join("\n", lines));
    }

    private static int end(List<String> lines, String way, int from) {
        if (way.equals("end")) {
            return lines.size();
        }
        if (!way.equals("blank")) {
            return Math.min(lines.size(), from + Integer.parseInt(way));
        }
        int to = from + 1;
        while (to < lines.size() && !lines.get(to).isEmpty()) {
            to++;
        }
        return to;
    }
}

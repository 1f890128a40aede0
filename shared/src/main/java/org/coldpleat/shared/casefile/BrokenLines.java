package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Scalar;

/** Turns the lines that are no YAML into remarks, so that the rest of a file that was broken by hand can be read. */
record BrokenLines(String text, List<CaseProblem> problems) {
    BrokenLines {
        problems = List.copyOf(problems);
    }

    static BrokenLines setAside(String file, String text) {
        List<String> lines = new ArrayList<>(List.of(text.split("(?<=\n)|(?<=\r)(?!\n)", -1)));
        List<CaseProblem> found = new ArrayList<>();
        while (true) {
            FileProblems problems = new FileProblems(file);
            String now = String.join("", lines);
            FileText.check(now, problems);
            Optional<Tree> tree = problems.isEmpty() ? TreeBuilder.build(now, problems) : Optional.empty();
            if (problems.isEmpty() && tree.isPresent() && !isCase(tree.get())) {
                problems.add(tree.get().line(), tree.get().column(), "file.noKeys");
            }
            if (problems.isEmpty()) {
                return new BrokenLines(now, found);
            }
            CaseProblem first = problems.inFileOrder().get(0);
            int line = lineToSetAside(lines, first.line());
            if (line < 0) {
                throw new IllegalStateException("no line is left to set aside for " + first.text());
            }
            found.add(first);
            lines.set(line, "# " + lines.get(line).replaceAll("[\\p{Cntrl}\ufffe\uffff&&[^\t\r\n\u0085]]", "\ufffd"));
        }
    }

    private static boolean isCase(Tree tree) {
        return tree instanceof Keys || (tree instanceof Scalar scalar && scalar.isBlank());
    }

    /** The line that was named, or the one before or behind it that still says something; -1 if none does. */
    private static int lineToSetAside(List<String> lines, int named) {
        for (int i = Math.min(Math.max(named, 1), lines.size()) - 1; i >= 0; i--) {
            if (says(lines.get(i))) {
                return i;
            }
        }
        for (int i = Math.max(named, 0); i < lines.size(); i++) {
            if (says(lines.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean says(String line) {
        return (!line.isBlank() && !line.startsWith("#")) || FileText.hasControl(line);
    }
}

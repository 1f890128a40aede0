package org.coldpleat.validation.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.coldpleat.validation.checks.CheckRow.Status;

/** The validation page as text, from the rows of a run. */
final class ValidationPage {
    private static final String INTRODUCTION = """
            # Validation

            What Coldpleat is checked against outside of itself: print, measured data, other libraries, closed forms and
            conservation. The page is written by the tests of the module `validation` as they run; the build fails when
            it no longer says what the run found.

            - One line per check. A set of data that is compared row by row is one line: `rows` is how many, and the
              values shown are those of the row with the largest deviation over its tolerance.
            - Source: where the expected value comes from. `derived here` means our own arithmetic by another route: it
              checks the program, not nature. `from memory` means that the print was not at hand. `common practice, no
              source` is what the trade does, without print.
            - Computed values are shown with four digits. Deviation is computed less expected, in the unit or in percent
              of the expected value, as the tolerance is; `none` is below a thousandth of the tolerance, or rounding
              where the tolerance itself is below a millionth.
            - Tolerance and why: what was allowed and its reason. `own band` is the 95 % band that the model states
              about its own value. Limits stand in the column of the expected value; `met` instead of a computed value is a
              residual of rounding below its limit.
            - Status: `holds`; `holds, tolerance set afterwards` when the tolerance was chosen with the deviation known,
              so that the line only guards against change; `known miss` when the disagreement stays and is itself
              asserted, so that a change is noticed.

            A line says that one law met one value. It does not say that a filter is good for an engine.
            """;
    private static final String HEAD = """
            | quantity | source | expected | computed | deviation | tolerance | why this tolerance | status | rows | test |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
            """;
    private static final Comparator<CheckRow> WORST_FIRST = Comparator.comparingDouble(
                    (CheckRow row) -> -Double.parseDouble(CheckNumbers.digits(row.severity(), 2)))
            .thenComparing(CheckRow::at)
            .thenComparing(CheckRow::expected)
            .thenComparing(CheckRow::computed);

    /** Part of the tolerance by which a deviation may move between machines. */
    private static final double SLACK = 0.02;

    private ValidationPage() {}

    static String of(List<CheckRow> rows) {
        Map<String, List<CheckRow>> sets =
                rows.stream().collect(Collectors.groupingBy(ValidationPage::set, TreeMap::new, Collectors.toList()));
        StringBuilder page = new StringBuilder(INTRODUCTION);
        page.append("\nLines: ").append(sets.size()).append(", comparisons: ").append(rows.size());
        page.append(".\n\n## What does not agree, and tolerances set afterwards\n\n");
        table(page, sets.values().stream().filter(ValidationPage::isFinding).toList());
        for (Topic topic : Topic.values()) {
            List<List<CheckRow>> here = sets.values().stream()
                    .filter(set -> set.get(0).topic() == topic)
                    .toList();
            if (!here.isEmpty()) {
                page.append("\n## ").append(topic.title()).append("\n\n");
                table(page, here);
            }
        }
        return page.toString();
    }

    private static boolean isFinding(List<CheckRow> set) {
        return set.get(0).status() != Status.HOLDS;
    }

    private static void table(StringBuilder page, List<List<CheckRow>> sets) {
        page.append(HEAD);
        for (List<CheckRow> set : sets) {
            CheckRow worst = set.stream().min(WORST_FIRST).orElseThrow();
            List<String> cells = new ArrayList<>();
            cells.add(worst.at().isEmpty() ? worst.quantity() : worst.quantity() + "; " + worst.at());
            cells.add(worst.source());
            cells.add(worst.expected());
            cells.add(worst.computed());
            cells.add(worst.deviation());
            cells.add(worst.tolerance());
            cells.add(worst.reason());
            cells.add(worst.status().words());
            cells.add(Integer.toString(set.size()));
            cells.add(worst.test());
            cells.replaceAll(cell -> cell.replace("|", "\\|"));
            page.append("| ").append(String.join(" | ", cells)).append(" |\n");
        }
    }

    /** Rows with the same key make one line; the key also sorts the lines. */
    private static String set(CheckRow row) {
        return String.join(
                "\n",
                Integer.toString(List.of(Topic.values()).indexOf(row.topic())),
                row.test(),
                row.quantity().toLowerCase(Locale.ROOT),
                row.source(),
                row.reason(),
                row.status().name());
    }

    /**
     * Whether two pages say the same: words alike, and numbers of the computed and deviation columns alike but for two
     * units of their last digit, and deviations but for a fiftieth of the tolerance, which rounding on another machine
     * may move.
     */
    static boolean sameLine(String one, String other) {
        String[] cells = one.split(" \\| ", -1);
        String[] others = other.split(" \\| ", -1);
        if (cells.length != others.length) {
            return false;
        }
        for (int i = 0; i < cells.length; i++) {
            boolean loose = cells.length == 10 && (i == 3 || i == 4);
            double slack = i == 4 ? SLACK * tolerance(cells[5]) : 0;
            if (!cells[i].equals(others[i]) && !(loose && sameNumber(cells[i], others[i], slack))) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameNumber(String cell, String other, double slack) {
        String[] words = cell.split(" ", -1);
        String[] others = other.split(" ", -1);
        if (words.length != others.length
                || !cell.substring(words[0].length()).equals(other.substring(others[0].length()))) {
            return false;
        }
        try {
            double value = Double.parseDouble(words[0]);
            double unit = Math.max(lastDigit(words[0]), lastDigit(others[0]));
            return Math.abs(value - Double.parseDouble(others[0])) <= Math.max(2.5 * unit, slack);
        } catch (NumberFormatException notANumber) {
            return false;
        }
    }

    /** Number behind a plus-minus sign, or 0. */
    private static double tolerance(String cell) {
        Matcher number = Pattern.compile("± ([\\d.]+(e-?\\d+)?)").matcher(cell);
        return number.find() ? Double.parseDouble(number.group(1)) : 0;
    }

    private static double lastDigit(String number) {
        String[] parts = number.split("e", -1);
        int point = parts[0].indexOf('.');
        int decimals = point < 0 ? 0 : parts[0].length() - point - 1;
        return Math.pow(10, (parts.length > 1 ? Integer.parseInt(parts[1]) : 0) - decimals);
    }
}

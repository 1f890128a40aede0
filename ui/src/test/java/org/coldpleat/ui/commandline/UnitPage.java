package org.coldpleat.ui.commandline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.coldpleat.shared.quantity.UnitSystem;

/** A printed page seen as its words and the units of its numbers. */
final class UnitPage {
    /** Units of one family alone. Microns, grams, hours, rpm and what is counted per meter are read everywhere. */
    private static final List<String> METRIC = List.of(
            "°C", "cm²", "cm2", "cm", "mm²/s", "mm2/s", "L/min", "mL", "mL/h", "L", "N/mm", "g/m²", "g/m2", "mg/cm²",
            "mm", "mm3", "cm3", "um2", "µm²", "mm/s", "cm3/rev", "bar");

    private static final List<String> COMMON_METRIC = List.of(
            "K",
            "Pa",
            "kPa",
            "MPa",
            "m",
            "m²",
            "m2",
            "m³",
            "m3",
            "m²/s",
            "m2/s",
            "m3/s",
            "m³/s",
            "Pa·s",
            "mPa·s",
            "mPa s",
            "kg",
            "kg/m²",
            "kg/m2",
            "kg/m³",
            "kg/m3",
            "kg/s",
            "N",
            "N/m",
            "mN/m",
            "W",
            "kW",
            "W/K",
            "kW/K",
            "J/K",
            "kJ/K",
            "m/s",
            "m3/rev",
            "kPa/(L/min)",
            "L/s");
    private static final List<String> US = List.of(
            "°F",
            "psi",
            "ksi",
            "in",
            "in²",
            "in2",
            "in3",
            "ft²",
            "ft2",
            "ft",
            "gpm",
            "qt",
            "fl oz",
            "fl oz/h",
            "oz",
            "lb",
            "lb/ft³",
            "lb/ft3",
            "lb/3000ft2",
            "lb/3000ft²",
            "g/ft²",
            "lbf",
            "lbf/in",
            "hp",
            "BTU/°F",
            "BTU/(h °F)",
            "psi/gpm",
            "in3/rev",
            "ft/min",
            "darcy");
    private static final List<String> OLD = List.of("cSt", "cP");
    private static final List<String> EVERYWHERE = List.of(
            "%",
            "s", "min", "h", "rpm", "rev/s", "g", "mg", "mg/h", "mg/L", "µm", "um", "1/m", "1/m3", "1/m³", "1e8/m",
            "deg", "rad", "1/mm");

    private static final String NUMBER = "-?\\d+(?:\\.\\d+)?(?:e-?\\d+)?";
    /** Not the word in a sentence. */
    private static final String INCHES = " in(?! [a-z(]|$)";

    private static final String END = "(?![\\w/²³·])";
    private static final String ANY = any(List.of(METRIC, COMMON_METRIC, US, OLD, EVERYWHERE));
    private static final Pattern AMOUNT = Pattern.compile("(?<![\\w.])(?:\\(" + NUMBER + " ± " + NUMBER
            + "\\)(?:e-?\\d+)?|" + NUMBER + "(?:(?: ± | to |\\.\\.)" + NUMBER + ")?) ?(?:" + ANY + ")" + END);
    private static final Pattern IN_HEAD = Pattern.compile("(?<=, |\\[|\\(|many )(?:" + ANY + ")" + END);
    private static final Pattern HEAD_UNIT = Pattern.compile("(?:, |\\[|^)(?:" + ANY + ")(?:]|,|$| \\()");
    private static final Pattern RULE = Pattern.compile(" {2,}-+( {2}-+)* *");
    /** What was typed keeps its unit. */
    private static final Pattern TYPED = Pattern.compile("(?m)^( *)written: .*\\n(?:\\1  .*\\n)*");

    private final String text;

    UnitPage(String text) {
        this.text = TYPED.matcher(text).replaceAll("");
    }

    private static String any(List<List<String>> families) {
        return families.stream()
                .flatMap(List::stream)
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
    }

    /** Places where a unit of another family stands; brackets behind a metric value hold the US one. */
    List<String> foreign(UnitSystem units) {
        String others = switch (units) {
            case US -> any(List.of(METRIC, COMMON_METRIC));
            case SI -> any(List.of(METRIC.subList(0, 1), US, OLD));
            case METRIC -> any(List.of(US));
        };
        String searched = units == UnitSystem.METRIC ? text.replaceAll("\\([^()]*\\)", "()") : text;
        String inches = units == UnitSystem.US ? "" : "|\\d" + INCHES;
        Pattern foreign = Pattern.compile(
                "(?m)(?:(?:\\d\\)? ?|, |\\[|\\(| {2})(?!in\\b)(?:" + others + ")" + inches + ")" + END + "(?! =).*$");
        return foreign.matcher(searched).results().map(MatchResult::group).toList();
    }

    /**
     * The words and the numbers without unit, one after the other; amounts and columns of amounts stand as #. Two families
     * may differ in nothing else: a number that they tell differently has lost its unit.
     */
    List<String> words() {
        List<String> words = new ArrayList<>();
        List<String> lines = new ArrayList<>(text.lines().toList());
        StringBuilder flowing = new StringBuilder();
        int i = 0;
        while (i < lines.size()) {
            int rule = i;
            while (rule < lines.size() && lines.get(rule).startsWith("  ") && !isRule(lines.get(rule))) {
                rule++;
            }
            if (rule < lines.size() && isRule(lines.get(rule))) {
                boolean titled = i > 0 && IN_HEAD.matcher(lines.get(i - 1)).find();
                add(flowing, words);
                i = table(lines, i, rule, titled, words);
            } else {
                flowing.append(lines.get(i)).append(' ');
                i++;
            }
        }
        add(flowing, words);
        return words;
    }

    private static boolean isRule(String line) {
        return RULE.matcher(line).matches();
    }

    private static void add(StringBuilder flowing, List<String> words) {
        split(amounts(flowing.toString().replaceAll("\\s+", " ")), words);
        flowing.setLength(0);
    }

    private static String amounts(String text) {
        return IN_HEAD.matcher(AMOUNT.matcher(text).replaceAll("#")).replaceAll("unit");
    }

    private static void split(String text, List<String> words) {
        Arrays.stream(text.split("\\s+", -1)).filter(word -> !word.isEmpty()).forEach(words::add);
    }

    /** Takes a table column by column, whose unit may stand in its title; gives the index of the first line below it. */
    private static int table(List<String> lines, int from, int rule, boolean titled, List<String> words) {
        List<int[]> columns = new ArrayList<>();
        Matcher dashes = Pattern.compile("-+").matcher(lines.get(rule));
        while (dashes.find()) {
            columns.add(new int[] {dashes.start(), dashes.end()});
        }
        int end = rule + 1;
        while (end < lines.size() && isRow(lines.get(end), columns)) {
            end++;
        }
        for (int[] column : columns) {
            String head = joined(lines.subList(from, rule), column);
            String cells = joined(lines.subList(rule + 1, end), column);
            boolean measured =
                    titled || HEAD_UNIT.matcher(head).find() || head.matches("(.* )?(" + ANY + ")( \\(.*\\))?");
            split(
                    measured ? cells.replaceAll(NUMBER, "#").replaceAll(" ?\\([^()]*#[^()]*\\)", "") : amounts(cells),
                    words);
        }
        return end;
    }

    private static boolean isRow(String line, List<int[]> columns) {
        if (!line.startsWith("  ") || line.isBlank()) {
            return false;
        }
        for (int c = 0; c < columns.size(); c++) {
            int gap = c == 0 ? 0 : columns.get(c - 1)[1];
            if (!cut(line, gap, columns.get(c)[0]).isBlank()) {
                return false;
            }
        }
        return line.length() <= columns.get(columns.size() - 1)[1];
    }

    private static String joined(List<String> lines, int[] column) {
        return lines.stream()
                .map(line -> cut(line, column[0], column[1]).strip())
                .filter(cell -> !cell.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String cut(String line, int from, int to) {
        return line.substring(Math.min(from, line.length()), Math.min(to, line.length()));
    }
}

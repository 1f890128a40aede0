package org.coldpleat.shared.casefile.catalog;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.quantity.NearestWord;
import org.coldpleat.shared.quantity.Units;

/**
 * Names of the columns of a table of bench sheets: the words of the catalog from the section down to the field, with the
 * number of a list entry behind its word and the unit in brackets, such as {@code Medium, Unrolled strip, Allowance 2, By
 * [mm]}.
 */
public final class SheetColumns {
    private static final Pattern UNIT = Pattern.compile("(.*?)\\s*\\[([^\\]]*)]\\s*");
    private static final Pattern NUMBER = Pattern.compile(" (\\d{1,5})(?=,|$)");

    /** Parts of a quantity that can stand in columns of their own. */
    private static final List<String> PARTS = List.of("plusMinus", "provenance", "note");

    /** One column. {@code path} is below the candidate, such as {@code medium.strip.allowances[1].by}. */
    public record Column(String path, Field field, boolean part, String unit) {}

    /** What is known of a column without the numbers of its entries. */
    private record Shape(String path, Field field, boolean part, String words) {}

    private static final Map<String, Shape> BY_WORDS = new LinkedHashMap<>();
    private static final Map<String, Shape> BY_PATH = new LinkedHashMap<>();

    static {
        shapes("", "", FieldCatalog.candidate());
    }

    private SheetColumns() {}

    private static void shapes(String path, String words, Field section) {
        for (Field field : section.fields()) {
            String below = path.isEmpty() ? field.key() : path + "." + field.key();
            String said = words.isEmpty() ? field.label() : words + ", " + field.label();
            switch (field.type()) {
                case SECTION -> shapes(below, said, field);
                case LIST -> shapes(below + "[]", said + " #", field);
                default -> {
                    add(new Shape(below, field, false, said));
                    if (field.type() == Field.Type.QUANTITY) {
                        for (String part : PARTS) {
                            String partWords = said + ", " + FieldCatalog.part(part);
                            add(new Shape(below + "." + part, field, true, partWords));
                        }
                    }
                }
            }
        }
    }

    private static void add(Shape shape) {
        if (BY_WORDS.put(key(shape.words()), shape) != null) {
            throw new IllegalStateException("two columns are called " + shape.words());
        }
        BY_PATH.put(shape.path(), shape);
    }

    private static String key(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replaceAll("\\s+", " ")
                .replaceAll(" ?, ?", ", ")
                .strip();
    }

    /** Paths of the columns a template has: one of every field, and a few of every list that is not a log of readings. */
    public static List<String> template() {
        List<String> paths = new ArrayList<>();
        BY_PATH.forEach((path, shape) -> {
            if (!shape.part() && !path.startsWith("tests.")) {
                int entries = path.contains("[]") ? 2 : 1;
                for (int i = 0; i < entries; i++) {
                    paths.add(path.replace("[]", "[" + i + "]"));
                }
            }
        });
        return sorted(paths);
    }

    /** The same columns in the order of the bench, entries of a list one behind the other. */
    public static List<String> sorted(List<String> paths) {
        List<String> order = new ArrayList<>(BY_PATH.keySet());
        Map<String, Integer> lists = new LinkedHashMap<>();
        for (int i = 0; i < order.size(); i++) {
            int open = order.get(i).indexOf("[]");
            lists.putIfAbsent(open < 0 ? order.get(i) : order.get(i).substring(0, open), i);
        }
        List<String> out = new ArrayList<>(paths);
        out.sort((a, b) -> {
            int listA = list(lists, a);
            int listB = list(lists, b);
            if (listA != listB) {
                return Integer.compare(listA, listB);
            }
            int entry = Integer.compare(entry(a), entry(b));
            return entry != 0 ? entry : Integer.compare(order.indexOf(shape(a)), order.indexOf(shape(b)));
        });
        return out;
    }

    private static int list(Map<String, Integer> lists, String path) {
        int open = path.indexOf('[');
        return lists.getOrDefault(open < 0 ? path : path.substring(0, open), Integer.MAX_VALUE);
    }

    private static int entry(String path) {
        int open = path.indexOf('[');
        return open < 0 ? 0 : Integer.parseInt(path.substring(open + 1, path.indexOf(']')));
    }

    private static String shape(String path) {
        return path.replaceAll("\\[\\d+]", "[]");
    }

    /** The column of a path below the candidate; empty if the catalog has no such field. */
    public static Optional<Column> ofPath(String path) {
        return Optional.ofNullable(BY_PATH.get(shape(path))).map(shape -> column(shape, path, unit(shape)));
    }

    private static Column column(Shape shape, String path, String unit) {
        return new Column(path, shape.field(), shape.part(), unit);
    }

    private static String unit(Shape shape) {
        return shape.part() ? "" : shape.field().unit();
    }

    /** What a column is called. */
    public static String name(Column column) {
        String words = BY_PATH.get(shape(column.path())).words();
        Matcher entry = Pattern.compile("\\[(\\d+)]").matcher(column.path());
        while (entry.find()) {
            words = words.replaceFirst(" #", " " + (Integer.parseInt(entry.group(1)) + 1));
        }
        return column.unit().isEmpty() ? words : words + " [" + column.unit() + "]";
    }

    /** The column a name stands for; a path such as {@code pleats.count} is a name too. Empty if there is none. */
    public static Optional<Column> ofName(String name) {
        String words = name.strip();
        Optional<Column> byPath = ofPath(words);
        if (byPath.isPresent()) {
            return byPath;
        }
        Matcher bracket = UNIT.matcher(words);
        String unit = bracket.matches() ? bracket.group(2).strip() : "";
        words = bracket.matches() ? bracket.group(1) : words;
        Matcher number = NUMBER.matcher(key(words));
        List<Integer> entries = new ArrayList<>();
        String plain = number.replaceAll(found -> {
            entries.add(Integer.parseInt(found.group(1)) - 1);
            return " #";
        });
        Shape shape = BY_WORDS.get(plain);
        if (shape == null || entries.contains(-1)) {
            return Optional.empty();
        }
        String path = shape.path();
        for (int entry : entries) {
            path = path.replaceFirst("\\[]", "[" + entry + "]");
        }
        boolean understood = unit.isEmpty()
                || shape.field().kind().flatMap(kind -> Units.find(kind, unit)).isPresent();
        return understood ? Optional.of(column(shape, path, unit)) : Optional.empty();
    }

    /** The known name that is most like a word; empty if none is. */
    public static Optional<String> nearest(String name) {
        String words = key(name.replaceAll("\\s*\\[.*", "")).replaceAll(" \\d+(?=,|$)", " #");
        return NearestWord.to(words, List.copyOf(BY_WORDS.keySet()))
                .map(BY_WORDS::get)
                .map(shape -> name(column(shape, shape.path().replace("[]", "[0]"), unit(shape))));
    }
}

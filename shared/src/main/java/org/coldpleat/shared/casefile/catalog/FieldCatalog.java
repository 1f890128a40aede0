package org.coldpleat.shared.casefile.catalog;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.casefile.SchemaNode;
import org.coldpleat.shared.notice.Wording;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Units;

/** The fields of a case file with their words, in the order the work is done at the bench. */
public final class FieldCatalog {
    private static final Wording WORDS = Wording.beside(FieldCatalog.class, "fields");
    private static final Pattern UNIT = Pattern.compile("[-+0-9.e]+\\s+(.+)");

    /** Sections whose fields come in another order at the bench than in the file; what is not named comes behind. */
    private static final Map<String, List<String>> BENCH_ORDER = Map.of(
            "candidates",
            List.of(
                    "name",
                    "outside",
                    "gasket",
                    "antiDrainFlap",
                    "bypass",
                    "basePlate",
                    "centerTube",
                    "element",
                    "pleats",
                    "medium",
                    "tests",
                    "partCurves",
                    "photographs",
                    "construction"),
            "candidates.outside",
            List.of("diameter", "length", "mass", "wallThickness"));

    private static final Set<String> LAST = Set.of("notes", "note");

    /** Units of the trade where the limits are written in others. */
    private static final Map<Kind, String> TRADE = Map.of(Kind.SPRING_RATE, "N/mm", Kind.FACE_VELOCITY, "L/m2/s");

    /** The usual unit of each kind: that of the first limit in the catalog. */
    private static final Map<Kind, String> UNITS = new EnumMap<>(Kind.class);

    private static final Field ROOT;

    static {
        units(CaseSchema.ROOT);
        ROOT = field("", "", CaseSchema.ROOT, false);
    }

    private FieldCatalog() {}

    /** The whole case. */
    public static Field root() {
        return ROOT;
    }

    /** The bench sheet of a filter. */
    public static Field candidate() {
        return ROOT.field("candidates");
    }

    /** Words of a choice as people say it; the word of the file if there are none. */
    public static String choice(String word) {
        return WORDS.has("choice." + word) ? WORDS.pattern("choice." + word) : word;
    }

    /** What a part of a spelled-out quantity is called: {@code plusMinus}, {@code provenance} or {@code note}. */
    public static String part(String key) {
        return WORDS.pattern(key);
    }

    /** Words for where a value comes from, as they stand in the file. */
    public static List<String> provenances() {
        return SchemaNode.PROVENANCES;
    }

    /**
     * The words of a field, by the longest end of its path that has some; empty if none has.
     *
     * @param path keys joined by points, without the numbers of list entries
     */
    public static Optional<String> label(String path) {
        String end = path;
        while (!end.isEmpty()) {
            if (WORDS.has(end)) {
                return Optional.of(WORDS.pattern(end));
            }
            end = end.contains(".") ? end.substring(end.indexOf('.') + 1) : "";
        }
        return Optional.empty();
    }

    static Set<String> wordKeys() {
        return WORDS.codes();
    }

    private static Field field(String path, String key, SchemaNode node, boolean required) {
        SchemaNode inside = node.items().orElse(node);
        List<Field> fields = new ArrayList<>();
        for (String below : order(path, inside)) {
            fields.add(field(
                    path.isEmpty() ? below : path + "." + below,
                    below,
                    inside.properties().get(below),
                    inside.required().contains(below)));
        }
        return new Field(
                key,
                type(node),
                label(path).orElse(key),
                node.description(),
                node.kind(),
                unit(node),
                node.type() == SchemaNode.Type.FLAG ? List.of("true", "false") : node.choices(),
                node.typicalOffered(),
                required,
                fields);
    }

    private static Field.Type type(SchemaNode node) {
        return switch (node.type()) {
            case SECTION -> Field.Type.SECTION;
            case LIST -> Field.Type.LIST;
            case QUANTITY -> Field.Type.QUANTITY;
            case TEXT, INTEGER -> Field.Type.TEXT;
            case CHOICE, FLAG -> Field.Type.CHOICE;
        };
    }

    private static List<String> order(String path, SchemaNode node) {
        Set<String> order = new LinkedHashSet<>(BENCH_ORDER.getOrDefault(path, List.of()));
        order.retainAll(node.properties().keySet());
        order.addAll(node.properties().keySet());
        return order.stream().sorted(Comparator.comparing(LAST::contains)).toList();
    }

    private static void units(SchemaNode node) {
        node.kind().ifPresent(kind -> limitUnit(node).ifPresent(unit -> UNITS.putIfAbsent(kind, unit)));
        node.properties().values().forEach(FieldCatalog::units);
        node.items().ifPresent(FieldCatalog::units);
    }

    /** The unit of the limits of a field, which are written the way the trade does; else the usual one of its kind. */
    private static String unit(SchemaNode node) {
        if (node.kind().isEmpty()) {
            return "";
        }
        Kind kind = node.kind().get();
        if (TRADE.containsKey(kind)) {
            return TRADE.get(kind);
        }
        String usual = Units.mayStandBare(kind)
                ? ""
                : UNITS.getOrDefault(kind, Units.symbols(kind).get(0));
        // a limit in meters bounds a length that is read in millimeters
        return limitUnit(node).filter(unit -> !unit.equals(kind.siUnit())).orElse(usual);
    }

    private static Optional<String> limitUnit(SchemaNode node) {
        for (Optional<SchemaNode.Limit> limit : List.of(node.lower(), node.upper())) {
            Matcher unit = UNIT.matcher(limit.map(SchemaNode.Limit::written).orElse(""));
            if (unit.matches()) {
                return Optional.of(unit.group(1));
            }
        }
        return Optional.empty();
    }
}

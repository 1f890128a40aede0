package org.coldpleat.shared.casefile;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.quantity.Measured;

/**
 * One group of keys of a case file. Asking for a key that the catalog does not list here, or for a key as something it
 * is not, is wrong use and throws; a key that was left out or left blank gives an empty answer.
 */
public final class Section {
    private final Place place;
    private final Keys written;
    private final SchemaNode schema;
    private final Map<String, Entry> entries;

    /** What is asked for again with every build of a model, under literals' own strings. */
    private final Map<String, Given> given = new HashMap<>();

    /** A key that was given: its full path, what the catalog says of it, what was written. */
    private record Given(String path, SchemaNode node, Entry entry) {}

    public Section(Place place, Keys written, SchemaNode schema, Map<String, Entry> entries) {
        this.place = place;
        this.written = written;
        this.schema = schema;
        this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        entries.forEach((key, entry) -> given.put(
                key.intern(),
                new Given(place.key(key).path(), schema.properties().get(key), entry)));
    }

    /** Full path, such as {@code candidates[0].medium}; empty for the top of the file. */
    public String path() {
        return place.path();
    }

    /** The path for a reader, with the names of list entries, such as {@code candidates[0] "Gray can" medium}. */
    public String words() {
        return place.words();
    }

    /** Line where the section begins, from 1. */
    public int line() {
        return written.line();
    }

    /** The keys given, in the order of the file; blank ones are left out. */
    public Set<String> keys() {
        return entries.keySet();
    }

    /** True if the key was given and not left blank. */
    public boolean has(String key) {
        node(key);
        return entries.containsKey(key);
    }

    /** Full path of a key of this section. */
    public String pathOf(String key) {
        Given known = given.get(key);
        if (known != null && known.node() != null) {
            return known.path();
        }
        node(key);
        return place.key(key).path();
    }

    /** Line where the value of a key stands, from 1; the line of the section if the key was not given. */
    public int lineOf(String key) {
        node(key);
        return entries.containsKey(key) ? entries.get(key).line() : line();
    }

    /** The quantity of a key; empty if not given or if the typical value was asked for by name. */
    public Optional<Measured> quantity(String key) {
        return find(key, SchemaNode.Type.QUANTITY).flatMap(Entry::quantity);
    }

    /** True if the bare word {@code typical} stands in place of a quantity. */
    public boolean typicalAsked(String key) {
        return find(key, SchemaNode.Type.QUANTITY).map(Entry::typicalAsked).orElse(false);
    }

    /** The remark that stands with a quantity. */
    public Optional<String> note(String key) {
        return find(key, SchemaNode.Type.QUANTITY).flatMap(Entry::note);
    }

    /** Free words. */
    public Optional<String> text(String key) {
        return find(key, SchemaNode.Type.TEXT).flatMap(Entry::text);
    }

    /** One of the words the catalog lists for the key. */
    public Optional<String> choice(String key) {
        return find(key, SchemaNode.Type.CHOICE).flatMap(Entry::text);
    }

    /** Yes or no. */
    public Optional<Boolean> flag(String key) {
        return find(key, SchemaNode.Type.FLAG).flatMap(Entry::flag);
    }

    /** The section below a key. */
    public Optional<Section> section(String key) {
        return find(key, SchemaNode.Type.SECTION).flatMap(Entry::section);
    }

    /** The sections of a list; none if the list was not given. */
    public List<Section> sections(String key) {
        return find(key, SchemaNode.Type.LIST).map(Entry::sections).orElse(List.of());
    }

    /** All quantities given directly in this section, in the order of the file. */
    public Map<String, Measured> quantities() {
        Map<String, Measured> found = new LinkedHashMap<>();
        entries.forEach((key, entry) -> entry.quantity().ifPresent(value -> found.put(key, value)));
        return Collections.unmodifiableMap(found);
    }

    /** All sections and entries of lists directly below this one, in the order of the file. */
    public List<Section> below() {
        return entries.values().stream()
                .flatMap(entry -> Stream.concat(entry.section().stream(), entry.sections().stream()))
                .toList();
    }

    /**
     * True if another section of the same place says the same, wherever in its file it stands: the same keys with the
     * same values, words and remarks, down to the last one below.
     */
    public boolean saysSame(Section other) {
        return this == other
                || (place.equals(other.place)
                        && entries.keySet().equals(other.entries.keySet())
                        && entries.keySet().stream()
                                .allMatch(key -> entries.get(key).saysSame(other.entries.get(key))));
    }

    /** True if two sections say the same, or neither is there. */
    public static boolean saysSame(Optional<Section> one, Optional<Section> other) {
        return one.isPresent() ? other.isPresent() && one.get().saysSame(other.get()) : other.isEmpty();
    }

    /** True if what stands in a file for a section of this place reads as this one does, at the same lines. */
    public boolean isOf(Keys tree, Place at) {
        return place.equals(at) && written.readsAs(tree);
    }

    public Entry entry(String key) {
        return entries.get(key);
    }

    public Place place() {
        return place;
    }

    public int column() {
        return written.column();
    }

    /** What the catalog says of a key. */
    public String description(String key) {
        return node(key).description();
    }

    /** The same section with other entries. */
    Section with(Map<String, Entry> others) {
        others.keySet().forEach(this::node);
        return new Section(place, written, schema, others);
    }

    /** A section without entries below this one, of what the catalog has at a key: a section or an item of a list. */
    Section blank(Place at, String key) {
        SchemaNode below = node(key);
        return new Section(at, written, below.items().orElse(below), Map.of());
    }

    /** What stands in the file for this section. */
    Tree tree() {
        return written;
    }

    private Optional<Entry> find(String key, SchemaNode.Type type) {
        Given known = given.get(key);
        SchemaNode node = known == null || known.node() == null ? node(key) : known.node();
        if (node.type() != type) {
            throw new IllegalArgumentException(place.key(key).path() + " is a " + node.type() + ", asked for " + type);
        }
        return known == null ? Optional.empty() : Optional.of(known.entry());
    }

    private SchemaNode node(String key) {
        SchemaNode node = schema.properties().get(key);
        if (node == null) {
            throw new IllegalArgumentException("the catalog has no " + key + " in " + path() + "; it has "
                    + schema.properties().keySet());
        }
        return node;
    }

    @Override
    public String toString() {
        return "Section[" + path() + " " + entries.keySet() + "]";
    }
}

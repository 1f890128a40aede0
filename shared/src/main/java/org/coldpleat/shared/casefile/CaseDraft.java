package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.coldpleat.shared.casefile.Tree.Items;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Scalar;

/**
 * A case file that is being written. The text is the truth: every change is made in the text at the place of its field,
 * so that remarks, order and all other text stay as they are, and what was typed stays as it was typed, understood or
 * not. A draft never changes; every change gives a new one, so that steps back are earlier drafts.
 */
public final class CaseDraft {
    private static final String HEAD = "formatVersion: 1\n";
    private static final String MARK = "\ufeff";

    private final String mark;
    private final String body;
    private final Optional<Tree> root;
    private final Map<String, String> values;

    /**
     * A draft over a text that may have been broken by hand.
     *
     * @param draft the working copy, in which the lines that are no YAML are remarks
     * @param setAside what was wrong with those lines; none if all of the text could be read
     */
    public record Opened(CaseDraft draft, List<CaseProblem> setAside) {
        public Opened {
            Objects.requireNonNull(draft, "draft");
            setAside = List.copyOf(setAside);
        }
    }

    private CaseDraft(String mark, String body, Optional<Tree> root) {
        this.mark = mark;
        this.body = body;
        this.root = root;
        this.values = root.map(DraftValues::of).orElse(Map.of());
    }

    /** A case of which nothing is known yet. */
    public static CaseDraft blank() {
        return parsed("", HEAD).orElseThrow();
    }

    /**
     * Opens a text.
     *
     * @param fileName name to use in messages
     * @param text the content of a case file
     */
    public static Opened open(String fileName, String text) {
        String mark = text.startsWith(MARK) ? MARK : "";
        BrokenLines mended = BrokenLines.setAside(fileName, text.substring(mark.length()));
        return new Opened(parsed(mark, mended.text()).orElseThrow(), mended.problems());
    }

    private static Optional<CaseDraft> parsed(String mark, String body) {
        FileProblems problems = new FileProblems("");
        FileText.check(body, problems);
        Optional<Tree> tree = problems.isEmpty() ? TreeBuilder.build(body, problems) : Optional.empty();
        boolean readable =
                problems.isEmpty() && (tree.isEmpty() || tree.get() instanceof Keys || tree.get() instanceof Scalar);
        return readable ? Optional.of(new CaseDraft(mark, body, tree)) : Optional.empty();
    }

    /** The text as it would be saved. */
    public String text() {
        return mark + body;
    }

    /** The text without the mark some editors put in front. */
    String body() {
        return body;
    }

    /** What stands in the text; empty if nothing does. */
    Optional<Tree> root() {
        return root;
    }

    /** Everything that stands in the text as it was typed, by its full path; what is blank is left out. */
    public Map<String, String> values() {
        return values;
    }

    /** What was typed for a field; of a quantity that is spelled out, its value. Empty if it is unknown. */
    public Optional<String> value(String path) {
        return Optional.ofNullable(values.get(leaf(CasePath.of(path)).toString()));
    }

    /** Number of entries of a list; 0 if it is not there. */
    public int count(String list) {
        return items(CasePath.of(list)).map(found -> found.items().size()).orElse(0);
    }

    /** Names of the entries of a list, in its order; a blank text for one without a name. */
    public List<String> names(String list) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < count(list); i++) {
            names.add(value(list + "[" + i + "].name").orElse(""));
        }
        return names;
    }

    /**
     * Writes what was typed into a field. The sections around it are made where they are missing, and so is the entry of
     * a list if it is the one behind the last.
     *
     * @param path full path of a field of the catalog, or of a part of a quantity, such as
     *     {@code candidates[0].medium.thickness.note}
     * @param typed any text; blank leaves the field there, but empty, which means unknown
     * @throws IllegalArgumentException if the catalog has no such field
     */
    public CaseDraft set(String path, String typed) {
        CasePath field = CasePath.of(path);
        SchemaNode node = field.schema(CaseSchema.ROOT)
                .filter(found -> found.type() != SchemaNode.Type.SECTION && found.type() != SchemaNode.Type.LIST)
                .orElseThrow(() -> new IllegalArgumentException("path must name a field of the catalog, was " + path));
        String value = ScalarText.tidy(typed);
        if (node.type() == SchemaNode.Type.QUANTITY && field.isPartOfQuantity(CaseSchema.ROOT)) {
            return spelledOut(field).put(field, value);
        }
        return put(leaf(field), value);
    }

    /** Takes a field out of the text, and the section around it if nothing else is in there. A remark beside it stays. */
    public CaseDraft clear(String path) {
        CasePath field = CasePath.of(path);
        if (DraftRemover.find(root, field).isEmpty()) {
            return this;
        }
        if (field.steps().get(field.steps().size() - 1).isEntry()) {
            int last = field.steps().size() - 1;
            return remove(field.head(last).toString(), field.steps().get(last).entry());
        }
        return after(new DraftRemover(body).without(root, field), path);
    }

    /** Adds an empty entry at the end of a list. */
    public CaseDraft add(String list) {
        CasePath path = listPath(list);
        return after(new DraftWriter(body, path.entry(count(list)), "{}").written(root), list);
    }

    /** Adds a candidate of which only the name is known. */
    public CaseDraft addCandidate(String name) {
        return set("candidates[" + count("candidates") + "].name", name);
    }

    /**
     * Puts the first candidate of another draft behind those there are, in one step and as it is written there.
     *
     * @return the draft with it; empty if its text does not read the same here
     */
    Optional<CaseDraft> withCandidateOf(CaseDraft other) {
        CasePath list = CasePath.of("candidates");
        Optional<Items> there = items(list);
        if (there.isPresent() && !there.get().raw().isEmpty()) {
            return Optional.empty();
        }
        DraftLines lines = new DraftLines(body);
        int column = there.map(items -> lines.column(lines.dash(items, 0))).orElse(2) + 2;
        Tree entry = other.entries("candidates", 0).items().get(0);
        int before = new DraftLines(other.body).column(entry.start());
        String raw = other.body
                .substring(entry.start(), entry.end())
                .replace("\n" + DraftLines.blanks(before), lines.lineBreak() + DraftLines.blanks(column));
        CasePath place = list.entry(count("candidates"));
        Map<String, String> wanted = new HashMap<>(values);
        other.values.forEach((path, typed) -> {
            if (path.startsWith("candidates[0]")) {
                wanted.put(place + path.substring("candidates[0]".length()), typed);
            }
        });
        return parsed(mark, new DraftWriter(body, place, raw).written(root))
                .filter(tried -> tried.values.equals(wanted));
    }

    /** Takes an entry out of a list; the list itself if it was the last one. */
    public CaseDraft remove(String list, int entry) {
        Items items = entries(list, entry);
        return items.items().size() == 1 ? clear(list) : after(new DraftRemover(body).withoutEntry(items, entry), list);
    }

    /**
     * Puts a copy of an entry behind the last one of its list, as it is written.
     *
     * @param name name of the copy
     */
    public CaseDraft copy(String list, int entry, String name) {
        Items items = entries(list, entry);
        CaseDraft copied = after(new DraftRemover(body).withCopy(items, entry), list);
        return copied.set(list + "[" + items.items().size() + "].name", name);
    }

    /** Moves an entry of a list to another place in it; remarks between the entries stay where they are. */
    public CaseDraft move(String list, int from, int to) {
        Items items = entries(list, from);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < items.items().size(); i++) {
            order.add(i);
        }
        Objects.checkIndex(to, order.size());
        order.add(to, order.remove(from));
        return from == to ? this : after(new DraftRemover(body).reordered(items, order), list);
    }

    private CasePath listPath(String list) {
        CasePath path = CasePath.of(list);
        boolean known = path.schema(CaseSchema.ROOT)
                .map(node -> node.type() == SchemaNode.Type.LIST)
                .orElse(false);
        if (!known) {
            throw new IllegalArgumentException("path must name a list of the catalog, was " + list);
        }
        return path;
    }

    private Items entries(String list, int entry) {
        Items items = items(listPath(list)).orElseThrow(() -> new IllegalArgumentException("no list at " + list));
        Objects.checkIndex(entry, items.items().size());
        return items;
    }

    private Optional<Items> items(CasePath list) {
        return DraftRemover.find(root, list).filter(Items.class::isInstance).map(Items.class::cast);
    }

    /** The path under which the value of a field stands: that of its value if the quantity is spelled out. */
    private CasePath leaf(CasePath field) {
        boolean quantity = field.schema(CaseSchema.ROOT)
                        .map(node -> node.type() == SchemaNode.Type.QUANTITY)
                        .orElse(false)
                && !field.isPartOfQuantity(CaseSchema.ROOT);
        boolean spelledOut =
                DraftRemover.find(root, field).filter(Keys.class::isInstance).isPresent();
        return quantity && spelledOut ? field.key("value") : field;
    }

    /** Turns a bare quantity into one that is spelled out, so that a part can stand beside its value. */
    private CaseDraft spelledOut(CasePath part) {
        CasePath quantity = part.head(part.steps().size() - 1);
        Optional<Tree> there = DraftRemover.find(root, quantity);
        if (there.isEmpty() || there.get() instanceof Keys) {
            return this;
        }
        String value = Optional.ofNullable(values.get(quantity.toString())).orElse("");
        Map<String, String> wanted = new HashMap<>(values);
        wanted.remove(quantity.toString());
        if (!value.isEmpty()) {
            wanted.put(quantity.key("value").toString(), value);
        }
        for (String raw : ScalarText.ways(value)) {
            String braces = "{value:" + (raw.isEmpty() ? "" : " " + raw) + "}";
            Optional<CaseDraft> tried = parsed(mark, new DraftWriter(body, quantity, braces).written(root));
            if (tried.isPresent() && tried.get().reads(quantity.key("value"), value, wanted)) {
                return tried.get();
            }
        }
        throw new IllegalStateException("could not spell out " + quantity);
    }

    private CaseDraft put(CasePath leaf, String value) {
        String path = leaf.toString();
        boolean there = DraftRemover.find(root, leaf).isPresent();
        if (Optional.ofNullable(values.get(path)).orElse("").equals(value) && (there || value.isEmpty())) {
            return this;
        }
        Map<String, String> wanted = new HashMap<>(values);
        wanted.keySet().removeIf(key -> key.startsWith(path + ".") || key.startsWith(path + "["));
        for (int i = 1; i < leaf.steps().size(); i++) {
            wanted.remove(leaf.head(i).toString());
        }
        wanted.put(path, value);
        wanted.values().removeIf(String::isEmpty);
        for (String raw : ScalarText.ways(value)) {
            Optional<CaseDraft> tried = parsed(mark, new DraftWriter(body, leaf, raw).written(root));
            if (tried.isPresent() && tried.get().reads(leaf, value, wanted)) {
                return tried.get();
            }
        }
        throw new IllegalStateException("could not write " + path);
    }

    /** True if a value stands there in one piece, and all else is as wanted. */
    private boolean reads(CasePath leaf, String value, Map<String, String> wanted) {
        String whole = DraftRemover.find(root, leaf).map(DraftValues::typed).orElse("");
        return whole.equals(value) && values.equals(wanted);
    }

    private CaseDraft after(String text, String where) {
        return parsed(mark, text).orElseThrow(() -> new IllegalStateException("could not change " + where));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CaseDraft draft && draft.text().equals(text());
    }

    @Override
    public int hashCode() {
        return text().hashCode();
    }

    @Override
    public String toString() {
        return text();
    }
}

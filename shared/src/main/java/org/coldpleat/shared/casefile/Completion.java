package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.coldpleat.shared.quantity.Measured;

/**
 * Fills in what a section of a case file leaves out. What the file states always stays; what is filled in stands at the line
 * of the section. Work object of one thread.
 */
public final class Completion {
    private final Section section;
    private final Map<String, Entry> entries = new LinkedHashMap<>();

    /** Completes a section of a file. */
    public Completion(Section section) {
        this.section = section;
        section.keys().forEach(key -> entries.put(key, section.entry(key)));
    }

    /** Whether the file or an earlier filling has a key; one whose typical value is asked for by name counts as left out. */
    public boolean has(String key) {
        return entries.containsKey(key) && !entries.get(key).typicalAsked();
    }

    /** Full path of a key of this section. */
    public String pathOf(String key) {
        return section.pathOf(key);
    }

    /** The quantity of a key, from the file or filled in. */
    public Optional<Measured> quantity(String key) {
        return Optional.ofNullable(entries.get(key)).flatMap(Entry::quantity);
    }

    /** Fills in a quantity. */
    public Completion quantity(String key, Measured value) {
        return put(key, blank().withQuantity(Optional.of(value), false, Optional.empty()));
    }

    /** Fills in a word or a text. */
    public Completion text(String key, String value) {
        return put(key, blank().withText(value));
    }

    /** Fills in a yes or no. */
    public Completion flag(String key, boolean value) {
        return put(key, blank().withFlag(value));
    }

    /** Whether a yes or no was given and is yes. */
    public boolean isTrue(String key) {
        return Optional.ofNullable(entries.get(key)).flatMap(Entry::flag).orElse(false);
    }

    /** Puts a quantity that says what the one of the file means in its place. */
    public Completion replace(String key, Measured value) {
        entries.put(key, blank().withQuantity(Optional.of(value), false, Optional.empty()));
        return this;
    }

    /** Completes the section below a key, made if the file has none. */
    public Completion section(String key, Consumer<Completion> filler) {
        Section below = Optional.ofNullable(entries.get(key))
                .flatMap(Entry::section)
                .orElseGet(() -> section.blank(section.place().key(key), key));
        Completion completion = new Completion(below);
        filler.accept(completion);
        entries.put(key, blank().withSection(completion.done()));
        return this;
    }

    /** Fills in a list of sections if the file has none. */
    public Completion list(String key, List<Consumer<Completion>> fillers) {
        if (has(key)) {
            return this;
        }
        List<Section> made = new ArrayList<>();
        for (int i = 0; i < fillers.size(); i++) {
            Completion completion =
                    new Completion(section.blank(section.place().key(key).item(i, ""), key));
            fillers.get(i).accept(completion);
            made.add(completion.done());
        }
        return put(key, blank().withSections(made));
    }

    /** Completes each section of a list the file has. */
    public Completion each(String key, Consumer<Completion> filler) {
        if (entries.containsKey(key)) {
            List<Section> made = entries.get(key).sections().stream()
                    .map(one -> {
                        Completion completion = new Completion(one);
                        filler.accept(completion);
                        return completion.done();
                    })
                    .toList();
            entries.put(key, entries.get(key).withSections(made));
        }
        return this;
    }

    private Completion put(String key, Entry entry) {
        if (!has(key)) {
            entries.put(key, entry);
        }
        return this;
    }

    private Entry blank() {
        return Entry.empty(section.tree());
    }

    /** The section with all that was filled in. */
    public Section done() {
        return section.with(entries);
    }
}

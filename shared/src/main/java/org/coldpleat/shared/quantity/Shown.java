package org.coldpleat.shared.quantity;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** What stands in a place of a sentence: a word, an amount, or several of them. Units are chosen when it is read. */
public sealed interface Shown permits Amount, Shown.Word, Shown.Several, Shown.Range {
    /** As text in the units of a system. */
    String text(UnitSystem system);

    /** As text in metric trade units with those of the US behind, as machine-readable output keeps it. */
    default String text() {
        return text(UnitSystem.METRIC);
    }

    /** A name, or anything else without a unit that is the same in all systems. */
    static Shown word(String text) {
        return new Word(text);
    }

    /** Names. */
    static List<Shown> words(List<String> texts) {
        return texts.stream().map(Shown::word).toList();
    }

    /** A whole number of things. */
    static Shown count(long number) {
        return new Word(Long.toString(number));
    }

    /** Several with a text between each two. */
    static Shown several(String between, List<? extends Shown> parts) {
        return new Several(between, List.copyOf(parts));
    }

    /** Row numbers as a person counts them, from 1. */
    static Shown rows(List<Integer> rows) {
        return new Word(rows.stream().map(row -> Integer.toString(row + 1)).collect(Collectors.joining(", ")));
    }

    /** Texts of several values. */
    static List<String> texts(List<? extends Shown> values, UnitSystem system) {
        return values.stream().map(value -> value.text(system)).toList();
    }

    /** From one amount to another of the same look, the unit named once. */
    record Range(Amount low, Amount high) implements Shown {
        public Range {
            if (low.look() != high.look()) {
                throw new IllegalArgumentException(
                        "ends of a range must look alike, were " + low.look() + " and " + high.look());
            }
        }

        @Override
        public String text(UnitSystem system) {
            String end = high.text(system);
            return low.text(system).replaceFirst(" .*", "") + " to " + end;
        }
    }

    /** A word. */
    record Word(String text) implements Shown {
        public Word {
            Objects.requireNonNull(text, "text");
        }

        @Override
        public String text(UnitSystem system) {
            return text;
        }
    }

    /** Parts with a text between each two. */
    record Several(String between, List<Shown> parts) implements Shown {
        public Several {
            Objects.requireNonNull(between, "between");
            parts = List.copyOf(parts);
        }

        @Override
        public String text(UnitSystem system) {
            return String.join(between, texts(parts, system));
        }
    }
}

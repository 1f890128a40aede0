package org.coldpleat.shared.casefile;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.coldpleat.shared.quantity.Measured;

/** What stands behind one key, as far as it was understood. */
public record Entry(
        int line,
        int column,
        Optional<Measured> quantity,
        boolean typicalAsked,
        Optional<String> text,
        Optional<Boolean> flag,
        Optional<Section> section,
        List<Section> sections,
        Optional<String> note) {

    /** An entry that is there, but was not understood. */
    public static Entry empty(Tree at) {
        return new Entry(
                at.line(),
                at.column(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    public Entry withQuantity(Optional<Measured> value, boolean typical, Optional<String> remark) {
        return new Entry(line, column, value, typical, text, flag, section, sections, remark);
    }

    public Entry withText(String value) {
        return new Entry(line, column, quantity, typicalAsked, Optional.of(value), flag, section, sections, note);
    }

    public Entry withFlag(boolean value) {
        return new Entry(line, column, quantity, typicalAsked, text, Optional.of(value), section, sections, note);
    }

    public Entry withSection(Section value) {
        return new Entry(line, column, quantity, typicalAsked, text, flag, Optional.of(value), sections, note);
    }

    public Entry withSections(List<Section> values) {
        return new Entry(line, column, quantity, typicalAsked, text, flag, section, List.copyOf(values), note);
    }

    /** True if another entry says the same, wherever it stands. */
    boolean saysSame(Entry other) {
        return typicalAsked == other.typicalAsked
                && quantity.equals(other.quantity)
                && text.equals(other.text)
                && flag.equals(other.flag)
                && note.equals(other.note)
                && Section.saysSame(section, other.section)
                && sections.size() == other.sections.size()
                && IntStream.range(0, sections.size())
                        .allMatch(i -> sections.get(i).saysSame(other.sections.get(i)));
    }
}

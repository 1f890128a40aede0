package org.coldpleat.ui.text;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.service.Sentences;

/**
 * One link of a chain of values in words.
 *
 * @param headline what it is and its value
 * @param lines where it was written, how it was computed, and after whom
 * @param below what it was computed from
 */
public record ExplainedLink(String headline, List<String> lines, List<ExplainedLink> below) {
    public ExplainedLink {
        lines = List.copyOf(lines);
        below = List.copyOf(below);
    }

    /** A chain in words. */
    public static ExplainedLink of(Explanation link, UnitSystem units) {
        String title = Sentences.explanation(link.key(), "title").orElse(link.key());
        String owner = FieldWords.subject(link);
        String subject = Texts.getOr("part." + owner, owner);
        String named = subject.isEmpty() ? title : title + " [" + subject + "]";
        String value = value(link, units);
        String spread = link.spread()
                .map(measured -> " (" + QuantityFormat.format(measured, units) + ")")
                .orElse("");
        List<String> lines = new ArrayList<>();
        if (!link.origin().isEmpty()) {
            lines.add(Texts.get("explain.origin", link.origin()));
        }
        Sentences.explanation(link.key(), "equation")
                .ifPresent(equation -> lines.add(Texts.get("explain.equation", equation)));
        Sentences.explanation(link.key(), "source").ifPresent(source -> lines.add(Texts.get("explain.source", source)));
        return new ExplainedLink(
                value.isEmpty() ? named : named + " = " + value + spread,
                lines,
                link.inputs().stream().map(input -> of(input, units)).toList());
    }

    /** Value and unit; blank where there is no number. */
    private static String value(Explanation link, UnitSystem units) {
        if (!Double.isFinite(link.value())) {
            return "";
        }
        ShownUnit unit = ShownUnit.of(units.unit(link.kind(), link.value()));
        return (Figures.plain(unit.of(link.value())) + " " + unit.symbol()).strip();
    }

    /** The chain as an indented list. */
    public String text() {
        return ExplainText.of(this);
    }
}

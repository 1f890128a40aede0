package org.coldpleat.ui.report.section;

import java.util.Optional;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.Texts;
import org.jsoup.nodes.Element;

/** The chain behind a number, folded under it. */
public final class ChainFold {
    /** Class of the fold. */
    public static final String CHAIN = "chain";

    private final ReportInput input;
    private final Amounts amounts;

    ChainFold(ReportInput input, Amounts amounts) {
        this.input = input;
        this.amounts = amounts;
    }

    /** A number with the fold of its chain, if there is one. */
    Element under(Element amount, Optional<Explanation> chain) {
        Element cell = Tags.of("div", "").appendChild(amount);
        chain.ifPresent(link -> cell.appendChild(fold(ReportTexts.get("chain"), link)));
        return cell;
    }

    /** A chain under a title of its own. */
    Element fold(String title, Explanation chain) {
        return Tags.fold(CHAIN, title).appendChild(Tags.of("ul", "").appendChild(link(chain)));
    }

    private Element link(Explanation link) {
        Element item = Tags.of("li", "");
        item.appendText(Sentences.explanation(link.key(), "title").orElse(link.key()));
        String owner = FieldWords.subject(link);
        if (!owner.isEmpty()) {
            String subject = Texts.getOr("part." + owner, owner);
            item.appendText(" (").appendChild(Tags.said(subject)).appendText(")");
        }
        if (Double.isFinite(link.value())) {
            item.appendText(" = ").appendChild(value(link));
        }
        if (!link.origin().isEmpty()) {
            item.appendChild(Tags.of("br", "")).appendChild(Tags.said(link.origin()));
        }
        line(item, "chain.equation", Sentences.explanation(link.key(), "equation"));
        line(item, "chain.source", Sentences.explanation(link.key(), "source"));
        if (!link.inputs().isEmpty()) {
            Element below = Tags.of("ul", "");
            link.inputs().forEach(one -> below.appendChild(link(one)));
            item.appendChild(below);
        }
        return item;
    }

    private Element value(Explanation link) {
        String number = QuantityFormat.format(link.value(), link.kind(), input.units());
        boolean leaf = !link.origin().isEmpty();
        String band = link.spread()
                .map(measured -> QuantityFormat.format(measured, input.units()))
                .orElseGet(() -> ReportTexts.get(leaf ? "band.exact" : "band.none"));
        return amounts.words(number, band, leaf ? "read" : "computed");
    }

    private static void line(Element item, String key, Optional<String> words) {
        words.ifPresent(text -> item.appendChild(Tags.of("br", ""))
                .appendChild(Tags.text("span", "hint", ReportTexts.get(key)))
                .appendText(" ")
                .appendChild(Tags.quoted(text)));
    }
}

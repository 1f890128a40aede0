package org.coldpleat.ui.report.section;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.certainty.StateResult.ShareAt;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.ui.report.input.ReportInput;
import org.jsoup.nodes.Element;

/** A sentence with its origin, and folded under it the numbers it speaks of with their bands. */
public final class SentenceFold {
    /** Class of a sentence. */
    public static final String SENTENCE = "sentence";

    private final ReportInput input;
    private final Amounts amounts;

    SentenceFold(ReportInput input, Amounts amounts) {
        this.input = input;
        this.amounts = amounts;
    }

    /** A sentence of a verdict. */
    Element of(String tag, Verdict verdict) {
        Element sentence = sentence(tag, amounts.sentence(verdict));
        Set<String> names = new LinkedHashSet<>(verdict.candidates());
        Element table = Tags.of("table", "");
        table.appendChild(Tags.text("caption", "", ReportTexts.get("behind.caption")));
        Element body = Tags.of("tbody", "");
        input.comparison().candidates().stream()
                .filter(candidate -> names.contains(candidate.name()))
                .forEach(candidate -> rows(candidate, verdict.state(), body));
        if (!body.children().isEmpty()) {
            Element fold = Tags.fold("behind", ReportTexts.get("behind"));
            sentence.appendChild(fold.appendChild(table.appendChild(body)));
        }
        return sentence;
    }

    /** A sentence without numbers of its own behind it. */
    static Element sentence(String tag, String text) {
        Element sentence = Tags.text(tag, SENTENCE, Amounts.typographic(text));
        return sentence.appendText(" ").appendChild(Tags.text("small", "origin", ReportTexts.get("origin.sentence")));
    }

    /** Sentences of the verdict; reasons stand under the sentence they explain. */
    Element verdicts(List<Verdict> verdicts) {
        return nested(verdicts, amounts, one -> of("li", one));
    }

    /** Sentences of other runs; reasons stand under the sentence they explain. */
    static Element plain(List<Verdict> verdicts, Amounts amounts) {
        return nested(verdicts, amounts, one -> sentence("li", amounts.sentence(one)));
    }

    /** Sentences one after the other. */
    static Element list(List<String> sentences) {
        Element list = Tags.of("ul", "sentences");
        sentences.forEach(text -> list.appendChild(sentence("li", text.strip())));
        return list;
    }

    private static Element nested(List<Verdict> verdicts, Amounts amounts, Function<Verdict, Element> item) {
        Element list = Tags.of("ul", "sentences");
        for (Verdict one : verdicts) {
            Element last = list.lastElementChild();
            if (one.code().contains("reason.") && last != null) {
                Element end = last.lastElementChild();
                Element reasons = end.normalName().equals("ul") ? end : last.appendElement("ul");
                reasons.appendChild(Tags.text("li", "", Amounts.typographic(amounts.sentence(one))));
            } else {
                list.appendChild(item.apply(one));
            }
        }
        return list;
    }

    private void rows(CandidateResult candidate, String state, Element body) {
        CandidateSheet sheet = candidate.sheet();
        row(body, candidate, "amount.area", amounts.of(sheet.effectiveArea(), Kind.AREA));
        row(body, candidate, "amount.resistance", amounts.of(sheet.mediumResistance(), Kind.MEDIUM_RESISTANCE));
        row(body, candidate, "amount.channels", amounts.above(1, sheet.channelFactor(), Kind.RATIO));
        sheet.openingPressure()
                .ifPresent(pressure ->
                        row(body, candidate, "amount.opening", amounts.of(pressure, Kind.PRESSURE_DIFFERENCE)));
        for (StateResult one : candidate.states()) {
            if (state.isEmpty() || one.state().equals(state)) {
                state(candidate, one, body);
            }
        }
    }

    private void state(CandidateResult candidate, StateResult state, Element body) {
        if (state.answer() == StateResult.Answer.NO_VALVE) {
            return;
        }
        state.openingTemperature()
                .ifPresent(band -> row(
                        body,
                        candidate,
                        "amount.opens",
                        state.state(),
                        amounts.interval(band.value(), band.low(), band.high(), Kind.TEMPERATURE)));
        row(body, candidate, "amount.ratio", state.state(), amounts.of(state.greatestRatio(), Kind.RATIO));
        if (Double.isFinite(state.fixedFlowOpening())) {
            row(
                    body,
                    candidate,
                    "amount.fixedFlow",
                    state.state(),
                    amounts.unbanded(state.fixedFlowOpening(), Kind.TEMPERATURE));
        }
        for (ShareAt at : state.shares()) {
            row(body, candidate, "amount.share", state.state() + ", " + at.name(), amounts.share(at.share()));
        }
    }

    private void row(Element body, CandidateResult candidate, String key, Element amount) {
        row(body, candidate, key, "", amount);
    }

    private void row(Element body, CandidateResult candidate, String key, String where, Element amount) {
        Element label = Tags.text("span", "", ReportTexts.get(key));
        if (!where.isEmpty()) {
            label.appendText(", ").appendChild(Tags.said(where));
        }
        Optional<Element> name = Optional.of(Tags.said(candidate.name()));
        body.appendChild(Tags.row(name.get(), label, amount));
    }
}

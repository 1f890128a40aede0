package org.coldpleat.ui.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.report.input.ReportRun;
import org.coldpleat.ui.text.Pages;
import org.jsoup.nodes.Element;

/** The verdict: one sentence, one table, then every sentence with the numbers behind it. */
public final class VerdictSection implements ReportSection {
    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        Element section = Tags.of("section", "verdict").id("verdict");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("verdict.title")));
        SentenceFold folds = new SentenceFold(input, amounts);
        List<Verdict> sentences = input.comparison().verdicts();
        sentences.stream()
                .findFirst()
                .ifPresent(first -> section.appendChild(folds.of("div", first).addClass("lead")));
        section.appendChild(quickCurves(input, amounts));
        section.appendChild(LimitsBox.of());
        Map<String, List<Verdict>> groups = groups(sentences.stream().skip(1).toList());
        groups.forEach((name, group) -> {
            section.appendChild(
                    name.isEmpty()
                            ? Tags.text("h3", "", ReportTexts.get("verdict.between"))
                            : Tags.of("h3", "").appendChild(Tags.said(name)));
            section.appendChild(folds.verdicts(group));
        });
        return Optional.of(section);
    }

    /** Sentences about one candidate under its name, all others together at the end. */
    private static Map<String, List<Verdict>> groups(List<Verdict> sentences) {
        Map<String, List<Verdict>> groups = new LinkedHashMap<>();
        List<Verdict> rest = new ArrayList<>();
        for (Verdict one : sentences) {
            boolean own = one.code().startsWith("open.") || one.code().startsWith("contrast.");
            if (own && one.candidates().size() == 1) {
                groups.computeIfAbsent(one.candidates().get(0), name -> new ArrayList<>())
                        .add(one);
            } else {
                rest.add(one);
            }
        }
        if (!rest.isEmpty()) {
            groups.put("", rest);
        }
        return groups;
    }

    /** Candidates down, states across: the oil temperature at which each valve opens. */
    private static Element quickCurves(ReportInput input, Amounts amounts) {
        Comparison comparison = input.comparison();
        Element table = Tags.of("table", "glance");
        table.appendChild(Tags.text("caption", "", ReportTexts.get("glance.caption")));
        if (comparison.candidates().isEmpty()) {
            return table;
        }
        Element head = Tags.of("tr", "")
                .appendChild(
                        Tags.text("th", "", ReportTexts.get("column.candidate")).attr("scope", "col"));
        comparison
                .candidates()
                .get(0)
                .states()
                .forEach(state ->
                        head.appendChild(Tags.of("th", "").attr("scope", "col").appendChild(Tags.said(state.state()))));
        table.appendChild(Tags.of("thead", "").appendChild(head));
        ChainFold folds = new ChainFold(input, amounts);
        Element body = Tags.of("tbody", "");
        for (CandidateResult candidate : comparison.candidates()) {
            Element row = Tags.of("tr", "")
                    .appendChild(Tags.of("th", "").attr("scope", "row").appendChild(Tags.said(candidate.name())));
            for (StateResult state : candidate.states()) {
                Element answer =
                        amounts.words(Pages.answer(state, comparison, input.units()), chance(state), "computed");
                Element cell = folds.under(answer, input.chain(candidate.name(), state.state(), "openingTemperature"));
                input.chain(candidate.name(), state.state(), ReportRun.SHARE)
                        .ifPresent(chain -> cell.appendChild(folds.fold(ReportTexts.get("chain.share"), chain)));
                row.appendChild(Tags.of("td", "answer-" + state.answer().name()).appendChild(cell));
            }
            body.appendChild(row);
        }
        return table.appendChild(body);
    }

    private static String chance(StateResult state) {
        if (state.answer() == StateResult.Answer.NO_VALVE || state.answer() == StateResult.Answer.UNRESOLVED) {
            return ReportTexts.get("band.none");
        }
        double percent = 100 * state.chanceOpen();
        String shown = percent < 0.5 ? "< 1" : percent > 99.5 ? "> 99" : Long.toString(Math.round(percent));
        return ReportTexts.get("glance.chance", shown);
    }
}

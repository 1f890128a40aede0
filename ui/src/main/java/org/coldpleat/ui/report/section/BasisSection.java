package org.coldpleat.ui.report.section;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.service.Sentences;
import org.jsoup.nodes.Element;

/** What the verdict rests on: assumptions, findings, cautions, sources. */
public final class BasisSection implements ReportSection {
    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        Element section = Tags.of("section", "").id("basis");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("basis.title")));
        section.appendChild(Tags.text("h3", "", ReportTexts.get("basis.assumptions")));
        section.appendChild(assumptions(input, amounts));
        section.appendChild(notices(input.comparison().notices(), amounts));
        section.appendChild(Tags.text("h3", "", ReportTexts.get("basis.sources")));
        section.appendChild(Tags.text("p", "", ReportTexts.get("basis.sourcesFrom")));
        Element list = Tags.of("ul", "sources");
        sources(input.chains().values())
                .forEach(source -> list.appendChild(Tags.of("li", "").appendChild(Tags.quoted(source))));
        section.appendChild(list);
        section.appendChild(Tags.text("h3", "", ReportTexts.get("basis.origins")));
        Element origins = Tags.of("dl", "");
        for (String origin : List.of(
                "MEASURED", "PRINTED", "MAKER", "PUBLISHED", "TYPICAL", "GUESSED", "computed", "drawn", "stated")) {
            origins.appendChild(Tags.text("dt", "", ReportTexts.get("origin." + origin)));
            origins.appendChild(Tags.text("dd", "", ReportTexts.get("meaning." + origin)));
        }
        return Optional.of(section.appendChild(origins));
    }

    private static Element assumptions(ReportInput input, Amounts amounts) {
        if (input.comparison().assumptions().isEmpty()) {
            return Tags.text("p", "", ReportTexts.get("basis.noAssumptions"));
        }
        Map<Assumption, List<String>> owners = new LinkedHashMap<>();
        for (Assumption one : input.comparison().assumptions()) {
            String field = one.path().replaceFirst("^candidates\\[\\d+]\\.", "");
            Assumption shared = new Assumption(field, -1, one.value(), one.code());
            List<String> names = owners.computeIfAbsent(shared, key -> new ArrayList<>());
            if (one.candidate() >= 0) {
                names.add(input.comparison().candidates().get(one.candidate()).name());
            }
        }
        Element body = Tags.of("tbody", "");
        owners.forEach((one, names) -> body.appendChild(Tags.row(
                Tags.said(names.isEmpty() ? ReportTexts.get("basis.all") : String.join(", ", names)),
                Tags.quoted(FieldWords.of(one.path())),
                amounts.of(one.value()),
                Tags.text("span", "", Sentences.assumption(one.code())))));
        return Tags.of("table", "").appendChild(body);
    }

    /** Findings by severity, cautions last. */
    static Element notices(List<Notice> notices, Amounts amounts) {
        Element block = Tags.of("div", "notices");
        for (Severity severity : Severity.values()) {
            List<String> some = notices.stream()
                    .filter(notice -> notice.severity() == severity)
                    .map(notice -> sentence(notice, amounts))
                    .toList();
            if (!some.isEmpty()) {
                Element group = Tags.of("div", "severity-" + severity.name());
                group.appendChild(Tags.text("h3", "", ReportTexts.get("severity." + severity.name())));
                block.appendChild(group.appendChild(SentenceFold.list(some)));
            }
        }
        return block;
    }

    private static String sentence(Notice notice, Amounts amounts) {
        String text = amounts.sentence(notice);
        return notice.place().isEmpty() ? text : notice.place() + ": " + text;
    }

    private static Set<String> sources(Collection<Explanation> chains) {
        Set<String> sources = new TreeSet<>();
        chains.forEach(chain -> collect(chain, sources));
        return sources;
    }

    private static void collect(Explanation link, Set<String> sources) {
        Sentences.explanation(link.key(), "source").ifPresent(sources::add);
        link.inputs().forEach(below -> collect(below, sources));
    }
}

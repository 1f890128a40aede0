package org.coldpleat.ui.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;

/** The end of a page: verdict, what it rests on, notices, warnings and cautions. */
public final class FindingsText {
    private FindingsText() {}

    /** Sentences; reasons stand below what they are reasons for. */
    public static List<String> verdicts(List<Verdict> verdicts, UnitSystem units) {
        List<String> lines = section("compare.verdicts");
        if (verdicts.isEmpty()) {
            lines.addAll(paragraph("  ", Texts.get("compare.noVerdict")));
        }
        for (Verdict verdict : verdicts) {
            String text = Sentences.of(verdict, units);
            boolean reason =
                    verdict.code().startsWith("reason.") || verdict.code().contains(".reason.");
            lines.addAll(paragraph(reason ? "      " : "  - ", text.strip()));
        }
        return lines;
    }

    /** Typical and guessed values, each once with the candidates it belongs to. */
    public static List<String> assumptions(List<Assumption> assumptions, List<String> candidates, UnitSystem system) {
        List<String> lines = section("compare.assumptions");
        if (assumptions.isEmpty()) {
            lines.addAll(paragraph("  ", Texts.get("compare.noAssumptions")));
        }
        Map<String, List<String>> owners = new LinkedHashMap<>();
        for (Assumption assumption : assumptions) {
            String field = assumption.path().replaceFirst("^candidates\\[\\d+]\\.", "");
            String sentence = Texts.get(
                    "compare.assumption",
                    field,
                    QuantityFormat.format(assumption.value(), system),
                    Texts.get("provenance." + assumption.value().provenance()),
                    Sentences.assumption(assumption.code()));
            owners.computeIfAbsent(sentence, key -> new ArrayList<>());
            if (assumption.candidate() >= 0) {
                owners.get(sentence).add(candidates.get(assumption.candidate()));
            }
        }
        owners.forEach((sentence, names) -> lines.addAll(
                paragraph("  - ", names.isEmpty() ? sentence : String.join(", ", names) + ": " + sentence)));
        return lines;
    }

    /** Notices by severity, cautions last. */
    public static List<String> notices(List<Notice> notices, UnitSystem units) {
        List<String> lines = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Notice> some =
                    notices.stream().filter(n -> n.severity() == severity).toList();
            if (!some.isEmpty()) {
                lines.addAll(section("severity." + severity));
                some.forEach(notice -> lines.addAll(paragraph("  - ", NoticeLines.of(notice, units))));
            }
        }
        return lines;
    }

    private static List<String> section(String key) {
        return new ArrayList<>(List.of("", Texts.get(key)));
    }

    /** A text wrapped to the page, its first line behind a bullet. */
    public static List<String> paragraph(String bullet, String text) {
        List<String> lines = new ArrayList<>();
        List<String> wrapped = Table.wrap(text, CompareText.WIDTH - bullet.length());
        lines.add(bullet + wrapped.get(0));
        wrapped.stream().skip(1).forEach(line -> lines.add(" ".repeat(bullet.length()) + line));
        return lines;
    }
}

package org.coldpleat.ui.commandline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.run.Assumption;
import org.coldpleat.model.run.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;

/** A page for a terminal in the making: title, sections, tables, paragraphs, and the lists that end a page. */
final class PageText {
    private static final int WIDTH = CompareText.WIDTH;
    private static final int DIGEST_SHOWN = 12;

    private final UnitSystem system;
    private final List<String> lines = new ArrayList<>();

    PageText(UnitSystem system) {
        this.system = system;
    }

    String finished() {
        return String.join("\n", lines) + "\n";
    }

    void title(String title, boolean invented) {
        String mark = invented ? Texts.get("compare.invented") : "";
        List<String> wrapped = Table.wrap(title, WIDTH - mark.length() - 3);
        String pad = " ".repeat(Math.max(1, WIDTH - wrapped.get(0).length() - mark.length()));
        lines.add((wrapped.get(0) + pad + mark).stripTrailing());
        lines.addAll(wrapped.subList(1, wrapped.size()));
    }

    String shortDigest(String digest) {
        return digest.substring(0, Math.min(DIGEST_SHOWN, digest.length()));
    }

    void line(String text) {
        lines.add(text);
    }

    void section(String title) {
        lines.add("");
        lines.addAll(Table.wrap(title, WIDTH));
    }

    void table(Table table) {
        lines.addAll(table.lines());
    }

    void paragraph(String bullet, String text) {
        List<String> wrapped = Table.wrap(text, WIDTH - bullet.length());
        lines.add(bullet + wrapped.get(0));
        wrapped.stream().skip(1).forEach(line -> lines.add(" ".repeat(bullet.length()) + line));
    }

    void verdicts(String title, List<Verdict> verdicts) {
        section(title);
        verdicts.forEach(
                verdict -> paragraph(verdict.code().startsWith("reason.") ? "      " : "  - ", Sentences.of(verdict)));
    }

    /** Typical and guessed values; the names of the candidates stand before those of one of them, if there are names. */
    void assumptions(List<Assumption> assumptions, List<String> candidates) {
        section(Texts.get("compare.assumptions"));
        if (assumptions.isEmpty()) {
            paragraph("  ", Texts.get("compare.noAssumptions"));
        }
        Map<String, List<String>> owners = new LinkedHashMap<>();
        for (Assumption assumption : assumptions) {
            String field = assumption.path().replaceFirst("^candidates\\[\\d+]\\.", "");
            String sentence = Texts.get(
                    "compare.assumption",
                    field,
                    MeasuredText.of(assumption.value(), system),
                    Sentences.assumption(assumption.code()));
            owners.computeIfAbsent(sentence, key -> new ArrayList<>());
            if (assumption.candidate() >= 0 && assumption.candidate() < candidates.size()) {
                owners.get(sentence).add(candidates.get(assumption.candidate()));
            }
        }
        owners.forEach((sentence, names) ->
                paragraph("  - ", names.isEmpty() ? sentence : String.join(", ", names) + ": " + sentence));
    }

    void notices(List<Notice> notices) {
        for (Severity severity : Severity.values()) {
            List<Notice> some = notices.stream()
                    .filter(notice -> notice.severity() == severity)
                    .toList();
            if (!some.isEmpty()) {
                section(Texts.get("severity." + severity));
                some.forEach(notice -> paragraph("  - ", NoticeLines.of(notice)));
            }
        }
    }
}

package org.coldpleat.ui.commandline;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.run.Assumption;
import org.coldpleat.model.run.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.UnitSystem;

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
        lines.addAll(FindingsText.paragraph(bullet, text));
    }

    /** What ends a page: sentences, what they rest on, and findings. */
    void findings(List<Verdict> verdicts, List<Assumption> assumptions, List<String> candidates, List<Notice> notices) {
        lines.addAll(FindingsText.verdicts(verdicts));
        lines.addAll(FindingsText.assumptions(assumptions, candidates, system));
        lines.addAll(FindingsText.notices(notices));
    }
}

package org.coldpleat.ui.commandline.output;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.FindingsText;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** A page for a terminal in the making: title, sections, tables, paragraphs, and the lists that end a page. */
public final class PageText {
    private static final int WIDTH = CompareText.WIDTH;
    private static final int DIGEST_SHOWN = 12;

    private final UnitSystem system;
    private final List<String> lines = new ArrayList<>();

    public PageText(UnitSystem system) {
        this.system = system;
    }

    public String finished() {
        return String.join("\n", lines) + "\n";
    }

    public void title(String title, boolean invented) {
        String mark = invented ? Texts.get("compare.invented") : "";
        List<String> wrapped = Table.wrap(title, WIDTH - mark.length() - 3);
        String pad = " ".repeat(Math.max(1, WIDTH - wrapped.get(0).length() - mark.length()));
        lines.add((wrapped.get(0) + pad + mark).stripTrailing());
        lines.addAll(wrapped.subList(1, wrapped.size()));
    }

    public String shortDigest(String digest) {
        return digest.substring(0, Math.min(DIGEST_SHOWN, digest.length()));
    }

    public void line(String text) {
        lines.add(text);
    }

    public void section(String title) {
        lines.add("");
        lines.addAll(Table.wrap(title, WIDTH));
    }

    public void table(Table table) {
        lines.addAll(table.lines());
    }

    public void paragraph(String bullet, String text) {
        lines.addAll(FindingsText.paragraph(bullet, text));
    }

    /** What ends a page: sentences, what they rest on, and findings. */
    public void findings(
            List<Verdict> verdicts, List<Assumption> assumptions, List<String> candidates, List<Notice> notices) {
        lines.addAll(FindingsText.verdicts(verdicts, system));
        lines.addAll(FindingsText.assumptions(assumptions, candidates, system));
        lines.addAll(FindingsText.notices(notices, system));
    }
}

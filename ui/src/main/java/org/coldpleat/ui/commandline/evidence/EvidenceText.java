package org.coldpleat.ui.commandline.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.EvidenceReport.Combined;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** What is known of the candidates as a page for a terminal. */
final class EvidenceText {
    /** Smallest size or uncertainty of a step that is worth a row [1]. */
    private static final double WORTH_A_ROW = 5e-4;

    private final UnitSystem units;
    private final List<String> lines = new ArrayList<>();

    private EvidenceText(UnitSystem units) {
        this.units = units;
    }

    static String of(String title, boolean invented, List<EvidenceReport> reports, UnitSystem units) {
        EvidenceText page = new EvidenceText(units);
        page.lines.add(invented ? title + "   " + Texts.get("compare.invented") : title);
        reports.forEach(page::candidate);
        return String.join("\n", page.lines) + "\n";
    }

    private void candidate(EvidenceReport report) {
        lines.add("");
        lines.add(report.candidate());
        if (report.tests().isEmpty()) {
            lines.add("  " + Texts.get("evidence.noTests"));
        }
        report.tests().forEach(this::test);
        report.combined().forEach(this::combined);
    }

    private void test(TestReport test) {
        lines.add("");
        lines.add("  "
                + Texts.get(
                        "evidence.test",
                        Texts.get("test." + test.test()),
                        Texts.get("evidence.status." + test.status()),
                        test.count()));
        Table values = new Table(new int[] {40, 44}, new boolean[] {false, false});
        test.values().forEach(value -> values.row(Texts.get("evidence.value." + value.key()), text(value.value())));
        indent(values.lines());
        List<TestReport.Step> steps = test.steps().stream()
                .filter(step -> Math.abs(step.relativeSize()) > WORTH_A_ROW || step.lnSigma() > WORTH_A_ROW)
                .toList();
        if (!steps.isEmpty()) {
            Table table = new Table(new int[] {44, 10, 12}, new boolean[] {false, true, true});
            table.head(
                    Texts.get("evidence.step"), Texts.get("evidence.stepSize"), Texts.get("evidence.stepUncertainty"));
            steps.forEach(step -> table.row(
                    NoticeText.text("bench.correction." + step.name(), List.of()),
                    Math.abs(step.relativeSize()) > WORTH_A_ROW ? signed(step.relativeSize()) : Figures.NOTHING,
                    Figures.percent(step.lnSigma())));
            indent(table.lines());
        }
        if (!test.outliers().isEmpty()) {
            String rows = test.outliers().stream()
                    .map(row -> Integer.toString(row + 1))
                    .collect(Collectors.joining(", "));
            put(Texts.get("evidence.outliers", rows));
        }
        for (Notice notice : test.notices()) {
            put(Sentences.of(notice, units));
        }
    }

    private void combined(Combined combined) {
        lines.add("");
        lines.add("  "
                + Texts.get(
                        combined.conflict() ? "evidence.combinedConflict" : "evidence.combined",
                        Texts.get("evidence.quantity." + combined.quantity()),
                        text(Measured.factor(
                                combined.kind(), combined.median(), combined.lnSigma(), Provenance.MEASURED))));
        Table table = new Table(new int[] {40, 34, 8, 12}, new boolean[] {false, false, true, false});
        table.head(Texts.get("evidence.source"), Texts.get("evidence.says"), Texts.get("evidence.weight"), "");
        for (EvidenceReport.Member member : combined.members()) {
            String name = combined.quantity().equals("mediumResistance")
                    ? Sentences.evidence(member.name())
                    : Texts.get("evidence.member." + member.name());
            table.row(
                    member.label().isEmpty() ? name : name + " (" + member.label() + ")",
                    text(Measured.factor(combined.kind(), member.median(), member.lnSigma(), Provenance.MEASURED)),
                    Figures.percent(member.weight()),
                    member.apart() ? Texts.get("evidence.apart") : "");
        }
        indent(table.lines());
        if (combined.conflict()) {
            put(Texts.get("evidence.widened"));
        }
    }

    /** A value with its 95 % band; values without spread stand alone. */
    private String text(Measured value) {
        if (value.spread() == Spread.NONE) {
            return QuantityFormat.format(value, units);
        }
        double sigma = value.standardUncertainty() / Math.abs(value.value());
        return Texts.get(
                "evidence.banded",
                QuantityFormat.format(Measured.exact(value.kind(), value.value(), value.provenance()), units),
                Figures.percent(sigma));
    }

    private static String signed(double share) {
        return (share < 0 ? "-" : "+") + Figures.percent(Math.abs(share));
    }

    private void indent(List<String> table) {
        table.forEach(line -> lines.add("  " + line));
    }

    private void put(String text) {
        List<String> wrapped = Table.wrap(text, CompareText.WIDTH - 8);
        lines.add("    - " + wrapped.get(0));
        wrapped.stream().skip(1).forEach(line -> lines.add("      " + line));
    }
}

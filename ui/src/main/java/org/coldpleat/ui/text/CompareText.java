package org.coldpleat.ui.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.certainty.StateResult.Answer;
import org.coldpleat.model.certainty.StateResult.ShareAt;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.model.verdict.CandidateSheet.EvidenceLine;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;

/** A comparison as a page for a terminal, at most 110 columns wide. */
public final class CompareText {
    public static final int WIDTH = 110;

    private static final int DIGEST_SHOWN = 12;
    private static final int NAME_WIDTH = 22;
    private static final int ANSWER_WIDTH = 34;
    private static final int SHARE_WIDTH = 14;
    private static final double LEAST_HALF_BAND = 0.05;
    private static final double RESISTANCE_SCALE = 1e8;

    private final Comparison comparison;
    private final ShownUnits units;
    private final List<String> lines = new ArrayList<>();

    private CompareText(Comparison comparison, UnitSystem units) {
        this.comparison = comparison;
        this.units = ShownUnits.of(units);
    }

    public static String of(Comparison comparison, UnitSystem units) {
        CompareText page = new CompareText(comparison, units);
        page.header();
        page.candidates();
        page.states();
        page.lines.addAll(FindingsText.verdicts(comparison.verdicts(), units));
        List<String> names =
                comparison.candidates().stream().map(CandidateResult::name).toList();
        page.lines.addAll(FindingsText.assumptions(comparison.assumptions(), names, units));
        page.lines.addAll(FindingsText.notices(comparison.notices(), units));
        return String.join("\n", page.lines) + "\n";
    }

    private void header() {
        String mark = comparison.invented() ? Texts.get("compare.invented") : "";
        List<String> title = Table.wrap(comparison.title(), WIDTH - mark.length() - 3);
        String pad = " ".repeat(Math.max(1, WIDTH - title.get(0).length() - mark.length()));
        lines.add((title.get(0) + pad + mark).stripTrailing());
        lines.addAll(title.subList(1, title.size()));
        String digest = comparison
                .digest()
                .substring(0, Math.min(DIGEST_SHOWN, comparison.digest().length()));
        lines.add(Texts.get(
                "compare.header",
                ProgramVersion.text(),
                digest,
                Figures.plain(units.temperature().of(comparison.from())),
                Figures.plain(units.temperature().of(comparison.to())),
                units.temperature().symbol()));
    }

    private void candidates() {
        section("compare.candidates");
        ShownUnit pressure = units.pressure();
        Table table = new Table(
                        new int[] {NAME_WIDTH, 14, 12, 18, 12, 7, 20},
                        new boolean[] {false, true, true, false, true, true, true})
                .head(
                        Texts.get("column.candidate"),
                        Texts.get("column.area"),
                        Texts.get("column.resistance"),
                        Texts.get("column.evidence"),
                        Texts.get("column.channelFactor"),
                        Texts.get("column.crowded"),
                        Texts.get("column.hotDrop"))
                .head(
                        "",
                        units.area().symbol(),
                        "1e8/m",
                        "",
                        "",
                        "%",
                        pressure.symbol() + units.beside(ShownUnits::pressure, ShownUnit::symbol));
        ShownUnit resistance = ShownUnit.scaled("1e8/m", 1 / RESISTANCE_SCALE);
        ShownUnit one = ShownUnit.scaled("", 1);
        for (CandidateResult candidate : comparison.candidates()) {
            CandidateSheet sheet = candidate.sheet();
            table.row(
                    candidate.name(),
                    Figures.positive(sheet.grossArea(), units.area()),
                    Figures.positive(sheet.mediumResistance(), resistance),
                    evidence(sheet.evidence()),
                    Figures.above(1, sheet.channelFactor(), one),
                    Figures.percent(sheet.crowdedShare()),
                    Figures.positive(sheet.hotPressureDrop(), pressure)
                            + units.beside(
                                    ShownUnits::pressure,
                                    unit -> Figures.plain3(
                                            unit.of(sheet.hotPressureDrop().value()))));
        }
        lines.addAll(table.lines());
        comparison.candidates().stream()
                .map(c -> c.sheet().hotReference())
                .findFirst()
                .ifPresent(hot -> paragraph(
                        "  ",
                        Texts.get(
                                "compare.hotReference",
                                hot.state(),
                                temperature(hot.temperature()),
                                Texts.get("compare.band"))));
    }

    private static String evidence(List<EvidenceLine> evidence) {
        return evidence.stream()
                .map(line -> {
                    String kind = Sentences.evidence(line.kind());
                    return evidence.size() == 1 ? kind : kind + " " + Figures.percent(line.weight()) + "%";
                })
                .collect(Collectors.joining(", "));
    }

    private void states() {
        List<StateResult> all = comparison.candidates().isEmpty()
                ? List.of()
                : comparison.candidates().get(0).states();
        for (int s = 0; s < all.size(); s++) {
            StateResult state = all.get(s);
            lines.add("");
            lines.add(Texts.get("compare.state", state.state(), Texts.get("setting." + state.setting())));
            int shares = comparison.named().size();
            int[] widest = new int[2 + shares];
            boolean[] right = new boolean[2 + shares];
            String[] head = new String[2 + shares];
            String[] second = new String[2 + shares];
            Arrays.fill(second, "");
            widest[0] = NAME_WIDTH;
            widest[1] = ANSWER_WIDTH;
            head[0] = Texts.get("column.candidate");
            head[1] = Texts.get("column.opens");
            for (int n = 0; n < shares; n++) {
                NamedTemperature named = comparison.named().get(n);
                widest[2 + n] = SHARE_WIDTH;
                right[2 + n] = true;
                head[2 + n] = named.name();
                second[2 + n] = temperature(named.temperature());
            }
            String[] third = new String[2 + shares];
            Arrays.fill(third, 2, third.length, "%");
            third[0] = "";
            third[1] = "";
            Table table = new Table(widest, right).head(head).head(second).head(third);
            for (CandidateResult candidate : comparison.candidates()) {
                StateResult result = candidate.states().get(s);
                String[] row = new String[2 + shares];
                row[0] = candidate.name();
                row[1] = OpeningAnswer.of(result, comparison.from(), comparison.to(), units);
                for (int n = 0; n < shares; n++) {
                    row[2 + n] = result.answer() == Answer.NO_VALVE
                            ? Figures.NOTHING
                            : share(result.shares().get(n));
                }
                table.row(row);
            }
            lines.addAll(table.lines());
        }
    }

    private static String share(ShareAt at) {
        Band share = at.share();
        double half = 100 * (share.high() - share.low()) / 2;
        if (!Double.isFinite(share.value())) {
            return Texts.getOr("status." + at.status(), at.status());
        }
        if (half < LEAST_HALF_BAND) {
            return Figures.percent(share.value());
        }
        boolean leavesRange = share.low() < 0 || share.high() > 1;
        return leavesRange
                ? Texts.get(
                        "share.range",
                        Figures.percent(share.value()),
                        Figures.percent(Math.max(0, share.low())),
                        Figures.percent(Math.min(1, share.high())))
                : Figures.banded(share, ShownUnit.scaled("%", 100));
    }

    private void section(String key) {
        lines.add("");
        lines.add(Texts.get(key));
    }

    private void paragraph(String bullet, String text) {
        List<String> wrapped = Table.wrap(text, WIDTH - bullet.length());
        lines.add(bullet + wrapped.get(0));
        wrapped.stream().skip(1).forEach(line -> lines.add(" ".repeat(bullet.length()) + line));
    }

    private String temperature(double kelvin) {
        return Figures.plain(units.temperature().of(kelvin)) + " "
                + units.temperature().symbol();
    }
}

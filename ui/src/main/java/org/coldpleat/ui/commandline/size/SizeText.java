package org.coldpleat.ui.commandline.size;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Condition;
import org.coldpleat.model.sizing.SizingResult.Option;
import org.coldpleat.model.sizing.SizingResult.Status;
import org.coldpleat.model.sizing.SizingResult.Variable;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.output.PageText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** A size as a page for a terminal. */
final class SizeText {
    private static final int ROWS = 9;

    private final SizingResult result;
    private final ShownUnits units;
    private final ShownUnit unit;
    private final PageText page;

    private SizeText(SizingResult result, UnitSystem system) {
        this.result = result;
        units = ShownUnits.of(system);
        unit = SizedValue.unit(result.variable(), units);
        page = new PageText(system);
    }

    static String of(SizingResult result, String target, List<String> candidates, UnitSystem units) {
        SizeText text = new SizeText(result, units);
        text.head(target);
        result.conditions().forEach(text::condition);
        text.page.findings(result.verdicts(), result.assumptions(), candidates, result.notices());
        return text.page.finished();
    }

    private void head(String target) {
        page.title(result.title(), result.invented());
        page.line(Texts.get(
                "size.header",
                ProgramVersion.text(),
                page.shortDigest(result.digest()),
                result.candidate(),
                Texts.get("size.variable." + result.variable())));
        page.line(Texts.get("size.asked", target));
    }

    /** A row of the table: a value with what it is. */
    private record Row(double value, String label, double opening, double chance, String mark) {}

    private void condition(Condition condition) {
        page.section(
                condition.loaded()
                        ? Texts.get(
                                "size.conditionLoaded",
                                Figures.plain3(1e3 * condition.dirt()),
                                Figures.plain3(condition.loadRatio()))
                        : Texts.get("size.conditionClean"));
        Table table = new Table(new int[] {16, 18, 12, 40}, new boolean[] {true, true, true, false})
                .head(
                        Texts.get("size.variable." + result.variable()),
                        Texts.get("size.opensBelow"),
                        Texts.get("size.chance"),
                        "")
                .head(
                        result.variable() == Variable.GRADE ? "" : unit.symbol(),
                        units.temperature().symbol(),
                        "%",
                        "");
        double half = halfBand(condition);
        for (Row row : rows(condition)) {
            table.row(
                    row.label().isEmpty() ? shown(row.value(), half) : row.label(),
                    opening(row.opening()),
                    Figures.percent(row.chance()),
                    row.mark());
        }
        page.table(table);
        band(condition);
    }

    private String shown(double value, double half) {
        return result.variable() == Variable.PLEATS ? Figures.fixed(value, 0) : SizedValue.of(value, half, unit);
    }

    private static double halfBand(Condition condition) {
        Quantiles band = condition.band();
        return (band.high() - band.low()) / 2;
    }

    private String opening(double kelvin) {
        return Double.isInfinite(kelvin)
                ? Texts.get(kelvin > 0 ? "size.alwaysOpen" : "size.neverOpen")
                : Figures.fixed(units.temperature().of(kelvin), 1);
    }

    private List<Row> rows(Condition condition) {
        List<Row> rows = new ArrayList<>();
        boolean grade = result.variable() == Variable.GRADE;
        List<Row> marked = new ArrayList<>();
        if (!grade) {
            marked.add(new Row(
                    result.present(),
                    "",
                    condition.presentOpening(),
                    condition.presentChance(),
                    Texts.get("size.now")));
        }
        mark(condition.best(), Texts.get("size.justMeets"), marked);
        condition
                .sure()
                .forEach(answer -> mark(
                        answer,
                        Texts.get(
                                "size.justSure",
                                Figures.percent(result.confidence().orElseThrow())),
                        marked));
        List<Option> options = condition.options();
        int step = grade ? 1 : Math.max(1, options.size() / ROWS);
        for (int i = 0; i < options.size(); i += step) {
            Option one = options.get(i);
            boolean there = marked.stream().anyMatch(row -> isSame(row, one));
            if (!there) {
                rows.add(new Row(one.value(), one.label(), one.opening(), one.chance(), ""));
            }
        }
        rows.addAll(merged(marked));
        rows.sort(Comparator.comparingDouble(Row::value));
        return rows;
    }

    private boolean isSame(Row row, Option option) {
        return Math.abs(row.value() - option.value()) < 1e-9 * option.value();
    }

    /** Marks that fall on one value share a row. */
    private static List<Row> merged(List<Row> marked) {
        List<Row> rows = new ArrayList<>();
        for (Row row : marked) {
            int same = -1;
            for (int i = 0; i < rows.size(); i++) {
                same = rows.get(i).value() == row.value() ? i : same;
            }
            if (same < 0) {
                rows.add(row);
            } else {
                Row other = rows.get(same);
                rows.set(
                        same,
                        new Row(
                                other.value(),
                                other.label(),
                                other.opening(),
                                other.chance(),
                                other.mark() + "; " + row.mark()));
            }
        }
        return rows;
    }

    private static void mark(Answer answer, String words, List<Row> marked) {
        if (answer.status() == Status.FOUND) {
            marked.add(new Row(answer.value(), answer.label(), answer.opening(), answer.chance(), words));
        }
    }

    private void band(Condition condition) {
        Quantiles band = condition.band();
        if (Double.isNaN(band.median())) {
            return;
        }
        double half = halfBand(condition);
        page.paragraph(
                "  ", Texts.get("size.band", end(band.median(), half), end(band.low(), half), end(band.high(), half)));
    }

    private String end(double value, double half) {
        if (Double.isInfinite(value)) {
            return Texts.get("size.none");
        }
        return value == 0 ? Texts.get("size.any") : (shown(value, half) + " " + unit.symbol()).strip();
    }
}

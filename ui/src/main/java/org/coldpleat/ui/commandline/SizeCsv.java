package org.coldpleat.ui.commandline;

import org.coldpleat.model.run.SizingResult;
import org.coldpleat.model.run.SizingResult.Answer;
import org.coldpleat.model.run.SizingResult.Condition;
import org.coldpleat.model.run.SizingResult.Option;
import org.coldpleat.model.run.SizingResult.Status;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;

/** A size for a spreadsheet: one row a value, the answers among them. */
final class SizeCsv {
    private final CsvWriter csv = new CsvWriter();
    private final ShownUnits units;
    private final ShownUnit unit;
    private final SizingResult result;

    private SizeCsv(SizingResult result, UnitSystem system) {
        this.result = result;
        units = ShownUnits.of(system);
        unit = SizedValue.unit(result.variable(), units);
    }

    static String of(SizingResult result, UnitSystem system) {
        SizeCsv writer = new SizeCsv(result, system);
        writer.head();
        result.conditions().forEach(writer::condition);
        return writer.csv.finished();
    }

    private void head() {
        csv.text(Texts.get("csv.candidate"))
                .text(Texts.get("csv.condition"))
                .text(Texts.get("csv.row"))
                .text(Texts.get("csv.name"))
                .text(Texts.get("csv.sized", Texts.get("size.variable." + result.variable()), unit.symbol()))
                .text(Texts.get("csv.openingTemperature", units.temperature().symbol()))
                .text(Texts.get("csv.chance"))
                .endRow();
    }

    private void condition(Condition condition) {
        row(condition, "present", "", result.present(), condition.presentOpening(), condition.presentChance());
        answer(condition, "best", condition.best());
        condition.sure().forEach(answer -> answer(condition, "sure", answer));
        for (Option one : condition.options()) {
            row(condition, "tried", one.label(), one.value(), one.opening(), one.chance());
        }
    }

    private void answer(Condition condition, String row, Answer answer) {
        if (answer.status() == Status.FOUND) {
            row(condition, row, answer.label(), answer.value(), answer.opening(), answer.chance());
        }
    }

    private void row(Condition condition, String row, String name, double value, double opening, double chance) {
        csv.text(result.candidate())
                .text(Texts.get(condition.loaded() ? "csv.loaded" : "csv.clean"))
                .text(Texts.get("csv.row." + row))
                .text(name)
                .number(unit.of(value))
                .number(units.temperature().of(opening))
                .number(chance)
                .endRow();
    }
}

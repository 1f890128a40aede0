package org.coldpleat.ui.commandline.coldstart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.model.verdict.start.ColdStartSweep.Row;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;
import org.coldpleat.ui.commandline.output.FindingsJson;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.FindingsText;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** Cold starts from a range of temperatures: page, JSON ({@code coldstart-sweep-v1.schema.json}), table. */
public final class ColdStartSweepOutput {
    private ColdStartSweepOutput() {}

    /** A page for a terminal; {@code names} are those of all candidates of the case. */
    static String text(ColdStartSweep sweep, List<String> names, UnitSystem system) {
        ShownUnits units = ShownUnits.of(system);
        List<String> lines =
                new ArrayList<>(ColdStartText.head(sweep.title(), sweep.invented(), sweep.digest(), sweep.schedule()));
        boolean banded = sweep.isBanded();
        lines.add(Texts.get(banded ? "coldstart.sweptBanded" : "coldstart.swept"));
        lines.add("");
        lines.addAll(ColdStartText.phases(sweep.phases(), false, units));
        for (ColdStartSweep.Candidate one : sweep.candidates()) {
            lines.add("");
            lines.add(one.name());
            if (!one.hasValve()) {
                lines.add("  " + Texts.get("service.noValve"));
                continue;
            }
            Table table = new Table(
                            new int[] {10, banded ? 22 : 12, 14, 14, banded ? 22 : 14, 14, 16},
                            new boolean[] {true, true, true, true, true, true, true})
                    .head(
                            Texts.get("column.from", units.temperature().symbol()),
                            Texts.get("column.openInAll"),
                            Texts.get("column.openFilling"),
                            Texts.get("column.openAfter"),
                            Texts.get("column.unfilteredVolume", units.volume().symbol()),
                            Texts.get("column.unfilteredFilling", units.volume().symbol()),
                            Texts.get("column.greatestRatio"));
            int shown = worthShowing(one.rows());
            one.rows().subList(0, shown).forEach(row -> row(table, row, units));
            lines.addAll(table.lines());
            if (shown < one.rows().size()) {
                lines.add("  " + Texts.get("coldstart.warmerShut"));
            }
        }
        lines.addAll(FindingsText.assumptions(sweep.assumptions(), names, system));
        lines.addAll(FindingsText.notices(sweep.notices(), system));
        return String.join("\n", lines) + "\n";
    }

    /** Rows up to the first after the last one that opens or is missing. */
    private static int worthShowing(List<Row> rows) {
        int last = rows.size() - 1;
        while (last >= 0 && rows.get(last).computed() && rows.get(last).openSeconds() == 0) {
            last--;
        }
        return Math.min(rows.size(), last + 2);
    }

    private static void row(Table table, Row row, ShownUnits units) {
        String from = Figures.fixed(units.temperature().of(row.from()), 1);
        if (!row.computed()) {
            table.row(from, Texts.get("service.notComputed"));
            return;
        }
        table.row(
                from,
                row.bands()
                        .map(bands -> StartTimes.clock(bands.openSeconds()))
                        .orElseGet(() -> StartTimes.clock(row.openSeconds())),
                StartTimes.clock(row.openFilling()),
                StartTimes.clock(row.openAfter()),
                row.bands()
                        .map(bands -> StartTimes.banded(bands.unfiltered(), units.volume()))
                        .orElseGet(() -> Figures.plain3(units.volume().of(row.unfiltered()))),
                Figures.plain3(units.volume().of(row.unfilteredFilling())),
                Figures.percent(row.greatestRatio()));
    }

    public static String csv(ColdStartSweep sweep, UnitSystem system) {
        ShownUnits units = ShownUnits.of(system);
        CsvWriter csv = new CsvWriter();
        csv.text(Texts.get("csv.candidate"))
                .text(Texts.get("csv.startTemperature", units.temperature().symbol()))
                .text(Texts.get("csv.openFilling"))
                .text(Texts.get("csv.openAfter"))
                .text(Texts.get("csv.unfilteredFilling", units.volume().symbol()))
                .text(Texts.get("csv.unfilteredAfter", units.volume().symbol()))
                .text(Texts.get("csv.greatestRatio"))
                .text(Texts.get("csv.openLow"))
                .text(Texts.get("csv.openHigh"))
                .text(Texts.get("csv.unfilteredBandLow", units.volume().symbol()))
                .text(Texts.get("csv.unfilteredBandHigh", units.volume().symbol()))
                .endRow();
        for (ColdStartSweep.Candidate one : sweep.candidates()) {
            for (Row row : one.rows()) {
                csv.text(one.name())
                        .number(units.temperature().of(row.from()))
                        .number(kept(row, row.openFilling()))
                        .number(kept(row, row.openAfter()))
                        .number(kept(row, units.volume().of(row.unfilteredFilling())))
                        .number(kept(row, units.volume().of(row.unfilteredAfter())))
                        .number(kept(row, row.greatestRatio()))
                        .number(end(row, bands -> bands.openSeconds().low()))
                        .number(end(row, bands -> bands.openSeconds().high()))
                        .number(end(
                                row,
                                bands -> units.volume().of(bands.unfiltered().low())))
                        .number(end(
                                row,
                                bands -> units.volume().of(bands.unfiltered().high())))
                        .endRow();
            }
        }
        return csv.finished();
    }

    private static double kept(Row row, double value) {
        return row.computed() ? value : Double.NaN;
    }

    /** An end of a band; not a number where none was worked out. */
    private static double end(Row row, ToDoubleFunction<ColdStartSweep.Bands> value) {
        return kept(row, row.bands().map(value::applyAsDouble).orElse(Double.NaN));
    }

    static String json(ColdStartSweep sweep, List<String> names) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "coldstart-sweep-v1")
                .text("programVersion", ProgramVersion.text())
                .text("caseDigest", sweep.digest())
                .text("title", sweep.title())
                .flag("invented", sweep.invented())
                .text("schedule", sweep.schedule());
        ColdStartJson.phases(json, sweep.phases());
        json.number("hot_K", sweep.hot()).array("candidates");
        for (ColdStartSweep.Candidate one : sweep.candidates()) {
            json.element()
                    .text("name", one.name())
                    .flag("hasValve", one.hasValve())
                    .array("rows");
            for (Row row : one.rows()) {
                json.element()
                        .number("from_K", row.from())
                        .text("status", row.status())
                        .number("openFilling_s", kept(row, row.openFilling()))
                        .number("openAfterFilling_s", kept(row, row.openAfter()))
                        .number("unfilteredFilling_m3", kept(row, row.unfilteredFilling()))
                        .number("unfilteredAfterFilling_m3", kept(row, row.unfilteredAfter()))
                        .number("greatestRatio", kept(row, row.greatestRatio()))
                        .number(
                                "open_s_low",
                                end(row, bands -> bands.openSeconds().low()))
                        .number(
                                "open_s_high",
                                end(row, bands -> bands.openSeconds().high()))
                        .number(
                                "unfiltered_m3_low",
                                end(row, bands -> bands.unfiltered().low()))
                        .number(
                                "unfiltered_m3_high",
                                end(row, bands -> bands.unfiltered().high()))
                        .endObject();
            }
            json.endArray().endObject();
        }
        json.endArray();
        FindingsJson.assumptions(json, sweep.assumptions(), names);
        FindingsJson.notices(json, sweep.notices());
        return json.endObject().finished();
    }
}

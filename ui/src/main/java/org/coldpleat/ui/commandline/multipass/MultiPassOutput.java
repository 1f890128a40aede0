package org.coldpleat.ui.commandline.multipass;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.commandline.output.NoticeJson;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.NoticeLines;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** A virtual multi-pass test as a page, for a spreadsheet, and as JSON described by {@code multipass-v1.schema.json}. */
public final class MultiPassOutput {
    private static final double MICROMETERS = 1e6;

    private MultiPassOutput() {}

    static String text(MultiPassReport report, UnitSystem units) {
        List<String> lines = new ArrayList<>();
        lines.add(report.title() + (report.invented() ? "   " + Texts.get("service.invented") : ""));
        lines.add(Texts.get(
                "multipass.title",
                report.candidate(),
                Texts.get(report.terminalReached() ? "multipass.reached" : "multipass.notReached")));
        lines.add(Texts.get(
                "multipass.mass",
                Figures.fixed(1e3 * report.injectedMass(), 1),
                Figures.fixed(1e3 * report.retainedMass(), 1),
                Figures.fixed(1e3 * report.retainedLow(), 1),
                Figures.fixed(1e3 * report.retainedHigh(), 1),
                Figures.fixed(report.duration() / 60, 0)));
        lines.add("");
        lines.add(Texts.get("multipass.beta"));
        Table table = new Table(new int[] {12, 12, 16}, new boolean[] {true, true, true})
                .head(
                        Texts.get("multipass.size"),
                        Texts.get("multipass.betaColumn"),
                        Texts.get("multipass.efficiency"));
        for (int i = 0; i < report.sizes().length; i++) {
            double beta = report.meanBeta()[i];
            table.row(
                    Figures.plain(MICROMETERS * report.sizes()[i]),
                    Figures.plain3(beta),
                    Figures.fixed(100 * (1 - 1 / beta), 2));
        }
        lines.addAll(table.lines());
        lines.add("");
        report.notices()
                .forEach(notice -> Table.wrap(NoticeLines.of(notice, units), CompareText.WIDTH - 4)
                        .forEach(line -> lines.add("  " + line)));
        return String.join("\n", lines) + "\n";
    }

    public static String csv(MultiPassReport report, UnitSystem units) {
        ShownUnit pressure = ShownUnits.of(units).pressure();
        CsvWriter csv = new CsvWriter();
        csv.text(Texts.get("csv.time"))
                .text(Texts.get("csv.elementDrop", pressure.symbol()))
                .text(Texts.get("csv.retained"))
                .text(Texts.get("csv.upstream"));
        for (double size : report.sizes()) {
            csv.text(Texts.get("csv.beta", Figures.plain(MICROMETERS * size)));
        }
        csv.endRow();
        for (MultiPassReport.Moment moment : report.moments()) {
            csv.number(moment.time())
                    .number(pressure.of(moment.pressureDrop()))
                    .number(1e3 * moment.retained())
                    .number(1e3 * moment.upstream());
            for (double beta : moment.beta()) {
                csv.number(beta);
            }
            csv.endRow();
        }
        return csv.finished();
    }

    static String json(MultiPassReport report) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "multipass-v1")
                .text("programVersion", ProgramVersion.text())
                .text("title", report.title())
                .flag("invented", report.invented())
                .text("candidate", report.candidate())
                .flag("terminalReached", report.terminalReached())
                .number("injected_kg", report.injectedMass())
                .number("retained_kg", report.retainedMass())
                .number("retainedLow_kg", report.retainedLow())
                .number("retainedHigh_kg", report.retainedHigh())
                .number("duration_s", report.duration())
                .number("massClosure", report.massClosure())
                .numbers("sizes_m", report.sizes())
                .numbers("meanBeta", report.meanBeta())
                .array("moments");
        for (MultiPassReport.Moment moment : report.moments()) {
            json.element()
                    .number("time_s", moment.time())
                    .number("pressureDrop_Pa", moment.pressureDrop())
                    .number("retained_kg", moment.retained())
                    .number("upstream_kg_m3", moment.upstream())
                    .numbers("beta", moment.beta())
                    .endObject();
        }
        json.endArray().array("notices");
        report.notices().forEach(notice -> NoticeJson.write(json, notice));
        return json.endArray().endObject().finished();
    }
}

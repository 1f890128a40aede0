package org.coldpleat.ui.commandline.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SettingsResult.AfterStart;
import org.coldpleat.model.sizing.SettingsResult.Candidate;
import org.coldpleat.model.sizing.SettingsResult.Row;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.output.PageText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** Settings side by side as a page for a terminal. */
final class SettingsText {
    /** Rows shown of each candidate, beside the one as measured. */
    private static final int ROWS = 10;

    private static final int STATE_WIDTH = 15;
    private static final int START_COLUMNS = 4;

    private final SettingsResult result;
    private final ShownUnits units;
    private final PageText page;

    private SettingsText(SettingsResult result, UnitSystem system) {
        this.result = result;
        units = ShownUnits.of(system);
        page = new PageText(system);
    }

    static String of(SettingsResult result, List<String> candidates, UnitSystem units) {
        SettingsText text = new SettingsText(result, units);
        text.head();
        result.candidates().forEach(text::candidate);
        text.page.findings(result.verdicts(), result.assumptions(), candidates, result.notices());
        return text.page.finished();
    }

    private void head() {
        page.title(result.title(), result.invented());
        page.line(Texts.get("settings.header", ProgramVersion.text(), page.shortDigest(result.digest())));
        result.start()
                .ifPresent(start -> page.line(Texts.get(
                        "settings.start",
                        start.schedule(),
                        Figures.plain(units.temperature().of(start.from())),
                        units.temperature().symbol())));
    }

    private void candidate(Candidate one) {
        page.section(one.name());
        int states = result.states().size();
        boolean start = result.start().isPresent();
        int columns = 1 + states + (start ? START_COLUMNS : 0) + 1;
        int[] widest = new int[columns];
        boolean[] right = new boolean[columns];
        Arrays.fill(widest, STATE_WIDTH);
        Arrays.fill(right, true);
        widest[0] = 20;
        List<String> head = new ArrayList<>(List.of(Texts.get("settings.column.setting")));
        List<String> unit = new ArrayList<>(
                List.of(units.pressure().symbol() + units.beside(ShownUnits::pressure, ShownUnit::symbol)));
        for (String state : result.states()) {
            head.add(Texts.get("settings.column.opens", state));
            unit.add(units.temperature().symbol());
        }
        if (start) {
            head.addAll(List.of(
                    Texts.get("settings.column.share"),
                    Texts.get("settings.column.open"),
                    Texts.get("settings.column.unfiltered"),
                    Texts.get("settings.column.bearsStart")));
            unit.addAll(
                    List.of("%", "s", units.volume().symbol(), units.pressure().symbol()));
        }
        head.add(Texts.get("settings.column.bears"));
        unit.add(units.pressure().symbol());
        Table table = new Table(widest, right).head(head.toArray(String[]::new)).head(unit.toArray(String[]::new));
        int step = Math.max(1, one.rows().size() / ROWS);
        for (int i = 0; i < one.rows().size(); i++) {
            Row row = one.rows().get(i);
            if (i % step == 0 || row.measured() || i == one.rows().size() - 1) {
                table.row(cells(one, row));
            }
        }
        page.table(table);
    }

    private String[] cells(Candidate one, Row row) {
        List<String> cells = new ArrayList<>();
        String setting = Figures.plain3(units.pressure().of(row.setting()))
                + units.beside(ShownUnits::pressure, unit -> Figures.fixed(unit.of(row.setting()), 1));
        String words = one.hasValve() ? setting : Texts.get("settings.noValve");
        cells.add(row.measured() && one.hasValve() ? Texts.get("settings.now", words) : words);
        row.openings().forEach(band -> cells.add(opening(one, band)));
        result.start().ifPresent(start -> after(row.afterStart().orElseThrow(), cells));
        cells.add(Figures.plain3(units.pressure().of(row.overRange().pressure())));
        return cells.toArray(String[]::new);
    }

    private void after(AfterStart start, List<String> cells) {
        if (!start.completed()) {
            cells.addAll(List.of(Figures.NOTHING, Figures.NOTHING, Figures.NOTHING, Figures.NOTHING));
            return;
        }
        cells.add(Figures.percent(start.bypassShare()));
        cells.add(Figures.plain3(start.openSeconds()));
        cells.add(Figures.plain3(units.volume().of(start.unfilteredVolume())));
        cells.add(Figures.plain3(units.pressure().of(start.elementPeak())));
    }

    /** The opening with half its band; both ends where one of them is open. */
    private String opening(Candidate one, OpeningBand band) {
        double value = band.value();
        if (!one.hasValve() || Double.isNaN(value)) {
            return Figures.NOTHING;
        }
        if (Double.isInfinite(value)) {
            return Texts.get(value > 0 ? "size.alwaysOpen" : "size.neverOpen");
        }
        double half = units.temperatureDifference().of((band.high() - band.low()) / 2);
        String shown = Figures.fixed(units.temperature().of(value), half >= 10 ? 0 : 1);
        if (Double.isNaN(half) || half == 0) {
            return shown;
        }
        if (Double.isInfinite(half)) {
            return shown + " " + Texts.get(Double.isInfinite(band.low()) ? "settings.orNever" : "settings.orWarmer");
        }
        return shown + " ± " + Figures.fixed(half, half >= 10 ? 0 : 1);
    }
}

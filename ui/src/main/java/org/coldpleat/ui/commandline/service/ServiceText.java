package org.coldpleat.ui.commandline.service;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.service.ServiceResult.Event;
import org.coldpleat.model.verdict.service.ServiceResult.Moment;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.NoticeLines;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** A service life as a page for a terminal. */
final class ServiceText {
    private static final int DIGEST_SHOWN = 12;
    private static final int NAME_WIDTH = 22;
    private static final int ROWS = 8;
    private static final double HOUR = 3600;

    private final ServiceResult result;
    private final UnitSystem system;
    private final ShownUnits units;
    private final List<String> lines = new ArrayList<>();

    private ServiceText(ServiceResult result, UnitSystem units) {
        this.result = result;
        this.system = units;
        this.units = ShownUnits.of(units);
    }

    static String of(ServiceResult result, UnitSystem units) {
        ServiceText page = new ServiceText(result, units);
        page.head();
        page.events();
        page.factors();
        result.candidates().stream().filter(ServiceResult.Candidate::isComputed).forEach(page::course);
        page.sentences();
        return String.join("\n", page.lines) + "\n";
    }

    private void head() {
        lines.add(result.title() + (result.invented() ? "   " + Texts.get("service.invented") : ""));
        String digest = result.digest()
                .substring(0, Math.min(DIGEST_SHOWN, result.digest().length()));
        lines.add(Texts.get("service.header", ProgramVersion.text(), digest, Figures.plain(result.horizon() / HOUR)));
    }

    private void events() {
        section(Texts.get("service.events"));
        String winter = Double.isNaN(result.winterStart())
                ? Texts.get("column.winter")
                : Texts.get(
                        "service.winter",
                        Figures.plain(units.temperature().of(result.winterStart())) + " "
                                + units.temperature().symbol());
        Table table = new Table(new int[] {NAME_WIDTH, 36, 36}, new boolean[] {false, false, false})
                .head(Texts.get("column.candidate"), Texts.get("column.hot"), winter);
        for (ServiceResult.Candidate one : result.candidates()) {
            table.row(one.name(), event(one, one.hotBypass()), event(one, one.winterBypass()));
        }
        lines.addAll(table.lines());
    }

    private static String event(ServiceResult.Candidate one, Optional<Event> event) {
        if (!one.isComputed()) {
            return Texts.get("service.notComputed");
        }
        if (event.isEmpty()) {
            return Texts.get("service.noValve");
        }
        if (!event.get().happens()) {
            return Texts.get("service.never", Figures.fixed(one.last().time() / HOUR, 0));
        }
        if (event.get().time() == 0) {
            return Texts.get("service.clean");
        }
        return Texts.get(
                "service.opens",
                rough(event.get().time() / HOUR),
                rough(event.get().low() / HOUR),
                rough(event.get().high() / HOUR));
    }

    private void factors() {
        section(Texts.get("service.factors"));
        Table table = new Table(new int[] {NAME_WIDTH, 10, 18, 14, 26}, new boolean[] {false, true, true, true, true})
                .head(
                        Texts.get("column.candidate"),
                        Texts.get("column.hotFactor"),
                        Texts.get("column.hotClosed"),
                        Texts.get("column.coldFactor"),
                        Texts.get("column.coldClosed"));
        for (ServiceResult.Candidate one : result.candidates()) {
            table.row(
                    one.name(),
                    number(one.hotFactor().simulated()),
                    number(one.hotFactor().closedForm()),
                    number(one.coldFactor().simulated()),
                    number(one.coldFactor().closedForm()));
        }
        lines.addAll(table.lines());
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? Figures.plain3(value.getAsDouble()) : Figures.NOTHING;
    }

    private void course(ServiceResult.Candidate one) {
        section(Texts.get("service.course", one.name()));
        Table table = new Table(
                        new int[] {5, 17, 19, 19, 10, 9, 9, 12},
                        new boolean[] {true, true, true, true, true, true, false, true})
                .head(
                        Texts.get("column.hours"),
                        Texts.get("column.ratio"),
                        Texts.get("column.warmDrop", units.pressure().symbol()),
                        Texts.get("column.opening", units.temperature().symbol()),
                        Texts.get("column.retained"),
                        Texts.get("column.oilDirt"),
                        Texts.get("column.code"),
                        Texts.get("column.unfiltered"));
        Set<Moment> rows = new LinkedHashSet<>();
        for (int i = 0; i <= ROWS; i++) {
            double time = one.last().time() * i / ROWS;
            one.moments().stream()
                    .filter(moment -> moment.time() >= time)
                    .findFirst()
                    .ifPresent(rows::add);
        }
        rows.forEach(moment -> row(table, moment));
        lines.addAll(table.lines());
        wrapped(Texts.get(
                "service.bandNote",
                rough(one.last().dirtSpread()),
                volume(one.moments().get(0).winterUnfiltered()),
                volume(one.last().winterUnfiltered())));
        lines.add("  "
                + Texts.get(
                        "service.error", Figures.fixed(100 * one.startError(), 2), Figures.plain(one.massClosure())));
    }

    private void row(Table table, Moment moment) {
        table.row(
                Figures.fixed(moment.time() / HOUR, 0),
                banded(rough(moment.resistanceRatio()), rough(moment.ratioLow()), rough(moment.ratioHigh())),
                banded(
                        rough(units.pressure().of(moment.pressureDrop())),
                        rough(units.pressure().of(moment.dropLow())),
                        rough(units.pressure().of(moment.dropHigh()))),
                banded(
                        opening(moment.openingTemperature()),
                        opening(moment.openingLow()),
                        opening(moment.openingHigh())),
                rough(1000 * moment.retained()),
                rough(1000 * moment.concentration()),
                moment.cleanliness(),
                Figures.percent(moment.unfilteredShare()));
    }

    private static String banded(String middle, String low, String high) {
        return low.equals(middle) && high.equals(middle) ? middle : Texts.get("service.banded", middle, low, high);
    }

    private String opening(double temperature) {
        if (Double.isNaN(temperature)) {
            return Figures.NOTHING;
        }
        return Double.isInfinite(temperature)
                ? Texts.get("service.noOpening")
                : Figures.fixed(units.temperature().of(temperature), 0);
    }

    private String volume(double volume) {
        if (Double.isNaN(volume)) {
            return Figures.NOTHING;
        }
        return rough(units.volume().of(volume)) + " " + units.volume().symbol();
    }

    /** Two digits: the bands are wide. */
    private static String rough(double value) {
        if (!Double.isFinite(value)) {
            return Figures.NOTHING;
        }
        if (value == 0) {
            return "0";
        }
        double unit = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - 1);
        double rounded = Math.rint(value / unit) * unit;
        return Figures.fixed(rounded, Math.max(0, (int) -Math.floor(Math.log10(unit) + 1e-9)));
    }

    private void sentences() {
        section(Texts.get("service.verdicts"));
        result.verdicts().forEach(verdict -> wrapped(Sentences.of(verdict, system)));
        section(Texts.get("service.notices"));
        result.notices().forEach(notice -> wrapped(NoticeLines.of(notice, system)));
    }

    private void wrapped(String text) {
        String indent = text.startsWith("  ") ? "    " : "  ";
        Table.wrap(text, CompareText.WIDTH - 4).forEach(line -> lines.add(indent + line));
    }

    private void section(String title) {
        lines.add("");
        lines.add(title);
    }
}

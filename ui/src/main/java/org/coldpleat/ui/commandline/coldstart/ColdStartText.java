package org.coldpleat.ui.commandline.coldstart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.certainty.ColdStartCandidate.Event;
import org.coldpleat.model.certainty.ColdStartCandidate.PartPeak;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.FindingsText;
import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** A cold start as a page for a terminal. */
final class ColdStartText {
    private static final int NAME_WIDTH = 18;
    private static final int BAND_WIDTH = 16;
    private static final int MOST_EVENTS = 24;
    private static final int MOST_NAMED = 5;

    private final ColdStart start;
    private final ShownUnits units;
    private final List<String> lines = new ArrayList<>();

    private ColdStartText(ColdStart start, UnitSystem units) {
        this.start = start;
        this.units = ShownUnits.of(units);
    }

    /** The page; {@code names} are those of all candidates of the case. */
    static String of(ColdStart start, List<String> names, UnitSystem units) {
        ColdStartText page = new ColdStartText(start, units);
        page.lines.addAll(head(start.title(), start.invented(), start.digest(), start.schedule()));
        page.conditions();
        page.times();
        page.volumes();
        page.drops();
        start.candidates().stream().filter(ColdStartCandidate::isComputed).forEach(page::events);
        page.lines.addAll(FindingsText.verdicts(start.verdicts(), units));
        page.lines.addAll(FindingsText.assumptions(start.assumptions(), names, units));
        page.lines.addAll(FindingsText.notices(start.notices(), units));
        return String.join("\n", page.lines) + "\n";
    }

    /** Title, mark of invented data, digest and schedule. */
    static List<String> head(String title, boolean invented, String digest, String schedule) {
        List<String> head = new ArrayList<>();
        head.add(title + (invented ? "   " + Texts.get("compare.invented") : ""));
        head.add(Texts.get(
                "coldstart.header",
                ProgramVersion.text(),
                digest.substring(0, Math.min(12, digest.length())),
                schedule));
        return head;
    }

    /** What the engine does, one row a phase. */
    static List<String> phases(List<ColdStart.Phase> phases, boolean logged, ShownUnits units) {
        Table table = new Table(new int[] {28, 12, 10, 16, 16}, new boolean[] {false, true, true, true, true})
                .head(
                        Texts.get("column.phase"),
                        Texts.get("column.turns", units.rotation().symbol()),
                        Texts.get("column.lasts"),
                        Texts.get("column.heatToMetal", units.of(Kind.POWER).symbol()),
                        Texts.get("column.heatToOil", units.of(Kind.POWER).symbol()));
        for (ColdStart.Phase phase : phases) {
            table.row(
                    phase.state().isEmpty() ? Figures.NOTHING : phase.state(),
                    Figures.plain(units.rotation().of(phase.speed())),
                    StartTimes.clock(phase.duration()),
                    logged
                            ? Figures.NOTHING
                            : Figures.plain3(units.of(Kind.POWER).of(phase.heatToMetal())),
                    logged
                            ? Figures.NOTHING
                            : Figures.plain3(units.of(Kind.POWER).of(phase.heatToOil())));
        }
        return table.lines();
    }

    private void conditions() {
        lines.add(Texts.get(
                start.logged() ? "coldstart.conditionsLogged" : "coldstart.conditions",
                temperature(start.from()),
                temperature(start.ambient()),
                temperature(start.hot())));
        lines.add("");
        lines.addAll(phases(start.phases(), start.logged(), units));
    }

    private void times() {
        section(Texts.get("coldstart.times"));
        Table table = new Table(
                        new int[] {NAME_WIDTH, BAND_WIDTH, BAND_WIDTH, BAND_WIDTH, BAND_WIDTH, BAND_WIDTH},
                        new boolean[] {false, true, true, true, true, true})
                .head(
                        Texts.get("column.candidate"),
                        Texts.get("column.openInAll"),
                        Texts.get("column.openFilling"),
                        Texts.get("column.openAfter"),
                        Texts.get("column.shutAfter"),
                        Texts.get("column.hotAfter"));
        for (ColdStartCandidate one : start.candidates()) {
            table.row(
                    one.name(),
                    open(one, StartQuantity.OPEN_SECONDS),
                    open(one, StartQuantity.OPEN_SECONDS_FILLING),
                    open(one, StartQuantity.OPEN_SECONDS_AFTER),
                    one.band(StartQuantity.OPEN_SECONDS).high() == 0
                            ? Figures.NOTHING
                            : open(one, StartQuantity.CLOSING_TIME),
                    StartTimes.clock(one.band(StartQuantity.HOT_TIME)));
        }
        lines.addAll(table.lines());
    }

    private static String open(ColdStartCandidate one, StartQuantity quantity) {
        if (!one.isComputed()) {
            return Texts.get("service.notComputed");
        }
        return one.hasValve() ? StartTimes.clock(one.band(quantity)) : Texts.get("service.noValve");
    }

    private void volumes() {
        String unit = units.volume().symbol();
        section(Texts.get("coldstart.volumes", unit));
        Table table = new Table(
                        new int[] {NAME_WIDTH, BAND_WIDTH, BAND_WIDTH, BAND_WIDTH, BAND_WIDTH, 12},
                        new boolean[] {false, true, true, true, true, true})
                .head(
                        Texts.get("column.candidate"),
                        Texts.get("column.unfilteredVolume", unit),
                        Texts.get("column.unfilteredFilling", unit),
                        Texts.get("column.filteredVolume", unit),
                        Texts.get("column.pumpedVolume", unit),
                        Texts.get("column.unfilteredShare"));
        for (ColdStartCandidate one : start.candidates()) {
            table.row(
                    one.name(),
                    volume(one.band(StartQuantity.UNFILTERED)),
                    volume(one.band(StartQuantity.UNFILTERED_FILLING)),
                    volume(one.band(StartQuantity.FILTERED)),
                    volume(one.band(StartQuantity.PUMPED)),
                    one.isComputed() ? Figures.percent(one.bypassShare()) : Figures.NOTHING);
        }
        lines.addAll(table.lines());
        lines.addAll(FindingsText.paragraph("  ", Texts.get("coldstart.volumesNote")));
    }

    private String volume(StartBand band) {
        return StartTimes.banded(band, units.volume());
    }

    private void drops() {
        section(Texts.get("coldstart.drops", units.pressure().symbol()));
        Table table = new Table(new int[] {NAME_WIDTH, 44, 24, 12}, new boolean[] {false, false, true, true})
                .head(
                        Texts.get("column.candidate"),
                        Texts.get("column.part"),
                        Texts.get("column.greatest"),
                        Texts.get("column.at"));
        for (ColdStartCandidate one : start.candidates()) {
            table.row(
                    one.name(),
                    Texts.get("coldstart.wholeFilter"),
                    StartTimes.banded(one.band(StartQuantity.PEAK_DROP), units.pressure()),
                    "");
            for (PartPeak part : one.parts()) {
                table.row(
                        "",
                        Texts.get("part." + part.part()),
                        StartTimes.banded(part.drop(), units.pressure()),
                        StartTimes.clock(part.time()));
            }
        }
        lines.addAll(table.lines());
    }

    private void events(ColdStartCandidate one) {
        section(Texts.get("coldstart.events", one.name()));
        Table table = new Table(new int[] {9, 42, 11, 11, 11, 13}, new boolean[] {true, false, true, true, true, true})
                .head(
                        Texts.get("column.after"),
                        Texts.get("column.happens"),
                        Texts.get("column.oil", units.temperature().symbol()),
                        Texts.get("column.pump", units.pressure().symbol()),
                        Texts.get("column.gallery", units.pressure().symbol()),
                        Texts.get("column.valve", units.pressure().symbol()));
        List<Event> events = one.events();
        for (Event event : events.subList(0, Math.min(MOST_EVENTS, events.size()))) {
            table.row(
                    StartTimes.clock(event.time()),
                    happening(event),
                    Figures.fixed(units.temperature().of(event.oilTemperature()), 1),
                    Figures.plain3(units.pressure().of(event.pumpPressure())),
                    Figures.plain3(units.pressure().of(event.galleryPressure())),
                    one.hasValve() ? Figures.plain3(units.pressure().of(event.valveDifference())) : Figures.NOTHING);
        }
        lines.addAll(table.lines());
        if (events.size() > MOST_EVENTS) {
            lines.add("  " + Texts.get("coldstart.moreEvents", events.size() - MOST_EVENTS));
        }
        String moved = one.included().stream()
                .limit(MOST_NAMED)
                .map(path -> path.replaceFirst("^candidates\\[\\d+]\\.", ""))
                .collect(Collectors.joining(", "));
        if (!moved.isEmpty() && one.openSeconds().high() > one.openSeconds().low()) {
            lines.addAll(FindingsText.paragraph(
                    "  ", Texts.get("coldstart.included", one.included().size(), moved)));
        }
    }

    /** An event in words, with the phase or valve it is about. */
    private String happening(Event event) {
        if (event.kind().equals("PHASE")) {
            ColdStart.Phase phase = start.phases().get(event.which());
            String name = phase.state().isEmpty()
                    ? Figures.plain(units.rotation().of(phase.speed())) + " "
                            + units.rotation().symbol()
                    : phase.state();
            return Texts.get("event.PHASE", name);
        }
        String which = event.kind().startsWith("RELIEF")
                ? Integer.toString(event.which() + 1)
                : Texts.get(event.which() == 0 ? "event.inFilter" : "event.inBlock");
        return Texts.get("event." + event.kind(), which);
    }

    private String temperature(double kelvin) {
        return Figures.plain(units.temperature().of(kelvin)) + " "
                + units.temperature().symbol();
    }

    private void section(String title) {
        lines.add("");
        lines.add(title);
    }
}

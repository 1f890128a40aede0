package org.coldpleat.ui.commandline;

import org.coldpleat.shared.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.run.PointResult;
import org.coldpleat.model.run.PointResult.Bypass;
import org.coldpleat.model.run.PointResult.EnginePoint;
import org.coldpleat.model.run.PointResult.Part;

/** One operating point as a page for a terminal. */
final class PointText {
    private static final int LABEL_WIDTH = 44;
    private static final int VALUE_WIDTH = 44;

    private final ShownUnits units;
    private final ShownUnits beside;
    private final List<String> lines = new ArrayList<>();

    private PointText(UnitSystem units) {
        this.units = ShownUnits.of(units);
        this.beside = ShownUnits.beside(units);
    }

    static String of(PointResult point, UnitSystem units) {
        PointText page = new PointText(units);
        page.write(point);
        return String.join("\n", page.lines) + "\n";
    }

    private void write(PointResult point) {
        String where = point.state().isEmpty() ? Texts.get("point.flowGiven") : point.state();
        lines.add(Texts.get(
                "point.header", point.candidate(), where, Texts.get("setting." + point.setting()), status(point)));
        Table table = table();
        table.row(Texts.get("point.temperatureLabel"), both(units.temperature(), point.temperature()));
        table.row(Texts.get("point.flowLabel"), both(units.flow(), point.flow()));
        table.row(Texts.get("point.pressureDrop"), both(units.pressure(), point.pressureDrop()));
        table.row(Texts.get("point.elementPressureDrop"), both(units.pressure(), point.elementPressureDrop()));
        lines.addAll(table.lines());
        parts(point.parts());
        point.bypass().ifPresentOrElse(this::bypass, () -> section("point.noValve"));
        oil(point.oil());
        point.engine().ifPresent(this::engine);
        if (!point.notices().isEmpty()) {
            section("point.notices");
            point.notices().forEach(notice -> Table.wrap(NoticeLines.of(notice), CompareText.WIDTH - 4)
                    .forEach(line -> lines.add("  " + line)));
        }
    }

    private static String status(PointResult point) {
        return Texts.getOr("status." + point.status(), point.status());
    }

    private void parts(List<Part> parts) {
        section("point.parts");
        Table table = table();
        for (Part part : parts) {
            table.row(Texts.getOr("part." + part.name(), part.name()), both(units.pressure(), part.pressureDrop()));
        }
        lines.addAll(table.lines());
    }

    private void bypass(Bypass bypass) {
        section(bypass.open() ? "point.bypassOpen" : "point.bypassShut");
        Table table = table();
        table.row(Texts.get("point.valveDifference"), both(units.pressure(), bypass.pressureDrop()));
        table.row(Texts.get("point.openingPressure"), both(units.pressure(), bypass.openingPressure()));
        table.row(Texts.get("point.bypassFlow"), both(units.flow(), bypass.flow()));
        table.row(Texts.get("point.bypassShare"), Figures.percent(bypass.share()) + " %");
        lines.addAll(table.lines());
    }

    private void oil(PointResult.OilPoint oil) {
        section("point.oil");
        Table table = table();
        table.row(Texts.get("point.kinematic"), Figures.plain(oil.kinematicViscosity() * 1e6) + " cSt (mm²/s)");
        table.row(Texts.get("point.dynamic"), Figures.plain(oil.dynamicViscosity() * 1e3) + " mPa·s (cP)");
        table.row(Texts.get("point.density"), Figures.plain(oil.density()) + " kg/m³");
        lines.addAll(table.lines());
    }

    private void engine(EnginePoint engine) {
        section("point.engine");
        Table table = table();
        table.row(Texts.get("point.pumpPressure"), both(units.pressure(), engine.pumpPressure()));
        table.row(Texts.get("point.galleryPressure"), both(units.pressure(), engine.galleryPressure()));
        table.row(Texts.get("point.pumpFlow"), both(units.flow(), engine.pumpFlow()));
        table.row(Texts.get("point.reliefFlow"), both(units.flow(), engine.reliefFlow()));
        table.row(Texts.get("point.galleryFlow"), both(units.flow(), engine.galleryFlow()));
        table.row(Texts.get("point.filmTemperature"), both(units.temperature(), engine.filmTemperature()));
        lines.addAll(table.lines());
    }

    private static Table table() {
        return new Table(new int[] {LABEL_WIDTH, VALUE_WIDTH}, new boolean[] {false, false});
    }

    private void section(String key) {
        lines.add("");
        lines.add(Texts.get(key));
    }

    private String both(ShownUnit unit, double si) {
        ShownUnit other = unit == units.pressure()
                ? beside.pressure()
                : unit == units.flow() ? beside.flow() : beside.temperature();
        return Figures.plain(unit.of(si)) + " " + unit.symbol() + "  (" + Figures.plain(other.of(si)) + " "
                + other.symbol() + ")";
    }
}

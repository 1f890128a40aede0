package org.coldpleat.ui.commandline.point;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.PointResult.Bypass;
import org.coldpleat.model.steady.PointResult.EnginePoint;
import org.coldpleat.model.steady.PointResult.Part;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.NoticeLines;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** One operating point as a page for a terminal. */
final class PointText {
    private static final int LABEL_WIDTH = 44;
    private static final int VALUE_WIDTH = 44;

    private final UnitSystem system;
    private final ShownUnits units;
    private final List<String> lines = new ArrayList<>();

    private PointText(UnitSystem units) {
        this.system = units;
        this.units = ShownUnits.of(units);
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
        table.row(Texts.get("point.temperatureLabel"), temperature(point.temperature()));
        table.row(Texts.get("point.flowLabel"), flow(point.flow()));
        table.row(Texts.get("point.pressureDrop"), pressure(point.pressureDrop()));
        table.row(Texts.get("point.elementPressureDrop"), pressure(point.elementPressureDrop()));
        lines.addAll(table.lines());
        parts(point.parts());
        point.bypass().ifPresentOrElse(this::bypass, () -> section("point.noValve"));
        oil(point.oil());
        point.engine().ifPresent(this::engine);
        if (!point.notices().isEmpty()) {
            section("point.notices");
            point.notices()
                    .forEach(notice -> Table.wrap(NoticeLines.of(notice, system), CompareText.WIDTH - 4)
                            .forEach(line -> lines.add("  " + line)));
        }
    }

    private static String status(PointResult point) {
        return Texts.getOr("status." + point.status(), point.status());
    }

    private void parts(List<Part> parts) {
        section("point.parts");
        Table table = table();
        boolean flows = parts.stream().anyMatch(part -> part.pressureDrop() != 0);
        for (Part part : parts) {
            String drop = part.pressureDrop() == 0 && flows ? Texts.get("point.noPart") : pressure(part.pressureDrop());
            table.row(Texts.getOr("part." + part.name(), part.name()), drop);
        }
        lines.addAll(table.lines());
    }

    private void bypass(Bypass bypass) {
        section(bypass.open() ? "point.bypassOpen" : "point.bypassShut");
        Table table = table();
        table.row(Texts.get("point.valveDifference"), pressure(bypass.pressureDrop()));
        table.row(Texts.get("point.openingPressure"), pressure(bypass.openingPressure()));
        table.row(Texts.get("point.bypassFlow"), flow(bypass.flow()));
        table.row(Texts.get("point.bypassShare"), Figures.percent(bypass.share()) + " %");
        lines.addAll(table.lines());
    }

    private void oil(PointResult.OilPoint oil) {
        section("point.oil");
        Table table = table();
        table.row(Texts.get("point.kinematic"), named(Kind.KINEMATIC_VISCOSITY, oil.kinematicViscosity()));
        table.row(Texts.get("point.dynamic"), named(Kind.DYNAMIC_VISCOSITY, oil.dynamicViscosity()));
        table.row(Texts.get("point.density"), alone(units.of(Kind.DENSITY), oil.density()));
        lines.addAll(table.lines());
    }

    private void engine(EnginePoint engine) {
        section("point.engine");
        Table table = table();
        table.row(Texts.get("point.pumpPressure"), pressure(engine.pumpPressure()));
        table.row(Texts.get("point.galleryPressure"), pressure(engine.galleryPressure()));
        table.row(Texts.get("point.pumpFlow"), flow(engine.pumpFlow()));
        table.row(Texts.get("point.reliefFlow"), flow(engine.reliefFlow()));
        table.row(Texts.get("point.galleryFlow"), flow(engine.galleryFlow()));
        table.row(Texts.get("point.filmTemperature"), temperature(engine.filmTemperature()));
        lines.addAll(table.lines());
    }

    private static Table table() {
        return new Table(new int[] {LABEL_WIDTH, VALUE_WIDTH}, new boolean[] {false, false});
    }

    private void section(String key) {
        lines.add("");
        lines.add(Texts.get(key));
    }

    private String pressure(double si) {
        return both(Kind.PRESSURE_DIFFERENCE, si);
    }

    private String flow(double si) {
        return both(Kind.FLOW_RATE, si);
    }

    private String temperature(double si) {
        return both(Kind.TEMPERATURE, si);
    }

    private String both(Kind kind, double si) {
        return alone(units.of(kind), si) + units.beside(other -> other.of(kind), unit -> alone(unit, si));
    }

    /** A viscosity, whose number is the same in units of the US trade. */
    private String named(Kind kind, double si) {
        return alone(units.of(kind), si) + units.beside(other -> other.of(kind), ShownUnit::symbol);
    }

    private static String alone(ShownUnit unit, double si) {
        return Figures.plain(unit.of(si)) + " " + unit.symbol();
    }
}

package org.coldpleat.ui.commandline;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.coldpleat.model.run.PointResult;
import org.coldpleat.model.run.PointResult.Bypass;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;

/** Operating points for a spreadsheet: one row each, units in the header, full precision; blank where there is no valve. */
final class PointsCsv {
    private PointsCsv() {}

    static String of(List<PointResult> points, UnitSystem system) {
        ShownUnits units = ShownUnits.of(system);
        String pressure = units.pressure().symbol();
        CsvWriter csv = new CsvWriter()
                .text(Texts.get("csv.candidate"))
                .text(Texts.get("csv.setting"))
                .text(Texts.get("csv.state"))
                .text(Texts.get("csv.temperature", units.temperature().symbol()))
                .text(Texts.get("csv.flow", units.flow().symbol()))
                .text(Texts.get("csv.filterDrop", pressure))
                .text(Texts.get("csv.acrossValve", pressure))
                .text(Texts.get("csv.valveOpens", pressure))
                .text(Texts.get("csv.mapShare"))
                .text(Texts.get("csv.solved"))
                .endRow();
        for (PointResult point : points) {
            csv.text(point.candidate())
                    .text(point.setting())
                    .text(point.state())
                    .number(units.temperature().of(point.temperature()))
                    .number(units.flow().of(point.flow()))
                    .number(units.pressure().of(point.pressureDrop()))
                    .number(valve(point, bypass -> units.pressure().of(bypass.pressureDrop())))
                    .number(valve(point, bypass -> units.pressure().of(bypass.openingPressure())))
                    .number(valve(point, Bypass::share))
                    .text(point.status())
                    .endRow();
        }
        return csv.finished();
    }

    private static double valve(PointResult point, ToDoubleFunction<Bypass> value) {
        return point.bypass().map(value::applyAsDouble).orElse(Double.NaN);
    }
}

package org.coldpleat.ui.commandline;

import org.coldpleat.model.run.MapResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;

/** A map of the bypass share, as JSON described by {@code map-v1.schema.json} or as a table for a spreadsheet. */
final class MapOutput {
    private MapOutput() {}

    static String json(MapResult map) {
        JsonText json = new JsonText();
        json.element()
                .text("schemaVersion", "map-v1")
                .text("programVersion", ProgramVersion.text())
                .text("candidate", map.candidate())
                .text("setting", map.setting())
                .numbers("temperature_K", map.temperature())
                .numbers(isEngine(map) ? "speed_rev_s" : "flow_m3_s", map.drive())
                .array("share");
        for (double[] row : map.share()) {
            json.numbers("", row);
        }
        return json.endArray().endObject().finished();
    }

    /** One row a point: temperature, speed or flow, share. */
    static String csv(MapResult map, UnitSystem system) {
        ShownUnits units = ShownUnits.of(system);
        ShownUnit drive = isEngine(map) ? units.rotation() : units.flow();
        CsvWriter csv = new CsvWriter()
                .text("candidate")
                .text(Texts.get("csv.temperature", units.temperature().symbol()))
                .text(Texts.get(isEngine(map) ? "csv.speed" : "csv.flow", drive.symbol()))
                .text(Texts.get("csv.mapShare"))
                .endRow();
        for (int t = 0; t < map.temperature().length; t++) {
            for (int d = 0; d < map.drive().length; d++) {
                csv.text(map.candidate())
                        .number(units.temperature().of(map.temperature()[t]))
                        .number(drive.of(map.drive()[d]))
                        .number(map.share()[t][d])
                        .endRow();
            }
        }
        return csv.finished();
    }

    static boolean isEngine(MapResult map) {
        return map.setting().equals("engine");
    }
}

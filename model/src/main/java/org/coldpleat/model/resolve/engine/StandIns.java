package org.coldpleat.model.resolve.engine;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.casefile.Completion;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/** Puts typical values of one engine into a case where it states none, and keeps which row of the table each rests on. */
final class StandIns {
    private final TypicalEngine typical;
    private final Map<String, TypicalEngine.Row> rows = new LinkedHashMap<>();

    StandIns(TypicalEngine typical) {
        this.typical = typical;
    }

    TypicalEngine typical() {
        return typical;
    }

    /** Fills in a typical quantity as it stands in the table. */
    void fill(Completion section, String key, String quantity, Kind kind) {
        fill(section, key, quantity, kind, 1);
    }

    /** Fills in a typical quantity times a factor [1]. */
    void fill(Completion section, String key, String quantity, Kind kind, double factor) {
        put(section, key, quantity, typical.of(quantity, kind, factor));
    }

    /** Fills in a value of another kind that follows from a typical quantity and is known within the same factor. */
    void following(Completion section, String key, String quantity, Kind kind, double value, Measured from) {
        put(section, key, quantity, Measured.factor(kind, value, from.halfWidth(), Provenance.TYPICAL));
    }

    private void put(Completion section, String key, String quantity, Measured value) {
        if (!section.has(key)) {
            rows.put(section.pathOf(key), typical.row(quantity));
        }
        section.quantity(key, value);
    }

    /** The row behind each value that was filled in, by the path of the value. */
    Map<String, TypicalEngine.Row> rows() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(rows));
    }
}

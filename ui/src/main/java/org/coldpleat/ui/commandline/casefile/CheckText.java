package org.coldpleat.ui.commandline.casefile;

import java.util.Locale;
import java.util.Map;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** Every quantity of a case as it was understood: as written, in SI, and in both families of trade units. */
final class CheckText {
    private static final int[] WIDEST = {44, 24, 26, 24, 24};
    private static final boolean[] RIGHT = new boolean[WIDEST.length];

    private CheckText() {}

    static String of(OpenedCase opened) {
        Table table = new Table(WIDEST, RIGHT)
                .head(
                        Texts.get("check.field"),
                        Texts.get("check.written"),
                        Texts.get("check.si"),
                        Texts.get("check.metric"),
                        Texts.get("check.us"));
        for (Map.Entry<String, Measured> entry : opened.understood().entrySet()) {
            Measured value = entry.getValue();
            table.row(
                    entry.getKey(),
                    value.written() + " [" + value.provenance().name().toLowerCase(Locale.ROOT) + "]",
                    QuantityFormat.format(value, UnitSystem.SI),
                    QuantityFormat.format(value, UnitSystem.METRIC),
                    QuantityFormat.format(value, UnitSystem.US));
        }
        return Texts.get("check.spreads") + "\n\n" + String.join("\n", table.lines()) + "\n";
    }
}

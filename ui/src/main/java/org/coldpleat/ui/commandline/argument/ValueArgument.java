package org.coldpleat.ui.commandline.argument;

import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityReading;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.quantity.Units;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.Texts;

/** A quantity on the command line, written with its unit. */
public final class ValueArgument {
    private static final double ICE_POINT =
            Units.require(Kind.TEMPERATURE, "degC").offset();

    /** Coldest oil temperature the oil laws cover [K]: -40 °C. */
    static final double COLDEST = ICE_POINT - 40;

    /** Warmest oil temperature the oil laws cover [K]: 150 °C. */
    static final double WARMEST = ICE_POINT + 150;

    private ValueArgument() {}

    /** An oil temperature [K] within the range of the oil laws. */
    public static double temperature(String option, String text) {
        double kelvin = parse(option, text, Kind.TEMPERATURE);
        if (kelvin < COLDEST || kelvin > WARMEST) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.temperatureRange", option, text));
        }
        return kelvin;
    }

    /** A value above 0 in the SI unit of its kind. */
    public static double positive(String option, String text, Kind kind) {
        double value = parse(option, text, kind);
        if (!(value > 0)) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.notPositive", option, text));
        }
        return value;
    }

    private static double parse(String option, String text, Kind kind) {
        QuantityReading reading = QuantityText.parse(text, kind, Provenance.MEASURED);
        return reading.value()
                .orElseThrow(() -> new Stop(
                        ExitCode.BAD_INPUT,
                        Texts.get(
                                "error.value",
                                option,
                                text,
                                Sentences.of(reading.problem().orElseThrow()))))
                .value();
    }
}

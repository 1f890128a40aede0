package org.coldpleat.ui.chart.style;

import java.util.Locale;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;

/** Writes amounts short enough for a picture, in the units that are preferred. */
public final class UnitWords {
    private static final double MILLIMETER = 1e-3;

    private final ChartUnits units;
    private final Unit length;

    private UnitWords(UnitSystem preferred) {
        units = ChartUnits.of(preferred);
        length = (preferred == UnitSystem.US ? preferred : UnitSystem.METRIC).unit(Kind.LENGTH);
    }

    /** Words in the units of a family; lengths of parts are in millimeters in SI too. */
    public static UnitWords of(UnitSystem preferred) {
        return new UnitWords(preferred);
    }

    /** A temperature [K] in whole degrees. */
    public String temperature(double kelvin) {
        String number = String.format(Locale.ROOT, "%.0f", units.temperature().fromSi(kelvin));
        return with(number.equals("-0") ? "0" : number.replace('-', '−'), units.temperature());
    }

    /** A pressure [Pa]. */
    public String pressure(double pascal) {
        return amount(pascal, units.pressure());
    }

    /** The number of a pressure [Pa] without its unit. */
    public String pressureNumber(double pascal) {
        return Charts.number(units.pressure().fromSi(pascal));
    }

    /** Symbol of the unit of pressures. */
    public String pressureSymbol() {
        return units.pressure().symbol();
    }

    /** A flow [m3/s]. */
    public String flow(double flow) {
        return amount(flow, units.flow());
    }

    /** A length [mm]. */
    public String length(double millimeters) {
        return amount(MILLIMETER * millimeters, length);
    }

    private static String amount(double si, Unit unit) {
        return with(Double.isFinite(si) ? Charts.number(unit.fromSi(si)) : ChartTexts.get("number.unknown"), unit);
    }

    private static String with(String number, Unit unit) {
        return ChartTexts.get("number.unit", number, unit.symbol());
    }
}

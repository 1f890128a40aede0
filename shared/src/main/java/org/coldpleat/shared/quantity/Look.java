package org.coldpleat.shared.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/**
 * How a number of a sentence is read: its unit and digits in metric trade units, in units of the US trade and in SI.
 * Where the US unit also stands in brackets behind the metric one it is named {@code beside}. SI takes the liter, minute
 * and hour in, and the prefixes that people read (SI brochure, 9th edition 2019, table 8).
 */
public enum Look {
    /** Pressure [Pa]. */
    PRESSURE(Kind.PRESSURE_DIFFERENCE, "%.0f kPa", "%.1f psi", true),
    /** Pressure, metric only [Pa]. */
    PLAIN_PRESSURE(Kind.PRESSURE_DIFFERENCE, "%.0f kPa", "%.1f psi", false),
    /** Pressure to three digits [Pa]. */
    SHARP_PRESSURE(Kind.PRESSURE_DIFFERENCE, "%.3g kPa", "%.3g psi", false),
    /** Pressure of a bench, from pascals up [Pa]. */
    BENCH_PRESSURE(Kind.PRESSURE_DIFFERENCE, "%.2f kPa", "%.3f psi", false),
    /** Mechanical stress [Pa]. */
    STRESS(Kind.STRESS, "%.0f MPa", "%.1f ksi", false),
    /** Temperature [K]. */
    TEMPERATURE(Kind.TEMPERATURE, "%.1f °C", "%.0f °F", "%.1f K", true),
    /** Temperature, metric only, no zero behind the point [K]. */
    PLAIN_TEMPERATURE(Kind.TEMPERATURE, "%.1f °C", "%.0f °F", "%.1f K", false),
    /** Temperature, metric only, to a tenth [K]. */
    TENTH_TEMPERATURE(Kind.TEMPERATURE, "%.1f °C", "%.0f °F", "%.1f K", false),
    /** Difference of temperatures [K]. */
    DIFFERENCE(Kind.TEMPERATURE_DIFFERENCE, "%.1f K", "%.0f °F", false),
    /** Temperature, thermodynamic [K]. */
    KELVIN(Kind.TEMPERATURE, "%.1f K", "%.0f °F", false),
    /** Area [m2]. */
    AREA(Kind.AREA, "%.0f cm²", "%.0f in²", "%.4f m²", true),
    /** Area of a sheet [m2]. */
    SHEET_AREA(Kind.AREA, "%.0f cm²", "%.1f in²", "%.4f m²", true),
    /** Length of a part [m]. */
    LENGTH(Kind.LENGTH, "%.2f mm", "%.3f in", false),
    /** Length to a tenth of a millimeter [m]. */
    PLEAT_LENGTH(Kind.LENGTH, "%.1f mm", "%.2f in", false),
    /** Length to three digits [m]. */
    SHARP_LENGTH(Kind.LENGTH, "%.3g mm", "%.3g in", false),
    /** Size of a fiber, pore or particle, in microns everywhere in the trade [m]. */
    SIZE(Kind.LENGTH, "%.3g µm", "%.3g µm", false),
    /** Mass of dirt, in grams everywhere in the trade [kg]. */
    MASS(Kind.MASS, "%.3g g", "%.3g g", false),
    /** Dirt on an area [kg/m2]. */
    DIRT(Kind.BASIS_WEIGHT, "%.0f g/m²", "%.1f g/ft²", false),
    /** Dirt on an area, small [kg/m2]. */
    FINE_DIRT(Kind.BASIS_WEIGHT, "%.0f mg/cm²", "%.1f g/ft²", false),
    /** Volume, from milliliters up [m3]. */
    VOLUME(Kind.VOLUME, "%.2f L", "%.2f qt", false),
    /** Volume to three digits [m3]. */
    SHARP_VOLUME(Kind.VOLUME, "%.3g L", "%.3g qt", false),
    /** Volume to two digits [m3]. */
    ROUGH_VOLUME(Kind.VOLUME, "%.2g L", "%.2g qt", false),
    /** Leak of a flap [m3/s]. */
    LEAK(Kind.FLOW_RATE, "%.3g mL/h", "%.3g fl oz/h", false),
    /** Flow [m3/s]. */
    FLOW(Kind.FLOW_RATE, "%.1f L/min", "%.2f gpm", false),
    /** Speed of a shaft [rev/s]. */
    SPEED(Kind.ROTATION, "%.0f rpm", "%.0f rpm", false),
    /** Kinematic viscosity [m2/s]. */
    KINEMATIC(Kind.KINEMATIC_VISCOSITY, "%s mm²/s", "%s cSt", false),
    /** Dynamic viscosity [Pa s]. */
    DYNAMIC(Kind.DYNAMIC_VISCOSITY, "%s mPa s", "%s cP", false),
    /** Density [kg/m3]. */
    DENSITY(Kind.DENSITY, "%.0f kg/m³", "%.1f lb/ft³", false),
    /** Spring rate [N/m]. */
    SPRING(Kind.SPRING_RATE, "%.2g N/mm", "%.2g lbf/in", false),
    /** Resistance of a medium [1/m]. */
    RESISTANCE(Kind.MEDIUM_RESISTANCE, "%.3g 1/m", "%.3g 1/m", false),
    /** Time as people say it [s]. */
    DURATION(Kind.DURATION, "%.1f s", "%.1f s", false),
    /** Time to hundredths while short [s]. */
    SECONDS(Kind.DURATION, "%.2f s", "%.2f s", false),
    /** Hours [s]. */
    HOURS(Kind.DURATION, "%.0f h", "%.0f h", false),
    /** Hours to two digits [s]. */
    ROUGH_HOURS(Kind.DURATION, "%.0f h", "%.0f h", false),
    /** Hours to three digits [s]. */
    SHARP_HOURS(Kind.DURATION, "%.3g h", "%.3g h", false),
    /** Share, finer below 1 % [1]. */
    PERCENT(Kind.FRACTION, "%.0f %%", "%.0f %%", false),
    /** Share to whole percent [1]. */
    WHOLE_PERCENT(Kind.FRACTION, "%.0f %%", "%.0f %%", false),
    /** Share to a tenth of a percent [1]. */
    TENTH_PERCENT(Kind.FRACTION, "%.1f %%", "%.1f %%", false),
    /** Share, finer below 10 % [1]. */
    BENCH_PERCENT(Kind.FRACTION, "%.0f %%", "%.0f %%", false),
    /** Share to two digits [1]. */
    ROUGH_PERCENT(Kind.FRACTION, "%.2g %%", "%.2g %%", false),
    /** Change by a share, with its sign [1]. */
    CHANGE(Kind.FRACTION, "%+.0f %%", "%+.0f %%", false),
    /** Ratio to two digits [1]. */
    RATIO(Kind.RATIO, "%.2g", "%.2g", false),
    /** Ratio to three digits [1]. */
    SHARP_RATIO(Kind.RATIO, "%.3g", "%.3g", false),
    /** Ratio to three digits without powers of ten [1]. */
    PLAIN_RATIO(Kind.RATIO, "%s", "%s", false),
    /** Ratio to a whole number [1]. */
    WHOLE_RATIO(Kind.RATIO, "%.0f", "%.0f", false),
    /** Ratio to a tenth [1]. */
    TENTH_RATIO(Kind.RATIO, "%.1f", "%.1f", false),
    /** Ratio to a hundredth [1]. */
    HUNDREDTH_RATIO(Kind.RATIO, "%.2f", "%.2f", false),
    /** Ratio to a thousandth [1]. */
    THOUSANDTH_RATIO(Kind.RATIO, "%.3f", "%.3f", false),
    /** Ratio as a power of ten [1]. */
    POWER_RATIO(Kind.RATIO, "%.1e", "%.1e", false);

    private static final MathContext THREE_DIGITS = new MathContext(3);

    private final Kind kind;
    private final String metric;
    private final String us;
    private final String si;
    private final boolean beside;

    Look(Kind kind, String metric, String us, boolean beside) {
        this(kind, metric, us, metric, beside);
    }

    Look(Kind kind, String metric, String us, String si, boolean beside) {
        this.kind = kind;
        this.metric = metric;
        this.us = us;
        this.si = si;
        this.beside = beside;
    }

    /** What the number measures. */
    public Kind kind() {
        return kind;
    }

    /**
     * An amount of a written sentence, such as {@code 0.2 mm}, in the units of a system; one whose unit no look has stays as
     * it is.
     */
    public static String written(String number, String symbol, UnitSystem system) {
        if (system != UnitSystem.METRIC) {
            for (Look look : values()) {
                if (look.metric.endsWith(" " + symbol) || (system == UnitSystem.SI && look.us.endsWith(" " + symbol))) {
                    double value = Units.require(look.kind, symbol).toSi(Double.parseDouble(number));
                    return look.text(value, system);
                }
            }
        }
        return number + " " + symbol;
    }

    /** A value [SI] in the units of a system. */
    public String text(double value, UnitSystem system) {
        return switch (system) {
            case US -> text(value, us);
            case SI -> text(value, si);
            case METRIC -> text(value, metric) + (beside ? " (" + text(value, us) + ")" : "");
        };
    }

    private String text(double value, String pattern) {
        return switch (this) {
            case DURATION -> duration(value);
            case VOLUME -> volume(value, pattern.equals(us));
            case DIFFERENCE -> pattern.equals(us) && Math.abs(value) < 5 ? in(value, "%.1f °F") : in(value, pattern);
            case SECONDS -> in(value, value < 10 ? pattern : "%.0f s");
            case ROUGH_HOURS -> roughHours(value);
            case BENCH_PRESSURE ->
                !pattern.equals(us) && Math.abs(value) < 1000 ? in(value, "%.0f Pa") : in(value, pattern);
            case PERCENT -> in(value, value > 0 && value < 0.01 ? "%.2f %%" : pattern);
            case BENCH_PERCENT -> in(value, Math.abs(value) < 0.1 ? "%.1f %%" : pattern);
            case CHANGE -> Math.abs(value) < 0.005 ? "0 %" : in(value, pattern);
            case PLAIN_TEMPERATURE -> in(value, pattern).replaceFirst("\\.0 ", " ");
            default -> in(value, pattern);
        };
    }

    /** A value [SI] in the unit and with the digits of a pattern. */
    private String in(double value, String pattern) {
        int space = pattern.indexOf(' ');
        double number = Units.require(
                        kind, space < 0 ? "1" : pattern.substring(space + 1).replace("%%", "%"))
                .fromSi(value);
        if (pattern.startsWith("%s")) {
            String digits = Double.isFinite(number)
                    ? new BigDecimal(number).round(THREE_DIGITS).toPlainString()
                    : Double.toString(number);
            return digits + pattern.substring(2);
        }
        String text = String.format(Locale.ROOT, pattern, number);
        return text.matches("-0(\\.0+)?( .*)?") ? text.substring(1) : text;
    }

    private String volume(double value, boolean inUs) {
        if (value != 0 && Math.abs(value) < 1e-4) {
            return in(value, inUs ? "%.3g fl oz" : "%.3g mL");
        }
        return in(value, (Math.abs(value) < 1e-2 ? "%.2f " : "%.1f ") + (inUs ? "qt" : "L"));
    }

    private String roughHours(double seconds) {
        double hours = seconds / 3600;
        if (!Double.isFinite(hours) || hours == 0) {
            return in(seconds, metric);
        }
        double unit = Math.pow(10, Math.floor(Math.log10(hours)) - 1);
        return hours < 10 ? in(seconds, "%.1f h") : in(Math.rint(hours / unit) * unit * 3600, metric);
    }

    private String duration(double seconds) {
        if (seconds < 59.5) {
            return in(seconds, seconds < 9.95 ? metric : "%.0f s");
        }
        long whole = Math.round(seconds);
        return whole < 3600
                ? String.format(Locale.ROOT, "%d min %02d s", whole / 60, whole % 60)
                : String.format(Locale.ROOT, "%d h %02d min", whole / 3600, whole % 3600 / 60);
    }
}

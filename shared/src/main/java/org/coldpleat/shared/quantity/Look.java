package org.coldpleat.shared.quantity;

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
    /** Pressure to three digits, from pascals up [Pa]. */
    SHARP_PRESSURE(Kind.PRESSURE_DIFFERENCE, "%s kPa", "%s psi", false),
    /** Mechanical stress [Pa]. */
    STRESS(Kind.STRESS, "%.0f MPa", "%.1f ksi", false),
    /** Temperature [K]. */
    TEMPERATURE(Kind.TEMPERATURE, "%.1f °C", "%.0f °F", "%.1f K", true),
    /** Temperature, metric only [K]. */
    PLAIN_TEMPERATURE(Kind.TEMPERATURE, "%.1f °C", "%.0f °F", "%.1f K", false),
    /** Difference of temperatures [K]. */
    DIFFERENCE(Kind.TEMPERATURE_DIFFERENCE, "%.1f K", "%.0f °F", false),
    /** Area [m2]. */
    AREA(Kind.AREA, "%.0f cm²", "%.0f in²", "%.4f m²", true),
    /** Length to a hundredth of a millimeter [m]. */
    LENGTH(Kind.LENGTH, "%.2f mm", "%.3f in", false),
    /** Length to three digits [m]. */
    SHARP_LENGTH(Kind.LENGTH, "%s mm", "%s in", false),
    /** Size of a fiber, pore or particle, in microns everywhere in the trade [m]. */
    SIZE(Kind.LENGTH, "%s µm", "%s µm", false),
    /** Mass of dirt, in grams everywhere in the trade [kg]. */
    MASS(Kind.MASS, "%s g", "%s g", false),
    /** Dirt on an area [kg/m2]. */
    DIRT(Kind.BASIS_WEIGHT, "%.0f g/m²", "%.1f g/ft²", false),
    /** Dirt on an area, small [kg/m2]. */
    FINE_DIRT(Kind.BASIS_WEIGHT, "%.0f mg/cm²", "%.1f g/ft²", false),
    /** Volume, from milliliters up [m3]. */
    VOLUME(Kind.VOLUME, "%.2f L", "%.2f qt", false),
    /** Volume to two digits in the same unit whatever its size [m3]. */
    ROUGH_VOLUME(Kind.VOLUME, "%.2g L", "%.2g qt", false),
    /** Leak of a flap [m3/s]. */
    LEAK(Kind.FLOW_RATE, "%s mL/h", "%s fl oz/h", false),
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
    /** Hours [s]. */
    HOURS(Kind.DURATION, "%.0f h", "%.0f h", false),
    /** Hours to two digits [s]. */
    ROUGH_HOURS(Kind.DURATION, "%.0f h", "%.0f h", false),
    /** Share, finer below 1 % [1]. */
    PERCENT(Kind.FRACTION, "%.0f %%", "%.0f %%", false),
    /** Share to a tenth of a percent [1]. */
    TENTH_PERCENT(Kind.FRACTION, "%.1f %%", "%.1f %%", false),
    /** Change by a share, with its sign [1]. */
    CHANGE(Kind.FRACTION, "%+.0f %%", "%+.0f %%", false),
    /** Ratio to two digits [1]. */
    RATIO(Kind.RATIO, "%.2g", "%.2g", false),
    /** Ratio to three digits [1]. */
    PLAIN_RATIO(Kind.RATIO, "%s", "%s", false),
    /** Ratio as a power of ten [1]. */
    POWER_RATIO(Kind.RATIO, "%.1e", "%.1e", false);

    /** Least share that is told as more than nothing [1]. */
    private static final double LEAST = 1e-4;

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
                if (look.metric.endsWith(" " + symbol)) {
                    double value = Units.require(look.kind, symbol).toSi(Double.parseDouble(number));
                    return look.text(value, 0, system);
                }
            }
        }
        return number + " " + symbol;
    }

    /**
     * A value in the units of a system.
     *
     * @param value [SI]
     * @param band half-width of its 95 % band [SI]; 0 if none is stated
     */
    String text(double value, double band, UnitSystem system) {
        return switch (system) {
            case US -> text(value, band, us);
            case SI -> text(value, band, si);
            case METRIC -> text(value, band, metric) + (beside ? " (" + text(value, band, us) + ")" : "");
        };
    }

    private String text(double value, double band, String pattern) {
        boolean inUs = pattern.equals(us);
        return switch (this) {
            case DURATION ->
                value < AmountText.MINUTES
                        ? in(value, band, value < 9.95 ? pattern : "%.0f s")
                        : AmountText.duration(value, band);
            case VOLUME -> in(value, band, volume(Math.abs(value), band, inUs));
            case DIFFERENCE -> in(value, band, inUs && Math.abs(value) < 5 ? "%.1f °F" : pattern);
            case ROUGH_HOURS ->
                in(value, Math.max(band, decade(value)), value > 0 && value < 36_000 ? "%.1f h" : pattern);
            case SHARP_PRESSURE -> in(value, band, !inUs && Math.abs(value) < 1000 ? "%.0f Pa" : pattern);
            case PERCENT -> {
                boolean below = value > 0 && value < LEAST / 2;
                yield (below ? "<" : "")
                        + in(below ? LEAST : value, band, value > 0 && value < 0.01 ? "%.2f %%" : pattern);
            }
            case CHANGE -> in(value, band, Math.abs(value) < 0.005 ? "%.0f %%" : pattern);
            case TEMPERATURE, PLAIN_TEMPERATURE -> {
                String text = in(value, band, pattern);
                yield band > 0 ? text : text.replaceFirst("\\.0 ", " ");
            }
            case RATIO -> in(value, band, Math.abs(value) < 99.5 ? pattern : "%.0f");
            default -> in(value, band, pattern);
        };
    }

    private String in(double value, double band, String pattern) {
        return AmountText.of(kind, value, band, pattern);
    }

    /** Value and ends of a wide band are told in one unit. */
    private static String volume(double size, double band, boolean inUs) {
        if (size != 0 && Math.max(size, 2 * band) < 1e-4) {
            return inUs ? "%s fl oz" : "%s mL";
        }
        return (size < 1e-2 ? "%.2f " : "%.1f ") + (inUs ? "qt" : "L");
    }

    /** A band that leaves two digits of a time [s]. */
    private static double decade(double seconds) {
        return seconds > 0 ? 3600 * Math.pow(10, Math.floor(Math.log10(seconds / 3600))) : 0;
    }
}

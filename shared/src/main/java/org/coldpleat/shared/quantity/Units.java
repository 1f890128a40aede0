package org.coldpleat.shared.quantity;

import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coldpleat.shared.source.Source;

/**
 * The units understood for each kind, the SI unit first. Letters count as written, since mPa and MPa differ by a factor
 * of 1e9; spaces, product dots, carets, brackets and the raised forms of 2 and 3 do not count.
 */
public final class Units {
    @Source("International Yard and Pound Agreement 1959; NIST SP 811 (2008), B.8")
    private static final double INCH = 0.0254;

    @Source("International Yard and Pound Agreement 1959; NIST SP 811 (2008), B.8")
    private static final double FOOT = 12 * INCH;

    @Source("International Yard and Pound Agreement 1959; NIST SP 811 (2008), B.8")
    private static final double YARD = 3 * FOOT;

    @Source("International Yard and Pound Agreement 1959; NIST SP 811 (2008), B.8")
    private static final double POUND = 0.45359237;

    private static final double OUNCE = POUND / 16;

    @Source("3rd CGPM 1901, conventional free fall [m/s2]; NIST SP 811 (2008), B.8")
    private static final double FREE_FALL = 9.80665;

    private static final double POUND_FORCE = POUND * FREE_FALL;
    private static final double PSI = POUND_FORCE / (INCH * INCH);

    @Source("NIST SP 811 (2008), B.8: conventional millimeter of water, 1000 kg/m3 under conventional free fall [Pa]")
    private static final double MILLIMETER_OF_WATER = FREE_FALL;

    @Source("NIST SP 811 (2008), B.8: 231 cubic inches")
    private static final double GALLON = 231 * INCH * INCH * INCH;

    private static final double QUART = GALLON / 4;
    private static final double FLUID_OUNCE = GALLON / 128;

    @Source("NIST SP 811 (2008), B.8: 1 cP cm/s over 1 atm/cm, with the standard atmosphere 101325 Pa [m2]")
    private static final double DARCY = 1e-3 * 1e-2 * 1e-2 / 101_325;

    @Source("SI brochure, 9th edition 2019, 2.3.4, table 4: degree Celsius [K]")
    private static final double ICE_POINT = 273.15;

    @Source("NIST SP 811 (2008), B.9: T/K = (t/F + 459.67)/1.8")
    private static final double FAHRENHEIT_ZERO = 459.67 / 1.8;

    @Source("NIST SP 811 (2008), B.8: 550 foot pound-force per second [W]")
    private static final double HORSEPOWER = 550 * FOOT * POUND_FORCE;

    @Source("NIST SP 811 (2008), B.8: 75 kilogram-force meter per second [W]")
    private static final double METRIC_HORSEPOWER = 75 * FREE_FALL;

    @Source("NIST SP 811 (2008), B.8: British thermal unit, international table [J]")
    private static final double BTU = 1055.05585262;

    private static final double LITER = 1e-3;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    private static final Map<Kind, List<Unit>> BY_KIND = table();
    private static final Map<Kind, Map<String, Unit>> BY_KEY = keys();

    private Units() {}

    /** The units understood for a kind, the SI unit first. Empty list for none is never returned. */
    public static List<Unit> of(Kind kind) {
        return BY_KIND.get(kind);
    }

    /** The unit that a piece of text names for a kind. */
    public static Optional<Unit> find(Kind kind, String text) {
        return Optional.ofNullable(BY_KEY.get(kind).get(key(text)));
    }

    /** The unit of a kind with exactly this symbol. */
    public static Unit require(Kind kind, String symbol) {
        return find(kind, symbol).orElseThrow(() -> new IllegalArgumentException("no unit " + symbol + " for " + kind));
    }

    /** The first kind for which the text names a unit, other than the dimensionless ones. */
    public static Optional<Kind> kindOf(String text) {
        for (Kind kind : Kind.values()) {
            if (!key(text).isEmpty() && find(kind, text).isPresent()) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** True for kinds that may stand without a unit: counts, ratios and shares. */
    public static boolean mayStandBare(Kind kind) {
        return kind == Kind.COUNT || kind == Kind.RATIO || kind == Kind.FRACTION;
    }

    /** The symbols to offer for a kind, in table order; the bare 1 is left out. */
    public static List<String> symbols(Kind kind) {
        return of(kind).stream().map(Unit::symbol).filter(s -> !s.equals("1")).toList();
    }

    /** Plain words for a kind, such as {@code kinematic viscosity}. */
    public static String words(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Brings the ways of writing one unit together. */
    static String key(String text) {
        StringBuilder key = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '²' -> key.append('2');
                case '³' -> key.append('3');
                case 'µ', 'μ' -> key.append('u');
                case '°', 'º', '˚' -> key.append("deg");
                case '℃' -> key.append("degC");
                case '℉' -> key.append("degF");
                case '″', '”', '“' -> key.append('"');
                case '′', '’', '‘' -> key.append('\'');
                case '·', '⋅', '∙', '•', '*', '×', '.', '^', '(', ')', ' ', '\t', '\u00a0', '\u2009', '\u202f' -> {}
                default -> key.append(c);
            }
        }
        return key.toString().replace("''", "\"");
    }

    private static Unit unit(String symbol, double factor, String... aliases) {
        return new Unit(symbol, factor, 0, List.of(aliases));
    }

    private static Map<Kind, List<Unit>> table() {
        Map<Kind, List<Unit>> table = new EnumMap<>(Kind.class);
        table.put(
                Kind.LENGTH,
                List.of(
                        unit("m", 1),
                        unit("mm", 1e-3),
                        unit("cm", 1e-2),
                        unit("um", 1e-6, "micron", "microns", "micrometer"),
                        unit("in", INCH, "\"", "inch", "inches"),
                        unit("thou", INCH / 1000, "mil", "mils"),
                        unit("ft", FOOT, "'", "foot", "feet")));
        table.put(
                Kind.AREA,
                List.of(
                        unit("m2", 1),
                        unit("cm2", 1e-4, "sq cm"),
                        unit("mm2", 1e-6, "sq mm"),
                        unit("in2", INCH * INCH, "sq in", "sq inch"),
                        unit("ft2", FOOT * FOOT, "sq ft")));
        table.put(
                Kind.VOLUME,
                List.of(
                        unit("m3", 1),
                        unit("L", LITER, "l", "liter", "liters", "litre", "litres"),
                        unit("mL", 1e-6, "ml"),
                        unit("cm3", 1e-6, "cc", "ccm"),
                        unit("mm3", 1e-9),
                        unit("in3", INCH * INCH * INCH, "cu in"),
                        unit("gal", GALLON),
                        unit("qt", QUART, "quart", "quarts"),
                        unit("fl oz", FLUID_OUNCE, "oz fl")));
        table.put(
                Kind.MASS,
                List.of(
                        unit("kg", 1),
                        unit("g", 1e-3, "gram", "grams"),
                        unit("mg", 1e-6),
                        unit("oz", OUNCE),
                        unit("lb", POUND, "lbs")));
        table.put(
                Kind.MASS_RATE,
                List.of(
                        unit("kg/s", 1),
                        unit("g/h", 1e-3 / HOUR),
                        unit("mg/h", 1e-6 / HOUR),
                        unit("g/1000h", 1e-6 / HOUR),
                        unit("mg/min", 1e-6 / MINUTE)));
        table.put(
                Kind.DURATION,
                List.of(
                        unit("s", 1, "sec", "seconds"),
                        unit("min", MINUTE, "minutes"),
                        unit("h", HOUR, "hr", "hours")));
        table.put(
                Kind.TEMPERATURE,
                List.of(
                        unit("K", 1),
                        new Unit("°C", 1, ICE_POINT, List.of("C", "deg C")),
                        new Unit("°F", 5.0 / 9, FAHRENHEIT_ZERO, List.of("F", "deg F"))));
        table.put(
                Kind.TEMPERATURE_DIFFERENCE,
                List.of(unit("K", 1), unit("°C", 1, "C", "deg C"), unit("°F", 5.0 / 9, "F", "deg F")));
        table.put(Kind.PRESSURE_DIFFERENCE, pressures(unit("psi", PSI, "PSI", "psid", "lbf/in2")));
        table.put(Kind.GAUGE_PRESSURE, pressures(unit("psi", PSI, "PSI", "psig", "lbf/in2")));
        table.put(
                Kind.STRESS,
                List.of(
                        unit("Pa", 1),
                        unit("kPa", 1e3),
                        unit("MPa", 1e6, "N/mm2"),
                        unit("GPa", 1e9),
                        unit("bar", 1e5),
                        unit("psi", PSI, "PSI", "lbf/in2"),
                        unit("ksi", 1e3 * PSI, "kpsi")));
        table.put(
                Kind.FLOW_RATE,
                List.of(
                        unit("m3/s", 1),
                        unit("L/min", LITER / MINUTE, "l/min", "Lpm", "lpm", "LPM"),
                        unit("L/s", LITER, "l/s"),
                        unit("mL/min", 1e-6 / MINUTE, "ml/min", "cm3/min", "cc/min"),
                        unit("mL/h", 1e-6 / HOUR, "ml/h", "cm3/h", "cc/h"),
                        unit("fl oz/h", FLUID_OUNCE / HOUR, "oz fl/h"),
                        unit("gpm", GALLON / MINUTE, "GPM", "gal/min"),
                        unit("qt/min", QUART / MINUTE)));
        table.put(
                Kind.DISPLACEMENT,
                List.of(
                        unit("m3/rev", 1),
                        unit("cm3/rev", 1e-6, "cc/rev", "mL/rev", "ml/rev"),
                        unit("mm3/rev", 1e-9),
                        unit("in3/rev", INCH * INCH * INCH, "cu in/rev")));
        table.put(
                Kind.ROTATION,
                List.of(
                        unit("rev/s", 1, "1/s", "r/s", "Hz"),
                        unit("rpm", 1 / MINUTE, "RPM", "1/min", "rev/min", "r/min")));
        table.put(
                Kind.KINEMATIC_VISCOSITY,
                List.of(unit("m2/s", 1), unit("mm2/s", 1e-6), unit("cSt", 1e-6, "cst", "CST", "centistokes")));
        table.put(
                Kind.DYNAMIC_VISCOSITY,
                List.of(unit("Pa·s", 1), unit("mPa·s", 1e-3), unit("cP", 1e-3, "cp", "CP", "centipoise")));
        table.put(
                Kind.DENSITY,
                List.of(
                        unit("kg/m3", 1),
                        unit("g/cm3", 1e3, "g/cc", "kg/dm3"),
                        unit("g/mL", 1e3, "g/ml", "kg/L", "kg/l"),
                        unit("lb/ft3", POUND / (FOOT * FOOT * FOOT))));
        table.put(
                Kind.BASIS_WEIGHT,
                List.of(
                        unit("kg/m2", 1),
                        unit("g/m2", 1e-3, "gsm"),
                        unit("mg/cm2", 1e-2),
                        unit("g/ft2", 1e-3 / (FOOT * FOOT), "g/sq ft"),
                        unit("lb/3000ft2", POUND / (3000 * FOOT * FOOT), "lb/3000 sq ft"),
                        unit("oz/yd2", OUNCE / (YARD * YARD), "osy")));
        table.put(Kind.MEDIUM_RESISTANCE, List.of(unit("1/m", 1), unit("1/mm", 1e3)));
        table.put(Kind.PERMEABILITY, List.of(unit("m2", 1), unit("um2", 1e-12), unit("darcy", DARCY, "Darcy")));
        table.put(
                Kind.FACE_VELOCITY,
                List.of(
                        unit("m/s", 1),
                        unit("cm/s", 1e-2, "cm3/cm2/s", "cm3/cm2 s"),
                        unit("mm/s", 1e-3),
                        unit("L/m2/s", LITER, "l/m2/s", "L/m2 s", "l/m2 s"),
                        unit("cfm/ft2", FOOT / MINUTE, "CFM/ft2", "ft3/min/ft2", "ft3/ft2/min"),
                        unit("ft/min", FOOT / MINUTE, "fpm")));
        table.put(Kind.LAMINAR_RESISTANCE, List.of(unit("1/m3", 1), unit("1/mm3", 1e9)));
        table.put(
                Kind.SPRING_RATE,
                List.of(
                        unit("N/m", 1),
                        unit("N/mm", 1e3),
                        unit("N/cm", 1e2),
                        unit("lbf/in", POUND_FORCE / INCH, "lb/in"),
                        unit("gf/mm", FREE_FALL, "g/mm"),
                        unit("kgf/mm", 1e3 * FREE_FALL, "kg/mm")));
        table.put(Kind.SURFACE_TENSION, List.of(unit("N/m", 1), unit("mN/m", 1e-3), unit("dyn/cm", 1e-3, "dyne/cm")));
        table.put(
                Kind.FORCE,
                List.of(
                        unit("N", 1),
                        unit("gf", 1e-3 * FREE_FALL, "g"),
                        unit("kgf", FREE_FALL, "kg"),
                        unit("lbf", POUND_FORCE, "lb", "lbs")));
        table.put(
                Kind.OVERRIDE,
                List.of(
                        unit("Pa·s/m3", 1, "Pa/(m3/s)"),
                        unit("kPa/(L/min)", 1e3 * MINUTE / LITER, "kPa/(l/min)"),
                        unit("bar/(L/min)", 1e5 * MINUTE / LITER, "bar/(l/min)"),
                        unit("psi/gpm", PSI * MINUTE / GALLON)));
        table.put(Kind.SLIP, List.of(unit("m3", 1), unit("mm3", 1e-9), unit("in3", INCH * INCH * INCH, "cu in")));
        table.put(
                Kind.HEAT_CONDUCTANCE,
                List.of(
                        unit("W/K", 1, "W/°C"),
                        unit("kW/K", 1e3, "kW/°C"),
                        unit("BTU/(h °F)", BTU * 1.8 / HOUR, "Btu/(h °F)", "BTU/h/°F", "Btu/h/°F")));
        table.put(
                Kind.POWER,
                List.of(
                        unit("W", 1),
                        unit("kW", 1e3),
                        unit("hp", HORSEPOWER),
                        unit("PS", METRIC_HORSEPOWER),
                        unit("BTU/h", BTU / HOUR, "Btu/h")));
        table.put(
                Kind.HEAT_CAPACITY,
                List.of(
                        unit("J/K", 1, "J/°C"),
                        unit("kJ/K", 1e3, "kJ/°C"),
                        unit("BTU/°F", BTU * 1.8, "Btu/°F", "BTU/F", "Btu/F")));
        table.put(Kind.ANGLE, List.of(unit("rad", 1), unit("deg", Math.PI / 180, "°", "degrees")));
        table.put(Kind.FRACTION, List.of(unit("1", 1), unit("%", 1e-2, "percent")));
        table.put(Kind.COUNT, List.of(unit("1", 1)));
        table.put(Kind.RATIO, List.of(unit("1", 1)));
        return Collections.unmodifiableMap(table);
    }

    private static List<Unit> pressures(Unit psi) {
        return List.of(
                unit("Pa", 1),
                unit("kPa", 1e3),
                unit("MPa", 1e6),
                unit("bar", 1e5),
                unit("mbar", 1e2, "hPa"),
                psi,
                unit("kgf/cm2", FREE_FALL * 1e4, "kg/cm2"),
                unit("inH2O", MILLIMETER_OF_WATER * 25.4, "in water", "inWC", "in WG", "\"H2O", "\"WC"),
                unit("cmH2O", MILLIMETER_OF_WATER * 10, "cm water", "cmWC"),
                unit("mmH2O", MILLIMETER_OF_WATER, "mm water", "mmWC"));
    }

    private static Map<Kind, Map<String, Unit>> keys() {
        Map<Kind, Map<String, Unit>> keys = new EnumMap<>(Kind.class);
        BY_KIND.forEach((kind, units) -> {
            Map<String, Unit> byKey = new LinkedHashMap<>();
            for (Unit unit : units) {
                Set<String> names = new LinkedHashSet<>();
                unit.aliases().forEach(alias -> names.add(key(alias)));
                names.add(key(unit.symbol()));
                for (String name : names) {
                    if (byKey.put(name, unit) != null) {
                        throw new IllegalStateException(name + " names two units of " + kind);
                    }
                }
            }
            if (mayStandBare(kind)) {
                byKey.put("", units.get(0));
            }
            keys.put(kind, Collections.unmodifiableMap(byKey));
        });
        return Collections.unmodifiableMap(keys);
    }
}

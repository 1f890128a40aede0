package org.coldpleat.shared.quantity;

/**
 * The family of units a result is printed in, and the one table of the unit each kind is read in. Sizes of fibers, pores
 * and particles are in microns, dirt is in grams and the viscosity of oil in centistokes and centipoise in the US trade
 * too.
 */
public enum UnitSystem {
    /** Coherent SI units; shares in percent all the same. */
    SI,
    /** Units of the metric trade: mm, °C, kPa, L/min. */
    METRIC,
    /** Units of the US trade: in, °F, psi, gpm. */
    US;

    /** Sizes below which the smaller unit reads better: length [m], volume [m3], flow [m3/s], hours [s]. */
    private static final double THIN = 1e-4;

    private static final double CUP = 1e-4;
    private static final double TRICKLE = 1e-8;
    private static final double MINUTES = 180;
    private static final double HOURS = 10800;

    /** The unit in which values of a kind are printed, whatever their size. */
    public Unit unit(Kind kind) {
        return unit(kind, 1);
    }

    /** The unit in which a value of a kind [SI] is printed. */
    public Unit unit(Kind kind, double si) {
        if (this == SI) {
            return kind == Kind.FRACTION
                    ? Units.require(kind, "%")
                    : Units.of(kind).get(0);
        }
        boolean us = this == US;
        String symbol = switch (kind) {
            case LENGTH -> isSmall(si, THIN) ? "um" : us ? "in" : "mm";
            case AREA -> us ? "in2" : "cm2";
            case VOLUME -> isSmall(si, CUP) ? us ? "fl oz" : "mL" : us ? "qt" : "L";
            case MASS -> "g";
            case MASS_RATE -> "mg/h";
            case DURATION -> si == 0 || isSmall(si, MINUTES) ? "s" : isSmall(si, HOURS) ? "min" : "h";
            case TEMPERATURE -> us ? "°F" : "°C";
            case TEMPERATURE_DIFFERENCE -> us ? "°F" : "K";
            case PRESSURE_DIFFERENCE, GAUGE_PRESSURE -> us ? "psi" : "kPa";
            case FLOW_RATE -> isSmall(si, TRICKLE) ? us ? "fl oz/h" : "mL/h" : us ? "gpm" : "L/min";
            case DISPLACEMENT -> us ? "in3/rev" : "cm3/rev";
            case ROTATION -> "rpm";
            case KINEMATIC_VISCOSITY -> us ? "cSt" : "mm2/s";
            case DYNAMIC_VISCOSITY -> us ? "cP" : "mPa·s";
            case DENSITY -> us ? "lb/ft3" : "kg/m3";
            case BASIS_WEIGHT -> us ? "lb/3000ft2" : "g/m2";
            case MEDIUM_RESISTANCE -> "1/m";
            case PERMEABILITY -> us ? "darcy" : "um2";
            case FACE_VELOCITY -> us ? "ft/min" : "mm/s";
            case LAMINAR_RESISTANCE -> "1/m3";
            case SPRING_RATE -> us ? "lbf/in" : "N/mm";
            case SURFACE_TENSION -> us ? "dyn/cm" : "mN/m";
            case FORCE -> us ? "lbf" : "N";
            case STRESS -> us ? "psi" : "MPa";
            case OVERRIDE -> us ? "psi/gpm" : "kPa/(L/min)";
            case SLIP -> us ? "in3" : "mm3";
            case HEAT_CONDUCTANCE -> us ? "BTU/(h °F)" : "W/K";
            case POWER -> us ? "hp" : "kW";
            case HEAT_CAPACITY -> us ? "BTU/°F" : "kJ/K";
            case ANGLE -> "deg";
            case FRACTION -> "%";
            case COUNT, RATIO -> "1";
        };
        return Units.require(kind, symbol);
    }

    private static boolean isSmall(double si, double limit) {
        return si != 0 && Math.abs(si) < limit;
    }
}

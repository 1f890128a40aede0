package org.coldpleat.shared.quantity;

/**
 * What a number measures. Two kinds with the same dimension stay apart where trade talk blurs them: a pressure
 * difference is no gauge pressure, and kinematic viscosity is no dynamic viscosity.
 */
public enum Kind {
    /** Length [m]. */
    LENGTH("m"),
    /** Area [m2]. */
    AREA("m2"),
    /** Volume [m3]. */
    VOLUME("m3"),
    /** Mass [kg]. */
    MASS("kg"),
    /** Mass flow [kg/s]. */
    MASS_RATE("kg/s"),
    /** Time span [s]. */
    DURATION("s"),
    /** Temperature [K]. */
    TEMPERATURE("K"),
    /** Difference of two temperatures [K]. */
    TEMPERATURE_DIFFERENCE("K"),
    /** Pressure before minus pressure after [Pa]. */
    PRESSURE_DIFFERENCE("Pa"),
    /** Pressure above ambient [Pa]. */
    GAUGE_PRESSURE("Pa"),
    /** Volume flow [m3/s]. */
    FLOW_RATE("m3/s"),
    /** Volume per pump revolution [m3]. */
    DISPLACEMENT("m3/rev"),
    /** Speed of rotation [rev/s]. */
    ROTATION("rev/s"),
    /** Kinematic viscosity [m2/s]. */
    KINEMATIC_VISCOSITY("m2/s"),
    /** Dynamic viscosity [Pa s]. */
    DYNAMIC_VISCOSITY("Pa s"),
    /** Density [kg/m3]. */
    DENSITY("kg/m3"),
    /** Mass per area [kg/m2]. */
    BASIS_WEIGHT("kg/m2"),
    /** Thickness over permeability of a medium [1/m]. */
    MEDIUM_RESISTANCE("1/m"),
    /** Darcy permeability [m2]. */
    PERMEABILITY("m2"),
    /** Face velocity [m/s]; the unit of an air permeability. */
    FACE_VELOCITY("m/s"),
    /** Geometric resistance of a laminar part, pressure drop over viscosity and flow [1/m3]. */
    LAMINAR_RESISTANCE("1/m3"),
    /** Spring rate [N/m]. */
    SPRING_RATE("N/m"),
    /** Surface tension of a liquid [N/m]. */
    SURFACE_TENSION("N/m"),
    /** Force [N]. */
    FORCE("N"),
    /** Elastic modulus or stress [Pa]. */
    STRESS("Pa"),
    /** Slope of a pressure override [Pa s/m3]. */
    OVERRIDE("Pa s/m3"),
    /** Slip volume of a pump [m3]. */
    SLIP("m3"),
    /** Heat conductance [W/K]. */
    HEAT_CONDUCTANCE("W/K"),
    /** Heat flow or mechanical power [W]. */
    POWER("W"),
    /** Heat taken up for one degree of warming [J/K]. */
    HEAT_CAPACITY("J/K"),
    /** Plain angle [rad]. */
    ANGLE("rad"),
    /** Share of a whole [1]. */
    FRACTION("1"),
    /** Whole number of things [1]. */
    COUNT("1"),
    /** Dimensionless ratio [1]. */
    RATIO("1");

    private final String siUnit;

    Kind(String siUnit) {
        this.siUnit = siUnit;
    }

    /** The coherent SI unit in which values of this kind are computed. */
    public String siUnit() {
        return siUnit;
    }
}

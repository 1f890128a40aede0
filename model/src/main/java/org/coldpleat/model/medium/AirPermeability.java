package org.coldpleat.model.medium;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Resistance from an air test: face velocity at a stated pressure drop. No thickness is needed. Air differs from oil in
 * two ways, which act against each other: it slips at fine fibers (makes the sheet look more open) and it has inertia
 * (makes it look tighter). That one constant carries from air to oil is an assumption: a study of felts with air, water
 * and oils found a viscous law for each fluid but not quite the same constant (Cunningham, Broughton, Kraybill).
 */
@Source("ISO 9237:1995 defines air permeability as a face velocity at a stated pressure drop; ASTM D737 likewise")
public final class AirPermeability {
    /** Pressure drop of the cfm/ft2 figure, half an inch of water [Pa]. */
    @Source("0.5 x 249.0889 Pa, conventional inch of water")
    public static final double HALF_INCH_OF_WATER = 124.54;

    /** Pressure drop usual for technical fabrics [Pa]. */
    @Source("ISO 9237:1995 (200 Pa for technical, 100 Pa for apparel fabrics, from memory)")
    public static final double TECHNICAL_PRESSURE_DROP = 200;

    /** One cubic foot per minute and square foot [m/s]. */
    @Source("derived here: 0.3048/60, exact")
    public static final double CFM_PER_SQUARE_FOOT = 0.3048 / 60;

    /** One liter per square meter and second [m/s]. */
    @Source("derived here: exact")
    public static final double LITER_PER_SQUARE_METER_SECOND = 1e-3;

    /** Coefficient of the inertia term of the Forchheimer law, C_F in {@code rho C_F v^2/sqrt(k)} [1]. */
    @Source("J. C. Ward 1964, J. Hydraul. Div. ASCE 90, 1 (0.55, from memory); an upper estimate for light mats")
    public static final double WARD_COEFFICIENT = 0.55;

    private AirPermeability() {}

    /**
     * Apparent resistance of the sheet: {@code R = dp/(mu v)}.
     *
     * @param pressureDrop [Pa]
     * @param airViscosity [Pa s], see {@link AirViscosity}
     * @param faceVelocity [m/s]
     * @return [1/m]; 2.747e7 for 200 Pa, 1.82e-5 Pa s, 0.4 m/s
     */
    public static double resistance(double pressureDrop, double airViscosity, double faceVelocity) {
        Require.positive("pressureDrop", pressureDrop, "Pa");
        Require.positive("airViscosity", airViscosity, "Pa s");
        Require.positive("faceVelocity", faceVelocity, "m/s");
        return pressureDrop / (airViscosity * faceVelocity);
    }

    /**
     * Resistance to oil from that to air, slip taken out: {@code R_oil = R_air (1 + 4 lambda/r)}.
     *
     * @param airResistance [1/m]
     * @param meanFreePath lambda [m]
     * @param poreRadius r, mean flow pore [m]
     * @return [1/m], 2.6 % above for 0.066 and 10 micrometers
     */
    @Source("L. J. Klinkenberg 1941, form k_air = k (1 + 4 c lambda/r), coefficient c about 1 (from memory)")
    @Validity("mean free path below a tenth of the pore radius")
    public static double withoutSlip(double airResistance, double meanFreePath, double poreRadius) {
        Require.positive("airResistance", airResistance, "1/m");
        Require.positive("poreRadius", poreRadius, "m");
        return airResistance * (1 + 4 * meanFreePath / poreRadius);
    }

    /**
     * Resistance with the inertia of the air taken out of an apparent one:
     * {@code R_apparent = R + C_F (rho v/mu) sqrt(R t)}, solved for R.
     *
     * @param apparentResistance [1/m]
     * @param thickness t [m]
     * @param faceVelocity v [m/s]
     * @param airDensity rho [kg/m3]
     * @param airViscosity mu [Pa s]
     * @param coefficient C_F [1], 0 for none, {@link #WARD_COEFFICIENT} as upper estimate
     * @return [1/m], at most the apparent one
     */
    @Source("P. Forchheimer 1901 (textbook form)")
    @Validity("correction below about 10 %; at lower Reynolds numbers the true correction is cubic in v (Brown 1986)")
    public static double withoutInertia(
            double apparentResistance,
            double thickness,
            double faceVelocity,
            double airDensity,
            double airViscosity,
            double coefficient) {
        Require.positive("apparentResistance", apparentResistance, "1/m");
        Require.positive("thickness", thickness, "m");
        if (!(coefficient >= 0)) {
            throw new IllegalArgumentException("coefficient must be at least 0 [1], was " + coefficient);
        }
        double half = coefficient * airDensity * faceVelocity / airViscosity * Math.sqrt(thickness) / 2;
        double root = apparentResistance / (half + Math.sqrt(half * half + apparentResistance));
        return root * root;
    }
}

package org.coldpleat.model.flow;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Laws of holes and slots in walls. */
public final class Openings {
    /** Turbulent discharge coefficient of a sharp-edged hole [1]. */
    @Source(
            "Merritt 1967, Hydraulic Control Systems, as quoted in hydraulics handbooks: ideal 0.611, practice 0.60-0.65")
    public static final double SHARP_EDGE = 0.61;

    /** Turbulent discharge coefficient of a short tube, entrance 0.5 and exit 1.0 velocity heads lost [1]. */
    @Source("derived here: 1/sqrt(1.5); hydraulics handbooks give 0.80-0.82")
    public static final double SHORT_TUBE = 0.816496580927726;

    private Openings() {}

    /**
     * Round hole through a wall: creeping entrance and exit, Poiseuille flow along the bore, inertial loss.
     * {@code psi = 24/d^3 + 128 L/(pi d^4)}, {@code b = 1/(2 Ct^2 A^2)}.
     *
     * <p>Example: 2 mm thin hole, 0.1 Pa s, 1 kPa, without inertia: 3.3333e-6 m3/s.
     *
     * @param diameter d [m], above 0
     * @param length L, wall thickness [m], at least 0; 0 is the thin hole
     * @param dischargeCoefficient Ct at high Reynolds number [1], 0 to 1
     * @return law of one hole
     */
    @Source(
            "Sampson 1891 for the thin hole; sum with Poiseuille flow after Dagan, Weinbaum, Pfeffer 1982, J. Fluid Mech. 115")
    @Validity(
            "psi exact for L = 0 and L >> d, within 1 % between by the authors' claim; finite-element values lie 5-6 % lower")
    public static AdditiveLaw hole(double diameter, double length, double dischargeCoefficient) {
        Require.positive("diameter", diameter, "m");
        Require.notNegative("length", length, "m");
        double psi = 24 / (diameter * diameter * diameter)
                + Passages.tube(diameter, length).laminar();
        return new AdditiveLaw(psi, inertial(Math.PI * diameter * diameter / 4, dischargeCoefficient));
    }

    /**
     * Slot or louver of rectangular shape through a wall. {@code psi = 32/(pi w^2 l) + 12 t/(w^3 l F)} with F the factor
     * of a rectangular duct, which is 1 for a very long slot and 0.42 for a square one.
     *
     * @param width w, the narrow side [m], above 0
     * @param length l, the long side [m], at least the width
     * @param thickness t, wall thickness [m], at least 0
     * @param dischargeCoefficient Ct [1], 0 to 1
     * @return law of one slot
     */
    @Source(
            "thin slit: Hasimoto 1958, J. Phys. Soc. Japan 13; duct: Boussinesq series, White, Viscous Fluid Flow, eq. 3-48; from memory")
    @Validity("entrance term exact for length >> width; the duct term is exact for any rectangle")
    public static AdditiveLaw slot(double width, double length, double thickness, double dischargeCoefficient) {
        Require.positive("width", width, "m");
        Require.within("length", length, width, Double.MAX_VALUE, "m");
        Require.notNegative("thickness", thickness, "m");
        double entrance = thinSlit(width) / length;
        double duct = 12 * thickness / (width * width * width * length * rectangleFactor(width / length));
        return new AdditiveLaw(entrance + duct, inertial(width * length, dischargeCoefficient));
    }

    /**
     * Creeping resistance of a thin slit per unit of its length, {@code 32/(pi w^2)}.
     *
     * <p>Example: 0.8 mm gives 1.5915e7 1/m2.
     *
     * @param width w [m], above 0
     * @return resistance times length [1/m2]
     */
    @Source("Hasimoto 1958, J. Phys. Soc. Japan 13; derived here anew")
    public static double thinSlit(double width) {
        return 32 / (Math.PI * width * width);
    }

    /** Inertial resistance {@code 1/(2 Ct^2 A^2)} [1/m4] of an opening of area [m2] and discharge coefficient [1]. */
    public static double inertial(double area, double dischargeCoefficient) {
        Require.positive("area", area, "m2");
        Require.positive("dischargeCoefficient", dischargeCoefficient, "1");
        double effective = dischargeCoefficient * area;
        return 1 / (2 * effective * effective);
    }

    private static double rectangleFactor(double aspect) {
        double sum = 0;
        for (int n = 1; n <= 9; n += 2) {
            sum += Math.tanh(n * Math.PI / (2 * aspect)) / Math.pow(n, 5);
        }
        return 1 - 192 / Math.pow(Math.PI, 5) * aspect * sum;
    }
}

package org.coldpleat.model.flow;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Laws of passages with fully developed laminar flow. */
public final class Passages {
    private Passages() {}

    /**
     * Round tube, {@code psi = 128 L/(pi d^4)}.
     *
     * <p>Example: 10 mm bore, 0.4 m long, 0.5 Pa s, 1e-4 m3/s: 81487 Pa.
     *
     * @param diameter d [m], above 0
     * @param length L [m], at least 0
     * @return laminar law
     */
    @Source("Hagen-Poiseuille law")
    @Validity("Re < 2300; entrance losses not included")
    public static AdditiveLaw tube(double diameter, double length) {
        Require.positive("diameter", diameter, "m");
        Require.notNegative("length", length, "m");
        return AdditiveLaw.laminarOnly(128 * length / (Math.PI * Math.pow(diameter, 4)));
    }

    /**
     * Tube that collects flow through its wall: laminar term of the full length run through, plus the momentum needed to
     * carry the oil off, {@code (4/3) rho u^2} at the open end. The share of the laminar term that counts is applied where
     * the flow is known to enter evenly.
     *
     * @param diameter d [m], above 0
     * @param length L [m], at least 0
     * @return law of the whole flow run through the whole length
     */
    @Source("derived here: momentum balance with parabolic profile (factor 4/3)")
    @Validity("laminar; for flat turbulent profiles the momentum term is a quarter smaller")
    public static AdditiveLaw collectingTube(double diameter, double length) {
        double area = Math.PI * diameter * diameter / 4;
        return new AdditiveLaw(tube(diameter, length).laminar(), 4.0 / 3 / (area * area));
    }

    /**
     * Concentric annulus, flow along its length: {@code psi = 8 L / (pi [Ro^4 - Ri^4 - (Ro^2 - Ri^2)^2 / ln(Ro/Ri)])}.
     *
     * <p>Example: radii 32.5 and 30 mm, 70 mm long, 0.5 Pa s, 1e-4 m3/s: 13688 Pa.
     *
     * @param outerRadius Ro [m], above Ri
     * @param innerRadius Ri [m], above 0
     * @param length L [m], at least 0
     * @return laminar law of the full flow over the full length
     */
    @Source("Bird, Stewart, Lightfoot, Transport Phenomena, flow through an annulus; from memory")
    @Validity("Re < 2000; concentric (off-center needs less)")
    public static AdditiveLaw annulus(double outerRadius, double innerRadius, double length) {
        Require.positive("innerRadius", innerRadius, "m");
        Require.positive("outerRadius minus innerRadius", outerRadius - innerRadius, "m");
        Require.notNegative("length", length, "m");
        return AdditiveLaw.laminarOnly(8 * length / (Math.PI * annulusBracket(outerRadius, innerRadius)));
    }

    /**
     * Times the flow of a narrow annulus grows when its core sits off the middle, at the same pressure difference:
     * {@code 1 + 1.5 e^2} [1].
     *
     * @param eccentricity e, distance of the axes over the gap [1], 0 to 1
     */
    @Source(
            "Piercy, Hooper, Winny 1933, Phil. Mag. 15; White, Viscous Fluid Flow, narrow eccentric annulus; from memory")
    @Validity("gap small against the radius; laminar")
    public static double offCenterGain(double eccentricity) {
        Require.within("eccentricity", eccentricity, 0, 1, "1");
        return 1 + 1.5 * eccentricity * eccentricity;
    }

    /** Narrow gaps cancel catastrophically in the exact bracket, so below 2 % of the radius its series is used. */
    private static double annulusBracket(double ro, double ri) {
        double gap = ro - ri;
        if (gap < 0.02 * ro) {
            double mean = 0.5 * (ro + ri);
            double e = gap / mean;
            return 4.0 / 3 * mean * gap * gap * gap * (1 + e * e / 60);
        }
        double squares = ro * ro - ri * ri;
        return Math.pow(ro, 4) - Math.pow(ri, 4) - squares * squares / Math.log(ro / ri);
    }
}

package org.coldpleat.model.loading;

import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * How the resistance of a medium grows with the dirt it holds: {@code dR/dm = K R0 (R/R0)^n}.
 *
 * <p>R resistance of the medium [1/m], R0 its clean value, m dirt mass per area of medium [kg/m2], K and n the two
 * parameters. With {@code u = ln(R/R0)} and {@code E(a, x) = (exp(a x) - 1)/a}, {@code E(0, x) = x}, all of it is
 * closed: {@code K m = E(1 - n, u)} and, at constant pressure, {@code K c J0 t = E(2 - n, u)}. n = 0 is a cake, 1
 * intermediate blocking (exponential growth), 3/2 standard, 2 complete blocking. The law is free of history: it does
 * not matter with which flow the dirt came.
 *
 * <p>Accuracy: measured on nominally equal mats, K scatters by about 20 % (one standard deviation), and the resistance
 * at a given dirt mass by a factor of 2 to 5, since it grows exponentially. Show bands.
 *
 * @param exponent n [1], at least 0; 0 to 2 in the literature
 * @param coefficient K, relative growth of a clean medium per dirt mass per area [m2/kg], at least 0
 */
@Source("Hermans and Bredee 1936; Grace 1956 (AIChE J. 2); Hermia 1982 (Trans. IChemE 60): the four blocking laws, from"
        + " memory; the common form in R(m) and its closed integrals derived here")
@Validity("n 0..2, R/R0 1..about 20; n above 1 has a finite limit mass 1/((n - 1) K), from where on the resistance is"
        + " infinite")
public record BlockingLaw(double exponent, double coefficient) {
    /**
     * The exponent that stands in where none is known: exponential growth. With n left free the medians over 25 runs are
     * 1.0 for fine, 1.2 for medium and 1.3 for coarse dust, single runs 0.8 to 1.7: coarser dust bends harder.
     */
    @Source("fitted here to the filter loading runs of Hagmeyer, Mauthe, Zeiler 2021, Int. J. Prognostics and Health"
            + " Management 12(2), in air")
    public static final double DEFAULT_EXPONENT = 1;

    /** Standard uncertainty of ln K [1] between nominally equal media. */
    @Source("coefficient of variation of K over those runs, 0.18 with medium dust")
    public static final double COEFFICIENT_SCATTER = 0.18;

    public BlockingLaw {
        Require.notNegative("exponent", exponent, "1");
        Require.notNegative("coefficient", coefficient, "m2/kg");
    }

    /**
     * The law that reaches a resistance ratio at a dirt mass per area.
     *
     * @param exponent n [1], at least 0
     * @param massPerArea dirt held at the end [kg/m2], above 0
     * @param endRatio R/R0 there [1], above 1
     */
    public static BlockingLaw reaching(double exponent, double massPerArea, double endRatio) {
        Require.positive("massPerArea", massPerArea, "kg/m2");
        Require.above("endRatio", endRatio, 1, "1");
        return new BlockingLaw(exponent, scaledMass(exponent, Math.log(endRatio)) / massPerArea);
    }

    /**
     * The law behind a multi-pass result: grams held when the element, at constant flow, reached a terminal pressure
     * drop. Both drops are of the element alone; take the drop of the housing off first.
     *
     * @param exponent n [1], at least 0
     * @param retainedMass dirt held at the end [kg], above 0; what was injected is more
     * @param area effective area of medium [m2], above 0
     * @param cleanPressureDrop of the clean element at the flow of the test [Pa], above 0
     * @param terminalPressureDrop of the loaded element at the same flow and viscosity [Pa], above the clean one
     */
    public static BlockingLaw fromMultiPass(
            double exponent, double retainedMass, double area, double cleanPressureDrop, double terminalPressureDrop) {
        Require.positive("area", area, "m2");
        Require.positive("cleanPressureDrop", cleanPressureDrop, "Pa");
        Require.above("terminalPressureDrop", terminalPressureDrop, cleanPressureDrop, "Pa");
        return reaching(exponent, retainedMass / area, terminalPressureDrop / cleanPressureDrop);
    }

    /**
     * Resistance ratio R/R0 [1] at a dirt mass per area [kg/m2, at least 0]; infinite from {@link #limitMass()} on. At
     * constant flow it is the ratio of the pressure drops as well.
     */
    public double resistanceRatio(double massPerArea) {
        return Math.exp(logRatio(massPerArea));
    }

    /** Growth d(R/R0)/dm [m2/kg] at a dirt mass per area [kg/m2, at least 0]. */
    public double slope(double massPerArea) {
        return coefficient * Math.exp(exponent * logRatio(massPerArea));
    }

    /** Dirt mass per area [kg/m2] at which a resistance ratio [1, at least 1] is reached; infinite if K is 0. */
    public double massPerArea(double resistanceRatio) {
        Require.atLeast("resistanceRatio", resistanceRatio, 1, "1");
        double scaled = scaledMass(exponent, Math.log(resistanceRatio));
        return scaled == 0 ? 0 : scaled / coefficient;
    }

    /** Dirt mass per area that plugs the medium altogether [kg/m2]; infinite for n up to 1. */
    public double limitMass() {
        return exponent > 1 ? 1 / ((exponent - 1) * coefficient) : Double.POSITIVE_INFINITY;
    }

    /**
     * Dirt that an element can take at constant flow until a pressure drop is reached [kg].
     *
     * @param area effective area of medium [m2], above 0
     * @param cleanPressureDrop of the clean element at that flow [Pa], above 0
     * @param terminalPressureDrop [Pa], at least the clean one
     */
    public double capacity(double area, double cleanPressureDrop, double terminalPressureDrop) {
        Require.positive("area", area, "m2");
        Require.positive("cleanPressureDrop", cleanPressureDrop, "Pa");
        Require.atLeast("terminalPressureDrop", terminalPressureDrop, cleanPressureDrop, "Pa");
        return area * massPerArea(terminalPressureDrop / cleanPressureDrop);
    }

    /**
     * Time to pass a volume per area at constant pressure [s]; infinite if the medium plugs before.
     *
     * @param volumePerArea filtrate over area [m], at least 0
     * @param cleanFaceVelocity face velocity of the clean medium at that pressure [m/s], above 0
     * @param concentration dirt caught per volume [kg/m3], at least 0
     */
    public double timeAtConstantPressure(double volumePerArea, double cleanFaceVelocity, double concentration) {
        Require.notNegative("volumePerArea", volumePerArea, "m");
        Require.positive("cleanFaceVelocity", cleanFaceVelocity, "m/s");
        Require.notNegative("concentration", concentration, "kg/m3");
        double rate = coefficient * concentration;
        if (rate == 0) {
            return volumePerArea / cleanFaceVelocity;
        }
        double u = logRatio(concentration * volumePerArea);
        return u == Double.POSITIVE_INFINITY && exponent <= 2
                ? u
                : exponential(2 - exponent, u) / (rate * cleanFaceVelocity);
    }

    /**
     * Volume per area passed after a time at constant pressure [m].
     *
     * @param time [s], at least 0
     * @param cleanFaceVelocity face velocity of the clean medium at that pressure [m/s], above 0
     * @param concentration dirt caught per volume [kg/m3], at least 0
     */
    public double volumeAtConstantPressure(double time, double cleanFaceVelocity, double concentration) {
        Require.notNegative("time", time, "s");
        Require.positive("cleanFaceVelocity", cleanFaceVelocity, "m/s");
        Require.notNegative("concentration", concentration, "kg/m3");
        double rate = coefficient * concentration;
        if (rate == 0) {
            return cleanFaceVelocity * time;
        }
        double u = logarithm(2 - exponent, rate * cleanFaceVelocity * time);
        return scaledMass(exponent, u) / rate;
    }

    /** The finding that the default exponent stands in. */
    public static Notice exponentAssumed(String place) {
        return Notice.of("loading.exponentAssumed", Severity.WARNING, place, new Amount(Look.RATIO, DEFAULT_EXPONENT));
    }

    /** ln(R/R0). */
    private double logRatio(double massPerArea) {
        Require.notNegative("massPerArea", massPerArea, "kg/m2");
        return logarithm(1 - exponent, coefficient * massPerArea);
    }

    /** K m at a given u = ln(R/R0). */
    private static double scaledMass(double exponent, double u) {
        return exponential(1 - exponent, u);
    }

    /** E(a, x) = (exp(a x) - 1)/a, continuous through a = 0. */
    private static double exponential(double a, double x) {
        return a == 0 ? x : Math.expm1(a * x) / a;
    }

    /** Inverse of E in x: ln(1 + a y)/a; infinite where E has ended. */
    private static double logarithm(double a, double y) {
        if (a == 0) {
            return y;
        }
        return a * y <= -1 ? Double.POSITIVE_INFINITY : Math.log1p(a * y) / a;
    }
}

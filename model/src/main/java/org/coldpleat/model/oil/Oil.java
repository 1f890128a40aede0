package org.coldpleat.model.oil;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.curve.ViscosityCurve;

/**
 * An oil ready to compute with.
 *
 * @param name as the user calls it
 * @param curve central viscosity curve
 * @param density density law
 * @param heat heat law
 * @param pourPoint [K], if known
 * @param anchors the points the curve was made from, at least two
 * @param band spread of the viscosity about the central curve
 * @param shift standard deviations by which this oil lies above the central curve [1]; 0 for the central one
 */
public record Oil(
        String name,
        ViscosityCurve curve,
        MpmsDensity density,
        CragoeHeat heat,
        OptionalDouble pourPoint,
        List<Anchor> anchors,
        ViscosityBand band,
        double shift) {
    /** Cold end of the domain [K]: -40 degrees C. */
    public static final double MIN_TEMPERATURE = 233.15;

    /** Hot end of the domain [K]: 150 degrees C. */
    public static final double MAX_TEMPERATURE = 423.15;

    /** Slack at the edges of the domain [K], so that -40 degrees C is inside however it was converted. */
    private static final double EDGE = 1e-6;

    public Oil {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(curve, "curve");
        Objects.requireNonNull(density, "density");
        Objects.requireNonNull(heat, "heat");
        Objects.requireNonNull(pourPoint, "pourPoint");
        Objects.requireNonNull(band, "band");
        anchors = anchors.stream()
                .sorted(Comparator.comparingDouble(Anchor::temperature))
                .toList();
        if (anchors.size() < 2) {
            throw new IllegalArgumentException("an oil needs at least 2 anchors, had " + anchors.size());
        }
        if (!Double.isFinite(shift)) {
            throw new IllegalArgumentException("shift must be finite, was " + shift);
        }
    }

    /** Kinematic viscosity [m2/s] at a temperature [K]. */
    public double kinematicViscosity(double temperature) {
        double central = curve.kinematicViscosity(temperature);
        return shift == 0 ? central : central * Math.exp(band.moved(shift, temperature));
    }

    /** Dynamic viscosity [Pa s] at a temperature [K]. */
    public double dynamicViscosity(double temperature) {
        return kinematicViscosity(temperature) * density.density(temperature);
    }

    /** Density [kg/m3] at a temperature [K]. */
    public double density(double temperature) {
        return density.density(temperature);
    }

    /** Specific heat capacity [J/(kg K)] at a temperature [K]. */
    public double heatCapacity(double temperature) {
        return heat.heatCapacity(temperature);
    }

    /** Heat conductivity [W/(m K)] at a temperature [K]. */
    public double conductivity(double temperature) {
        return heat.conductivity(temperature);
    }

    /**
     * Standard uncertainty of ln(nu) [1] at a temperature [K]: half the distance from one standard deviation on the thin
     * side to one on the thick side. The sides themselves are in {@link #band}.
     */
    public double viscositySpread(double temperature) {
        return (band.thicker(temperature) + band.thinner(temperature)) / 2;
    }

    /** Relative slope of the kinematic viscosity, d(ln nu)/dT [1/K], at a temperature [K]. */
    public double logSlope(double temperature) {
        return curve.logSlope(temperature) + band.movedSlope(shift, temperature);
    }

    /**
     * The same oil with its viscosity moved off the central curve by a number of standard deviations, the same at every
     * temperature, of the side it is moved to. Counts from the central curve, not from this oil.
     */
    public Oil shifted(double z) {
        return new Oil(name, curve, density, heat, pourPoint, anchors, band, z);
    }

    /** Temperature of the coldest point the curve was made from [K]. */
    public double lowestAnchor() {
        return anchors.get(0).temperature();
    }

    /** Temperature of the hottest point the curve was made from [K]. */
    public double highestAnchor() {
        return anchors.get(anchors.size() - 1).temperature();
    }

    /** True below the coldest anchor and outside the domain, where the viscosity is extrapolated. */
    public boolean isExtrapolated(double temperature) {
        return isBelowAnchors(temperature) || isOutsideDomain(temperature);
    }

    /** True below the coldest anchor [K]. */
    boolean isBelowAnchors(double temperature) {
        return temperature < lowestAnchor() - EDGE;
    }

    /** True outside -40 to 150 degrees C [K]. */
    static boolean isOutsideDomain(double temperature) {
        return temperature < MIN_TEMPERATURE - EDGE || temperature > MAX_TEMPERATURE + EDGE;
    }

    /** True if the curve rests on a low-shear reading besides its two warm points. */
    public boolean hasColdAnchor() {
        return anchors.size() > 2 && anchors.get(0).method() != Anchor.Method.HIGH_SHEAR;
    }
}

package org.coldpleat.model.pleat;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * What the pressure drop over the pack does to the pack itself; off unless its parameters are given. The medium is pressed
 * thinner, {@code R = R0 (1 + dp/P0)^n}, and the legs bow into the downstream channel, {@code b = b0 - C dp}, until they
 * touch or the embossing holds them.
 *
 * @param compressionPressure P0 [Pa], above 0; infinite for a stiff medium
 * @param compressionExponent n [1], at least 0
 * @param closingPerPressure C, loss of downstream gap per pressure drop [m/Pa], at least 0
 */
@Source("common practice, no source: to be fitted to a clean curve that bends upward at constant temperature")
@Validity("pressure drop at least 0; range of the curve that the parameters were fitted to")
public record PressureResponse(double compressionPressure, double compressionExponent, double closingPerPressure) {
    /** A pack that does not give way. */
    public static final PressureResponse STIFF = new PressureResponse(Double.POSITIVE_INFINITY, 0, 0);

    /** Mean over center deflection of a strip clamped at both ends, {@code int 16 s^2 (1-s)^2 ds} [1]. */
    @Source("derived here: Euler-Bernoulli beam under even load")
    private static final double MEAN_OVER_CENTER = 8.0 / 15;

    public PressureResponse {
        if (!(compressionPressure > 0)) {
            throw new IllegalArgumentException("compressionPressure must be above 0 Pa, was " + compressionPressure);
        }
        if (!(compressionExponent >= 0) || Double.isInfinite(compressionExponent)) {
            throw new IllegalArgumentException(
                    "compressionExponent must be finite and at least 0 [1], was " + compressionExponent);
        }
        if (!(closingPerPressure >= 0) || Double.isInfinite(closingPerPressure)) {
            throw new IllegalArgumentException(
                    "closingPerPressure must be finite and at least 0 m/Pa, was " + closingPerPressure);
        }
    }

    /** Medium resistance [1/m] under a pressure drop [Pa, at least 0] from that without [1/m]. */
    public double mediumResistance(double unloaded, double pressureDrop) {
        return unloaded * Math.pow(1 + requirePositive(pressureDrop) / compressionPressure, compressionExponent);
    }

    /** The pack with its legs bowed by a pressure drop [Pa, at least 0]; leg angle and area as without. */
    public PleatPack bowed(PleatPack pack, double pressureDrop) {
        PleatGeometry pleat = pack.geometry();
        double closing = closingPerPressure * requirePositive(pressureDrop);
        PleatGeometry bowed = new PleatGeometry(
                pleat.pleatDepth(),
                pleat.thickness(),
                pleat.upstreamMouth() + closing,
                pleat.upstreamEnd() + closing,
                pleat.downstreamEnd() - closing,
                pleat.downstreamMouth() - closing,
                pleat.inletPitch(),
                pleat.outletPitch(),
                pleat.gapFloor(),
                pleat.ends());
        return new PleatPack(bowed, pack.pleatCount(), pack.pleatHeight(), pack.closure(), pack.statedArea());
    }

    /** Solves a pack under a pressure drop [Pa, at least 0] for an unloaded medium resistance [1/m]. */
    public PackResult solve(PleatPack pack, double unloaded, double pressureDrop) {
        return bowed(pack, pressureDrop).solve(mediumResistance(unloaded, pressureDrop));
    }

    /**
     * Loss of downstream gap per pressure drop of two legs clamped at their folds, spread evenly over the leg:
     * {@code C = 2 (8/15) L^4/(384 D)}, {@code D = E t^3/(12 (1 - nu^2))}.
     *
     * @param legLength L [m]
     * @param thickness t [m]
     * @param elasticModulus E [Pa]; about 1e9 for resin-treated paper (a guess)
     * @param poissonRatio nu [1]
     * @return [m/Pa]
     */
    @Source("Euler-Bernoulli beam clamped at both ends (textbook)")
    @Validity("deflection below about a thickness; no support by neighbors")
    public static double closingOfClampedLegs(
            double legLength, double thickness, double elasticModulus, double poissonRatio) {
        double rigidity = elasticModulus * thickness * thickness * thickness / (12 * (1 - poissonRatio * poissonRatio));
        double square = legLength * legLength;
        return 2 * MEAN_OVER_CENTER * square * square / (384 * rigidity);
    }

    private static double requirePositive(double pressureDrop) {
        if (!(pressureDrop >= 0)) {
            throw new IllegalArgumentException("pressureDrop must be at least 0 Pa, was " + pressureDrop);
        }
        return pressureDrop;
    }
}

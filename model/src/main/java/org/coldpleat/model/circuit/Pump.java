package org.coldpleat.model.circuit;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Positive-displacement pump. Delivery is the lesser of displacement less slip, {@code D n - lam p/mu}, and what the
 * pickup lets in, {@code pa/(mu psi_s)}; slip at the viscosity of the sump.
 *
 * @param displacement D [m3 per revolution], above 0
 * @param slip lam, leak flow times viscosity over pressure [m3], at least 0
 * @param suctionResistance psi_s of pickup and strainer [1/m3], at least 0; 0 means never limited
 * @param suctionPressure pa available to push oil into the pump [Pa], above 0; about 90 kPa at sea level
 */
@Source(
        "Wilson 1946, slip of positive-displacement pumps, as used in fluid-power textbooks; suction limit derived here")
@Validity("laminar slip; no filling loss by speed or aeration")
public record Pump(double displacement, double slip, double suctionResistance, double suctionPressure) {
    public Pump {
        Require.positive("displacement", displacement, "m3/rev");
        Require.notNegative("slip", slip, "m3");
        Require.notNegative("suctionResistance", suctionResistance, "1/m3");
        Require.positive("suctionPressure", suctionPressure, "Pa");
    }

    /** Pump without suction limit. */
    public static Pump unlimited(double displacement, double slip) {
        return new Pump(displacement, slip, 0, 90e3);
    }

    /**
     * Displacement and slip from two delivery points at one viscosity, {@code Q = D n - (lam/mu) p}.
     *
     * <p>Example: 3.2 L/min at 10 rev/s, 98 kPa and 32.6 L/min at 83.33 rev/s, 294 kPa: 7.19 cm3/rev.
     *
     * @param first one point
     * @param second another point
     * @param dynamicViscosity oil at both points [Pa s]
     * @return pump without suction limit
     * @throws IllegalArgumentException if the points do not fix a pump with slip of at least 0
     */
    public static Pump fromDelivery(DeliveryPoint first, DeliveryPoint second, double dynamicViscosity) {
        Require.positive("dynamicViscosity", dynamicViscosity, "Pa s");
        double determinant = second.speed() * first.pressure() - first.speed() * second.pressure();
        if (determinant == 0) {
            throw new IllegalArgumentException(
                    "delivery points must differ in the ratio of pressure to speed, both are "
                            + first.pressure() / first.speed() + " Pa s");
        }
        double displacement =
                (second.flowRate() * first.pressure() - first.flowRate() * second.pressure()) / determinant;
        double leak = (displacement * first.speed() - first.flowRate()) / first.pressure();
        if (!(leak >= 0) || !(displacement > 0)) {
            throw new IllegalArgumentException("slip from two delivery points must be at least 0 m3/(s Pa), was " + leak
                    + "; is a relief valve open at one of them?");
        }
        return unlimited(displacement, leak * dynamicViscosity);
    }

    /**
     * A point of a delivery table.
     *
     * @param speed [rev/s], above 0
     * @param pressure [Pa], above 0
     * @param flowRate [m3/s], above 0
     */
    public record DeliveryPoint(double speed, double pressure, double flowRate) {
        public DeliveryPoint {
            Require.positive("speed", speed, "rev/s");
            Require.positive("pressure", pressure, "Pa");
            Require.positive("flowRate", flowRate, "m3/s");
        }
    }

    /** Delivery [m3/s] at a speed [rev/s], outlet pressure [Pa] and sump viscosity [Pa s]. */
    public double delivery(double speed, double pressure, double dynamicViscosity) {
        return Math.min(displaced(speed, pressure, dynamicViscosity), suctionLimit(dynamicViscosity));
    }

    /** Slope of the delivery over pressure [m3/(s Pa)], at most 0. */
    public double deliverySlope(double speed, double pressure, double dynamicViscosity) {
        return isSuctionLimited(speed, pressure, dynamicViscosity) ? 0 : -slip / dynamicViscosity;
    }

    /** Whether the pickup, not the displacement, sets the delivery. */
    public boolean isSuctionLimited(double speed, double pressure, double dynamicViscosity) {
        return displaced(speed, pressure, dynamicViscosity) > suctionLimit(dynamicViscosity);
    }

    /** Most that the pickup lets in [m3/s]; infinite without suction resistance. */
    public double suctionLimit(double dynamicViscosity) {
        return suctionPressure / (dynamicViscosity * suctionResistance);
    }

    private double displaced(double speed, double pressure, double dynamicViscosity) {
        return displacement * speed - slip * pressure / dynamicViscosity;
    }
}

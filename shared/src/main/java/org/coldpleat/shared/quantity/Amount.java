package org.coldpleat.shared.quantity;

import java.util.Objects;

/**
 * A number of a sentence in coherent SI. A value without number (not finite) may stand here and reads as such.
 *
 * @param look units and digits it is read in; fixes the kind
 * @param value in the SI unit of the kind
 * @param band half-width of its 95 % band [SI], which takes digits away that it does not allow; 0 if none is stated
 */
public record Amount(Look look, double value, double band) implements Shown {
    public Amount {
        Objects.requireNonNull(look, "look");
        Require.notNegative("band", band, look.kind().siUnit());
    }

    /** An amount without a stated band. */
    public Amount(Look look, double value) {
        this(look, value, 0);
    }

    /** The same with the half-width of its 95 % band [SI]. */
    public Amount withBand(double halfWidth) {
        return new Amount(look, value, halfWidth);
    }

    /** What the number measures. */
    public Kind kind() {
        return look.kind();
    }

    @Override
    public String text(UnitSystem system) {
        return look.text(value, band, system);
    }

    /** A pressure or difference of pressures [Pa]. */
    public static Amount pressure(double pascals) {
        return new Amount(Look.PRESSURE, pascals);
    }

    /** A temperature [K]. */
    public static Amount temperature(double kelvin) {
        return new Amount(Look.TEMPERATURE, kelvin);
    }

    /** A difference of temperatures [K]. */
    public static Amount difference(double kelvins) {
        return new Amount(Look.DIFFERENCE, kelvins);
    }

    /** An area [m2]. */
    public static Amount area(double squareMeters) {
        return new Amount(Look.AREA, squareMeters);
    }

    /** A mass [kg]. */
    public static Amount mass(double kilograms) {
        return new Amount(Look.MASS, kilograms);
    }

    /** A volume of oil [m3]. */
    public static Amount volume(double cubicMeters) {
        return new Amount(Look.VOLUME, cubicMeters);
    }

    /** A time as people say it [s]. */
    public static Amount duration(double seconds) {
        return new Amount(Look.DURATION, seconds);
    }

    /** Hours of running [s]. */
    public static Amount hours(double seconds) {
        return new Amount(Look.HOURS, seconds);
    }

    /** Hours of an estimate with a wide band [s]. */
    public static Amount roughHours(double seconds) {
        return new Amount(Look.ROUGH_HOURS, seconds);
    }

    /** A share of a whole [1]. */
    public static Amount percent(double share) {
        return new Amount(Look.PERCENT, share);
    }

    /** A change by a share of a whole, with its sign [1]. */
    public static Amount change(double share) {
        return new Amount(Look.CHANGE, share);
    }

    /** A ratio to two digits [1]. */
    public static Amount ratio(double value) {
        return new Amount(Look.RATIO, value);
    }

    /** Resistance of a medium [1/m]. */
    public static Amount resistance(double perMeter) {
        return new Amount(Look.RESISTANCE, perMeter);
    }

    /** Speed of a shaft [rev/s]. */
    public static Amount speed(double turnsPerSecond) {
        return new Amount(Look.SPEED, turnsPerSecond);
    }
}

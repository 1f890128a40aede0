package org.coldpleat.model.oil;

/** Checks shared by the laws of this package; each failure names value, limit and unit. */
final class Require {
    private Require() {}

    static double positive(String name, double value, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    name + " must be finite and above 0 " + unit + ", was " + value + " " + unit);
        }
        return value;
    }

    static double within(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    name + " must be within " + low + " to " + high + " " + unit + ", was " + value + " " + unit);
        }
        return value;
    }

    static void falling(double temperature1, double viscosity1, double temperature2, double viscosity2) {
        positive("temperature", temperature1, "K");
        positive("temperature", temperature2, "K");
        within("kinematicViscosity", viscosity1, WaltherScale.MIN_VISCOSITY, WaltherScale.MAX_VISCOSITY, "m2/s");
        within("kinematicViscosity", viscosity2, WaltherScale.MIN_VISCOSITY, WaltherScale.MAX_VISCOSITY, "m2/s");
        if (!((temperature2 - temperature1) * (viscosity1 - viscosity2) > 0)) {
            throw new IllegalArgumentException(
                    "kinematicViscosity must fall as the temperature rises, was " + viscosity1 + " m2/s at "
                            + temperature1 + " K and " + viscosity2 + " m2/s at " + temperature2 + " K");
        }
    }
}

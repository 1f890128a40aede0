package org.coldpleat.model.oil;

import java.util.Objects;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/**
 * One known viscosity of an oil.
 *
 * @param method what was read
 * @param temperature at which [K], above 0
 * @param viscosity kinematic [m2/s] or dynamic [Pa s], as {@code method} says, above 0
 * @param lnUncertainty standard uncertainty of ln(viscosity) [1], at least 0
 * @param provenance where the value comes from
 */
public record Anchor(Method method, double temperature, double viscosity, double lnUncertainty, Provenance provenance) {
    /** What was read. */
    public enum Method {
        /** Kinematic viscosity [m2/s], capillary. */
        KINEMATIC(DEFAULT_KINEMATIC),
        /** Dynamic viscosity at low shear [Pa s]: mini-rotary, other rotational. */
        LOW_SHEAR(DEFAULT_LOW_SHEAR),
        /** Dynamic viscosity at high shear [Pa s]: cold cranking. A lower bound for oils with polymer. */
        HIGH_SHEAR(DEFAULT_HIGH_SHEAR);

        private final double defaultLnUncertainty;

        Method(double defaultLnUncertainty) {
            this.defaultLnUncertainty = defaultLnUncertainty;
        }

        /** Standard uncertainty of ln(viscosity) [1] if none is stated. */
        public double defaultLnUncertainty() {
            return defaultLnUncertainty;
        }
    }

    /** Reproducibility 0.65 % at 95 % for the difference of two laboratories, over 1.96 and the root of two. */
    @Source("ASTM D445 precision for base oils, as quoted by ASTM D2162")
    private static final double DEFAULT_KINEMATIC = 0.0024;

    /** Reproducibility 7 to 20 % in the same sense: 0.025 to 0.07. */
    @Source("from memory")
    private static final double DEFAULT_LOW_SHEAR = 0.05;

    /** Reproducibility as above, and up to a third of temporary loss by shear. */
    @Source("common practice, no source")
    private static final double DEFAULT_HIGH_SHEAR = 0.2;

    public Anchor {
        Objects.requireNonNull(method, "method");
        Objects.requireNonNull(provenance, "provenance");
        Require.positive("temperature", temperature, "K");
        Require.positive("viscosity", viscosity, method == Method.KINEMATIC ? "m2/s" : "Pa s");
        if (!(lnUncertainty >= 0) || Double.isInfinite(lnUncertainty)) {
            throw new IllegalArgumentException("lnUncertainty must be finite and at least 0, was " + lnUncertainty);
        }
    }

    /** An anchor with the uncertainty usual for its method. */
    public static Anchor of(Method method, double temperature, double viscosity, Provenance provenance) {
        return new Anchor(method, temperature, viscosity, method.defaultLnUncertainty(), provenance);
    }

    /** The same anchor with a stated standard uncertainty of ln(viscosity) [1]. */
    public Anchor withLnUncertainty(double stated) {
        return new Anchor(method, temperature, viscosity, stated, provenance);
    }

    /** Kinematic viscosity [m2/s]; a dynamic one is divided by the density at its own temperature. */
    public double kinematicViscosity(MpmsDensity density) {
        return method == Method.KINEMATIC ? viscosity : viscosity / density.density(temperature);
    }
}

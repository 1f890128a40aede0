package org.coldpleat.model.oil.grade;

import java.util.Objects;
import org.coldpleat.shared.quantity.Require;

/**
 * A viscosity of a cold-oil test: a reading, or the limit of a grade to draw beside a curve.
 *
 * @param method which test
 * @param temperature [K]
 * @param dynamicViscosity [Pa s], above 0
 */
public record ColdTest(Method method, double temperature, double dynamicViscosity) {
    /** The two cold tests of SAE J300. */
    public enum Method {
        /** Cold-cranking simulator, high shear, ASTM D5293. */
        CRANKING,
        /** Mini-rotary viscometer after slow cooling, low shear, ASTM D4684. */
        PUMPING
    }

    public ColdTest {
        Objects.requireNonNull(method, "method");
        Require.positive("temperature", temperature, "K");
        Require.positive("dynamicViscosity", dynamicViscosity, "Pa s");
    }
}

package org.coldpleat.model.oil.curve;

import java.util.Optional;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Vogel law {@code ln n = a + b / (T - c)}, n in mm2/s and T in kelvin: bends as real oils do between a cold point and
 * the warm ones.
 *
 * <p>Interpolating a hydraulic oil at -40 degrees C from -54, 40 and 100 degrees C it errs by 3 %, the quadratic Walther
 * curve by 13 %. Never to be extrapolated to the cold from warm points alone.
 *
 * <p>Below {@code c + 20 K} it goes on along its tangent in ln n, so that a trial step of a solver stays finite.
 *
 * @param a [1], finite
 * @param b [K], above 0
 * @param c temperature of infinite viscosity [K], above 0
 */
@Source("H. Vogel 1921, Physikalische Zeitschrift 22, 645; three-point solution derived here")
@Validity("from the coldest to the hottest point it was made from; goes on smoothly outside")
public record VogelCurve(double a, double b, double c) implements ViscosityCurve {
    /** Least distance between the coldest point and c [K]; common practice, no source. */
    public static final double MIN_DISTANCE = 30;

    /** Cold end of the domain of an oil [K]: -40 degrees C. */
    private static final double COLDEST = 233.15;

    private static final double TANGENT_DISTANCE = 20;
    private static final double MM2_PER_M2 = 1e6;

    public VogelCurve {
        if (!Double.isFinite(a)) {
            throw new IllegalArgumentException("Vogel constant a must be finite, was " + a);
        }
        Require.positive("Vogel constant b", b, "K");
        Require.positive("Vogel constant c", c, "K");
    }

    /**
     * The curve through three points in rising order of temperature; empty if no sound one exists.
     *
     * <p>Sound means b above 0 and c above 0, at least 30 K below the coldest point, and at least 30 K below the cold end
     * of the domain of an oil (-40 degrees C), so that the curve has no pole in it.
     *
     * @param temperature1 coldest [K]
     * @param viscosity1 [m2/s]
     * @param temperature2 [K]
     * @param viscosity2 [m2/s]
     * @param temperature3 hottest [K]
     * @param viscosity3 [m2/s]
     */
    public static Optional<VogelCurve> through(
            double temperature1,
            double viscosity1,
            double temperature2,
            double viscosity2,
            double temperature3,
            double viscosity3) {
        if (!(temperature1 < temperature2 && temperature2 < temperature3)) {
            throw new IllegalArgumentException(
                    "temperatures must rise, were " + temperature1 + ", " + temperature2 + ", " + temperature3 + " K");
        }
        WaltherScale.requireFalling(temperature1, viscosity1, temperature2, viscosity2);
        WaltherScale.requireFalling(temperature2, viscosity2, temperature3, viscosity3);
        double y1 = Math.log(viscosity1 * MM2_PER_M2);
        double y2 = Math.log(viscosity2 * MM2_PER_M2);
        double y3 = Math.log(viscosity3 * MM2_PER_M2);
        double cold = temperature2 - temperature1;
        double warm = (y1 - y2) / (y2 - y3) * (temperature3 - temperature2);
        double c = (warm * temperature1 - cold * temperature3) / (warm - cold);
        double b = (y1 - y2) * (temperature1 - c) * (temperature2 - c) / cold;
        double limit = Math.min(temperature1, COLDEST) - MIN_DISTANCE;
        if (!(c > 0 && c < limit && b > 0)) {
            return Optional.empty();
        }
        return Optional.of(new VogelCurve(y1 - b / (temperature1 - c), b, c));
    }

    @Override
    public double kinematicViscosity(double temperature) {
        double distance = temperature - c;
        double held = Math.max(distance, TANGENT_DISTANCE);
        return Math.exp(a + b / held - b / (held * held) * (distance - held)) / MM2_PER_M2;
    }

    @Override
    public double logSlope(double temperature) {
        double held = Math.max(temperature - c, TANGENT_DISTANCE);
        return -b / (held * held);
    }
}

package org.coldpleat.model.oil;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.numerics.BracketedRoot;
import org.coldpleat.model.oil.curve.ViscosityCurve;
import org.coldpleat.model.oil.curve.WaltherCurve;
import org.coldpleat.model.oil.curve.WaltherScale;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * A viscosity index as a data sheet states it: with one viscosity it makes the second point of a Walther line, with two
 * it is held against them.
 *
 * @param value the index [1], finite
 * @param standardUncertainty of the index [1], above 0
 * @param provenance where it comes from
 */
@Source("definition of the index: ASTM D2270-10(2016); line: ASTM D341-09(2015); put together here")
@Validity("viscosity at 100 degrees C at least 2 mm2/s")
public record StatedIndex(double value, double standardUncertainty, Provenance provenance) {
    private static final double TEMPERATURE_40 = 313.15;
    private static final double TEMPERATURE_100 = 373.15;

    /** From here on the made point is that at 40 degrees C, below it that at 100 degrees C [K]. */
    private static final double MIDDLE = 343.15;

    /** Walther slopes between which a line is looked for [1]; lubricating oils have 2.4 to 4. */
    private static final double FLATTEST = 0.5;

    private static final double STEEPEST = 8;
    private static final double SLOPE_TOLERANCE = 1e-12;

    public StatedIndex {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("viscosity index must be finite, was " + value);
        }
        Require.positive("standardUncertainty", standardUncertainty, "1");
        Objects.requireNonNull(provenance, "provenance");
    }

    /**
     * The point that together with a known one gives the index.
     *
     * @param temperature of the known point [K], at most 373.15
     * @param viscosity of the known point, kinematic [m2/s], within the scale of {@link WaltherCurve}
     * @return kinematic viscosity at 40 degrees C, or at 100 degrees C if the known point is nearer to 40; empty if no
     *     falling line through a point not above 100 degrees C has that index
     */
    Optional<Anchor> secondPoint(double temperature, double viscosity) {
        double made = temperature >= MIDDLE ? TEMPERATURE_40 : TEMPERATURE_100;
        return line(temperature, viscosity, value).flatMap(line -> {
            double second = line.kinematicViscosity(made);
            double beside = line(temperature, viscosity, value + standardUncertainty)
                    .or(() -> line(temperature, viscosity, value - standardUncertainty))
                    .map(moved -> Math.abs(Math.log(moved.kinematicViscosity(made) / second)))
                    .orElse(Double.NaN);
            return Double.isNaN(beside)
                    ? Optional.empty()
                    : Optional.of(new Anchor(Anchor.Method.KINEMATIC, made, second, beside, provenance));
        });
    }

    /** Index of a curve; empty if it is too thin for one, or leaves the scale between 40 and 100 degrees C. */
    static OptionalDouble of(ViscosityCurve curve) {
        double at40 = curve.kinematicViscosity(TEMPERATURE_40);
        double at100 = curve.kinematicViscosity(TEMPERATURE_100);
        return at40 <= WaltherScale.MAX_VISCOSITY && at100 >= ViscosityIndex.MIN_VISCOSITY
                ? ViscosityIndex.of(at40, at100)
                : OptionalDouble.empty();
    }

    private static Optional<WaltherCurve> line(double temperature, double viscosity, double index) {
        double w = WaltherScale.scaled(viscosity);
        double x = Math.log10(temperature);
        double thinnest = WaltherScale.scaled(ViscosityIndex.MIN_VISCOSITY);
        if (temperature > TEMPERATURE_100 || w < thinnest) {
            return Optional.empty();
        }
        double steepest = temperature < TEMPERATURE_100
                ? Math.min(STEEPEST, (w - thinnest) / (Math.log10(TEMPERATURE_100) - x))
                : STEEPEST;
        DoubleUnaryOperator excess = slope -> excess(slopeLine(w, x, slope), index);
        if (!(steepest > FLATTEST && excess.applyAsDouble(FLATTEST) > 0 && excess.applyAsDouble(steepest) < 0)) {
            return Optional.empty();
        }
        OptionalDouble slope = BracketedRoot.brent(excess, FLATTEST, steepest, SLOPE_TOLERANCE);
        return slope.isPresent() ? Optional.of(slopeLine(w, x, slope.getAsDouble())) : Optional.empty();
    }

    private static WaltherCurve slopeLine(double w, double x, double slope) {
        return new WaltherCurve(w + slope * x, slope);
    }

    private static double excess(WaltherCurve line, double index) {
        // the steepest line ends at the least viscosity, where rounding must not put it below
        double viscosity100 = Math.max(ViscosityIndex.MIN_VISCOSITY, line.kinematicViscosity(TEMPERATURE_100));
        return ViscosityIndex.of(line.kinematicViscosity(TEMPERATURE_40), viscosity100)
                        .orElseThrow()
                - index;
    }
}

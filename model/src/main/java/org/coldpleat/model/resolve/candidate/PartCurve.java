package org.coldpleat.model.resolve.candidate;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/**
 * Law of a part from its pressure drop against flow on a rig: {@code dp = mu a q + rho b q^2} by relative least squares,
 * neither below 0. How far the readings scatter about it, at least 5 %, goes into the answer.
 */
final class PartCurve {
    @Source("common practice, no source: two gauges of a home rig")
    private static final double LEAST_LN_SIGMA = 0.05;

    /** Density of an oil that is not told [kg/m3]. */
    @Source("common practice, no source")
    private static final double DENSITY = 860;

    private PartCurve() {}

    /** The law of a part of a sheet, if it was measured. */
    static Optional<AdditiveLaw> of(Section sheet, FilterPart part, Inputs inputs) {
        return part == FilterPart.PLEAT_PACK
                ? Optional.empty()
                : sheet.section("partCurves")
                        .flatMap(curves -> curves.section(word(part)))
                        .map(one -> law(one, inputs));
    }

    private static String word(FilterPart part) {
        return switch (part) {
            case INLET_HOLES -> "inletHoles";
            case ANTI_DRAIN_FLAP -> "antiDrainFlap";
            case CAN_ANNULUS -> "canAnnulus";
            case TUBE_OPENINGS -> "tubeOpenings";
            case CENTER_TUBE -> "centerTube";
            case OUTLET_BORE -> "outletBore";
            case PLEAT_PACK -> "";
        };
    }

    private static AdditiveLaw law(Section curve, Inputs inputs) {
        double density = inputs.valueOr(curve, "density", DENSITY);
        double viscosity = inputs.value(curve, "viscosity").orElseThrow() * density;
        List<double[]> rows = curve.sections("points").stream()
                .map(point -> row(point, viscosity, density))
                .toList();
        AdditiveLaw fitted = fit(rows);
        double square = 0;
        for (double[] row : rows) {
            double miss = fitted.laminar() * row[0] + fitted.inertial() * row[1] - 1;
            square += miss * miss;
        }
        double scatter = Math.sqrt(square / Math.max(1, rows.size() - 2));
        double factor = inputs.derived(
                curve.path() + ".fit",
                Measured.factor(Kind.RATIO, 1, Math.max(LEAST_LN_SIGMA, scatter), Provenance.MEASURED));
        return fitted.times(factor);
    }

    /** Viscous and inertial drop of a law of 1 at a reading, over what was read. */
    private static double[] row(Section point, double viscosity, double density) {
        double flow = point.quantity("flow").orElseThrow().value();
        double pressure = point.quantity("pressure").orElseThrow().value();
        return new double[] {viscosity * flow / pressure, density * flow * flow / pressure};
    }

    /** Coefficients that bring all rows nearest to 1; where one came out below 0 the other alone. */
    static AdditiveLaw fit(List<double[]> rows) {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double x = 0;
        double y = 0;
        for (double[] row : rows) {
            xx += row[0] * row[0];
            xy += row[0] * row[1];
            yy += row[1] * row[1];
            x += row[0];
            y += row[1];
        }
        double determinant = xx * yy - xy * xy;
        double laminar = (x * yy - y * xy) / determinant;
        double inertial = (y * xx - x * xy) / determinant;
        if (determinant < 1e-9 * xx * yy || inertial < 0) {
            return AdditiveLaw.laminarOnly(x / xx);
        }
        return laminar < 0 ? new AdditiveLaw(0, y / yy) : new AdditiveLaw(laminar, inertial);
    }
}

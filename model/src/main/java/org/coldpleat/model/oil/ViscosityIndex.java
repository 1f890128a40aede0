package org.coldpleat.model.oil;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.curve.WaltherScale;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;
import org.coldpleat.shared.table.CsvTable;

/**
 * Viscosity index from the kinematic viscosities at 40 and 100 degrees C. L and H come from the published piecewise fit,
 * which misses the table of the standard by up to 0.11 % (the index by about 0.1), and from the closed form above 70
 * mm2/s.
 *
 * <p>Worked example: 73.30 mm2/s and 8.86 mm2/s give 92.
 */
@Source("ASTM D2270-10(2016): sections 5 (procedure A), 6 (procedure B), Table X2.1")
@Validity("KV100 at least 2 mm2/s; undefined below")
public final class ViscosityIndex {
    private static final double MM2_PER_M2 = 1e6;

    /** Least KV100 for which the index is defined [m2/s]. */
    public static final double MIN_VISCOSITY = 2e-6;

    private static final List<Piece> PIECES = CsvTable.read(ViscosityIndex.class, "viscosity_index_fit.csv", Piece::of);

    private ViscosityIndex() {}

    private record Piece(double to, double a, double b, double c, double d, double e, double f) {
        static Piece of(CsvTable.Row row) {
            return new Piece(
                    row.number("to"),
                    row.number("a"),
                    row.number("b"),
                    row.number("c"),
                    row.number("d"),
                    row.number("e"),
                    row.number("f"));
        }
    }

    /**
     * Viscosity index, not rounded; empty if the viscosity at 100 degrees C is below 2 mm2/s.
     *
     * @param viscosity40 kinematic viscosity at 40 degrees C [m2/s], above that at 100 degrees C
     * @param viscosity100 kinematic viscosity at 100 degrees C [m2/s]
     */
    public static OptionalDouble of(double viscosity40, double viscosity100) {
        WaltherScale.requireFalling(313.15, viscosity40, 373.15, viscosity100);
        if (viscosity100 < MIN_VISCOSITY) {
            return OptionalDouble.empty();
        }
        double l = zeroIndexViscosity(viscosity100);
        double h = hundredIndexViscosity(viscosity100);
        if (viscosity40 >= h) {
            return OptionalDouble.of(100 * (l - viscosity40) / (l - h));
        }
        double n = Math.log(h / viscosity40) / Math.log(viscosity100 * MM2_PER_M2);
        return OptionalDouble.of(100 + (Math.pow(10, n) - 1) / 0.00715);
    }

    /** Viscosity index as it is reported: to the nearest whole number, halves to the even one. */
    public static OptionalDouble reported(double viscosity40, double viscosity100) {
        OptionalDouble index = of(viscosity40, viscosity100);
        return index.isPresent() ? OptionalDouble.of(Math.rint(index.getAsDouble())) : index;
    }

    /** L: viscosity at 40 degrees C of an oil of index 0 with this viscosity at 100 degrees C [m2/s]. */
    static double zeroIndexViscosity(double viscosity100) {
        double y = viscosity100 * MM2_PER_M2;
        Piece piece = piece(y);
        return (piece.c + y * (piece.b + y * piece.a)) / MM2_PER_M2;
    }

    /** H: viscosity at 40 degrees C of an oil of index 100 with this viscosity at 100 degrees C [m2/s]. */
    static double hundredIndexViscosity(double viscosity100) {
        double y = viscosity100 * MM2_PER_M2;
        Piece piece = piece(y);
        return (piece.f + y * (piece.e + y * piece.d)) / MM2_PER_M2;
    }

    private static Piece piece(double y) {
        return PIECES.stream()
                .filter(piece -> y < piece.to || piece.to == Double.POSITIVE_INFINITY)
                .findFirst()
                .orElseThrow();
    }
}

package org.coldpleat.model.resolve.bench;

import java.util.Optional;
import org.coldpleat.model.bench.BubblePoint;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Liquids that wet a sheet for a bubble-point test. */
final class WettingLiquid {
    private static final double ROOM = 293.15;

    /** Surface tension at 20 degrees C [N/m] and its slope [N/(m K)]. */
    @Source("common tables at 20 degrees C; slopes of J. J. Jasper 1972, J. Phys. Chem. Ref. Data 1 (both from memory)")
    private static final double ISOPROPANOL = 0.0217;

    private static final double ISOPROPANOL_SLOPE = -7.9e-5;
    private static final double ETHANOL = 0.0223;
    private static final double ETHANOL_SLOPE = -8.3e-5;

    /** Density at 20 degrees C [kg/m3] and its slope [kg/(m3 K)]. */
    @Source("common tables (from memory)")
    private static final double ISOPROPANOL_DENSITY = 785;

    private static final double ETHANOL_DENSITY = 789;
    private static final double DENSITY_SLOPE = -0.85;

    /** Standard uncertainty of a surface tension from a table for a liquid from a shop [1]: water and denaturants. */
    @Source("common practice, no source")
    private static final double TABLE_LN_SIGMA = 0.02;

    private WettingLiquid() {}

    static BubblePoint.Liquid of(Section test, Inputs inputs) {
        double warmer = test.quantity("temperature").map(Measured::value).orElse(ROOM) - ROOM;
        boolean ethanol = test.choice("liquid").orElse("").equals("ethanol");
        Optional<Measured> stated = inputs.folded(test, "surfaceTension");
        double table = ethanol ? ETHANOL + ETHANOL_SLOPE * warmer : ISOPROPANOL + ISOPROPANOL_SLOPE * warmer;
        double density = (ethanol ? ETHANOL_DENSITY : ISOPROPANOL_DENSITY) + DENSITY_SLOPE * warmer;
        return new BubblePoint.Liquid(
                stated.orElse(Measured.factor(Kind.SURFACE_TENSION, table, TABLE_LN_SIGMA, Provenance.PUBLISHED)),
                test.quantity("density").map(Measured::value).orElse(density),
                test.quantity("contactAngle").map(Measured::value).orElse(0.0));
    }
}

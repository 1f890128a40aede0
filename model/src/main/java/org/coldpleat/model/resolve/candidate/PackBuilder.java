package org.coldpleat.model.resolve.candidate;

import java.util.OptionalDouble;
import org.coldpleat.model.pleat.FlatPack;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.source.Source;

/** Makes the pleat pack of a sheet: as read, with usual pleats where the sheet leaves something open. */
final class PackBuilder {
    /** Strip length that each pleat loses in its two folds, in thicknesses [1]. */
    @Source("derived here: edge shape factor of adjoining walls, 2-D Stokes-Brinkman runs")
    private static final double FOLD_LOSS = 1.84;

    /** Fewest pleats that a sheet can state. */
    private static final double FEWEST = 4;

    private PackBuilder() {}

    /**
     * A pack.
     *
     * @param model for any resistance of the medium
     * @param foldShare share of the strip that the folds take [1]
     */
    record Pack(PackModel model, double foldShare) {}

    /** A sheet that lies flat. */
    static Pack flat(AreaBuilder.Areas areas) {
        return new Pack(new FlatPack(areas.effective()), 0);
    }

    /** The pack of a sheet. */
    static Pack pleated(PartReader parts, FilterSizes sizes, AreaBuilder.Areas areas) {
        double thickness = sizes.thickness();
        double outer = sizes.elementOutside();
        double inner = sizes.elementInside();
        OptionalDouble stated = parts.stated("pleats.count");
        double count = stated.isPresent() ? stated.getAsDouble() : usualCount(parts, thickness, outer, inner, areas);
        Inputs inputs = parts.inputs();
        PleatGeometry geometry = geometry(parts, outer / 2, inner / 2, count, thickness);
        PleatClosure closure = new PleatClosure(
                inputs.constant("pleat.slipCoefficient"),
                inputs.constant("pleat.inPlaneRatio"),
                !parts.section("pleats")
                        .flatMap(pleats -> pleats.flag("foldsSealed"))
                        .orElse(false),
                inputs.constant("pleat.gapFactor"));
        double folds = FOLD_LOSS * thickness * count / areas.stripLength();
        return new Pack(
                new PleatPack(geometry, (int) Math.round(count), areas.height())
                        .withClosure(closure)
                        .withStatedArea(areas.effective() * (1 - folds)),
                folds);
    }

    /** As many pleats as the area needs, but no more than leave a usual gap at the core. */
    private static double usualCount(
            PartReader parts, double thickness, double outer, double inner, AreaBuilder.Areas areas) {
        double needed = areas.stripLength() / (outer - inner);
        double fitting = Math.PI * inner / (2 * (thickness + parts.usual("pleats.coreGap")));
        return Math.max(FEWEST, parts.size("pleats.count", Math.min(needed, fitting)));
    }

    private static OptionalDouble stated(PartReader parts, String key) {
        return parts.section("pleats")
                .map(pleats -> parts.inputs().value(pleats, key))
                .orElse(OptionalDouble.empty());
    }

    private static PleatGeometry geometry(
            PartReader parts, double outer, double inner, double count, double thickness) {
        OptionalDouble together = stated(parts, "downstreamGap");
        if (together.isPresent()) {
            return PleatGeometry.radialLegsTogether(
                    outer, inner, count, thickness, together.getAsDouble(), PleatEnds.FOLDED);
        }
        return PleatGeometry.radial(
                outer,
                inner,
                count,
                thickness,
                stated(parts, "outerFoldWidth").orElse(0),
                stated(parts, "innerFoldWidth").orElse(0),
                stated(parts, "gapFloor").orElse(0),
                PleatEnds.FOLDED);
    }
}

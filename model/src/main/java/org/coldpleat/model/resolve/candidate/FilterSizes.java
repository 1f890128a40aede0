package org.coldpleat.model.resolve.candidate;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.typical.TypicalFilter;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;

/**
 * Sizes of can, element and center tube: as read, else what follows from the sizes that were read, else from the area of
 * the medium and the shape of a usual spin-on filter. Each is found when it is first asked for. Work object of one build.
 */
final class FilterSizes {
    /** Length over outside diameter of an element of which only the medium area is known [1]. */
    @Source("common practice, no source")
    private static final double SLENDERNESS = 0.9;

    private final PartReader parts;
    private final double grossArea;
    private final Optional<Measured> thickness;

    /**
     * Sizes of a sheet.
     *
     * @param grossArea unfolded medium, one side [m2]
     * @param thickness of the sheet [m], if the sheet gives one
     */
    FilterSizes(PartReader parts, double grossArea, Optional<Measured> thickness) {
        this.parts = parts;
        this.grossArea = grossArea;
        this.thickness = thickness;
    }

    /** Outside diameter of the can [m]. */
    double can() {
        OptionalDouble stated = parts.stated("outside.diameter");
        return stated.isPresent() ? stated.getAsDouble() : canInside() + 2 * parts.size("outside.wallThickness");
    }

    /** Bore of the can [m]. */
    double canInside() {
        OptionalDouble told = toldCan();
        return told.isPresent() ? told.getAsDouble() : elementOutside() + 2 * gap(elementOutside());
    }

    private OptionalDouble toldCan() {
        OptionalDouble stated = parts.stated("outside.insideDiameter");
        OptionalDouble over = parts.stated("outside.diameter");
        return stated.isPresent() || over.isEmpty()
                ? stated
                : OptionalDouble.of(over.getAsDouble() - 2 * parts.size("outside.wallThickness"));
    }

    private double gap(double of) {
        return parts.usual(
                "element.gapToCan", TypicalFilter.of("element.gapToCan").times(of));
    }

    /** Diameter over the pleat tips [m]. */
    double elementOutside() {
        OptionalDouble stated = parts.stated("element.outsideDiameter");
        if (stated.isPresent()) {
            return stated.getAsDouble();
        }
        OptionalDouble depth = parts.stated("pleats.depth");
        OptionalDouble core = toldCore();
        if (depth.isPresent() && core.isPresent()) {
            return core.getAsDouble() + 2 * depth.getAsDouble();
        }
        OptionalDouble can = toldCan();
        return can.isPresent()
                ? can.getAsDouble() - 2 * gap(can.getAsDouble())
                : parts.size("element.outsideDiameter", byArea());
    }

    /** Diameter under the pleat roots [m]. */
    double elementInside() {
        OptionalDouble told = toldCore();
        if (told.isPresent()) {
            return told.getAsDouble();
        }
        OptionalDouble depth = parts.stated("pleats.depth");
        double outside = elementOutside();
        return depth.isPresent() && outside > 2 * depth.getAsDouble()
                ? outside - 2 * depth.getAsDouble()
                : parts.size("element.insideDiameter", outside);
    }

    private OptionalDouble toldCore() {
        OptionalDouble stated = parts.stated("element.insideDiameter");
        OptionalDouble tube = parts.stated("centerTube.insideDiameter");
        return stated.isPresent() || tube.isEmpty()
                ? stated
                : OptionalDouble.of(parts.usual(
                        "element.insideDiameter",
                        TypicalFilter.of("centerTube.insideDiameter").behind(tube.getAsDouble())));
    }

    /** Length over the end caps [m]. */
    double elementLength() {
        for (String path : new String[] {"element.length", "pleats.height", "medium.strip.width"}) {
            OptionalDouble stated = parts.stated(path);
            if (stated.isPresent()) {
                return stated.getAsDouble();
            }
        }
        OptionalDouble can = parts.stated("outside.length");
        if (can.isPresent()) {
            return parts.size("element.length", can.getAsDouble());
        }
        double outside = elementOutside();
        double inside = elementInside();
        double ring = Math.PI / 4 * (outside * outside - inside * inside);
        return grossArea / (mediumPerVolume() * ring);
    }

    /** Bore of the center tube [m]. */
    double tube() {
        return parts.size("centerTube.insideDiameter", elementInside());
    }

    /** Thickness of the sheet [m]. */
    double thickness() {
        return thickness.isPresent() ? thickness.get().value() : parts.size("medium.thickness");
    }

    private double mediumPerVolume() {
        return parts.usual("element.sheetShare") / thickness();
    }

    private double byArea() {
        double core = TypicalFilter.of("element.insideDiameter").value();
        double volume = grossArea / mediumPerVolume();
        return Math.cbrt(volume / (Math.PI / 4 * (1 - core * core) * SLENDERNESS));
    }
}

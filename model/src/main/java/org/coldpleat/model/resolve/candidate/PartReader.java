package org.coldpleat.model.resolve.candidate;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.typical.TypicalFilter;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/**
 * Reads the sizes of the parts of one sheet, and takes what is usual of a spin-on filter where the sheet says nothing. Work
 * object of one build.
 */
final class PartReader {
    /** Sizes of little weight that most sheets leave out: they stand among the assumptions, and no part is called open. */
    private static final Set<String> MINOR = Set.of(
            "antiDrainFlap.modulus",
            "antiDrainFlap.openingPressure",
            "basePlate.inletHoles.thickness",
            "basePlate.outletBore.length",
            "centerTube.wallThickness",
            "outside.wallThickness",
            "pleats.buriedPerEnd",
            "pleats.seam");

    /** Why a size is taken that the sheet does not tell. */
    static final String USUAL = "assumption.usualPart";

    private final Section sheet;
    private final Inputs inputs;
    private final Map<String, Double> taken = new HashMap<>();
    private int asked;

    PartReader(Section sheet, Inputs inputs) {
        this.sheet = sheet;
        this.inputs = inputs;
    }

    Section sheet() {
        return sheet;
    }

    Inputs inputs() {
        return inputs;
    }

    /** How often a size of weight was asked for that the sheet does not tell [1]. */
    int asked() {
        return asked;
    }

    /** False if the sheet says that a part, such as {@code basePlate.inletHoles}, is not there. */
    boolean present(String part) {
        return section(part).flatMap(one -> one.flag("present")).orElse(true);
    }

    /** The size of a path such as {@code basePlate.inletHoles.diameter} [SI], if the sheet tells it. */
    OptionalDouble stated(String path) {
        int last = path.lastIndexOf('.');
        Optional<Section> section = section(path.substring(0, last));
        return section.isPresent() ? inputs.value(section.get(), path.substring(last + 1)) : OptionalDouble.empty();
    }

    /** The size of a path [SI], or what is usual. */
    double size(String path) {
        OptionalDouble stated = stated(path);
        return stated.isPresent()
                ? stated.getAsDouble()
                : usual(path, TypicalFilter.of(path).measured());
    }

    /** The size of a path [SI], or a usual multiple of another size. */
    double size(String path, double other) {
        OptionalDouble stated = stated(path);
        return stated.isPresent()
                ? stated.getAsDouble()
                : usual(path, TypicalFilter.of(path).times(other));
    }

    /** What is usual of something that no sheet tells [SI]. */
    double usual(String path) {
        return usual(path, TypicalFilter.of(path).measured());
    }

    /** What is usual for a path, whatever the sheet says [SI]. */
    double usual(String path, Measured typical) {
        asked += MINOR.contains(path) ? 0 : 1;
        Double before = taken.get(path);
        if (before != null) {
            return before;
        }
        double value = inputs.following(sheet.path() + "." + path, typical, USUAL);
        taken.put(path, value);
        return value;
    }

    Optional<Section> section(String path) {
        Optional<Section> at = Optional.of(sheet);
        for (String key : path.split("\\.", -1)) {
            at = at.flatMap(one -> one.section(key));
        }
        return at;
    }
}

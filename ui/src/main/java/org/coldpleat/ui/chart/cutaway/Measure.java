package org.coldpleat.ui.chart.cutaway;

import java.util.Optional;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/**
 * A length or count of the sheet, or what is drawn in its place.
 *
 * @param value [mm] or [1]
 * @param measured false if the sheet does not have it
 */
record Measure(double value, boolean measured) {
    private static final double MILLIMETER = 1000;

    /** The length of a key [mm]. */
    static Measure length(Optional<Section> section, String key, double otherwise) {
        return of(section, key, MILLIMETER, otherwise);
    }

    /** The count of a key. */
    static Measure count(Optional<Section> section, String key, double otherwise) {
        return of(section, key, 1, otherwise);
    }

    private static Measure of(Optional<Section> section, String key, double scale, double otherwise) {
        return section.flatMap(one -> one.quantity(key))
                .map(Measured::value)
                .filter(value -> value > 0)
                .map(value -> new Measure(scale * value, true))
                .orElse(new Measure(otherwise, false));
    }

    /** This one if measured, else the other. */
    Measure or(Measure other) {
        return measured ? this : other;
    }

    int rounded() {
        return (int) Math.round(value);
    }

    double half() {
        return value / 2;
    }
}

package org.coldpleat.ui.commandline.size;

import org.coldpleat.model.sizing.SizingResult.Variable;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.ShownUnits;

/** Shows what can be sized in its unit. */
final class SizedValue {
    private static final double RESISTANCE_SCALE = 1e8;

    private SizedValue() {}

    /** Unit of a variable. */
    static ShownUnit unit(Variable variable, ShownUnits units) {
        return switch (variable) {
            case AREA -> units.area();
            case OPENING -> units.pressure();
            case RESISTANCE -> ShownUnit.scaled("1e8/m", 1 / RESISTANCE_SCALE);
            case PLEATS -> ShownUnit.scaled("", 1);
            case GRADE -> ShownUnit.scaled("mPa·s", 1e3);
        };
    }

    /** A value with as many digits as the width of its band allows, at least two. */
    static String of(double value, double halfBand, ShownUnit unit) {
        double shown = unit.of(value);
        double half = Math.abs(unit.ofDifference(halfBand));
        if (!Double.isFinite(half) || !(half > 0)) {
            return Figures.plain3(shown);
        }
        return Figures.rounded(shown, Figures.decimals(half));
    }
}

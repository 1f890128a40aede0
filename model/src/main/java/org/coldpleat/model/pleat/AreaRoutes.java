package org.coldpleat.model.pleat;

import java.util.List;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Ways from readings to the medium area and the pleat depth, each with its standard uncertainty. */
public final class AreaRoutes {
    /** Standard uncertainty of ln(count x 2 x depth x height) because folds are no sharp lines [1]. */
    @Source(
            "derived here: a strip holds 2 depths less 1.84 thicknesses plus both gaps a pleat, within about 2 % of 2 depths")
    public static final double FOLD_SHAPE_LN_SIGMA = 0.02;

    private AreaRoutes() {}

    /**
     * Length or width of the strip after signed allowances [m].
     *
     * @throws IllegalArgumentException if nothing is left
     */
    @Source("JCGM 100:2008 (GUM), 5.1.2, independent readings")
    public static Measured corrected(Measured length, List<Allowance> allowances) {
        double value = length.value();
        double variance = square(length.standardUncertainty());
        Provenance weakest = length.provenance();
        for (Allowance allowance : allowances) {
            value += allowance.length().value();
            variance += square(allowance.length().standardUncertainty());
            weakest = weaker(weakest, allowance.length().provenance());
        }
        if (!(value > 0)) {
            throw new IllegalArgumentException("length after allowances must be above 0 m, was " + value);
        }
        return derived(Kind.LENGTH, value, Math.sqrt(variance), weakest);
    }

    /** Gross area of the unfolded strip: length [m] x width [m], after allowances [m2]. */
    public static Measured strip(Measured length, Measured width) {
        return derived(
                Kind.AREA,
                length.value() * width.value(),
                length.value() * width.value() * Math.hypot(relative(length), relative(width)),
                weaker(length.provenance(), width.provenance()));
    }

    /** Gross area by pleats: count x 2 x depth [m] x height [m] [m2]; 0.0924 m2 for 55, 14 mm, 60 mm. */
    public static Measured counted(Measured pleatCount, Measured pleatDepth, Measured pleatHeight) {
        double value = 2 * pleatCount.value() * pleatDepth.value() * pleatHeight.value();
        double square = square(relative(pleatCount))
                + square(relative(pleatDepth))
                + square(relative(pleatHeight))
                + square(FOLD_SHAPE_LN_SIGMA);
        Provenance weakest = weaker(pleatCount.provenance(), weaker(pleatDepth.provenance(), pleatHeight.provenance()));
        return derived(Kind.AREA, value, value * Math.sqrt(square), weakest);
    }

    /** Pleat depth from strip length and count, L/(2N) [m]. */
    public static Measured depthFromStrip(Measured length, Measured pleatCount) {
        double value = length.value() / (2 * pleatCount.value());
        double square = square(relative(length)) + square(relative(pleatCount)) + square(FOLD_SHAPE_LN_SIGMA);
        return derived(
                Kind.LENGTH, value, value * Math.sqrt(square), weaker(length.provenance(), pleatCount.provenance()));
    }

    /** Pleat depth from the diameters of the element, (OD - ID)/2 [m]. */
    public static Measured depthFromDiameters(Measured outerDiameter, Measured innerDiameter) {
        double value = (outerDiameter.value() - innerDiameter.value()) / 2;
        if (!(value > 0)) {
            throw new IllegalArgumentException("outerDiameter " + outerDiameter.value()
                    + " m must exceed innerDiameter " + innerDiameter.value() + " m");
        }
        double uncertainty = Math.hypot(outerDiameter.standardUncertainty(), innerDiameter.standardUncertainty()) / 2;
        return derived(Kind.LENGTH, value, uncertainty, weaker(outerDiameter.provenance(), innerDiameter.provenance()));
    }

    static Measured derived(Kind kind, double value, double uncertainty, Provenance provenance) {
        return new Measured(kind, value, uncertainty, uncertainty > 0 ? Spread.NORMAL : Spread.NONE, provenance, 1, "");
    }

    static Provenance weaker(Provenance first, Provenance second) {
        return first.compareTo(second) >= 0 ? first : second;
    }

    static double relative(Measured value) {
        return value.standardUncertainty() / value.value();
    }

    private static double square(double value) {
        return value * value;
    }
}

package org.coldpleat.model.pleat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;

/**
 * The medium area of an element: gross by whichever routes the readings allow, effective after what the glue buries, and
 * whether the routes agree. The unfolded strip outranks count x 2 x depth x height, which outranks a stated area.
 *
 * @param strip gross area of the unfolded strip [m2]
 * @param counted gross area by pleats [m2]
 * @param stated area printed or told [m2]
 * @param gross the one used [m2]
 * @param effective gross less the edges buried in the end caps [m2]
 * @param notices where routes disagree
 */
public record AreaSheet(
        Optional<Measured> strip,
        Optional<Measured> counted,
        Optional<Measured> stated,
        Measured gross,
        Measured effective,
        List<Notice> notices) {
    /** Standard uncertainties apart at which two routes disagree [1]. */
    @Source("JCGM 100:2008 (GUM), coverage factor 2 for about 95 %")
    private static final double COVERAGE = 2;

    /** How near to two a ratio must be for the factor-two question [1], or twice its uncertainty if that is more. */
    @Source("common practice, no source: areas by count and depth are good to some 4 %")
    private static final double NEAR_TWO = 0.1;

    public AreaSheet {
        notices = List.copyOf(notices);
    }

    /**
     * Puts the routes together.
     *
     * @param strip from {@link AreaRoutes#strip}
     * @param counted from {@link AreaRoutes#counted}
     * @param stated as printed or told
     * @param pleatHeight full height of the pleats [m]
     * @param buriedPerEnd height that the glue covers at each end [m], at least 0
     * @param place for the notices, such as the name of a candidate
     * @throws IllegalArgumentException if no route is given or the glue leaves nothing open
     */
    public static AreaSheet of(
            Optional<Measured> strip,
            Optional<Measured> counted,
            Optional<Measured> stated,
            Measured pleatHeight,
            Measured buriedPerEnd,
            String place) {
        Measured gross = strip.or(() -> counted)
                .or(() -> stated)
                .orElseThrow(() -> new IllegalArgumentException("medium area needs at least 1 route, had 0"));
        List<Notice> notices = new ArrayList<>();
        if (strip.isPresent() && counted.isPresent()) {
            compare("area.routesDisagree", strip.get(), counted.get(), place).ifPresent(notices::add);
        }
        if (stated.isPresent() && (strip.isPresent() || counted.isPresent())) {
            compare("area.statedDisagrees", stated.get(), gross, place).ifPresent(notices::add);
        }
        return new AreaSheet(strip, counted, stated, gross, open(gross, pleatHeight, buriedPerEnd), notices);
    }

    /** Notice if the pleat depths [m] from the strip and from the diameters disagree beyond their uncertainty. */
    public static Optional<Notice> compareDepths(Measured fromStrip, Measured fromDiameters, String place) {
        return disagree(fromStrip, fromDiameters)
                ? Optional.of(Notice.of(
                        "area.depthsDisagree", Severity.WARNING, place, depth(fromStrip), depth(fromDiameters)))
                : Optional.empty();
    }

    /** Area left open between the glue beads: {@code gross (h - 2 g)/h} [m2]. */
    private static Measured open(Measured gross, Measured height, Measured buried) {
        double left = height.value() - 2 * buried.value();
        if (!(buried.value() >= 0 && left > 0)) {
            throw new IllegalArgumentException("buriedPerEnd must be at least 0 m and below half of the height "
                    + height.value() + " m, was " + buried.value());
        }
        double value = gross.value() * left / height.value();
        double byGross = value * AreaRoutes.relative(gross);
        double byBuried = gross.value() * 2 * buried.standardUncertainty() / height.value();
        return AreaRoutes.derived(
                Kind.AREA,
                value,
                Math.hypot(byGross, byBuried),
                buried.value() > 0 ? AreaRoutes.weaker(gross.provenance(), buried.provenance()) : gross.provenance());
    }

    private static Optional<Notice> compare(String code, Measured first, Measured second, String place) {
        double ratio = first.value() / second.value();
        double lnSigma = Math.hypot(AreaRoutes.relative(first), AreaRoutes.relative(second));
        double fromTwo = Math.abs(Math.abs(Math.log(ratio)) - Math.log(2));
        if (fromTwo < Math.max(NEAR_TWO, COVERAGE * lnSigma) && disagree(first, second)) {
            return Optional.of(Notice.of(
                    "area.factorTwo",
                    Severity.WARNING,
                    place,
                    area(first),
                    new Amount(Look.PLAIN_RATIO, ratio),
                    area(second)));
        }
        return disagree(first, second)
                ? Optional.of(Notice.of(code, Severity.WARNING, place, area(first), area(second)))
                : Optional.empty();
    }

    private static boolean disagree(Measured first, Measured second) {
        double apart = Math.abs(first.value() - second.value());
        return apart > COVERAGE * Math.hypot(first.standardUncertainty(), second.standardUncertainty());
    }

    private static Amount area(Measured area) {
        return new Amount(Look.AREA, area.value());
    }

    private static Amount depth(Measured depth) {
        return new Amount(Look.SHARP_LENGTH, depth.value());
    }
}

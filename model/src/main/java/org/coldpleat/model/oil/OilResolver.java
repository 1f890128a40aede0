package org.coldpleat.model.oil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.OilResult.Refused;
import org.coldpleat.model.oil.OilResult.Resolved;
import org.coldpleat.model.oil.curve.BiasedWaltherCurve;
import org.coldpleat.model.oil.curve.ColdAnchoredCurve;
import org.coldpleat.model.oil.curve.ViscosityCurve;
import org.coldpleat.model.oil.grade.TypicalOil;
import org.coldpleat.model.oil.grade.TypicalOils;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;

/**
 * Makes an {@link Oil} from what a user knows.
 *
 * <p>The Walther line of the class of the oil goes through the two hottest low-shear points. The coldest of any further low-shear points becomes
 * the cold anchor of a Vogel curve; only if there is none does the coldest high-shear reading take its place. Points left
 * over are reported with their distance from the curve. A single warm point and a viscosity index make two points;
 * an index beside two warm points is held against them.
 */
public final class OilResolver {
    private static final double LEAST_DISTANCE = 1;
    private static final double COLDEST_POINT = 213.15;
    private static final double HOTTEST_POINT = 473.15;

    /** From here on a point is a warm one, of which an index makes two [K]: 20 degrees C. */
    private static final double WARM = 293.15;

    private OilResolver() {}

    /** A point with its position in the spec and its kinematic viscosity [m2/s]. */
    record Point(int position, Anchor anchor, double viscosity) {
        double temperature() {
            return anchor.temperature();
        }

        boolean isHighShear() {
            return anchor.method() == Anchor.Method.HIGH_SHEAR;
        }
    }

    /** The oil, or the reason why there is none. */
    public static OilResult resolve(OilSpec spec) {
        Optional<TypicalOil> typical = spec.grade().flatMap(TypicalOils::of);
        Optional<Refused> missing = missing(spec, typical);
        if (missing.isPresent()) {
            return missing.get();
        }
        double stated = spec.density().orElseGet(() -> typical.orElseThrow().density());
        double statedAt = spec.density().isPresent()
                ? spec.densityTemperature()
                : typical.orElseThrow().densityTemperature();
        double reference = stated > 0 && stated < Double.POSITIVE_INFINITY
                ? MpmsDensity.referenceDensity(stated, statedAt)
                : Double.NaN;
        if (!(reference >= MpmsDensity.MIN_REFERENCE_DENSITY && reference <= MpmsDensity.MAX_REFERENCE_DENSITY)) {
            return new Refused(
                    OilFault.DENSITY_OUT_OF_RANGE,
                    List.of(),
                    List.of(
                            new Amount(Look.DENSITY, stated).text(),
                            new Amount(Look.PLAIN_TEMPERATURE, statedAt).text()));
        }
        MpmsDensity density = new MpmsDensity(reference);
        List<Notice> notices = new ArrayList<>();
        if (spec.density().isEmpty()) {
            notices.add(Notice.of(
                    "oil.typicalDensity",
                    Severity.INFO,
                    "oil " + spec.name(),
                    new Amount(Look.DENSITY, stated),
                    Shown.word(typical.orElseThrow().grade())));
        }
        if (spec.base().isPresent() && spec.hint().isMultigrade()) {
            notices.add(Notice.of(
                    "oil.baseUnused",
                    Severity.INFO,
                    "oil " + spec.name(),
                    Shown.word(spec.grade().orElseThrow().label())));
        }
        return spec.anchors().isEmpty()
                ? GradeOil.resolve(spec, typical.orElseThrow(), density, notices)
                : fromPoints(spec, density, notices);
    }

    private static Optional<Refused> missing(OilSpec spec, Optional<TypicalOil> typical) {
        boolean needsTypical = spec.anchors().isEmpty() || spec.density().isEmpty();
        if (!needsTypical || typical.isPresent()) {
            return Optional.empty();
        }
        if (spec.grade().isPresent()) {
            return Optional.of(new Refused(
                    OilFault.NO_TYPICAL_OIL,
                    List.of(),
                    List.of(spec.grade().get().label())));
        }
        OilFault fault = spec.anchors().isEmpty() ? OilFault.NOTHING_KNOWN : OilFault.DENSITY_MISSING;
        return Optional.of(new Refused(fault, List.of(), List.of()));
    }

    private static OilResult fromPoints(OilSpec spec, MpmsDensity density, List<Notice> notices) {
        List<Point> points = points(spec, density);
        List<Point> lowShear = points.stream().filter(p -> !p.isHighShear()).toList();
        Optional<Refused> fault = PointCheck.eachWithin(points, COLDEST_POINT, HOTTEST_POINT)
                .or(() -> PointCheck.falling(lowShear, LEAST_DISTANCE));
        if (fault.isPresent()) {
            return fault.get();
        }
        List<Point> warm =
                lowShear.stream().filter(p -> p.temperature() >= WARM).toList();
        if (warm.size() == 1 && spec.viscosityIndex().isPresent()) {
            return fromIndex(spec, warm.get(0), spec.viscosityIndex().get(), density, notices);
        }
        if (lowShear.size() < 2) {
            return new Refused(OilFault.TOO_FEW_POINTS, List.of(), List.of(Integer.toString(lowShear.size())));
        }
        Point high = lowShear.get(lowShear.size() - 1);
        Point low = lowShear.get(lowShear.size() - 2);
        Optional<Point> cold = lowShear.size() > 2
                ? Optional.of(lowShear.get(0))
                : points.stream()
                        .filter(p -> p.isHighShear() && p.temperature() < low.temperature())
                        .findFirst();
        Optional<Refused> coldFault = cold.flatMap(point -> PointCheck.falling(List.of(point, low), LEAST_DISTANCE));
        if (coldFault.isPresent()) {
            return coldFault.get();
        }
        ClassedLine line = ClassedLine.of(
                new LinePair(low.temperature(), low.viscosity(), high.temperature(), high.viscosity()), spec.hint());
        BiasedWaltherCurve warmCurve = line.curve();
        Optional<? extends ViscosityCurve> curve = cold.isEmpty()
                ? Optional.of(warmCurve)
                : ColdAnchoredCurve.below(
                        warmCurve,
                        cold.get().temperature(),
                        cold.get().viscosity(),
                        low.temperature(),
                        high.temperature());
        if (curve.isEmpty()) {
            return PointCheck.refused(OilFault.COLD_POINT_UNFIT, List.of(cold.orElseThrow(), low, high));
        }
        List<Point> used = new ArrayList<>(List.of(low, high));
        cold.ifPresent(point -> used.add(0, point));
        Oil oil = new Oil(
                spec.name(),
                curve.get(),
                density,
                CragoeHeat.of(density),
                spec.pourPoint(),
                used.stream().map(Point::anchor).toList(),
                Spreads.ofPoints(line, curve.get(), used),
                0);
        addFindings(oil, spec, points, used, notices);
        return new Resolved(oil, notices);
    }

    /** The oil of one point and its viscosity index. */
    private static OilResult fromIndex(
            OilSpec spec, Point known, StatedIndex index, MpmsDensity density, List<Notice> notices) {
        Optional<Anchor> made = index.secondPoint(known.temperature(), known.viscosity());
        if (made.isEmpty()) {
            return new Refused(
                    OilFault.INDEX_UNFIT,
                    List.of(known.position()),
                    List.of(
                            OilNotices.viscosity(known.anchor()).text(),
                            new Amount(Look.PLAIN_TEMPERATURE, known.temperature()).text(),
                            new Amount(Look.PLAIN_RATIO, index.value()).text()));
        }
        notices.add(Notice.of(
                "oil.pointFromIndex",
                Severity.INFO,
                "oil " + spec.name(),
                OilNotices.viscosity(made.get()),
                new Amount(Look.PLAIN_TEMPERATURE, made.get().temperature()),
                new Amount(Look.PLAIN_RATIO, index.value())));
        return fromPoints(spec.withPoint(made.get()), density, notices);
    }

    private static List<Point> points(OilSpec spec, MpmsDensity density) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < spec.anchors().size(); i++) {
            Anchor anchor = spec.anchors().get(i);
            points.add(new Point(i, anchor, anchor.kinematicViscosity(density)));
        }
        points.sort(Comparator.comparingDouble(Point::temperature));
        return points;
    }

    private static void addFindings(Oil oil, OilSpec spec, List<Point> points, List<Point> used, List<Notice> notices) {
        if (used.get(0).isHighShear()) {
            notices.add(Notice.of(
                    "oil.highShearAnchor",
                    Severity.WARNING,
                    OilNotices.place(oil),
                    new Amount(Look.PLAIN_TEMPERATURE, used.get(0).temperature()),
                    OilNotices.viscosity(used.get(0).anchor())));
        }
        points.stream()
                .filter(point -> !used.contains(point))
                .map(point -> Notice.of(
                        "oil.pointUnused",
                        Severity.INFO,
                        OilNotices.place(oil),
                        new Amount(Look.PLAIN_TEMPERATURE, point.temperature()),
                        OilNotices.viscosity(point.anchor()),
                        new Amount(Look.PLAIN_RATIO, point.viscosity() / oil.kinematicViscosity(point.temperature()))))
                .forEach(notices::add);
        spec.viscosityIndex()
                .flatMap(index -> IndexCheck.against(OilNotices.place(oil), warmest(used), index))
                .ifPresent(notices::add);
        spec.grade().ifPresent(grade -> notices.addAll(OilNotices.againstGrade(oil, grade)));
    }

    private static List<Point> warmest(List<Point> used) {
        return used.subList(used.size() - 2, used.size());
    }
}

package org.coldpleat.model.oil;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.grade.HotGrade;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.oil.grade.WinterGrade;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;

/** Findings about an oil: at a temperature it is used at, and against its stated grade. */
public final class OilNotices {
    private static final double TEMPERATURE_100 = 373.15;

    /** Distance above the pour point within which flow is doubtful [K]. */
    @Source("common practice, no source")
    private static final double POUR_POINT_MARGIN = 3;

    /** Walther line through the warm points over the cranking limit of sound oils [1]: 0.69 to 1.53 on sheets. */
    @Source("derived here from product sheets (names withheld) and SAE J300")
    private static final double LEAST_CRANKING_RATIO = 0.6;

    private static final double GREATEST_CRANKING_RATIO = 1.6;

    private OilNotices() {}

    /** Findings about an oil used at a temperature [K]: extrapolation, domain and pour point. */
    public static List<Notice> at(Oil oil, double temperature) {
        List<Notice> notices = new ArrayList<>();
        if (oil.isBelowAnchors(temperature)) {
            double factor = Math.exp(COVERAGE_95 * oil.viscositySpread(temperature));
            notices.add(Notice.of(
                    "oil.extrapolated",
                    Severity.WARNING,
                    place(oil),
                    new Amount(Look.PLAIN_TEMPERATURE, temperature),
                    new Amount(Look.PLAIN_TEMPERATURE, oil.lowestAnchor()),
                    new Amount(Look.PLAIN_RATIO, 1 / factor),
                    new Amount(Look.PLAIN_RATIO, factor)));
        }
        if (Oil.isOutsideDomain(temperature)) {
            notices.add(Notice.of(
                    "oil.outsideDomain",
                    Severity.WARNING,
                    place(oil),
                    new Amount(Look.PLAIN_TEMPERATURE, temperature),
                    new Amount(Look.PLAIN_TEMPERATURE, Oil.MIN_TEMPERATURE),
                    new Amount(Look.PLAIN_TEMPERATURE, Oil.MAX_TEMPERATURE)));
        }
        if (oil.pourPoint().isPresent()) {
            double pourPoint = oil.pourPoint().getAsDouble();
            if (temperature < pourPoint + POUR_POINT_MARGIN) {
                notices.add(Notice.of(
                        temperature < pourPoint ? "oil.belowPourPoint" : "oil.nearPourPoint",
                        Severity.CAUTION,
                        place(oil),
                        new Amount(Look.PLAIN_TEMPERATURE, temperature),
                        new Amount(Look.PLAIN_TEMPERATURE, pourPoint)));
            }
        }
        return List.copyOf(notices);
    }

    /**
     * Findings about an oil against its stated grade.
     *
     * <p>The cranking limit is held against the curve only while that is the plain line through warm points: a curve with
     * a low-shear cold anchor rightly lies above the high-shear limit for oils with much polymer.
     */
    public static List<Notice> againstGrade(Oil oil, SaeGrade grade) {
        List<Notice> notices = new ArrayList<>();
        viscosity100(oil, grade).ifPresent(notices::add);
        grade.winter().flatMap(winter -> cranking(oil, grade, winter)).ifPresent(notices::add);
        grade.winter().flatMap(winter -> pumping(oil, grade, winter)).ifPresent(notices::add);
        return List.copyOf(notices);
    }

    private static Optional<Notice> viscosity100(Oil oil, SaeGrade grade) {
        double viscosity = oil.kinematicViscosity(TEMPERATURE_100);
        double low = Math.max(
                grade.hot().map(HotGrade::minViscosity100).orElse(0.0),
                grade.winter().map(WinterGrade::minViscosity100).orElse(0.0));
        double limit = grade.hot().map(HotGrade::limitViscosity100).orElse(Double.POSITIVE_INFINITY);
        // rounding of the curve must not put an oil that sits on the lower edge outside
        if (viscosity >= low * (1 - 1e-9) && viscosity < limit) {
            return Optional.empty();
        }
        return Optional.of(Notice.of(
                viscosity < low ? "oil.grade.tooThinHot" : "oil.grade.tooThickHot",
                Severity.WARNING,
                place(oil),
                Shown.word(grade.label()),
                new Amount(Look.KINEMATIC, viscosity),
                new Amount(Look.KINEMATIC, viscosity < low ? low : limit)));
    }

    private static Optional<Notice> cranking(Oil oil, SaeGrade grade, WinterGrade winter) {
        if (oil.anchors().size() > 2) {
            return Optional.empty();
        }
        double viscosity = oil.dynamicViscosity(winter.crankingTemperature());
        double ratio = viscosity / winter.crankingLimit();
        if (ratio >= LEAST_CRANKING_RATIO && ratio <= GREATEST_CRANKING_RATIO) {
            return Optional.empty();
        }
        return Optional.of(Notice.of(
                "oil.grade.farFromCrankingLimit",
                Severity.WARNING,
                place(oil),
                Shown.word(grade.label()),
                new Amount(Look.DYNAMIC, viscosity),
                new Amount(Look.PLAIN_TEMPERATURE, winter.crankingTemperature()),
                new Amount(Look.PLAIN_RATIO, ratio),
                new Amount(Look.DYNAMIC, winter.crankingLimit())));
    }

    private static Optional<Notice> pumping(Oil oil, SaeGrade grade, WinterGrade winter) {
        double viscosity = oil.dynamicViscosity(winter.pumpingTemperature());
        if (viscosity <= winter.pumpingLimit()) {
            return Optional.empty();
        }
        return Optional.of(Notice.of(
                "oil.grade.abovePumpingLimit",
                Severity.CAUTION,
                place(oil),
                Shown.word(grade.label()),
                new Amount(Look.DYNAMIC, viscosity),
                new Amount(Look.PLAIN_TEMPERATURE, winter.pumpingTemperature()),
                new Amount(Look.DYNAMIC, winter.pumpingLimit())));
    }

    static String place(Oil oil) {
        return "oil " + oil.name();
    }

    /** Viscosity of an anchor in the unit of its method. */
    static Amount viscosity(Anchor anchor) {
        Look look = anchor.method() == Anchor.Method.KINEMATIC ? Look.KINEMATIC : Look.DYNAMIC;
        return new Amount(look, anchor.viscosity());
    }
}

package org.coldpleat.model.oil;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.grade.HotGrade;
import org.coldpleat.model.oil.grade.IsoGrade;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.oil.grade.ViscosityGrade;
import org.coldpleat.model.oil.grade.WinterGrade;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;

/** Findings about an oil: at a temperature it is used at, and against its stated grade. */
public final class OilNotices {
    private static final double TEMPERATURE_40 = 313.15;
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
            notices.add(Notice.of(
                    "oil.extrapolated",
                    Severity.WARNING,
                    place(oil),
                    new Amount(Look.PLAIN_TEMPERATURE, temperature),
                    new Amount(Look.PLAIN_TEMPERATURE, oil.lowestAnchor()),
                    lowest95(oil, temperature),
                    highest95(oil, temperature)));
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
    public static List<Notice> againstGrade(Oil oil, ViscosityGrade grade) {
        return grade instanceof SaeGrade sae ? againstSae(oil, sae) : againstIso(oil, (IsoGrade) grade);
    }

    /**
     * What came of two oils poured together.
     *
     * @param blend the two as one
     * @param added the oil poured in
     * @param share volume share of it [1]
     */
    public static Notice blended(Oil blend, Oil added, double share) {
        return Notice.of(
                "oil.blended",
                Severity.INFO,
                place(blend),
                new Amount(Look.PERCENT, share),
                Shown.word(added.name()),
                new Amount(Look.KINEMATIC, blend.kinematicViscosity(TEMPERATURE_40)),
                new Amount(Look.KINEMATIC, blend.kinematicViscosity(TEMPERATURE_100)));
    }

    private static List<Notice> againstSae(Oil oil, SaeGrade grade) {
        List<Notice> notices = new ArrayList<>();
        viscosity100(oil, grade).ifPresent(notices::add);
        grade.winter().flatMap(winter -> cranking(oil, grade, winter)).ifPresent(notices::add);
        grade.winter().flatMap(winter -> pumping(oil, grade, winter)).ifPresent(notices::add);
        return List.copyOf(notices);
    }

    private static List<Notice> againstIso(Oil oil, IsoGrade grade) {
        double viscosity = oil.kinematicViscosity(TEMPERATURE_40);
        if (grade.holds(viscosity)) {
            return List.of();
        }
        boolean thin = viscosity < grade.minViscosity40();
        return List.of(Notice.of(
                thin ? "oil.grade.tooThinWarm" : "oil.grade.tooThickWarm",
                Severity.WARNING,
                place(oil),
                Shown.word(grade.label()),
                new Amount(Look.KINEMATIC, viscosity),
                new Amount(Look.KINEMATIC, thin ? grade.minViscosity40() : grade.maxViscosity40())));
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
        // an oil far below the limit would be of the next colder grade, if there is one
        double least = winter.isColdest() ? 0 : LEAST_CRANKING_RATIO;
        if (ratio >= least && ratio <= GREATEST_CRANKING_RATIO) {
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

    /** Factor on the viscosity at the thin end of its band at a temperature [K]. */
    static Amount lowest95(Oil oil, double temperature) {
        return new Amount(Look.PLAIN_RATIO, Math.exp(oil.band().moved(-COVERAGE_95, temperature)));
    }

    /** Factor on the viscosity at the thick end of its band at a temperature [K]. */
    static Amount highest95(Oil oil, double temperature) {
        return new Amount(Look.PLAIN_RATIO, Math.exp(oil.band().moved(COVERAGE_95, temperature)));
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

package org.coldpleat.model.oil;

import java.util.List;
import org.coldpleat.model.oil.OilResult.Resolved;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.oil.grade.TypicalOil;
import org.coldpleat.model.oil.grade.WinterGrade;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Provenance;

/**
 * The typical oil of a grade in the place of an oil of which no more is known. Its class in the cold counts as unknown
 * unless its base is stated.
 */
final class GradeOil {
    private static final double TEMPERATURE_40 = 313.15;
    private static final double TEMPERATURE_100 = 373.15;

    /** Temperature at which the band is told for a grade without a pumping test [K]: -10 degrees C. */
    private static final double COLD_END = 263.15;

    private GradeOil() {}

    static Resolved resolve(OilSpec spec, TypicalOil typical, MpmsDensity density, List<Notice> notices) {
        LinePair pair = new LinePair(TEMPERATURE_40, typical.viscosity40(), TEMPERATURE_100, typical.viscosity100());
        ColdHint hint = spec.hint();
        ClassedLine line = spec.base().isPresent() && !hint.isMultigrade()
                ? ClassedLine.of(pair, hint)
                : ClassedLine.ofUnknown(pair);
        Oil oil = new Oil(
                spec.name(),
                line.curve(),
                density,
                CragoeHeat.of(density),
                spec.pourPoint(),
                List.of(
                        anchor(TEMPERATURE_40, typical.viscosity40(), typical),
                        anchor(TEMPERATURE_100, typical.viscosity100(), typical)),
                Spreads.ofGrade(line, typical.lnSigma()),
                0);
        double coldEnd = coldEnd(spec);
        notices.add(Notice.of(
                "oil.gradeOnly",
                Severity.WARNING,
                OilNotices.place(oil),
                Shown.word(typical.grade()),
                Shown.word(typical.source()),
                new Amount(Look.PLAIN_TEMPERATURE, coldEnd),
                OilNotices.lowest95(oil, coldEnd),
                OilNotices.highest95(oil, coldEnd)));
        spec.viscosityIndex()
                .map(index -> Notice.of(
                        "oil.indexUnused",
                        Severity.INFO,
                        OilNotices.place(oil),
                        new Amount(Look.PLAIN_RATIO, index.value())))
                .ifPresent(notices::add);
        return new Resolved(oil, notices);
    }

    private static Anchor anchor(double temperature, double viscosity, TypicalOil typical) {
        return new Anchor(Anchor.Method.KINEMATIC, temperature, viscosity, typical.lnSigma(), Provenance.TYPICAL);
    }

    private static double coldEnd(OilSpec spec) {
        return spec.grade().orElseThrow() instanceof SaeGrade sae
                ? sae.winter().map(WinterGrade::pumpingTemperature).orElse(COLD_END)
                : COLD_END;
    }
}

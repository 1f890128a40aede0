package org.coldpleat.ui.text;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.certainty.StateResult;

/** The answer to "at which oil temperature does the bypass valve open", in words. */
final class OpeningAnswer {
    /** Unevenness of a band from which both ends are shown [1]. */
    private static final double SKEWED = 0.15;

    private OpeningAnswer() {}

    static String of(StateResult result, double from, double to, ShownUnits units) {
        ShownUnit unit = units.temperature();
        return switch (result.answer()) {
            case NEVER ->
                Texts.get("answer.never", Figures.plain(unit.of(from)), Figures.plain(unit.of(to)), unit.symbol());
            case ALWAYS ->
                Texts.get("answer.always", Figures.plain(unit.of(from)), Figures.plain(unit.of(to)), unit.symbol());
            case BELOW ->
                result.openingTemperature()
                        .map(band -> below(band, units))
                        .orElseGet(() -> intervals(result, from, to, unit));
            case INTERVALS -> intervals(result, from, to, unit);
            case NO_VALVE -> Texts.get("answer.noValve");
            case UNRESOLVED -> Texts.get("answer.unresolved");
        };
    }

    private static String below(OpeningBand band, ShownUnits units) {
        ShownUnit unit = units.temperature();
        boolean coldEnd = Double.isFinite(band.low());
        boolean warmEnd = Double.isFinite(band.high());
        double half = units.temperatureDifference().of(band.halfWidth());
        int decimals = half > 0 ? Math.max(0, Math.min(1, Figures.decimals(half))) : 1;
        String value = Figures.fixed(unit.of(band.value()), decimals);
        String low = Figures.fixed(unit.of(band.low()), decimals);
        String high = Figures.fixed(unit.of(band.high()), decimals);
        if (!coldEnd && warmEnd) {
            return Texts.get("answer.belowOrNever", value, high, unit.symbol());
        }
        if (coldEnd && !warmEnd) {
            return Texts.get("answer.belowOrWarmer", value, low, unit.symbol());
        }
        String other = units.beside(
                ShownUnits::temperature, one -> Figures.fixed(one.of(band.value()), decimals) + " " + one.symbol());
        if (!coldEnd || !(half > 0)) {
            return Texts.get("answer.below", value, unit.symbol(), other);
        }
        double skew = Math.abs(band.high() + band.low() - 2 * band.value()) / (band.high() - band.low());
        return skew > SKEWED
                ? Texts.get("answer.belowRange", value, low, high, unit.symbol())
                : Texts.get(
                        "answer.belowBand",
                        value,
                        unit.symbol(),
                        Figures.fixed(half, decimals),
                        units.temperatureDifference().symbol(),
                        other);
    }

    private static String intervals(StateResult result, double from, double to, ShownUnit unit) {
        List<String> spans = new ArrayList<>();
        for (double[] interval : result.intervals()) {
            String low = Figures.fixed(unit.of(interval[0]), 1);
            String high = Figures.fixed(unit.of(interval[1]), 1);
            if (interval[0] <= from) {
                spans.add(Texts.get("answer.spanBelow", high));
            } else if (interval[1] >= to) {
                spans.add(Texts.get("answer.spanAbove", low));
            } else {
                spans.add(Texts.get("answer.span", low, high));
            }
        }
        return Texts.get("answer.intervals", String.join(Texts.get("answer.and"), spans), unit.symbol());
    }
}

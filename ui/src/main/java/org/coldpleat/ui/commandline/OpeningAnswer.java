package org.coldpleat.ui.commandline;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.run.Band;
import org.coldpleat.model.run.StateResult;

/** The answer to "at which oil temperature does the bypass valve open", in words. */
final class OpeningAnswer {
    /** Half band from which no decimal is shown [K or °F]. */
    private static final double COARSE = 10;

    private OpeningAnswer() {}

    static String of(StateResult result, double from, double to, ShownUnits units, ShownUnits beside) {
        ShownUnit unit = units.temperature();
        return switch (result.answer()) {
            case NEVER ->
                Texts.get("answer.never", Figures.plain(unit.of(from)), Figures.plain(unit.of(to)), unit.symbol());
            case ALWAYS ->
                Texts.get("answer.always", Figures.plain(unit.of(from)), Figures.plain(unit.of(to)), unit.symbol());
            case BELOW ->
                result.openingTemperature()
                        .map(band -> below(band, units, beside))
                        .orElseGet(() -> intervals(result, from, to, unit));
            case INTERVALS -> intervals(result, from, to, unit);
            case NO_VALVE -> Texts.get("answer.noValve");
            case UNRESOLVED -> Texts.get("answer.unresolved");
        };
    }

    private static String below(Band band, ShownUnits units, ShownUnits others) {
        ShownUnit unit = units.temperature();
        ShownUnit beside = others.temperature();
        double half = Figures.halfBand(band, units.temperatureDifference());
        int decimals = half >= COARSE ? 0 : 1;
        String value = Figures.fixed(unit.of(band.value()), decimals);
        String other = Figures.fixed(beside.of(band.value()), decimals);
        return half > 0
                ? Texts.get(
                        "answer.belowBand",
                        value,
                        unit.symbol(),
                        Figures.fixed(half, decimals),
                        units.temperatureDifference().symbol(),
                        other,
                        beside.symbol())
                : Texts.get("answer.below", value, unit.symbol(), other, beside.symbol());
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

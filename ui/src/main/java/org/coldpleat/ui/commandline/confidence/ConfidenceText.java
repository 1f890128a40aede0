package org.coldpleat.ui.commandline.confidence;

import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.CompareText;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.NoticeLines;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** The confidence page for a terminal. */
final class ConfidenceText {
    private static final int NAME = 24;
    private static final int NUMBER = 22;
    private static final int SENTENCE = 60;
    private static final double SMALLEST_SHOWN = 0.005;

    private final ConfidenceResult result;
    private final UnitSystem system;
    private final ShownUnits units;
    private final StringBuilder page = new StringBuilder();

    private ConfidenceText(ConfidenceResult result, UnitSystem system) {
        this.result = result;
        this.system = system;
        units = ShownUnits.of(system);
    }

    static String of(ConfidenceResult result, UnitSystem system) {
        ConfidenceText text = new ConfidenceText(result, system);
        text.line(Texts.get("confidence.title", result.title(), result.draws(), result.seed()));
        text.openings();
        text.pairs();
        text.focus();
        return text.page.toString();
    }

    private void openings() {
        String symbol = units.temperature().symbol();
        Table table = new Table(
                        new int[] {NAME, NAME, NUMBER, NUMBER, NUMBER}, new boolean[] {false, false, true, true, true})
                .head(
                        Texts.get("csv.state"),
                        Texts.get("csv.candidate"),
                        Texts.get("confidence.median", symbol),
                        Texts.get("confidence.band", symbol),
                        Texts.get("confidence.chance"));
        for (ConfidenceResult.StateOutcome one : result.outcomes()) {
            Quantiles opening = one.opening();
            table.row(
                    one.state(),
                    one.candidate(),
                    end(opening.median()),
                    Texts.get("confidence.range", end(opening.low()), end(opening.high())),
                    percent(one.chanceOpen()));
        }
        table.lines().forEach(this::line);
        line("");
    }

    private void pairs() {
        line(Texts.get("confidence.pairs"));
        for (ConfidenceResult.Warmer pair : result.pairs()) {
            line("  "
                    + Texts.get(
                            "confidence.pair",
                            pair.state(),
                            pair.first(),
                            pair.second(),
                            percent(pair.firstWarmer()),
                            percent(pair.secondWarmer()),
                            percent(pair.equal())));
        }
        line("");
    }

    private void focus() {
        ConfidenceResult.Focus focus = result.focus();
        line(Texts.get("confidence.focus", focus.candidate(), focus.state()));
        Table table = new Table(new int[] {SENTENCE, NUMBER, NUMBER, NUMBER}, new boolean[] {false, true, true, true})
                .head(
                        Texts.get("confidence.measurement"),
                        Texts.get("confidence.first"),
                        Texts.get("confidence.total"),
                        Texts.get(
                                "confidence.reduction",
                                units.temperatureDifference().symbol()));
        for (ConfidenceResult.Measurement gain : focus.measurements()) {
            ConfidenceResult.Contribution share = focus.contributions().stream()
                    .filter(one -> one.group().equals(gain.group()))
                    .findFirst()
                    .orElseThrow();
            if (!(share.total() <= SMALLEST_SHOWN)) {
                table.row(
                        Sentences.measurement(gain.group().replaceAll("#.*", "")),
                        spread(share.first(), share.firstError()),
                        spread(share.total(), share.totalError()),
                        Texts.get(
                                "confidence.fromTo",
                                Figures.fixed(units.temperatureDifference().of(gain.spreadNow()), 1),
                                Figures.fixed(units.temperatureDifference().of(gain.spreadAfter()), 1)));
            }
        }
        table.lines().forEach(this::line);
        line(Texts.get(
                "confidence.verified",
                result.verified().compared(),
                result.verified().differing()));
        result.notices()
                .forEach(notice -> Table.wrap(NoticeLines.of(notice, system), CompareText.WIDTH)
                        .forEach(this::line));
        Table.wrap(Texts.get("confidence.caution"), CompareText.WIDTH).forEach(this::line);
    }

    private String end(double kelvin) {
        if (Double.isInfinite(kelvin)) {
            return Texts.get(kelvin > 0 ? "confidence.always" : "confidence.never");
        }
        return Figures.fixed(units.temperature().of(kelvin), 1);
    }

    private static String spread(double share, double error) {
        if (!Double.isFinite(share)) {
            return Texts.get("confidence.unknown");
        }
        if (!Double.isFinite(error)) {
            return Texts.get("confidence.errorUnknown", Figures.fixed(share, 2));
        }
        return Texts.get("confidence.plusMinus", Figures.fixed(share, 2), Figures.fixed(error, 2));
    }

    private static String percent(double share) {
        return Figures.fixed(100 * share, 1) + " %";
    }

    private void line(String text) {
        page.append(text).append('\n');
    }
}

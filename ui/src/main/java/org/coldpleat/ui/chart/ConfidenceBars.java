package org.coldpleat.ui.chart;

import java.awt.Color;
import java.util.List;
import java.util.function.UnaryOperator;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.ConfidenceResult.Contribution;
import org.coldpleat.model.certainty.ConfidenceResult.Measurement;
import org.coldpleat.model.certainty.ConfidenceResult.StateOutcome;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.BarRows;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedRangeXYPlot;
import org.jfree.chart.ui.TextAnchor;

/** Bars of a run of draws: the bands of the answers, and what the widest doubt comes from and would cost to settle. */
public final class ConfidenceBars {
    private static final double PERCENT = 100;
    private static final double BAND = 0.3;
    private static final double BAND_HEIGHT = -0.05;
    private static final double ALONE = 0.1;
    private static final double WITH_OTHERS = -0.2;
    private static final double BAR = 0.24;
    private static final Color FILLED = ChartTheme.color(0);
    private static final Color FAINT = ChartTheme.band(0);
    private static final int MOST_GROUPS = 10;
    private static final int SHARES_WEIGHT = 3;
    private static final int GAINS_WEIGHT = 2;
    private static final double GAP = 28;

    /** Room beyond the warmest band, over the width of all of them [1], for the words beside it. */
    private static final double ROOM = 0.6;

    /** Room that the words beside a band need, over the range shown [1]. */
    private static final double WORDS = 0.25;

    /** Narrowest range of temperatures shown [K]. */
    private static final double NARROWEST = 40;

    private ConfidenceBars() {}

    /** Median and 95 % band of the opening temperature of each candidate in each state. */
    public static JFreeChart bands(ConfidenceResult result, boolean invented, UnitSystem preferred) {
        Unit unit = ChartUnits.of(preferred).temperature();
        NumberAxis across = Axes.linear(ChartTexts.get("axis.opening", unit.symbol()));
        double cold = unit.fromSi(result.temperature()[0]);
        double warm = warmEnd(result, cold, unit);
        across.setRange(cold, warm);
        BarRows rows = new BarRows(across);
        List<String> names = result.outcomes().stream()
                .map(StateOutcome::candidate)
                .distinct()
                .toList();
        LegendItemCollection legend = new LegendItemCollection();
        for (int i = 0; i < names.size(); i++) {
            legend.add(Charts.legendItem(i, names.get(i)));
        }
        for (StateOutcome one : result.outcomes()) {
            int index = names.indexOf(one.candidate());
            rows.row(ChartTexts.get(
                    "bars.row",
                    one.state(),
                    one.candidate(),
                    Charts.number(0.1 * Math.round(10 * PERCENT * one.chanceOpen()))));
            Quantiles opening = one.opening();
            if (opening.high() == Double.NEGATIVE_INFINITY) {
                rows.text(cold, BAND_HEIGHT, " " + ChartTexts.get("bars.never"), TextAnchor.CENTER_LEFT);
                continue;
            }
            double low = shown(opening.low(), cold, warm, unit);
            double high = shown(opening.high(), cold, warm, unit);
            rows.bar(low, high, BAND_HEIGHT, BAND, ChartTheme.span(index), ChartTheme.color(index));
            if (Double.isFinite(opening.median())) {
                rows.marker(shown(opening.median(), cold, warm, unit), BAND_HEIGHT, index);
            }
            String words = ChartTexts.get(
                    "bars.band",
                    words(opening.low(), unit),
                    words(opening.median(), unit),
                    words(opening.high(), unit));
            boolean atRight = warm - high > low - cold || warm - high > WORDS * (warm - cold);
            rows.text(
                    atRight ? high : low,
                    BAND_HEIGHT,
                    "  " + words + "  ",
                    atRight ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT);
        }
        rows.plot().setFixedLegendItems(legend);
        return Charts.chart(
                ChartTexts.get("bars.title"),
                subtitle(result, invented),
                ChartTexts.get("bars.key", Integer.toString(result.draws()), unit.symbol()),
                rows.plot());
    }

    /** End of the range shown, in the unit of the axis: beyond the warmest end of a band, no warmer than the case looks. */
    private static double warmEnd(ConfidenceResult result, double cold, Unit unit) {
        double end = unit.fromSi(result.temperature()[result.temperature().length - 1]);
        double warmest = result.outcomes().stream()
                .mapToDouble(one -> shown(one.opening().high(), cold, end, unit))
                .max()
                .orElse(end);
        return Math.min(end, cold + Math.max(unit.differenceFromSi(NARROWEST), (1 + ROOM) * (warmest - cold)));
    }

    /** What {@link #bands} shows, for readers who cannot see it. */
    public static String bandsDescription(ConfidenceResult result) {
        return ChartTexts.get(
                "bars.description", Integer.toString(result.outcomes().size()));
    }

    /**
     * Where the spread of the closest call comes from, and what the spread would be after measuring a group better.
     *
     * @param words name of a group of unknowns
     */
    public static JFreeChart shares(
            ConfidenceResult result, boolean invented, UnaryOperator<String> words, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        ConfidenceResult.Focus focus = result.focus();
        List<Measurement> measurements =
                focus.measurements().stream().limit(MOST_GROUPS).toList();
        NumberAxis share = Axes.linear(ChartTexts.get("axis.varianceShare"));
        share.setRange(0, 1.1 * PERCENT);
        NumberAxis spread = Axes.linear(ChartTexts.get("axis.spread", units.spread()));
        double now = measurements.stream()
                .mapToDouble(one -> units.temperature().differenceFromSi(one.spreadNow()))
                .max()
                .orElse(1);
        // where nothing is spread any range will do, as long as places in it can be told apart
        spread.setRange(0, now > 0 && Double.isFinite(now) ? 1.15 * now : 1);
        BarRows left = new BarRows(share);
        BarRows right = new BarRows(spread);
        for (Measurement one : measurements) {
            left.row(words.apply(one.group()));
            focus.contributions().stream()
                    .filter(part -> part.group().equals(one.group()))
                    .forEach(part -> contribution(left, part));
            right.row("");
            if (!Double.isFinite(one.spreadAfter()) || !Double.isFinite(one.error())) {
                right.text(0, -0.05, " " + ChartTexts.get("shares.notKnown"), TextAnchor.CENTER_LEFT);
                continue;
            }
            double after = units.temperature().differenceFromSi(one.spreadAfter());
            double error = units.temperature().differenceFromSi(one.error());
            right.bar(0, after, -0.05, 2 * BAR, FAINT, FILLED);
            right.error(after - error, after + error, -0.05);
        }
        if (Double.isFinite(now)) {
            right.plot().addDomainMarker(Charts.namedLine(now, ChartTexts.get("shares.now")));
        }
        CombinedRangeXYPlot both = new CombinedRangeXYPlot(left.plot().getRangeAxis());
        both.setBackgroundPaint(ChartTheme.PAPER);
        both.setGap(GAP);
        both.add(left.plot(), SHARES_WEIGHT);
        both.add(right.plot(), GAINS_WEIGHT);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(swatch(ChartTexts.get("shares.alone"), FILLED));
        legend.add(swatch(ChartTexts.get("shares.withOthers"), FAINT));
        both.setFixedLegendItems(legend);
        return Charts.chart(
                ChartTexts.get("shares.title", focus.candidate(), focus.state()),
                subtitle(result, invented),
                ChartTexts.get("shares.key"),
                both);
    }

    /** What {@link #shares} shows, for readers who cannot see it. */
    public static String sharesDescription(ConfidenceResult result, UnaryOperator<String> words) {
        ConfidenceResult.Focus focus = result.focus();
        String first = focus.measurements().isEmpty()
                ? ""
                : words.apply(focus.measurements().get(0).group());
        return ChartTexts.get("shares.description", focus.candidate(), focus.state(), first);
    }

    private static void contribution(BarRows rows, Contribution part) {
        if (!Double.isFinite(part.first()) || !Double.isFinite(part.total())) {
            rows.text(0, ALONE, " " + ChartTexts.get("shares.notKnown"), TextAnchor.CENTER_LEFT);
            return;
        }
        bar(rows, part.first(), part.firstError(), ALONE, FILLED);
        bar(rows, part.total(), part.totalError(), WITH_OTHERS, FAINT);
    }

    private static void bar(BarRows rows, double share, double error, double height, Color fill) {
        rows.bar(0, PERCENT * Math.max(0, share), height, BAR, fill, FILLED);
        if (Double.isFinite(error)) {
            rows.error(PERCENT * Math.max(0, share - error), PERCENT * Math.max(0, share + error), height);
        } else {
            String words = " " + ChartTexts.get("shares.errorNotKnown");
            rows.text(PERCENT * Math.max(0, share), height, words, TextAnchor.CENTER_LEFT);
        }
    }

    private static LegendItem swatch(String words, Color fill) {
        LegendItem item = new LegendItem(
                words,
                null,
                null,
                null,
                new java.awt.geom.Rectangle2D.Double(-10, -6, 20, 12),
                fill,
                new java.awt.BasicStroke(ChartTheme.THIN_WIDTH),
                FILLED);
        item.setLabelFont(ChartTheme.LEGEND);
        return item;
    }

    private static double shown(double kelvin, double cold, double warm, Unit unit) {
        return Math.max(cold, Math.min(warm, unit.fromSi(kelvin)));
    }

    private static String words(double opening, Unit unit) {
        if (opening == Double.NEGATIVE_INFINITY) {
            return ChartTexts.get("bars.never");
        }
        return opening == Double.POSITIVE_INFINITY
                ? ChartTexts.get("bars.always")
                : Long.toString(Math.round(unit.fromSi(opening)));
    }

    private static String subtitle(ConfidenceResult result, boolean invented) {
        return ChartTexts.get(invented ? "subtitle.serviceInvented" : "subtitle.service", result.title());
    }
}

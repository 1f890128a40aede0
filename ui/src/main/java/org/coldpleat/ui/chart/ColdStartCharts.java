package org.coldpleat.ui.chart;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.certainty.ColdStartCandidate.Moment;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.model.verdict.start.ColdStartSweep;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.coldpleat.ui.chart.style.CurveRenderer;
import org.coldpleat.ui.chart.style.TimeAxis;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;

/** Charts of a cold start: all candidates over time, and over the temperature of the start. */
public final class ColdStartCharts {
    /** Where the logarithmic axis of time begins [s]. */
    private static final double FIRST = 0.1;

    private static final double HEADROOM = 1.12;
    private static final double GAP = 14;
    private static final double MINUTE = 60;

    /** Ends of an axis of temperatures of starts where there are none [K]. */
    private static final double COLDEST = 233.15;

    private static final double WARMEST = 323.15;

    private ColdStartCharts() {}

    /**
     * Oil temperature, pressure difference across the bypass valve and bypass share over time.
     *
     * @param names all candidates of the case in its order, which gives each its color
     */
    public static JFreeChart timeline(ColdStart start, List<String> names, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(new TimeAxis(ChartTexts.get("axis.startTime")));
        plot.getDomainAxis().setRange(FIRST, end(start));
        plot.setGap(GAP);
        plot.add(temperatures(start, names, units.temperature()), 3);
        plot.add(pressures(start, names, units.pressure()), 4);
        plot.add(shares(start, names), 3);
        LegendItemCollection legend = new LegendItemCollection();
        for (ColdStartCandidate one : start.candidates()) {
            legend.add(Charts.legendItem(names.indexOf(one.name()), legendText(one, units.pressure())));
        }
        plot.setFixedLegendItems(legend);
        return Charts.chart(
                ChartTexts.get("coldstart.title"),
                subtitle(start.title(), start.schedule(), start.invented()),
                ChartTexts.get("key.coldstart"),
                plot);
    }

    /**
     * Seconds open and liters unfiltered over the temperature of the start.
     *
     * @param names all candidates of the case in its order, which gives each its color
     */
    public static JFreeChart sweep(ColdStartSweep sweep, List<String> names, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        Unit degrees = units.temperature();
        XYPlot first = swept(
                sweep,
                names,
                ColdStartSweep.Row::openSeconds,
                ColdStartSweep.Bands::openSeconds,
                ChartTexts.get("axis.openTime"),
                degrees,
                seconds -> seconds);
        XYPlot second = swept(
                sweep,
                names,
                ColdStartSweep.Row::unfiltered,
                ColdStartSweep.Bands::unfiltered,
                ChartTexts.get("axis.unfilteredOil", units.volume().symbol()),
                degrees,
                units.volume()::fromSi);
        Axes.temperature(first, lowest(sweep), highest(sweep), units);
        CombinedDomainXYPlot plot = new CombinedDomainXYPlot(first.getDomainAxis(0));
        first.getDomainAxis(0).setLabel(ChartTexts.get("axis.startFrom", degrees.symbol()));
        first.setDomainAxis(1, null);
        plot.setGap(GAP);
        plot.add(first, 1);
        plot.add(second, 1);
        LegendItemCollection legend = new LegendItemCollection();
        for (ColdStartSweep.Candidate one : sweep.candidates()) {
            legend.add(Charts.legendItem(
                    names.indexOf(one.name()),
                    one.hasValve() ? one.name() : ChartTexts.get("legend.noValve", one.name())));
        }
        plot.setFixedLegendItems(legend);
        return Charts.chart(
                ChartTexts.get("sweep.title"),
                subtitle(sweep.title(), sweep.schedule(), sweep.invented()),
                ChartTexts.get(sweep.isBanded() ? "key.sweepBanded" : "key.sweep"),
                plot);
    }

    /** What a chart shows, for readers who cannot see it. */
    public static String timelineDescription(ColdStart start) {
        return ChartTexts.get(
                "description.coldstart",
                start.candidates().stream().map(ColdStartCandidate::name).collect(Collectors.joining(", ")));
    }

    /** What a chart shows, for readers who cannot see it. */
    public static String sweepDescription(ColdStartSweep sweep) {
        return ChartTexts.get(
                "description.sweep",
                sweep.candidates().stream().map(ColdStartSweep.Candidate::name).collect(Collectors.joining(", ")));
    }

    private static String subtitle(String title, String schedule, boolean invented) {
        return ChartTexts.get(invented ? "subtitle.startInvented" : "subtitle.start", title, schedule);
    }

    private static String legendText(ColdStartCandidate one, Unit unit) {
        double opening = opening(one);
        return Double.isFinite(opening)
                ? ChartTexts.get("legend.opens", one.name(), Charts.number(unit.fromSi(opening)), unit.symbol())
                : ChartTexts.get("legend.noValve", one.name());
    }

    private static double opening(ColdStartCandidate one) {
        return one.moments().stream()
                .mapToDouble(Moment::openingPressure)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static double end(ColdStart start) {
        return Math.max(
                10 * FIRST,
                start.candidates().stream()
                        .mapToDouble(ColdStartCandidate::endTime)
                        .max()
                        .orElse(MINUTE));
    }

    /** Oil as thick, filter as thin lines. */
    private static XYPlot temperatures(ColdStart start, List<String> names, Unit unit) {
        XYPlot plot = curves(start, names, m -> unit.fromSi(m.oilTemperature()));
        XYSeriesCollection elements = new XYSeriesCollection();
        XYLineAndShapeRenderer thin = new XYLineAndShapeRenderer(true, false);
        thin.setDefaultCreateEntities(false);
        for (ColdStartCandidate one : start.candidates()) {
            thin.setSeriesPaint(elements.getSeriesCount(), ChartTheme.color(names.indexOf(one.name())));
            thin.setSeriesStroke(elements.getSeriesCount(), new BasicStroke(ChartTheme.THIN_WIDTH));
            elements.addSeries(series(one, m -> unit.fromSi(m.elementTemperature())));
        }
        plot.setDataset(1, elements);
        plot.setRenderer(1, thin);
        plot.setRangeAxis(Axes.linear(ChartTexts.get("axis.startTemperature", unit.symbol())));
        ValueMarker hot = Charts.namedLine(unit.fromSi(start.hot()), ChartTexts.get("label.hot"));
        hot.setLabelAnchor(RectangleAnchor.BOTTOM_LEFT);
        hot.setLabelTextAnchor(TextAnchor.TOP_LEFT);
        plot.addRangeMarker(hot, Layer.BACKGROUND);
        return plot;
    }

    private static XYPlot pressures(ColdStart start, List<String> names, Unit unit) {
        XYPlot plot = curves(start, names, m -> unit.fromSi(m.valveDifference()));
        double top = 0;
        for (ColdStartCandidate one : start.candidates()) {
            double opening = unit.fromSi(opening(one));
            if (Double.isFinite(opening)) {
                ValueMarker line = new ValueMarker(opening);
                line.setPaint(ChartTheme.color(names.indexOf(one.name())));
                line.setStroke(ChartTheme.limitLine());
                line.setAlpha(1);
                plot.addRangeMarker(line, Layer.BACKGROUND);
                top = Math.max(top, opening);
            }
        }
        plot.setRangeAxis(
                fromZero(ChartTexts.get("axis.startDifference", unit.symbol()), Math.max(top, highest(plot))));
        return plot;
    }

    private static XYPlot shares(ColdStart start, List<String> names) {
        XYPlot plot = curves(start, names, m -> 100 * m.bypassShare());
        plot.setRangeAxis(fromZero(ChartTexts.get("axis.startShare"), Math.max(1, highest(plot))));
        return plot;
    }

    private static NumberAxis fromZero(String label, double top) {
        NumberAxis axis = Axes.linear(label);
        axis.setRange(-0.03 * top, HEADROOM * top);
        return axis;
    }

    private static double highest(XYPlot plot) {
        double highest = 0;
        for (int s = 0; s < plot.getDataset().getSeriesCount(); s++) {
            for (int i = 0; i < plot.getDataset().getItemCount(s); i++) {
                double y = plot.getDataset().getYValue(s, i);
                highest = Double.isFinite(y) ? Math.max(highest, y) : highest;
            }
        }
        return highest;
    }

    private static XYPlot curves(ColdStart start, List<String> names, ToDoubleFunction<Moment> value) {
        XYSeriesCollection curves = new XYSeriesCollection();
        List<Integer> indices = new ArrayList<>();
        for (ColdStartCandidate one : start.candidates()) {
            indices.add(names.indexOf(one.name()));
            curves.addSeries(series(one, value));
        }
        return Charts.plot(
                curves,
                new CurveRenderer(indices.stream().mapToInt(Integer::intValue).toArray()));
    }

    /** What lies before the axis begins is drawn at its beginning, the last value alone. */
    private static XYSeries series(ColdStartCandidate one, ToDoubleFunction<Moment> value) {
        XYSeries series = new XYSeries(one.name(), false, true);
        double before = Double.NaN;
        boolean begun = false;
        for (Moment moment : one.moments()) {
            double y = value.applyAsDouble(moment);
            if (moment.time() < FIRST) {
                before = y;
                continue;
            }
            if (!begun) {
                series.add(FIRST, before);
                begun = true;
            }
            series.add(moment.time(), Double.isFinite(y) ? y : Double.NaN);
        }
        return series;
    }

    private static XYPlot swept(
            ColdStartSweep sweep,
            List<String> names,
            ToDoubleFunction<ColdStartSweep.Row> value,
            Function<ColdStartSweep.Bands, StartBand> band,
            String label,
            Unit temperature,
            DoubleUnaryOperator shown) {
        XYSeriesCollection curves = new XYSeriesCollection();
        List<Integer> indices = new ArrayList<>();
        for (ColdStartSweep.Candidate one : sweep.candidates()) {
            indices.add(names.indexOf(one.name()));
            XYSeries series = new XYSeries(one.name(), false, true);
            one.rows()
                    .forEach(row -> series.add(
                            temperature.fromSi(row.from()),
                            row.computed() && one.hasValve()
                                    ? shown.applyAsDouble(value.applyAsDouble(row))
                                    : Double.NaN));
            curves.addSeries(series);
        }
        XYPlot plot = Charts.plot(
                curves,
                new CurveRenderer(indices.stream().mapToInt(Integer::intValue).toArray()));
        double top = sweep.candidates().stream()
                .flatMap(one -> one.rows().stream())
                .flatMap(row -> row.bands().map(band).stream())
                .mapToDouble(found -> shown.applyAsDouble(found.high()))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        plot.setRangeAxis(fromZero(label, Math.max(1e-3, Math.max(top, highest(plot)))));
        bands(plot, sweep, names, band, temperature, shown);
        return plot;
    }

    /** Bands as shaded stretches behind the curves, where there are any; one without an end goes to the end of the axis. */
    private static void bands(
            XYPlot plot,
            ColdStartSweep sweep,
            List<String> names,
            Function<ColdStartSweep.Bands, StartBand> band,
            Unit temperature,
            DoubleUnaryOperator shown) {
        YIntervalSeriesCollection shades = new YIntervalSeriesCollection();
        DeviationRenderer renderer = new DeviationRenderer(false, false);
        renderer.setAlpha(1);
        renderer.setDefaultCreateEntities(false);
        for (ColdStartSweep.Candidate one : sweep.candidates()) {
            YIntervalSeries series = new YIntervalSeries(one.name());
            for (ColdStartSweep.Row row : one.rows()) {
                row.bands()
                        .filter(found -> row.computed() && one.hasValve())
                        .map(band)
                        .ifPresent(found -> {
                            double high = Math.min(
                                    shown.applyAsDouble(found.high()),
                                    plot.getRangeAxis().getUpperBound());
                            series.add(
                                    temperature.fromSi(row.from()),
                                    shown.applyAsDouble(found.value()),
                                    shown.applyAsDouble(found.low()),
                                    high);
                        });
            }
            int number = shades.getSeriesCount();
            renderer.setSeriesFillPaint(number, ChartTheme.band(names.indexOf(one.name())));
            shades.addSeries(series);
        }
        plot.setDataset(1, shades);
        plot.setRenderer(1, renderer);
    }

    private static double lowest(ColdStartSweep sweep) {
        return sweep.candidates().stream()
                .flatMap(one -> one.rows().stream())
                .mapToDouble(ColdStartSweep.Row::from)
                .min()
                .orElse(COLDEST);
    }

    private static double highest(ColdStartSweep sweep) {
        return sweep.candidates().stream()
                .flatMap(one -> one.rows().stream())
                .mapToDouble(ColdStartSweep.Row::from)
                .max()
                .orElse(WARMEST);
    }
}

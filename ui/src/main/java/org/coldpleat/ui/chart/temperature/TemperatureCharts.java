package org.coldpleat.ui.chart.temperature;

import java.awt.BasicStroke;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.coldpleat.ui.chart.style.CurveRenderer;
import org.coldpleat.ui.chart.style.RingAnnotation;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYLineAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The two charts over oil temperature: what the bypass valve sees, and how much oil goes round the medium. */
public final class TemperatureCharts {
    private static final double LOGARITHMIC_FROM = 20;
    private static final double HEADROOM = 1.25;

    /** Room above the highest value for the names of temperatures, of an axis in decades. */
    private static final double NAMES_ABOVE = 1.8;

    private static final double GREATEST_SPAN = 3000;

    private TemperatureCharts() {}

    /** Pressure difference across the bypass valve over oil temperature, with the opening pressures. */
    public static JFreeChart pressure(StateSheet sheet, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        XYSeriesCollection curves = new XYSeriesCollection();
        LegendItemCollection legend = new LegendItemCollection();
        for (CandidateCurve candidate : sheet.candidates()) {
            curves.addSeries(series(
                    candidate, candidate.name(), candidate.valveDifference(), units.pressure()::fromSi, units, true));
            legend.add(Charts.legendItem(candidate.index(), legend(candidate, preferred)));
        }
        XYPlot plot = plot(sheet, curves, legend, units);
        pressureAxis(plot, sheet, units);
        for (CandidateCurve candidate : sheet.candidates()) {
            candidate.openingPressure().ifPresent(pressure -> {
                limit(plot, candidate.index(), pressure, units.pressure());
                candidate
                        .openings()
                        .forEach(opening -> opening(
                                plot,
                                candidate.index(),
                                opening,
                                units.pressure().fromSi(pressure.value()),
                                units.temperature()));
            });
        }
        return Charts.chart(ChartTexts.get("pressure.title"), subtitle(sheet), ChartTexts.get("key.pressure"), plot);
    }

    /** A candidate with its opening pressure in words. */
    public static String legend(CandidateCurve candidate, UnitSystem preferred) {
        Unit unit = ChartUnits.of(preferred).pressure();
        return candidate
                .openingPressure()
                .map(p -> ChartTexts.get(
                        "legend.opens", candidate.name(), Charts.number(unit.fromSi(p.value())), unit.symbol()))
                .orElseGet(() -> ChartTexts.get("legend.noValve", candidate.name()));
    }

    /** Share of the oil that goes round the medium over oil temperature. */
    public static JFreeChart share(StateSheet sheet, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        XYSeriesCollection curves = new XYSeriesCollection();
        LegendItemCollection legend = new LegendItemCollection();
        for (CandidateCurve candidate : sheet.candidates()) {
            curves.addSeries(
                    series(candidate, candidate.name(), candidate.bypassShare(), part -> 100 * part, units, false));
            legend.add(Charts.legendItem(candidate.index(), ChartTexts.get("legend.share", candidate.name())));
        }
        XYPlot plot = plot(sheet, curves, legend, units);
        NumberAxis axis = Axes.linear(ChartTexts.get("axis.share"));
        double highest = sheet.candidates().stream()
                .flatMapToDouble(c -> Arrays.stream(c.bypassShare()))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        double top = highest > 0.4 ? 100 : highest > 0.16 ? 50 : highest > 0.04 ? 20 : 5;
        axis.setRange(-0.02 * top, 1.02 * top);
        axis.setTickUnit(new NumberTickUnit(top / 5));
        plot.setRangeAxis(axis);
        for (CandidateCurve candidate : sheet.candidates()) {
            candidate.openings().forEach(opening -> opening(plot, candidate.index(), opening, 0, units.temperature()));
        }
        return Charts.chart(ChartTexts.get("share.title"), subtitle(sheet), ChartTexts.get("key.share"), plot);
    }

    /** What a chart shows, for readers who cannot see it. */
    public static String pressureDescription(StateSheet sheet) {
        return ChartTexts.get("description.pressure", names(sheet));
    }

    /** What a chart shows, for readers who cannot see it. */
    public static String shareDescription(StateSheet sheet) {
        return ChartTexts.get("description.share", names(sheet));
    }

    private static String names(StateSheet sheet) {
        return sheet.candidates().stream().map(CandidateCurve::name).collect(Collectors.joining(", "));
    }

    private static String subtitle(StateSheet sheet) {
        return ChartTexts.get(sheet.invented() ? "subtitle.invented" : "subtitle", sheet.title(), sheet.state());
    }

    private static XYPlot plot(
            StateSheet sheet, XYSeriesCollection curves, LegendItemCollection legend, ChartUnits units) {
        int[] indices =
                sheet.candidates().stream().mapToInt(CandidateCurve::index).toArray();
        XYPlot plot = Charts.plot(curves, new CurveRenderer(indices));
        Axes.temperature(plot, sheet.from(), sheet.to(), units);
        plot.setFixedLegendItems(legend);
        for (StateSheet.Named named : sheet.named()) {
            plot.addDomainMarker(
                    Charts.namedLine(units.temperature().fromSi(named.temperature()), named.name()), Layer.BACKGROUND);
        }
        return plot;
    }

    static XYSeries series(
            CandidateCurve candidate,
            String name,
            double[] values,
            DoubleUnaryOperator scale,
            ChartUnits units,
            boolean positiveOnly) {
        XYSeries series = new XYSeries(candidate.index() + " " + name, false, true);
        for (int i = 0; i < values.length; i++) {
            double value = scale.applyAsDouble(values[i]);
            boolean shown = Double.isFinite(value) && (!positiveOnly || value > 0);
            series.add(units.temperature().fromSi(candidate.temperature()[i]), shown ? value : Double.NaN);
        }
        return series;
    }

    private static void pressureAxis(XYPlot plot, StateSheet sheet, ChartUnits units) {
        double[] shown = sheet.candidates().stream()
                .flatMapToDouble(c -> DoubleStream.concat(
                        Arrays.stream(c.valveDifference()),
                        c.openingPressure().stream().flatMapToDouble(p -> DoubleStream.of(p.low(), p.high()))))
                .filter(p -> Double.isFinite(p) && p > 0)
                .map(units.pressure()::fromSi)
                .toArray();
        double high = HEADROOM * Arrays.stream(shown).max().orElse(1);
        double low = Math.max(Arrays.stream(shown).min().orElse(high) / HEADROOM, high / GREATEST_SPAN);
        boolean logarithmic = high / low > LOGARITHMIC_FROM;
        Axes.pressure(plot, logarithmic ? low : 0, logarithmic ? NAMES_ABOVE * high : high, logarithmic, units);
    }

    private static void limit(XYPlot plot, int index, Span pressure, Unit unit) {
        IntervalMarker band = new IntervalMarker(unit.fromSi(pressure.low()), unit.fromSi(pressure.high()));
        band.setPaint(ChartTheme.band(index));
        band.setAlpha(1);
        band.setOutlinePaint(null);
        plot.addRangeMarker(band, Layer.BACKGROUND);
        ValueMarker line = new ValueMarker(unit.fromSi(pressure.value()));
        line.setPaint(ChartTheme.color(index));
        line.setStroke(ChartTheme.limitLine());
        line.setAlpha(1);
        plot.addRangeMarker(line, Layer.BACKGROUND);
    }

    private static void opening(XYPlot plot, int index, Span temperature, double y, Unit unit) {
        double low = unit.fromSi(temperature.low());
        double high = unit.fromSi(temperature.high());
        plot.addAnnotation(new XYLineAnnotation(
                low,
                y,
                high,
                y,
                new BasicStroke(ChartTheme.SPAN_WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER),
                ChartTheme.span(index)));
        plot.addAnnotation(new RingAnnotation(unit.fromSi(temperature.value()), y, ChartTheme.color(index)));
    }
}

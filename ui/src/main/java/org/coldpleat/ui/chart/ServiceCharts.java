package org.coldpleat.ui.chart;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.coldpleat.model.loading.multipass.MultiPassReport;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.coldpleat.ui.chart.style.CurveRenderer;
import org.coldpleat.ui.chart.style.DecadeAxis;
import org.coldpleat.ui.chart.style.NamedChart;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Charts of a service life over running time, and of a multi-pass test over the dust in the element. */
public final class ServiceCharts {
    private static final double HOUR = 3600;

    private ServiceCharts() {}

    /** Charts of a service life in the order in which they are told. */
    public static List<NamedChart> all(ServiceResult result, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        List<NamedChart> charts = new ArrayList<>();
        charts.add(new NamedChart("opening", () -> opening(result, units.temperature()), openingDescription(result)));
        charts.add(new NamedChart("drop", () -> drop(result, units.pressure()), dropDescription(result)));
        charts.add(simple(
                result, "resistance", units, List.of(m -> m.resistanceRatio(), m -> m.ratioLow(), m -> m.ratioHigh())));
        charts.add(simple(
                result,
                "unfiltered",
                units,
                List.of(m -> 100 * m.unfilteredShare(), m -> 100 * m.unfilteredLow(), m -> 100 * m.unfilteredHigh())));
        if (!Double.isNaN(result.winterStart())) {
            charts.add(
                    simple(result, "winter", units, List.of(m -> units.volume().fromSi(m.winterUnfiltered()))));
        }
        charts.add(simple(
                result,
                "retained",
                units,
                List.of(
                        m -> 1000 * m.retained(),
                        m -> 1000 * m.retained() / m.dirtSpread(),
                        m -> 1000 * m.retained() * m.dirtSpread())));
        charts.add(simple(
                result,
                "oilDirt",
                units,
                List.of(
                        m -> 1000 * m.concentration(),
                        m -> 1000 * m.concentration() / m.dirtSpread(),
                        m -> 1000 * m.concentration() * m.dirtSpread())));
        return charts;
    }

    private static NamedChart simple(
            ServiceResult result, String name, ChartUnits units, List<ToDoubleFunction<ServiceResult.Moment>> values) {
        String at = ChartTexts.get(
                "service.at",
                Charts.number(units.temperature().fromSi(result.winterStart())),
                units.temperature().symbol());
        return new NamedChart(
                name,
                () -> service(
                        result,
                        ChartTexts.get("service." + name + ".title", at),
                        ChartTexts.get("axis.service." + name, units.volume().symbol()),
                        ChartTexts.get("key.service." + name),
                        values),
                ChartTexts.get("description.service." + name, names(result), at));
    }

    /** Opening temperature over running time. */
    private static JFreeChart opening(ServiceResult result, Unit unit) {
        return service(
                result,
                ChartTexts.get("service.opening.title"),
                ChartTexts.get("axis.opening", unit.symbol()),
                ChartTexts.get("key.service.opening"),
                List.of(
                        m -> unit.fromSi(m.openingTemperature()),
                        m -> unit.fromSi(m.openingLow()),
                        m -> unit.fromSi(m.openingHigh())));
    }

    /** Warm pressure drop over running time. */
    private static JFreeChart drop(ServiceResult result, Unit unit) {
        return service(
                result,
                ChartTexts.get("service.drop.title"),
                ChartTexts.get("axis.drop", unit.symbol()),
                ChartTexts.get("key.service"),
                List.of(
                        m -> unit.fromSi(m.pressureDrop()),
                        m -> unit.fromSi(m.dropLow()),
                        m -> unit.fromSi(m.dropHigh())));
    }

    /** Filtration ratio by size over the dust in the element. */
    public static JFreeChart beta(MultiPassReport report) {
        XYSeriesCollection curves = new XYSeriesCollection();
        LegendItemCollection legend = new LegendItemCollection();
        for (int k = 0; k < report.sizes().length; k++) {
            XYSeries series = new XYSeries(k, false, true);
            int size = k;
            report.moments().forEach(m -> add(series, 1000 * m.retained(), m.beta()[size]));
            curves.addSeries(series);
            String um = Charts.number(1e6 * report.sizes()[k]);
            legend.add(legendItem(k, ChartTexts.get("legend.size", um)));
        }
        XYPlot plot = plot(curves, legend, report.sizes().length, "axis.grams");
        DecadeAxis axis = new DecadeAxis("");
        Axes.dress(axis, ChartTexts.get("axis.beta"));
        axis.setRange(0.9, 1.2 * highest(curves));
        plot.setRangeAxis(axis);
        return Charts.chart(
                ChartTexts.get("multipass.beta.title", report.candidate()),
                ChartTexts.get(report.invented() ? "subtitle.serviceInvented" : "subtitle.service", report.title()),
                ChartTexts.get("key.multipass"),
                plot);
    }

    /** Pressure drop over the dust in the element. */
    public static JFreeChart testDrop(MultiPassReport report, UnitSystem preferred) {
        Unit unit = ChartUnits.of(preferred).pressure();
        XYSeriesCollection curves = new XYSeriesCollection();
        XYSeries series = new XYSeries(report.candidate(), false, true);
        report.moments().forEach(m -> add(series, 1000 * m.retained(), unit.fromSi(m.pressureDrop())));
        curves.addSeries(series);
        LegendItemCollection legend = new LegendItemCollection();
        legend.add(legendItem(0, report.candidate()));
        XYPlot plot = plot(curves, legend, 1, "axis.grams");
        NumberAxis axis = Axes.linear(ChartTexts.get("axis.elementDrop", unit.symbol()));
        axis.setRange(0, 1.1 * highest(curves));
        plot.setRangeAxis(axis);
        return Charts.chart(
                ChartTexts.get("multipass.drop.title", report.candidate()),
                ChartTexts.get(report.invented() ? "subtitle.serviceInvented" : "subtitle.service", report.title()),
                ChartTexts.get("key.multipass"),
                plot);
    }

    /** What a chart shows, for readers who cannot see it. */
    private static String openingDescription(ServiceResult result) {
        return ChartTexts.get("description.opening", names(result));
    }

    /** What a chart shows, for readers who cannot see it. */
    private static String dropDescription(ServiceResult result) {
        return ChartTexts.get("description.drop", names(result));
    }

    /** What a chart shows, for readers who cannot see it. */
    public static String betaDescription(MultiPassReport report) {
        return ChartTexts.get("description.beta", report.candidate());
    }

    /** What a chart shows, for readers who cannot see it. */
    public static String testDropDescription(MultiPassReport report) {
        return ChartTexts.get("description.testDrop", report.candidate());
    }

    private static String names(ServiceResult result) {
        return result.candidates().stream().map(ServiceResult.Candidate::name).collect(Collectors.joining(", "));
    }

    /** Middle curves first, then their bands as thin lines without marker. */
    private static JFreeChart service(
            ServiceResult result,
            String title,
            String axisLabel,
            String key,
            List<ToDoubleFunction<ServiceResult.Moment>> values) {
        XYSeriesCollection middle = new XYSeriesCollection();
        XYSeriesCollection bands = new XYSeriesCollection();
        LegendItemCollection legend = new LegendItemCollection();
        List<Integer> bandIndices = new ArrayList<>();
        for (int c = 0; c < result.candidates().size(); c++) {
            ServiceResult.Candidate candidate = result.candidates().get(c);
            for (int v = 0; v < values.size(); v++) {
                XYSeries series = new XYSeries(c + " " + curve(candidate.name(), v), false, true);
                for (ServiceResult.Moment moment : candidate.moments()) {
                    add(series, moment.time() / HOUR, values.get(v).applyAsDouble(moment));
                }
                if (v == 0) {
                    middle.addSeries(series);
                } else {
                    bands.addSeries(series);
                    bandIndices.add(c);
                }
            }
            legend.add(legendItem(c, candidate.name()));
        }
        XYPlot plot = plot(middle, legend, result.candidates().size(), "axis.hours");
        XYLineAndShapeRenderer thin = new XYLineAndShapeRenderer(true, false);
        thin.setDefaultCreateEntities(false);
        for (int s = 0; s < bandIndices.size(); s++) {
            thin.setSeriesPaint(s, ChartTheme.span(bandIndices.get(s)));
            thin.setSeriesStroke(s, new BasicStroke(ChartTheme.THIN_WIDTH));
        }
        plot.setDataset(1, bands);
        plot.setRenderer(1, thin);
        plot.setRangeAxis(Axes.linear(axisLabel));
        return Charts.chart(
                title,
                ChartTexts.get(result.invented() ? "subtitle.serviceInvented" : "subtitle.service", result.title()),
                key,
                plot);
    }

    /** Name of the curve of the values, of the lower, or of the upper ends of their bands. */
    private static String curve(String candidate, int value) {
        return switch (value) {
            case 0 -> candidate;
            case 1 -> ChartTexts.get("series.lower", candidate);
            default -> ChartTexts.get("series.upper", candidate);
        };
    }

    private static XYPlot plot(XYSeriesCollection curves, LegendItemCollection legend, int count, String axis) {
        int[] indices = new int[count];
        for (int i = 0; i < count; i++) {
            indices[i] = i;
        }
        XYPlot plot = Charts.plot(curves, new CurveRenderer(indices));
        plot.setDomainAxis(Axes.linear(ChartTexts.get(axis)));
        plot.setFixedLegendItems(legend);
        return plot;
    }

    private static double highest(XYSeriesCollection curves) {
        double highest = 1;
        for (int s = 0; s < curves.getSeriesCount(); s++) {
            double top = curves.getSeries(s).getMaxY();
            highest = Double.isFinite(top) ? Math.max(highest, top) : highest;
        }
        return highest;
    }

    private static void add(XYSeries series, double x, double y) {
        series.add(x, Double.isFinite(y) ? y : Double.NaN);
    }

    private static LegendItem legendItem(int index, String text) {
        return Charts.legendItem(index, text);
    }
}

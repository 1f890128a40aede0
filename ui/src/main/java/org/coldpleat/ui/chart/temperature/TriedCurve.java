package org.coldpleat.ui.chart.temperature;

import java.awt.BasicStroke;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.coldpleat.ui.chart.style.RingAnnotation;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeriesCollection;

/** A faint second curve of a candidate in a chart over oil temperature: what it would be with other values. */
public final class TriedCurve {
    private TriedCurve() {}

    /** Adds the curve to a chart of pressure differences. */
    public static void pressure(JFreeChart chart, CandidateCurve tried, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        add(chart, tried, tried.valveDifference(), units.pressure()::fromSi, units, true);
        tried.openingPressure()
                .ifPresent(opens -> openings(chart, tried, units.pressure().fromSi(opens.value()), units));
    }

    /** Adds the curve to a chart of bypass shares. */
    public static void share(JFreeChart chart, CandidateCurve tried, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        add(chart, tried, tried.bypassShare(), share -> 100 * share, units, false);
        openings(chart, tried, 0, units);
    }

    private static void openings(JFreeChart chart, CandidateCurve tried, double y, ChartUnits units) {
        tried.openings()
                .forEach(at -> chart.getXYPlot()
                        .addAnnotation(new RingAnnotation(
                                units.temperature().fromSi(at.value()), y, ChartTheme.span(tried.index()))));
    }

    private static void add(
            JFreeChart chart,
            CandidateCurve tried,
            double[] values,
            DoubleUnaryOperator scale,
            ChartUnits units,
            boolean positiveOnly) {
        XYPlot plot = chart.getXYPlot();
        String name = ChartTexts.get("legend.tried", tried.name());
        XYSeriesCollection curve = new XYSeriesCollection();
        curve.addSeries(TemperatureCharts.series(tried, name, values, scale, units, positiveOnly));
        XYLineAndShapeRenderer faint = new XYLineAndShapeRenderer(true, false);
        faint.setDefaultCreateEntities(false);
        faint.setDrawSeriesLineAsPath(true);
        faint.setSeriesPaint(0, ChartTheme.span(tried.index()));
        faint.setSeriesStroke(0, new BasicStroke(ChartTheme.TRIED_WIDTH));
        plot.setDataset(1, curve);
        plot.setRenderer(1, faint);
        LegendItemCollection legend = new LegendItemCollection();
        legend.addAll(plot.getLegendItems());
        LegendItem item = Charts.legendItem(tried.index(), name);
        item.setShapeVisible(false);
        item.setLinePaint(ChartTheme.span(tried.index()));
        item.setLineStroke(new BasicStroke(ChartTheme.TRIED_WIDTH));
        legend.add(item);
        plot.setFixedLegendItems(legend);
    }
}

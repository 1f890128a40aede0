package org.coldpleat.ui.chart.style;

import java.awt.BasicStroke;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import org.coldpleat.shared.quantity.Unit;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;

/** Axes in the units of a chart; a second axis in the units of its far sides follows the first. */
public final class Axes {
    private static final RectangleInsets TICK_ROOM = new RectangleInsets(7, 5, 7, 5);
    private static final double NARROW = 45;
    private static final double MEDIUM = 120;

    private Axes() {}

    /** Oil temperature at the bottom; a second axis is at the top. */
    public static void temperature(XYPlot plot, double fromKelvin, double toKelvin, ChartUnits units) {
        NumberAxis near = degrees(
                ChartTexts.get("axis.temperature", units.temperature().symbol()),
                units.temperature(),
                toKelvin - fromKelvin);
        near.setRange(
                units.temperature().fromSi(fromKelvin), units.temperature().fromSi(toKelvin));
        plot.setDomainAxis(0, near);
        units.far().map(ChartUnits::temperature).ifPresent(unit -> {
            NumberAxis far = degrees(unit.symbol(), unit, toKelvin - fromKelvin);
            plot.setDomainAxis(1, far);
            plot.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
            follow(near, far, t -> unit.fromSi(units.temperature().toSi(t)));
        });
    }

    /** A linear axis with a label every 5, 10 or 20 K, or twice as many smaller degrees. */
    private static NumberAxis degrees(String label, Unit unit, double span) {
        NumberAxis axis = linear(label);
        double step = span <= NARROW ? 5 : span <= MEDIUM ? 10 : 20;
        axis.setTickUnit(new NumberTickUnit(unit.factor() < 1 ? 2 * step : step, whole()));
        return axis;
    }

    /**
     * Pressure difference at the left; a second axis is at the right, both linear or both logarithmic.
     *
     * @param low in the pressure unit of the chart
     * @param high in the pressure unit of the chart
     */
    public static void pressure(XYPlot plot, double low, double high, boolean logarithmic, ChartUnits units) {
        ValueAxis near = logarithmic ? new DecadeAxis("") : linear("");
        dress(near, ChartTexts.get("axis.pressure", units.pressure().symbol()));
        near.setRange(low, high);
        plot.setRangeAxis(0, near);
        far(plot, near, logarithmic ? new DecadeAxis("") : linear(""), units, ChartUnits::pressure);
    }

    /** A second axis of flow, at the right of the first. */
    public static void farFlow(XYPlot plot, NumberAxis near, ChartUnits units) {
        far(plot, near, linear(""), units, ChartUnits::flow);
    }

    private static void far(
            XYPlot plot, ValueAxis near, ValueAxis far, ChartUnits units, Function<ChartUnits, Unit> quantity) {
        units.far().map(quantity).ifPresent(unit -> {
            dress(far, unit.symbol());
            plot.setRangeAxis(1, far);
            plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
            follow(near, far, value -> unit.fromSi(quantity.apply(units).toSi(value)));
        });
    }

    /** A linear axis with our type. */
    public static NumberAxis linear(String label) {
        NumberAxis axis = new NumberAxis();
        axis.setAutoRangeIncludesZero(false);
        axis.setNumberFormatOverride(new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        dress(axis, label);
        return axis;
    }

    public static void dress(ValueAxis axis, String label) {
        axis.setLabel(label);
        axis.setLabelFont(ChartTheme.AXIS);
        axis.setTickLabelFont(ChartTheme.TICK);
        axis.setTickLabelInsets(TICK_ROOM);
        axis.setLabelPaint(ChartTheme.INK);
        axis.setTickLabelPaint(ChartTheme.INK);
        axis.setAxisLinePaint(ChartTheme.INK);
        axis.setAxisLineStroke(new BasicStroke(1));
        axis.setTickMarkPaint(ChartTheme.INK);
    }

    /** Keeps the second axis on the converted range of the first, also when the reader zooms. */
    private static void follow(ValueAxis first, ValueAxis second, DoubleUnaryOperator conversion) {
        Runnable copy = () -> {
            Range range = first.getRange();
            second.setRange(
                    conversion.applyAsDouble(range.getLowerBound()), conversion.applyAsDouble(range.getUpperBound()));
        };
        copy.run();
        first.addChangeListener(event -> copy.run());
    }

    private static DecimalFormat whole() {
        return new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT));
    }
}

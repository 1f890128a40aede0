package org.coldpleat.ui.chart;

import java.awt.BasicStroke;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Units;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;

/** Axes in trade units, each with a second axis in the other units that follows the first. */
final class Axes {
    static final DoubleUnaryOperator CELSIUS = Units.require(Kind.TEMPERATURE, "degC")::fromSi;
    static final DoubleUnaryOperator KILOPASCAL = Units.require(Kind.PRESSURE_DIFFERENCE, "kPa")::fromSi;
    private static final double KPA_PER_PSI =
            Units.require(Kind.PRESSURE_DIFFERENCE, "psi").factor() / 1000;

    private static final RectangleInsets TICK_ROOM = new RectangleInsets(7, 5, 7, 5);
    private static final double NARROW = 45;
    private static final double MEDIUM = 120;

    private Axes() {}

    /** Oil temperature in °C at the bottom with °F at the top. */
    static void temperature(XYPlot plot, double fromKelvin, double toKelvin) {
        NumberAxis celsius = linear(ChartTexts.get("axis.celsius"));
        celsius.setRange(CELSIUS.applyAsDouble(fromKelvin), CELSIUS.applyAsDouble(toKelvin));
        double span = toKelvin - fromKelvin;
        celsius.setTickUnit(new NumberTickUnit(span <= NARROW ? 5 : span <= MEDIUM ? 10 : 20, whole()));
        NumberAxis fahrenheit = linear(ChartTexts.get("axis.fahrenheit"));
        fahrenheit.setTickUnit(new NumberTickUnit(span <= NARROW ? 10 : span <= MEDIUM ? 20 : 40, whole()));
        plot.setDomainAxis(0, celsius);
        plot.setDomainAxis(1, fahrenheit);
        plot.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
        follow(celsius, fahrenheit, c -> 1.8 * c + 32);
    }

    /** Pressure difference in kPa at the left with psi at the right, both linear or both logarithmic. */
    static void pressure(XYPlot plot, double lowKilopascal, double highKilopascal, boolean logarithmic) {
        ValueAxis kilopascal = logarithmic ? new DecadeAxis("") : linear("");
        ValueAxis psi = logarithmic ? new DecadeAxis("") : linear("");
        dress(kilopascal, ChartTexts.get("axis.kilopascal"));
        dress(psi, ChartTexts.get("axis.psi"));
        kilopascal.setRange(lowKilopascal, highKilopascal);
        plot.setRangeAxis(0, kilopascal);
        plot.setRangeAxis(1, psi);
        plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
        follow(kilopascal, psi, k -> k / KPA_PER_PSI);
    }

    /** A second axis of flow in US gallons a minute, at the right of one in liters a minute. */
    static void gallons(XYPlot plot, NumberAxis litersAMinute) {
        NumberAxis gallons = linear(ChartTexts.get("axis.gpm"));
        plot.setRangeAxis(1, gallons);
        plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
        double ratio = Units.require(Kind.FLOW_RATE, "L/min").factor()
                / Units.require(Kind.FLOW_RATE, "gpm").factor();
        follow(litersAMinute, gallons, l -> ratio * l);
    }

    /** Back from the temperature axis to SI [K]. */
    static double kelvin(double celsius) {
        return Units.require(Kind.TEMPERATURE, "degC").toSi(celsius);
    }

    /** A linear axis with our type. */
    static NumberAxis linear(String label) {
        NumberAxis axis = new NumberAxis();
        axis.setAutoRangeIncludesZero(false);
        axis.setNumberFormatOverride(new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        dress(axis, label);
        return axis;
    }

    static void dress(ValueAxis axis, String label) {
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

package org.coldpleat.ui.chart;

import java.util.function.ToDoubleFunction;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Condition;
import org.coldpleat.model.sizing.SizingResult.Option;
import org.coldpleat.model.sizing.SizingResult.Status;
import org.coldpleat.model.sizing.SizingResult.Variable;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.Axes;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.coldpleat.ui.chart.style.DecadeAxis;
import org.coldpleat.ui.chart.style.Panels;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** What comes of each value that was tried: opening temperature and chance of meeting the target; for pleats the pack too. */
public final class SizeChart {
    private static final double PERCENT = 100;

    /** Greatest pack resistance shown, over that of the present clean pack [1]. */
    private static final double GREATEST_RATIO = 100;

    /** Room below the least one [1]. */
    private static final double BELOW = 0.7;

    /** Size of the steps in which resistances of media are shown [1/m]. */
    private static final double RESISTANCE_STEP = 1e8;

    private final SizingResult result;
    private final ChartUnits units;

    private SizeChart(SizingResult result, UnitSystem preferred) {
        this.result = result;
        units = ChartUnits.of(preferred);
    }

    /** The chart of a result. */
    public static JFreeChart of(SizingResult result, UnitSystem units) {
        return new SizeChart(result, units).chart();
    }

    /** What the chart shows, for readers who cannot see it. */
    public static String description(SizingResult result) {
        return ChartTexts.get("description.size", result.candidate());
    }

    private double x(double value) {
        return switch (result.variable()) {
            case AREA -> units.area().fromSi(value);
            case OPENING -> units.pressure().fromSi(value);
            case GRADE -> units.viscosity().fromSi(value);
            case RESISTANCE -> value / RESISTANCE_STEP;
            case PLEATS -> value;
        };
    }

    /** Symbol of the unit along the chart; blank where its name holds it. */
    private String along() {
        return switch (result.variable()) {
            case AREA -> units.area().printed();
            case OPENING -> units.pressure().symbol();
            case GRADE -> units.viscosity().symbol();
            case RESISTANCE, PLEATS -> "";
        };
    }

    private JFreeChart chart() {
        boolean grade = result.variable() == Variable.GRADE;
        String label = ChartTexts.get("axis.size." + result.variable(), along());
        ValueAxis across = grade ? new DecadeAxis("") : Axes.linear(label);
        Axes.dress(across, label);
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Condition condition : result.conditions()) {
            for (Option one : condition.options()) {
                low = Math.min(low, x(one.value()));
                high = Math.max(high, x(one.value()));
            }
        }
        across.setRange(grade ? 0.8 * low : low, grade ? 1.25 * high : high);
        Panels panels = new Panels(across);
        if (result.variable() == Variable.PLEATS) {
            double now = present(result.conditions().get(0));
            XYPlot pack = panel(panels, ChartTexts.get("axis.packResistance"), one -> one.packResistance() / now);
            Panels.decades(pack, BELOW * least(now), GREATEST_RATIO);
            Panels.upright(pack, x(result.present()), ChartTexts.get("size.now"));
        }
        XYPlot openings = panel(
                panels,
                ChartTexts.get("axis.warmestOpen", units.temperature().symbol()),
                one -> units.temperature().fromSi(one.opening()));
        Panels.level(openings, units.temperature().fromSi(result.temperature()));
        if (grade) {
            names(openings);
        }
        XYPlot chances = panel(panels, ChartTexts.get("axis.chance"), one -> PERCENT * one.chance());
        chances.getRangeAxis().setRange(0, PERCENT + 5);
        result.confidence().ifPresent(chance -> Panels.level(chances, PERCENT * chance));
        if (!grade && result.variable() != Variable.PLEATS) {
            Panels.upright(openings, x(result.present()), ChartTexts.get("size.now"));
        }
        for (int c = 0; c < result.conditions().size(); c++) {
            panels.name(
                    c,
                    result.conditions().get(c).loaded()
                            ? ChartTexts.get(
                                    "legend.loaded",
                                    Charts.number(
                                            1e3 * result.conditions().get(c).dirt()))
                            : ChartTexts.get("legend.clean"));
        }
        return panels.chart(
                ChartTexts.get("size.title." + result.variable(), result.candidate()),
                ChartTexts.get(
                        result.invented() ? "subtitle.sizeInvented" : "subtitle.size",
                        result.title(),
                        ChartTexts.get("size.target." + result.target()),
                        Charts.number(units.temperature().fromSi(result.temperature())),
                        units.temperature().symbol(),
                        result.state()),
                ChartTexts.get("key.size"));
    }

    private double present(Condition condition) {
        return condition.options().stream()
                .filter(one -> one.value() == result.present())
                .mapToDouble(Option::packResistance)
                .findFirst()
                .orElse(1);
    }

    private double least(double now) {
        return result.conditions().stream()
                .flatMap(condition -> condition.options().stream())
                .mapToDouble(one -> one.packResistance() / now)
                .min()
                .orElse(1);
    }

    private void names(XYPlot plot) {
        for (Option one : result.conditions().get(0).options()) {
            double y = units.temperature().fromSi(one.opening());
            if (Double.isFinite(y)) {
                XYTextAnnotation name = new XYTextAnnotation(one.label() + "  ", x(one.value()), y);
                name.setFont(ChartTheme.NOTE);
                name.setPaint(ChartTheme.INK);
                name.setTextAnchor(TextAnchor.BOTTOM_RIGHT);
                plot.addAnnotation(name);
            }
        }
    }

    /** A panel with a ring at what just meets the target. */
    private XYPlot panel(Panels panels, String label, ToDoubleFunction<Option> value) {
        XYSeriesCollection curves = new XYSeriesCollection();
        XYSeriesCollection rings = new XYSeriesCollection();
        int[] indices = new int[result.conditions().size()];
        for (int c = 0; c < indices.length; c++) {
            Condition condition = result.conditions().get(c);
            indices[c] = c;
            XYSeries curve = new XYSeries(c, false, true);
            XYSeries ring = new XYSeries(c, false, true);
            condition.options().forEach(one -> Panels.add(curve, x(one.value()), value.applyAsDouble(one)));
            mark(condition.best(), ring, value);
            condition.sure().forEach(answer -> mark(answer, ring, value));
            curves.addSeries(curve);
            rings.addSeries(ring);
        }
        return panels.add(label, curves, indices, rings);
    }

    private void mark(Answer answer, XYSeries ring, ToDoubleFunction<Option> value) {
        if (answer.status() == Status.FOUND) {
            Option there =
                    new Option(answer.label(), answer.value(), answer.opening(), true, answer.chance(), Double.NaN, 0);
            double y = value.applyAsDouble(there);
            if (Double.isFinite(y)) {
                ring.add(x(answer.value()), y);
            }
        }
    }
}

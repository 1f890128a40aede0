package org.coldpleat.ui.chart;

import java.awt.BasicStroke;
import java.util.List;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.ChartTexts;
import org.coldpleat.ui.chart.style.ChartTheme;
import org.coldpleat.ui.chart.style.ChartUnits;
import org.coldpleat.ui.chart.style.Charts;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Readings of a flow bench less the fitted curve, over the flow: a pattern means that the curve is not the right one. */
public final class ResidualChart {
    private ResidualChart() {}

    /** True if a test has residuals to draw. */
    public static boolean fits(TestReport test) {
        return !test.residuals().isEmpty();
    }

    /** The picture of a test. */
    public static JFreeChart of(
            EvidenceReport report, TestReport test, String caseTitle, boolean invented, UnitSystem preferred) {
        ChartUnits units = ChartUnits.of(preferred);
        XYSeries kept = new XYSeries(ChartTexts.get("residual.kept"), false);
        XYSeries far = new XYSeries(ChartTexts.get("residual.far"), false);
        for (TestReport.Residual one : test.residuals()) {
            (one.outlier() ? far : kept)
                    .add(units.flow().fromSi(one.flow()), units.pressure().fromSi(one.residual()));
        }
        XYSeriesCollection data = new XYSeriesCollection(kept);
        if (!far.isEmpty()) {
            data.addSeries(far);
        }
        XYLineAndShapeRenderer points = new XYLineAndShapeRenderer(false, true);
        points.setSeriesPaint(0, ChartTheme.INK);
        points.setSeriesPaint(1, ChartTheme.NOT_KNOWN);
        points.setSeriesShape(0, new java.awt.geom.Ellipse2D.Double(-6, -6, 12, 12));
        points.setSeriesShape(1, new java.awt.geom.Rectangle2D.Double(-7, -7, 14, 14));
        points.setSeriesShapesFilled(1, false);
        XYPlot plot = Charts.plot(data, points);
        plot.setDomainAxis(axis(ChartTexts.get("axis.flow", units.flow().symbol())));
        plot.setRangeAxis(
                axis(ChartTexts.get("residual.pressure", units.pressure().symbol())));
        ValueMarker zero = new ValueMarker(0);
        zero.setPaint(ChartTheme.INK);
        zero.setStroke(new BasicStroke(2));
        plot.addRangeMarker(zero);
        String subtitle = ChartTexts.get(invented ? "subtitle.mapInvented" : "subtitle.map", caseTitle);
        return Charts.chart(ChartTexts.get("residual.title", report.candidate()), subtitle, "", plot);
    }

    /** What the picture shows, for readers who cannot see it. */
    public static String description(EvidenceReport report, TestReport test) {
        List<TestReport.Residual> all = test.residuals();
        double worst =
                all.stream().mapToDouble(one -> Math.abs(one.residual())).max().orElse(0);
        return ChartTexts.get(
                "residual.description", report.candidate(), Integer.toString(all.size()), Charts.number(worst / 1e3));
    }

    private static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setAutoRangeIncludesZero(true);
        axis.setLabelFont(ChartTheme.AXIS);
        axis.setTickLabelFont(ChartTheme.TICK);
        axis.setLabelPaint(ChartTheme.INK);
        axis.setTickLabelPaint(ChartTheme.INK);
        return axis;
    }
}

package org.coldpleat.ui.chart.style;

import java.awt.BasicStroke;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYDataset;

/** Curves in the line of their candidate with its marker every so often off the zero line, so that they stay apart without color. */
public final class CurveRenderer extends XYLineAndShapeRenderer {
    private static final long serialVersionUID = 1;
    private static final int MARKERS_A_CURVE = 9;

    private final int[] indices;

    public CurveRenderer(int[] indices) {
        super(true, true);
        this.indices = indices.clone();
        setDrawSeriesLineAsPath(true);
        setDefaultCreateEntities(false);
        for (int s = 0; s < indices.length; s++) {
            setSeriesPaint(s, ChartTheme.color(indices[s]));
            setSeriesStroke(s, ChartTheme.line(indices[s]));
            setSeriesShape(s, ChartTheme.marker(indices[s]));
            setSeriesOutlineStroke(s, new BasicStroke(1));
        }
    }

    @Override
    public boolean getItemShapeVisible(int series, int item) {
        XYPlot plot = getPlot();
        XYDataset curves = plot == null ? null : plot.getDataset(plot.getIndexOf(this));
        if (curves == null) {
            return false;
        }
        int step = Math.max(1, curves.getItemCount(series) / MARKERS_A_CURVE);
        int first = step * (2 * series + 1) / (2 * indices.length + 1);
        boolean onTheAxis = curves.getYValue(series, item) == 0;
        return item % step == first && !onTheAxis;
    }
}

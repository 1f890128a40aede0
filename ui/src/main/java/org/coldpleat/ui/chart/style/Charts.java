package org.coldpleat.ui.chart.style;

import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.block.ColumnArrangement;
import org.jfree.chart.block.FlowArrangement;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.ui.VerticalAlignment;
import org.jfree.data.xy.XYDataset;

/** What all charts have in common: paper, grid, titles, legend. */
public final class Charts {
    private Charts() {}

    public static XYPlot plot(XYDataset data, XYItemRenderer renderer) {
        XYPlot plot = new XYPlot(data, null, null, renderer);
        plot.setBackgroundPaint(ChartTheme.PAPER);
        plot.setOutlinePaint(ChartTheme.INK);
        plot.setDomainGridlinePaint(ChartTheme.GRID);
        plot.setRangeGridlinePaint(ChartTheme.GRID);
        plot.setDomainGridlineStroke(new BasicStroke(1));
        plot.setRangeGridlineStroke(new BasicStroke(1));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        return plot;
    }

    public static JFreeChart chart(String title, String subtitle, String key, XYPlot plot) {
        JFreeChart chart = new JFreeChart(title, ChartTheme.TITLE, plot, false);
        chart.setBackgroundPaint(ChartTheme.PAPER);
        chart.setPadding(new RectangleInsets(12, 12, 12, 12));
        chart.getTitle().setPaint(ChartTheme.INK);
        chart.addSubtitle(text(subtitle, RectangleEdge.TOP));
        LegendTitle legend = new LegendTitle(
                plot,
                new FlowArrangement(HorizontalAlignment.CENTER, VerticalAlignment.CENTER, 0, 0),
                new ColumnArrangement(HorizontalAlignment.LEFT, VerticalAlignment.CENTER, 0, 0));
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setItemFont(ChartTheme.LEGEND);
        legend.setItemPaint(ChartTheme.INK);
        legend.setItemLabelPadding(new RectangleInsets(3, 4, 3, 18));
        legend.setPadding(new RectangleInsets(8, 0, 0, 0));
        if (!key.isEmpty()) {
            chart.addSubtitle(text(key, RectangleEdge.BOTTOM));
        }
        chart.addLegend(legend);
        return chart;
    }

    /** A thin upright line with a name at its top. */
    public static ValueMarker namedLine(double value, String name) {
        ValueMarker line = new ValueMarker(value);
        line.setPaint(ChartTheme.NOT_KNOWN);
        line.setStroke(new BasicStroke(ChartTheme.THIN_WIDTH));
        line.setAlpha(1);
        line.setLabel(name);
        line.setLabelFont(ChartTheme.NOTE);
        line.setLabelPaint(ChartTheme.INK);
        line.setLabelBackgroundColor(ChartTheme.LABEL_GROUND);
        line.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
        line.setLabelTextAnchor(TextAnchor.TOP_LEFT);
        line.setLabelOffset(new RectangleInsets(4, 4, 4, 4));
        return line;
    }

    /** A number with up to three significant digits, without trailing zeros. */
    public static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static TextTitle text(String words, RectangleEdge edge) {
        TextTitle title = new TextTitle(words, edge.equals(RectangleEdge.TOP) ? ChartTheme.SUBTITLE : ChartTheme.NOTE);
        title.setPaint(ChartTheme.INK);
        title.setPosition(edge);
        title.setHorizontalAlignment(HorizontalAlignment.CENTER);
        title.setPadding(new RectangleInsets(2, 0, 6, 0));
        return title;
    }

    public static LegendItem legendItem(int index, String text) {
        LegendItem item = new LegendItem(
                text,
                null,
                null,
                null,
                true,
                ChartTheme.marker(index),
                true,
                ChartTheme.color(index),
                false,
                ChartTheme.color(index),
                new BasicStroke(1),
                true,
                new Line2D.Double(-24, 0, 24, 0),
                ChartTheme.line(index),
                ChartTheme.color(index));
        item.setLabelFont(ChartTheme.LEGEND);
        return item;
    }
}

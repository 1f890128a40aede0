package org.coldpleat.ui.desktop.view.chart;

import java.util.Objects;

/**
 * One line of the table behind a chart.
 *
 * @param series name of the curve
 * @param x value along the chart
 * @param y value of the curve
 */
public record NumberRow(String series, String x, String y) {
    public NumberRow {
        Objects.requireNonNull(series, "series");
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
    }
}

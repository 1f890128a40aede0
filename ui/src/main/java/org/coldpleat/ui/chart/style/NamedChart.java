package org.coldpleat.ui.chart.style;

import java.util.function.Supplier;
import org.jfree.chart.JFreeChart;

/**
 * One of several charts of a result.
 *
 * @param name by which it is told from the others, fit for a file
 * @param drawing draws it anew
 * @param description what it shows, for readers who cannot see it
 */
public record NamedChart(String name, Supplier<JFreeChart> drawing, String description) {
    /** The chart, drawn anew. */
    public JFreeChart chart() {
        return drawing.get();
    }
}

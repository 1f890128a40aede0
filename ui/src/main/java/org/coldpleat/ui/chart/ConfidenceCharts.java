package org.coldpleat.ui.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.NamedChart;

/** The charts of a run of draws in the order in which they are told. */
public final class ConfidenceCharts {
    /** Name of the chances of an open valve. */
    public static final String CHANCES = "chance-open";

    /** Name of the bands of the opening temperatures. */
    public static final String BANDS = "opening-bands";

    /** Name of the shares of the variance; only there if something can be measured further. */
    public static final String SHARES = "variance-shares";

    private ConfidenceCharts() {}

    /**
     * All charts.
     *
     * @param invented true if the data are invented, which the charts then say
     * @param words name of a group of unknowns
     */
    public static List<NamedChart> all(
            ConfidenceResult result, boolean invented, UnaryOperator<String> words, UnitSystem units) {
        List<NamedChart> charts = new ArrayList<>();
        charts.add(new NamedChart(
                CHANCES, () -> ConfidenceChart.of(result, invented, units), ConfidenceChart.description(result)));
        charts.add(new NamedChart(
                BANDS, () -> ConfidenceBars.bands(result, invented, units), ConfidenceBars.bandsDescription(result)));
        if (!result.focus().measurements().isEmpty()) {
            charts.add(new NamedChart(
                    SHARES,
                    () -> ConfidenceBars.shares(result, invented, words, units),
                    ConfidenceBars.sharesDescription(result, words)));
        }
        return charts;
    }
}

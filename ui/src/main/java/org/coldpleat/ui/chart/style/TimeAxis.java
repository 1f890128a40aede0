package org.coldpleat.ui.chart.style;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis of seconds whose labels are the times people say: 0.5 s, 30 s, 10 min, 2 h. */
public final class TimeAxis extends LogAxis {
    private static final long serialVersionUID = 1;
    private static final double[] SAID = {
        0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 60, 120, 300, 600, 1200, 3600, 7200, 18_000, 36_000, 86_400
    };
    private static final double LABEL_GAP = 6;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    public TimeAxis(String label) {
        super("");
        Axes.dress(this, label);
    }

    /** All ticks; one whose words would run into those before it stands without words. */
    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        FontMetrics metrics = g2.getFontMetrics(getTickLabelFont());
        double free = Double.NEGATIVE_INFINITY;
        for (double seconds : SAID) {
            if (getRange().contains(seconds)) {
                double half = metrics.stringWidth(text(seconds)) / 2.0;
                double middle = valueToJava2D(seconds, dataArea, edge);
                boolean fits = middle - half > free;
                free = fits ? middle + half + LABEL_GAP : free;
                ticks.add(new NumberTick(
                        TickType.MAJOR,
                        seconds,
                        fits ? text(seconds) : "",
                        TextAnchor.TOP_CENTER,
                        TextAnchor.CENTER,
                        0));
            }
        }
        return ticks;
    }

    private static String text(double seconds) {
        if (seconds < MINUTE) {
            return ChartTexts.get("time.seconds", Charts.number(seconds));
        }
        return seconds < HOUR
                ? ChartTexts.get("time.minutes", String.format(Locale.ROOT, "%.0f", seconds / MINUTE))
                : ChartTexts.get("time.hours", String.format(Locale.ROOT, "%.0f", seconds / HOUR));
    }
}

package org.coldpleat.ui.chart.style;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis with a label at 1, 2 and 5 of each decade, or at the decades alone where there are many. */
public final class DecadeAxis extends LogAxis {
    private static final long serialVersionUID = 1;
    private static final int MANY_DECADES = 4;
    private static final int STEPS_A_DECADE = 9;

    public DecadeAxis(String label) {
        super(label);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g2, AxisState state, Rectangle2D dataArea, RectangleEdge edge) {
        boolean upright = RectangleEdge.isLeftOrRight(edge);
        TextAnchor anchor = !upright
                ? TextAnchor.TOP_CENTER
                : edge.equals(RectangleEdge.LEFT) ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT;
        double low = getRange().getLowerBound();
        double high = getRange().getUpperBound();
        boolean many = Math.log10(high / low) > MANY_DECADES;
        List<NumberTick> ticks = new ArrayList<>();
        for (int decade = (int) Math.floor(Math.log10(low)); decade <= Math.ceil(Math.log10(high)); decade++) {
            for (int step = 1; step <= STEPS_A_DECADE; step++) {
                BigDecimal value = BigDecimal.valueOf(step).scaleByPowerOfTen(decade);
                if (value.doubleValue() < low * (1 - 1e-9) || value.doubleValue() > high * (1 + 1e-9)) {
                    continue;
                }
                boolean labeled = step == 1 || (!many && (step == 2 || step == 5));
                ticks.add(new NumberTick(
                        labeled ? TickType.MAJOR : TickType.MINOR,
                        value.doubleValue(),
                        labeled ? text(value) : "",
                        anchor,
                        TextAnchor.CENTER,
                        0));
            }
        }
        return ticks;
    }

    private static String text(BigDecimal value) {
        return value.round(new MathContext(1)).stripTrailingZeros().toPlainString();
    }
}

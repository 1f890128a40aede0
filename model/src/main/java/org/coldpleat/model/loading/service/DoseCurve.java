package org.coldpleat.model.loading.service;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.coldpleat.model.loading.service.ServicePlan.StartDose;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Outcome of starts over the logarithm of the resistance ratio: straight lines between full starts. A cell is halved as
 * long as the full start in its middle lies too far off the line; only cells that are asked for are made. Work object of
 * one thread.
 */
@Source("linear interpolation between full starts with bisection of cells, textbook")
@Validity("any ratio above 0; across a jump (a valve that just opens and hangs open) the narrowest cell stands")
public final class DoseCurve {
    /** First width of a cell in the logarithm of the ratio [1]; the element limit of 30 is three of them. */
    private static final double WIDTH = Math.log(30) / 3;

    /** Halvings of a first cell [1]: the narrowest is 3.5 % of the ratio wide. */
    private static final int MOST_HALVINGS = 5;

    /** A cell between two full starts, with the one in its middle once it was asked for. */
    private static final class Cell {
        private final double low;
        private final double high;
        private final StartDose atLow;
        private final StartDose atHigh;
        private final int halvings;
        private List<Cell> halves = List.of();
        private StartDose middle;

        Cell(double low, double high, StartDose atLow, StartDose atHigh, int halvings) {
            this.low = low;
            this.high = high;
            this.atLow = atLow;
            this.atHigh = atHigh;
            this.halvings = halvings;
        }
    }

    private final DoubleFunction<StartDose> full;
    private final double tolerance;
    private final Map<Long, StartDose> corners = new HashMap<>();
    private final Map<Long, Cell> cells = new HashMap<>();
    private int starts;
    private double miss;

    /**
     * A curve.
     *
     * @param full start at a resistance ratio [1]
     * @param tolerance of the unfiltered oil, over all oil of the start [1]
     */
    public DoseCurve(DoubleFunction<StartDose> full, double tolerance) {
        this.full = full;
        this.tolerance = tolerance;
    }

    /** Outcome at a resistance ratio [1, above 0]. */
    public StartDose at(double packRatio) {
        double x = Math.log(packRatio);
        long number = (long) Math.floor(x / WIDTH);
        Cell cell =
                cells.computeIfAbsent(number, n -> new Cell(n * WIDTH, (n + 1) * WIDTH, corner(n), corner(n + 1), 0));
        settle(cell);
        while (!accepted(cell)) {
            cell = half(cell, x);
            settle(cell);
        }
        Cell half = half(cell, x);
        return line(half.low, half.high, half.atLow, half.atHigh, x);
    }

    private static Cell half(Cell cell, double x) {
        return cell.halves.get(x < 0.5 * (cell.low + cell.high) ? 0 : 1);
    }

    private void settle(Cell cell) {
        if (cell.middle != null) {
            return;
        }
        double x = 0.5 * (cell.low + cell.high);
        cell.middle = start(x);
        cell.halves = List.of(
                new Cell(cell.low, x, cell.atLow, cell.middle, cell.halvings + 1),
                new Cell(x, cell.high, cell.middle, cell.atHigh, cell.halvings + 1));
        if (accepted(cell)) {
            miss = Math.max(miss, missOf(cell));
        }
    }

    private boolean accepted(Cell cell) {
        return cell.halvings >= MOST_HALVINGS || missOf(cell) <= tolerance;
    }

    private static double missOf(Cell cell) {
        StartDose line = line(cell.low, cell.high, cell.atLow, cell.atHigh, 0.5 * (cell.low + cell.high));
        double volume = cell.middle.unfilteredVolume() + cell.middle.filteredVolume();
        double off = Math.max(
                Math.abs(line.unfilteredVolume() - cell.middle.unfilteredVolume()),
                Math.abs(line.filteredVolume() - cell.middle.filteredVolume()));
        return volume > 0 ? off / volume : 0;
    }

    private static StartDose line(double low, double high, StartDose atLow, StartDose atHigh, double x) {
        double u = (x - low) / (high - low);
        return new StartDose(
                atLow.unfilteredVolume() + u * (atHigh.unfilteredVolume() - atLow.unfilteredVolume()),
                atLow.filteredVolume() + u * (atHigh.filteredVolume() - atLow.filteredVolume()));
    }

    private StartDose corner(long number) {
        return corners.computeIfAbsent(number, n -> start(n * WIDTH));
    }

    private StartDose start(double logRatio) {
        starts++;
        return full.apply(Math.exp(logRatio));
    }

    /**
     * Greatest distance of the line from the full start in the middle of any cell that was asked for and was not halved
     * further, over all oil of the start [1]. That start is then used as well, so that the error left is a quarter of it
     * where the outcome bends smoothly, and at most about twice where a corner lies off the middle.
     */
    public double statedError() {
        return miss;
    }

    /** Full starts made [1]. */
    public int starts() {
        return starts;
    }
}

package org.coldpleat.ui.chart.map;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Lines of equal value on a grid, by marching squares with linear crossings; a saddle is split by the mean of its
 * corners. Cells with a corner that is not finite hold no line.
 */
public final class LevelLines {
    private final double[] x;
    private final double[] y;
    private final double[][] value;
    private final double level;
    private final List<double[]> segments = new ArrayList<>();

    private LevelLines(double[] x, double[] y, double[][] value, double level) {
        this.x = x;
        this.y = y;
        this.value = value;
        this.level = level;
    }

    /**
     * The lines of one level.
     *
     * @param x grid, double[nX], rising
     * @param y grid, double[nY], rising
     * @param value double[nX][nY]
     * @param level value on the lines
     * @return lines, each a list of {x, y}
     */
    public static List<List<double[]>> of(double[] x, double[] y, double[][] value, double level) {
        LevelLines lines = new LevelLines(x, y, value, level);
        for (int i = 0; i + 1 < x.length; i++) {
            for (int j = 0; j + 1 < y.length; j++) {
                lines.cell(i, j);
            }
        }
        return lines.joined();
    }

    private void cell(int i, int j) {
        double a = value[i][j];
        double b = value[i + 1][j];
        double c = value[i + 1][j + 1];
        double d = value[i][j + 1];
        if (!Double.isFinite(a + b + c + d)) {
            return;
        }
        List<double[]> crossings = new ArrayList<>();
        edge(crossings, x[i], y[j], a, x[i + 1], y[j], b);
        edge(crossings, x[i + 1], y[j], b, x[i + 1], y[j + 1], c);
        edge(crossings, x[i], y[j + 1], d, x[i + 1], y[j + 1], c);
        edge(crossings, x[i], y[j], a, x[i], y[j + 1], d);
        if (crossings.size() == 2) {
            segment(crossings.get(0), crossings.get(1));
        } else if (crossings.size() == 4) {
            boolean aJoinsMiddle = (a >= level) == ((a + b + c + d) / 4 >= level);
            segment(crossings.get(0), crossings.get(aJoinsMiddle ? 1 : 3));
            segment(crossings.get(2), crossings.get(aJoinsMiddle ? 3 : 1));
        }
    }

    private void edge(List<double[]> found, double x0, double y0, double v0, double x1, double y1, double v1) {
        if ((v0 >= level) != (v1 >= level)) {
            double share = (level - v0) / (v1 - v0);
            found.add(new double[] {x0 + share * (x1 - x0), y0 + share * (y1 - y0)});
        }
    }

    private void segment(double[] from, double[] to) {
        segments.add(new double[] {from[0], from[1], to[0], to[1]});
    }

    private List<List<double[]>> joined() {
        List<List<double[]>> lines = new ArrayList<>();
        List<double[]> left = new ArrayList<>(segments);
        while (!left.isEmpty()) {
            double[] first = left.remove(0);
            Deque<double[]> line = new ArrayDeque<>();
            line.add(new double[] {first[0], first[1]});
            line.add(new double[] {first[2], first[3]});
            while (grow(line, left)) {
                // each turn takes one segment
            }
            lines.add(List.copyOf(line));
        }
        return lines;
    }

    private static boolean grow(Deque<double[]> line, List<double[]> left) {
        for (int s = 0; s < left.size(); s++) {
            double[] segment = left.get(s);
            double[] start = {segment[0], segment[1]};
            double[] end = {segment[2], segment[3]};
            if (same(line.getLast(), start) || same(line.getLast(), end)) {
                line.addLast(same(line.getLast(), start) ? end : start);
            } else if (same(line.getFirst(), start) || same(line.getFirst(), end)) {
                line.addFirst(same(line.getFirst(), start) ? end : start);
            } else {
                continue;
            }
            left.remove(s);
            return true;
        }
        return false;
    }

    /** Neighboring cells compute a crossing on their shared edge from the same numbers, so equality is exact. */
    private static boolean same(double[] a, double[] b) {
        return a[0] == b[0] && a[1] == b[1];
    }
}

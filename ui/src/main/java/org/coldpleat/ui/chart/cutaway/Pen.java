package org.coldpleat.ui.chart.cutaway;

import java.util.ArrayList;
import java.util.List;

/** Collects pieces. */
final class Pen {
    private static final int CORNERS_OF_A_CIRCLE = 120;

    private final List<Piece> pieces = new ArrayList<>();

    List<Piece> pieces() {
        return pieces;
    }

    void area(Role role, boolean measured, double tone, double... xy) {
        add(role, true, measured, tone, 0, xy);
    }

    /** An upright rectangle between two corners. */
    void box(Role role, boolean measured, double tone, double x1, double y1, double x2, double y2) {
        area(role, measured, tone, x1, y1, x2, y1, x2, y2, x1, y2);
    }

    void line(Role role, boolean measured, double tone, double width, double... xy) {
        add(role, false, measured, tone, width, xy);
    }

    /** A stream that ends in an arrow head as wide as one and a half streams. */
    void arrow(Role role, double tone, double width, double... xy) {
        int n = xy.length;
        double dx = xy[n - 2] - xy[n - 4];
        double dy = xy[n - 1] - xy[n - 3];
        double length = Math.hypot(dx, dy);
        double head = Math.min(0.8 * length, width + 0.8);
        double ux = dx / length;
        double uy = dy / length;
        double half = 0.85 * width + 0.25;
        double bx = xy[n - 2] - head * ux;
        double by = xy[n - 1] - head * uy;
        double[] shaft = xy.clone();
        shaft[n - 2] = bx;
        shaft[n - 1] = by;
        line(role, true, tone, width, shaft);
        area(role, true, tone, xy[n - 2], xy[n - 1], bx - half * uy, by + half * ux, bx + half * uy, by - half * ux);
    }

    void oval(Role role, boolean measured, double tone, double x, double y, double a, double b) {
        double[] xy = new double[2 * CORNERS_OF_A_CIRCLE];
        for (int i = 0; i < CORNERS_OF_A_CIRCLE; i++) {
            double angle = 2 * Math.PI * i / CORNERS_OF_A_CIRCLE;
            xy[2 * i] = x + a * Math.cos(angle);
            xy[2 * i + 1] = y + b * Math.sin(angle);
        }
        area(role, measured, tone, xy);
    }

    private void add(Role role, boolean closed, boolean measured, double tone, double width, double... xy) {
        double[] x = new double[xy.length / 2];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = xy[2 * i];
            y[i] = xy[2 * i + 1];
        }
        pieces.add(new Piece(role, x, y, closed, measured, Math.min(1, Math.max(0, tone)), width));
    }
}

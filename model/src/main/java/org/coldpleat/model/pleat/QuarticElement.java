package org.coldpleat.model.pleat;

import org.coldpleat.shared.source.Source;

/**
 * Polynomials of fourth degree on an element from 0 to 1: the two straight lines that are 1 at one end and 0 at the other,
 * then three that vanish at both ends. The slopes of the latter are Legendre polynomials, so they are orthogonal to each
 * other and to those of the lines. Five Gauss points.
 */
@Source("integrated Legendre functions, after I. Babuska, B. A. Szabo and I. N. Katz 1981, SIAM J. Numer. Anal. 18, 515"
        + " (from memory)")
final class QuarticElement {
    static final int SIZE = 5;
    static final int POINTS = 5;

    /** Integral of the square of the slope of each bubble [1]. */
    static final double BUBBLE_STIFFNESS = 2;

    /** Gauss points from 0 to 1 and their weights. */
    @Source("roots of the Legendre polynomial of fifth degree, closed form")
    static final double[] PLACE = places();

    static final double[] WEIGHT = weights();

    /** Value of each function at each point, point by point. */
    static final double[] VALUE = values();

    /** Products of two functions at each point, point by point, lower triangle row by row. */
    static final double[] PRODUCT = products();

    /** Entries of a lower triangle. */
    static final int TRIANGLE = SIZE * (SIZE + 1) / 2;

    private QuarticElement() {}

    private static double[] places() {
        double inner = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 6;
        double outer = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 6;
        return new double[] {0.5 - outer, 0.5 - inner, 0.5, 0.5 + inner, 0.5 + outer};
    }

    private static double[] weights() {
        double inner = (322 + 13 * Math.sqrt(70)) / 1800;
        double outer = (322 - 13 * Math.sqrt(70)) / 1800;
        return new double[] {outer, inner, 64.0 / 225, inner, outer};
    }

    private static double[] values() {
        double[] values = new double[POINTS * SIZE];
        for (int i = 0; i < POINTS; i++) {
            double x = PLACE[i];
            double z = 2 * x - 1;
            double bubble = z * z - 1;
            values[i * SIZE] = 1 - x;
            values[i * SIZE + 1] = x;
            // (P_n - P_(n-2))/sqrt(2 (2n-1)) for n = 2, 3, 4
            values[i * SIZE + 2] = 1.5 * bubble / Math.sqrt(6);
            values[i * SIZE + 3] = 2.5 * z * bubble / Math.sqrt(10);
            values[i * SIZE + 4] = 0.875 * (5 * z * z - 1) * bubble / Math.sqrt(14);
        }
        return values;
    }

    private static double[] products() {
        double[] products = new double[POINTS * TRIANGLE];
        int at = 0;
        for (int i = 0; i < POINTS; i++) {
            for (int row = 0; row < SIZE; row++) {
                for (int column = 0; column <= row; column++) {
                    products[at++] = VALUE[i * SIZE + row] * VALUE[i * SIZE + column];
                }
            }
        }
        return products;
    }
}

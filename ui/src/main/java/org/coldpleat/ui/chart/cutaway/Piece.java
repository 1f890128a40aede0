package org.coldpleat.ui.chart.cutaway;

import java.util.Objects;

/**
 * One line or area.
 *
 * @param role what it stands for
 * @param x corners, rightward [mm], at least 2
 * @param y corners, downward [mm], as many
 * @param closed true for an area, false for a line
 * @param measured false if its size is not on the sheet: drawn dashed
 * @param tone pressure above the outlet over the pressure drop of the filter [0..1]; 0 where it has no meaning
 * @param width width of a line [mm]; 0 for a hairline
 */
public record Piece(Role role, double[] x, double[] y, boolean closed, boolean measured, double tone, double width) {
    public Piece {
        Objects.requireNonNull(role, "role");
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException(
                    "a piece must have at least 2 corners, had " + x.length + " and " + y.length);
        }
        if (!(tone >= 0 && tone <= 1)) {
            throw new IllegalArgumentException("tone must be within 0 to 1, was " + tone);
        }
        if (!(width >= 0)) {
            throw new IllegalArgumentException("width must be at least 0 mm, was " + width + " mm");
        }
    }
}

package org.coldpleat.ui.chart.cutaway;

import java.util.Objects;

/**
 * Words, most with a thin line to what they name.
 *
 * @param text words
 * @param x where the words begin, end or have their middle [mm]
 * @param y middle of the words, if there is room for it; what a heading stands above [mm]
 * @param side which part of the words stands at {@code x}
 * @param toX where the line ends [mm]; NaN for words without a line
 * @param toY where the line ends [mm]
 * @param measured false if it names something that is not on the sheet
 */
public record Label(String text, double x, double y, Side side, double toX, double toY, boolean measured) {
    /** Which part of the words stands at the given place. */
    public enum Side {
        /** The words end there. */
        ENDING,
        /** The words begin there. */
        BEGINNING,
        /** The words are centered above it, as a heading. */
        HEADING
    }

    public Label {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(side, "side");
    }

    /** True if a line leads to what the words name. */
    public boolean hasLine() {
        return Double.isFinite(toX);
    }
}

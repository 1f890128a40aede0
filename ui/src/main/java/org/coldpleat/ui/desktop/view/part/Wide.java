package org.coldpleat.ui.desktop.view.part;

import javafx.scene.control.TextArea;

/** Sizes the type of a text of fixed columns so that a whole line stands in its pane, as long as it can be read. */
public final class Wide {
    /** Width of a letter of fixed width over its size [1]. Source: common practice, no source. */
    private static final double LETTER = 0.602;

    private static final double LARGEST = 13;
    private static final double SMALLEST = 9.5;

    /** Room for the edges and the scroll bar [px]. */
    private static final double EDGES = 36;

    private Wide() {}

    /**
     * Lets the type of a text follow its pane.
     *
     * @param columns letters of the longest line
     */
    public static void columns(TextArea area, int columns, PictureLook look) {
        Runnable fit = () -> {
            double type = look.type().get();
            double fits = (area.getWidth() - EDGES) / (LETTER * columns);
            double size = Math.max(SMALLEST, Math.min(LARGEST * type, fits));
            area.setStyle("-fx-font-size: " + size + "px;");
        };
        area.widthProperty().addListener(observed -> fit.run());
        look.onChange(fit);
    }
}

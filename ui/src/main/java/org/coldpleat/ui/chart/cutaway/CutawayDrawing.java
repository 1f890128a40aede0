package org.coldpleat.ui.chart.cutaway;

import java.util.List;
import java.util.Objects;

/**
 * A filter cut open, in millimeters of the filter itself.
 *
 * @param title heading
 * @param subtitle state, oil temperature, flow and bypass share in words
 * @param width of the drawing [mm]
 * @param height of the drawing [mm]
 * @param pieces in the order of drawing
 * @param labels words beside them
 * @param greatestPressure number of the pressure above the outlet that a tone of 1 stands for
 * @param pressureWords what that number is, with its unit
 * @param notes what is drawn by custom rather than by measurement
 */
public record CutawayDrawing(
        String title,
        String subtitle,
        double width,
        double height,
        List<Piece> pieces,
        List<Label> labels,
        String greatestPressure,
        String pressureWords,
        List<String> notes) {
    public CutawayDrawing {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(subtitle, "subtitle");
        pieces = List.copyOf(pieces);
        labels = List.copyOf(labels);
        notes = List.copyOf(notes);
    }

    /** How many pieces play a role. */
    public long count(Role role) {
        return pieces.stream().filter(piece -> piece.role() == role).count();
    }
}

package org.coldpleat.ui.chart.cutaway;

import java.util.List;
import java.util.Objects;

/**
 * A filter cut open, to be shown: the cut along the axis, and beside it a few facts in large type.
 *
 * @param title heading
 * @param subtitle what is shown, in words
 * @param drawing the cut along the axis
 * @param facts in the order of reading
 * @param course share of the oil that goes round the medium so far [1], for a strip below; empty without one
 * @param marks places on that strip with their words
 */
public record StageSheet(
        String title, String subtitle, CutawayDrawing drawing, List<Fact> facts, double[] course, List<Mark> marks) {
    /**
     * A fact.
     *
     * @param name what it is
     * @param value with its unit
     * @param strong true if it stands out
     */
    public record Fact(String name, String value, boolean strong) {}

    /**
     * A place on the strip.
     *
     * @param words such as {@code 10 s}
     * @param at place [0..1]
     */
    public record Mark(String words, double at) {}

    public StageSheet {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(subtitle, "subtitle");
        Objects.requireNonNull(drawing, "drawing");
        facts = List.copyOf(facts);
        marks = List.copyOf(marks);
        course = course.clone();
    }
}

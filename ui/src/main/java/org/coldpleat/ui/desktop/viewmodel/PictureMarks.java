package org.coldpleat.ui.desktop.viewmodel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Points that were set on a picture: the two ends of a scale bar, and pairs of points across what is measured. A click
 * gives new marks, so that steps back are earlier marks.
 *
 * @param bar ends of the scale bar, none to two
 * @param edges points across what is measured, two and two; the last may still want its partner
 */
public record PictureMarks(List<Point> bar, List<Point> edges) {
    /** Nothing is marked yet. */
    public static final PictureMarks NONE = new PictureMarks(List.of(), List.of());

    /**
     * A point of the picture.
     *
     * @param x across [pixel]
     * @param y down [pixel]
     */
    public record Point(double x, double y) {
        /** Distance of another point [pixel]. */
        public double to(Point other) {
            return Math.hypot(other.x - x, other.y - y);
        }
    }

    public PictureMarks {
        bar = List.copyOf(bar);
        edges = List.copyOf(edges);
    }

    /** With one more end of the scale bar; a third end begins another bar. */
    public PictureMarks withEnd(Point end) {
        return new PictureMarks(bar.size() == 2 ? List.of(end) : joined(bar, end), edges);
    }

    /** With one more point across what is measured. */
    public PictureMarks withEdge(Point edge) {
        return new PictureMarks(bar, joined(edges, edge));
    }

    private static List<Point> joined(List<Point> points, Point last) {
        List<Point> all = new ArrayList<>(points);
        all.add(last);
        return all;
    }

    /** Length of the scale bar [pixel]; empty if it has no two ends apart from each other. */
    public OptionalDouble barLength() {
        return bar.size() == 2 && bar.get(0).to(bar.get(1)) > 0
                ? OptionalDouble.of(bar.get(0).to(bar.get(1)))
                : OptionalDouble.empty();
    }

    /** Widths of the whole pairs [pixel]. */
    public double[] widths() {
        return IntStream.range(0, edges.size() / 2)
                .mapToDouble(i -> edges.get(2 * i).to(edges.get(2 * i + 1)))
                .toArray();
    }

    /** The point whose partner is still to come. */
    public Optional<Point> waiting() {
        List<Point> last = bar.size() == 1 ? bar : edges.size() % 2 == 1 ? edges : List.of();
        return last.isEmpty() ? Optional.empty() : Optional.of(last.get(last.size() - 1));
    }
}

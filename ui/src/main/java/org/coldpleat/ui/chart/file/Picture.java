package org.coldpleat.ui.chart.file;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Objects;
import java.util.function.BiConsumer;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.chart.cutaway.CutawayPainter;
import org.jfree.chart.JFreeChart;

/**
 * Something that can be painted on an area of any size.
 *
 * @param title heading in words
 * @param description what it shows, for readers who cannot see it
 * @param painter paints it
 */
public record Picture(String title, String description, BiConsumer<Graphics2D, Rectangle2D> painter) {
    public Picture {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(painter, "painter");
    }

    /** A chart. */
    public static Picture of(JFreeChart chart, String description) {
        String title = chart.getTitle() == null ? "" : chart.getTitle().getText();
        return new Picture(title, description, chart::draw);
    }

    /** A cutaway drawing. */
    public static Picture of(CutawayDrawing drawing) {
        return new Picture(
                drawing.title(),
                CutawayPainter.description(drawing),
                (g2, area) -> CutawayPainter.paint(drawing, g2, area));
    }
}

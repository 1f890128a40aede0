package org.coldpleat.ui.desktop.view.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.input.KeyEvent;
import org.coldpleat.ui.chart.style.ChartFit;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.Range;

/** Reads a chart along an upright line that follows the mouse or the arrow keys, and looks at a part of its length. */
final class ChartReader {
    private static final double LEAST_DRAG = 8;
    private static final double STEP = 0.02;
    private static final double ZOOM = 0.8;

    private final PicturePane picture;
    private final Consumer<String> said;
    private final Runnable whole;
    private final ChartRenderingInfo info = new ChartRenderingInfo();
    private Optional<JFreeChart> chart = Optional.empty();
    private double pressedAt;
    private double place = 0.5;
    private boolean reading;
    private boolean legend = true;

    /**
     * @param said told the values along the line
     * @param whole asked to show the whole chart again
     */
    ChartReader(PicturePane picture, Consumer<String> said, Runnable whole) {
        this.picture = picture;
        this.said = said;
        this.whole = whole;
        picture.setOnMouseMoved(event -> read(share(picture.sheetX(event.getX()))));
        picture.setOnMouseExited(event -> stop());
        picture.setOnMousePressed(event -> {
            picture.requestFocus();
            pressedAt = event.getX();
        });
        picture.setOnMouseReleased(event -> {
            if (Math.abs(event.getX() - pressedAt) > LEAST_DRAG) {
                zoomTo(share(picture.sheetX(pressedAt)), share(picture.sheetX(event.getX())));
            }
        });
        picture.setOnKeyPressed(this::key);
        picture.onPainted(this::follow);
    }

    /** Reads another chart from now on, at the same place along it; empty if there is none. */
    public void take(Optional<JFreeChart> fresh) {
        chart = fresh;
        if (fresh.isEmpty()) {
            stop();
        }
    }

    /** ChainEnds the legends of charts out, because they stand elsewhere. */
    void legendElsewhere() {
        legend = false;
    }

    private void stop() {
        reading = false;
        picture.clearLine();
        said.accept("");
    }

    /** Reads a picture that was painted anew where the one before was read. */
    private void follow() {
        if (reading) {
            read(place);
        }
    }

    /** Draws the chart, and learns where its axes are. */
    void draw(Graphics2D g2, Rectangle2D area) {
        chart.ifPresent(shown -> ChartFit.draw(shown, g2, area, legend, info));
    }

    private void key(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT -> read(Math.max(0, place - STEP));
            case RIGHT -> read(Math.min(1, place + STEP));
            case PLUS, ADD, EQUALS -> zoomTo(place - ZOOM * place, place + ZOOM * (1 - place));
            case DIGIT0, NUMPAD0, HOME -> whole.run();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private Rectangle2D area() {
        return info.getPlotInfo().getDataArea();
    }

    private double share(double sheetX) {
        return Math.min(1, Math.max(0, (sheetX - area().getX()) / Math.max(1, area().getWidth())));
    }

    /** @param share place along the chart [0..1] */
    private void read(double share) {
        chart.filter(ChartNumbers::hasOneAxisAlong).ifPresent(shown -> {
            place = share;
            reading = true;
            ValueAxis axis = ((XYPlot) shown.getPlot()).getDomainAxis();
            said.accept(ChartNumbers.readOut(shown, at(axis, place)));
            picture.line(area().getX() + place * area().getWidth(), area().getMinY(), area().getMaxY());
        });
    }

    /** The value at a part of the length of an axis, in its own measure. */
    private static double at(ValueAxis axis, double part) {
        double low = axis.getLowerBound();
        double high = axis.getUpperBound();
        return axis instanceof LogAxis ? low * Math.pow(high / low, part) : low + part * (high - low);
    }

    /** Narrows all axes along the chart to the same part of what they show. */
    private void zoomTo(double one, double other) {
        chart.filter(ChartNumbers::hasOneAxisAlong).ifPresent(shown -> {
            XYPlot plot = (XYPlot) shown.getPlot();
            // an axis may follow another as soon as that one is moved, so all ends are read before any is set
            List<Range> ranges = new ArrayList<>();
            for (int i = 0; i < plot.getDomainAxisCount(); i++) {
                ValueAxis axis = plot.getDomainAxis(i);
                ranges.add(new Range(at(axis, Math.min(one, other)), at(axis, Math.max(one, other))));
            }
            for (int i = 0; i < ranges.size(); i++) {
                plot.getDomainAxis(i).setRange(ranges.get(i));
            }
            picture.repaint();
        });
    }
}

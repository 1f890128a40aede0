package org.coldpleat.ui.desktop.view;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.stage.FileChooser;
import org.coldpleat.ui.chart.ChartFiles;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.chart.cutaway.CutawayPainter;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;

/** A chart with its numbers behind it, a read-out, zoom along the chart, and ways to take the picture along. */
final class ChartPane extends BorderPane {
    private static final double LEAST_DRAG = 8;
    private static final double STEP = 0.02;
    private static final double ZOOM = 0.8;

    /** Writes a picture to a file. */
    private interface Saving {
        void to(File file) throws IOException;
    }

    private final PicturePane picture;
    private final TableView<NumberRow> numbers = new TableView<>();
    private final Label readOut = new Label();
    private final Label note = new Label();
    private final ToggleButton table = new ToggleButton(WindowTexts.get("numbers"));
    private final ChartRenderingInfo info = new ChartRenderingInfo();
    private Optional<JFreeChart> chart = Optional.empty();
    private Optional<Saving> saving = Optional.empty();
    private double pressedAt;
    private double place = 0.5;

    ChartPane(String id) {
        picture = new PicturePane(id);
        numbers.setId(id + "-numbers");
        table.setId(id + "-table");
        numbers.setAccessibleText(WindowTexts.get("numbers"));
        column("numbers.series", NumberRow::series);
        column("numbers.x", NumberRow::x);
        column("numbers.y", NumberRow::y);
        Button save = new Button(WindowTexts.get("savePicture"));
        save.setOnAction(event -> choose());
        Button copy = new Button(WindowTexts.get("copyPicture"));
        copy.setOnAction(event -> copy());
        Button whole = new Button(WindowTexts.get("whole"));
        whole.setOnAction(event -> whole());
        table.setOnAction(event -> {
            if (saving.isPresent()) {
                setCenter(table.isSelected() ? numbers : picture);
            }
        });
        readOut.setId(id + "-readout");
        readOut.setWrapText(true);
        note.setId(id + "-note");
        note.getStyleClass().add("note");
        setTop(new ToolBar(table, save, copy, whole, note));
        setCenter(picture);
        setBottom(readOut);
        picture.setOnMouseMoved(event -> read(picture.sheetX(event.getX())));
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
    }

    void show(JFreeChart shown, String description, List<NumberRow> rows) {
        chart = Optional.of(shown);
        saving = Optional.of(file -> {
            if (file.getName().endsWith(".svg")) {
                ChartFiles.writeSvg(shown, file.toPath(), description);
            } else {
                ChartFiles.writePng(shown, file.toPath());
            }
        });
        numbers.getItems().setAll(rows);
        setCenter(table.isSelected() ? numbers : picture);
        picture.show((g2, area) -> shown.draw(g2, area, info), description);
    }

    /** Says in place of a picture why there is none. */
    void empty(String words) {
        chart = Optional.empty();
        saving = Optional.empty();
        numbers.getItems().clear();
        readOut.setText("");
        Label why = new Label(words);
        why.setId(picture.getId() + "-empty");
        why.setWrapText(true);
        why.getStyleClass().add("sheet");
        setCenter(why);
    }

    /** Says something about the picture beside its buttons; blank says nothing. */
    void note(String words) {
        note.setText(words);
    }

    void show(CutawayDrawing drawing) {
        saving = Optional.of(file -> {
            if (file.getName().endsWith(".svg")) {
                ChartFiles.writeSvg(drawing, file.toPath());
            } else {
                ChartFiles.writePng(drawing, file.toPath());
            }
        });
        numbers.getItems()
                .setAll(drawing.labels().stream()
                        .map(label -> new NumberRow(label.text(), "", ""))
                        .toList());
        BiConsumer<Graphics2D, Rectangle2D> painted = (g2, area) -> CutawayPainter.paint(drawing, g2, area);
        picture.show(painted, CutawayPainter.description(drawing));
    }

    private void column(String key, Function<NumberRow, String> value) {
        TableColumn<NumberRow, String> column = new TableColumn<>(WindowTexts.get(key));
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(value.apply(row.getValue())));
        numbers.getColumns().add(column);
    }

    private void key(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT -> step(-STEP);
            case RIGHT -> step(STEP);
            case PLUS, ADD, EQUALS -> zoomTo(place - ZOOM * place, place + ZOOM * (1 - place));
            case DIGIT0, NUMPAD0, HOME -> whole();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void step(double by) {
        place = Math.min(1, Math.max(0, place + by));
        Rectangle2D area = info.getPlotInfo().getDataArea();
        read(area.getX() + place * area.getWidth());
    }

    private double share(double sheetX) {
        Rectangle2D area = info.getPlotInfo().getDataArea();
        return Math.min(1, Math.max(0, (sheetX - area.getX()) / Math.max(1, area.getWidth())));
    }

    private void read(double sheetX) {
        chart.ifPresent(shown -> {
            place = share(sheetX);
            ValueAxis axis = ((XYPlot) shown.getPlot()).getDomainAxis();
            readOut.setText(ChartNumbers.readOut(shown, at(axis, place)));
        });
    }

    /** The value at a part of the length of an axis, in its own measure. */
    private static double at(ValueAxis axis, double part) {
        double low = axis.getLowerBound();
        double high = axis.getUpperBound();
        return axis instanceof LogAxis ? low * Math.pow(high / low, part) : low + part * (high - low);
    }

    /** Narrows all axes along the chart to a part of what they show; those of one chart share a measure. */
    private void zoomTo(double one, double other) {
        chart.ifPresent(shown -> {
            XYPlot plot = (XYPlot) shown.getPlot();
            for (int i = 0; i < plot.getDomainAxisCount(); i++) {
                ValueAxis axis = plot.getDomainAxis(i);
                axis.setRange(at(axis, Math.min(one, other)), at(axis, Math.max(one, other)));
            }
            picture.repaint();
        });
    }

    private Runnable reset = () -> {};

    /** What shows the whole chart again. */
    void onWhole(Runnable action) {
        reset = action;
    }

    private void whole() {
        reset.run();
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters()
                .addAll(
                        new FileChooser.ExtensionFilter("SVG", "*.svg"),
                        new FileChooser.ExtensionFilter("PNG", "*.png"));
        File file = chooser.showSaveDialog(getScene().getWindow());
        if (file != null && saving.isPresent()) {
            try {
                saving.get().to(file);
                readOut.setText(WindowTexts.get("status.saved", file.toString()));
            } catch (IOException e) {
                readOut.setText(WindowTexts.get("status.problems", e.toString()));
            }
        }
    }

    private void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putImage(picture.snapshot(null, null));
        Clipboard.getSystemClipboard().setContent(content);
    }
}

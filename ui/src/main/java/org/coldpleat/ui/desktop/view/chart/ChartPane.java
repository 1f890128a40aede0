package org.coldpleat.ui.desktop.view.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.chart.cutaway.CutawayPainter;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.chart.style.ChartFit;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.report.LimitsFile;
import org.jfree.chart.JFreeChart;

/** A chart with its numbers behind it, a read-out, zoom along the chart, and ways to take the picture along. */
public final class ChartPane extends BorderPane {
    private static final String SVG = ".svg";
    private static final String PNG = ".png";

    /** Writes a picture to a file. */
    private interface Saving {
        void to(Path file) throws IOException;
    }

    private final PicturePane picture;
    private final ChartReader reader;
    private final TableView<NumberRow> numbers = new TableView<>();
    private final Label readOut = new Label();
    private final VBox foot = new VBox(4, readOut);
    private final Label note = new Label();
    private final FlowPane tools = new FlowPane();
    private final ToggleButton table = new ToggleButton(WindowTexts.get("numbers"));
    private Optional<Saving> saving = Optional.empty();
    private Runnable reset = () -> {};

    public ChartPane(String id, PictureLook look) {
        picture = new PicturePane(id, look);
        reader = new ChartReader(picture, readOut::setText, this::whole);
        numbers.setId(id + "-numbers");
        table.setId(id + "-table");
        numbers.setAccessibleText(WindowTexts.get("numbers"));
        column("numbers.series", NumberRow::series);
        column("numbers.x", NumberRow::x);
        column("numbers.y", NumberRow::y);
        Button save = button("savePicture", this::choose);
        Button copy = button("copyPicture", this::copy);
        Button copyNumbers = button("copyNumbers", this::copyNumbers);
        copyNumbers.setId(id + "-copyNumbers");
        Button whole = button("whole", this::whole);
        table.setOnAction(event -> {
            if (saving.isPresent()) {
                setCenter(table.isSelected() ? numbers : picture);
            }
        });
        readOut.setId(id + "-readout");
        readOut.setWrapText(true);
        note.setId(id + "-note");
        note.getStyleClass().add("note");
        tools.getChildren().addAll(table, save, copy, copyNumbers, whole, note);
        tools.getStyleClass().add("chart-tools");
        setTop(tools);
        setCenter(picture);
        setBottom(foot);
    }

    public void show(JFreeChart shown, String description, List<NumberRow> rows) {
        saving = Optional.of(file -> {
            ChartFit.whole(shown);
            if (file.toString().endsWith(SVG)) {
                ChartFiles.writeSvg(shown, file, description);
            } else {
                ChartFiles.writePng(shown, file);
            }
        });
        numbers.getItems().setAll(rows);
        numbers.getColumns().get(1).setText(ChartNumbers.along(shown));
        numbers.getColumns().get(2).setText(ChartNumbers.across(shown));
        setCenter(table.isSelected() ? numbers : picture);
        reader.take(Optional.of(shown));
        picture.show(reader::draw, description);
    }

    /** Puts something that belongs to the picture before its buttons. */
    public void before(List<Node> nodes) {
        tools.getChildren().addAll(0, nodes);
    }

    /** Puts a legend under the picture, in place of the legends of its charts. */
    public void legend(Node node) {
        reader.legendElsewhere();
        foot.getChildren().add(0, node);
    }

    /** Says in place of a picture why there is none. */
    public void empty(String words) {
        reader.take(Optional.empty());
        saving = Optional.empty();
        numbers.getItems().clear();
        Label why = new Label(words);
        why.setId(picture.getId() + "-empty");
        why.setWrapText(true);
        why.getStyleClass().add("sheet");
        setCenter(why);
    }

    /** Says something about the picture beside its buttons; blank says nothing. */
    public void note(String words) {
        note.setText(words);
    }

    public void show(CutawayDrawing drawing) {
        saving = Optional.of(file -> {
            if (file.toString().endsWith(SVG)) {
                ChartFiles.writeSvg(drawing, file);
            } else {
                ChartFiles.writePng(drawing, file);
            }
        });
        numbers.getItems()
                .setAll(drawing.labels().stream()
                        .map(label -> new NumberRow(label.text(), "", ""))
                        .toList());
        BiConsumer<Graphics2D, Rectangle2D> painted = (g2, area) -> CutawayPainter.paint(drawing, g2, area);
        picture.show(painted, CutawayPainter.description(drawing));
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(WindowTexts.get(key));
        String help = WindowTexts.get(key + ".help");
        button.setTooltip(new Tooltip(help));
        button.setAccessibleText(help);
        button.setOnAction(event -> action.run());
        return button;
    }

    private void column(String key, Function<NumberRow, String> value) {
        TableColumn<NumberRow, String> column = new TableColumn<>(WindowTexts.get(key));
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(value.apply(row.getValue())));
        numbers.getColumns().add(column);
    }

    /** What shows the whole chart again. */
    public void onWhole(Runnable action) {
        reset = action;
    }

    private void whole() {
        reset.run();
    }

    private void choose() {
        FileChooser.ExtensionFilter lines = new FileChooser.ExtensionFilter("SVG", "*" + SVG);
        FileChooser.ExtensionFilter points = new FileChooser.ExtensionFilter("PNG", "*" + PNG);
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().addAll(lines, points);
        chooser.setInitialFileName(picture.getId() + SVG);
        File file = chooser.showSaveDialog(getScene().getWindow());
        if (file != null) {
            save(file.toPath(), chooser.getSelectedExtensionFilter() == points ? PNG : SVG);
        }
    }

    /**
     * Writes the picture, and beside it what no picture can tell.
     *
     * @param file a name without the ending of a kind gets the usual one
     * @param usual ending
     */
    public void save(Path file, String usual) {
        String name = file.getFileName().toString();
        boolean named = name.endsWith(SVG) || name.endsWith(PNG);
        Path whole = named ? file : file.resolveSibling(name + usual);
        saving.ifPresent(picture -> {
            try {
                picture.to(whole);
                LimitsFile.in(whole.toAbsolutePath().getParent());
                readOut.setText(WindowTexts.get("status.saved", whole.toString()));
            } catch (IOException e) {
                readOut.setText(WindowTexts.get("status.problems", e.toString()));
            }
        });
    }

    private void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putImage(picture.snapshot(null, null));
        Clipboard.getSystemClipboard().setContent(content);
        readOut.setText(WindowTexts.get("copied"));
    }

    private void copyNumbers() {
        ClipboardContent content = new ClipboardContent();
        content.putString(numbersText());
        Clipboard.getSystemClipboard().setContent(content);
        readOut.setText(WindowTexts.get("copied"));
    }

    /** The table as lines of cells that a spreadsheet takes in. */
    String numbersText() {
        StringBuilder text = new StringBuilder(
                numbers.getColumns().stream().map(TableColumn::getText).collect(Collectors.joining("\t", "", "\n")));
        for (NumberRow row : numbers.getItems()) {
            text.append(String.join("\t", row.series(), row.x(), row.y())).append('\n');
        }
        return text.toString();
    }
}

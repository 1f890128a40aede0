package org.coldpleat.ui.desktop.view.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.Photographs;
import org.coldpleat.ui.desktop.viewmodel.PictureMeasuring;
import org.coldpleat.ui.service.Sentences;

/** The photographs of the chosen filter in a window of their own, with widths measured against a scale. */
public final class PhotographWindow {
    private static final double WIDTH = 1000;
    private static final double HEIGHT = 740;
    private static final double MICROMETER = 1e-6;

    private final Stage stage = new Stage();
    private final BorderPane root = new BorderPane();
    private final FileQuestions questions;
    private final Supplier<Optional<Photographs>> photographs;
    private final Runnable changed;
    private final ChoiceBox<String> pictures = new ChoiceBox<>();
    private final RadioButton bar = new RadioButton(WindowTexts.get("photograph.bar"));
    private final RadioButton widths = new RadioButton(WindowTexts.get("photograph.widths"));
    private final TextField barLength = field("barLength");
    private final TextField fieldWidth = field("fieldWidth");
    private final Button write = button("write", this::write);
    private final Label said = new Label();
    private final MarkedPicture picture = new MarkedPicture(this::point, this::undo);
    private Optional<PictureMeasuring> measuring = Optional.empty();

    /**
     * @param photographs those of the chosen filter; empty if there is none
     * @param changed told when the case was changed
     */
    public PhotographWindow(
            Stage owner, FileQuestions questions, Supplier<Optional<Photographs>> photographs, Runnable changed) {
        this.questions = questions;
        this.photographs = photographs;
        this.changed = changed;
        stage.initOwner(owner);
        stage.setTitle(WindowTexts.get("photographs"));
        pictures.setId("photograph-pictures");
        pictures.setAccessibleText(WindowTexts.get("photograph.which"));
        pictures.getSelectionModel().selectedIndexProperty().addListener(observed -> load());
        ToggleGroup kinds = new ToggleGroup();
        bar.setToggleGroup(kinds);
        widths.setToggleGroup(kinds);
        bar.setId("photograph-bar");
        widths.setId("photograph-widths");
        bar.setSelected(true);
        said.setId("photograph-said");
        said.setWrapText(true);
        said.setMinHeight(VBox.USE_PREF_SIZE);
        FlowPane files = row(
                pictures,
                button("attach", this::choose),
                button("detach", this::detach),
                button("closer", picture::closer),
                button("farther", picture::farther),
                button("whole", picture::fit));
        FlowPane marks = row(
                bar,
                labeled("barLength", barLength),
                barLength,
                labeled("fieldWidth", fieldWidth),
                fieldWidth,
                widths,
                button("undoPoint", this::undo),
                write);
        root.getStyleClass().add("photographs");
        root.setTop(new VBox(6, files, marks));
        root.setCenter(picture);
        root.setBottom(said);
        Scene scene = new Scene(root, WIDTH, HEIGHT);
        scene.getStylesheets().addAll(owner.getScene().getStylesheets());
        stage.setScene(scene);
    }

    /** Shows the photographs of the filter that is chosen now. */
    public void show() {
        root.getStyleClass().remove("dark");
        root.setStyle(stage.getOwner().getScene().getRoot().getStyle());
        if (stage.getOwner().getScene().getRoot().getStyleClass().contains("dark")) {
            root.getStyleClass().add("dark");
        }
        stage.show();
        list(0);
        stage.toFront();
    }

    public void close() {
        stage.close();
    }

    /** Adds a picture to the chosen filter. */
    public void attach(Path file) {
        photographs.get().ifPresent(those -> {
            if (!those.attach(file)) {
                said.setText(WindowTexts.get("photograph.saveFirst"));
                return;
            }
            changed.run();
            list(those.files().size() - 1);
        });
    }

    private void choose() {
        questions
                .open(stage, WindowTexts.get("photograph.attach"), FileQuestions.Kind.PHOTOGRAPH, Optional.empty())
                .ifPresent(this::attach);
    }

    private void detach() {
        int chosen = chosen();
        photographs.get().filter(those -> chosen >= 0).ifPresent(those -> {
            those.detach(chosen);
            changed.run();
            list(0);
        });
    }

    private int chosen() {
        return pictures.getSelectionModel().getSelectedIndex();
    }

    private void list(int select) {
        List<String> files = photographs.get().map(Photographs::files).orElse(List.of());
        pictures.getItems().setAll(files);
        pictures.getSelectionModel().select(Math.min(select, files.size() - 1));
        load();
    }

    private void load() {
        int chosen = chosen();
        measuring = Optional.empty();
        picture.clear();
        Optional<Photographs> those = photographs.get();
        if (those.isEmpty() || chosen < 0) {
            tell(WindowTexts.get("photograph.none"));
            return;
        }
        String name = pictures.getItems().get(chosen);
        fieldWidth.setText(those.get().fieldWidth(chosen));
        tell(WindowTexts.get("photograph.loading", name));
        Photograph.load(
                those.get().place(chosen),
                image -> {
                    if (chosen() == chosen && name.equals(pictures.getValue())) {
                        measuring = Optional.of(new PictureMeasuring(image.getWidth()));
                        picture.show(image, name);
                        read();
                    }
                },
                () -> tell(WindowTexts.get("photograph.unreadable", name)));
    }

    private void tell(String words) {
        said.setText(words);
        write.setDisable(true);
    }

    private void point(double x, double y) {
        measuring.ifPresent(one -> {
            if (bar.isSelected()) {
                one.end(x, y);
                // with both ends set, what comes next are widths
                widths.setSelected(one.marks().bar().size() == 2);
            } else {
                one.edge(x, y);
            }
            read();
        });
    }

    private void undo() {
        measuring.filter(PictureMeasuring::undo).ifPresent(one -> read());
    }

    private void read() {
        measuring.ifPresent(one -> {
            picture.mark(one.marks());
            PictureMeasuring.Reading reading = one.read(barLength.getText(), fieldWidth.getText());
            tell(reading.scale()
                    .map(scale -> WindowTexts.get(
                            reading.count() == 0 ? "photograph.scale" : "photograph.reading",
                            micrometers(scale.pixelSize()),
                            reading.count() + "",
                            micrometers(reading.mean() * scale.pixelSize()),
                            micrometers(reading.deviation() * scale.pixelSize()),
                            micrometers(reading.largest() * scale.pixelSize())))
                    .orElseGet(() -> Sentences.of(reading.problem().orElseThrow(), UnitSystem.METRIC)));
            write.setDisable(!reading.isUsable());
        });
    }

    private static String micrometers(double meters) {
        return Double.isNaN(meters) ? "-" : String.format(Locale.ROOT, "%.3g", meters / MICROMETER);
    }

    private void write() {
        measuring.ifPresent(one -> one.read(barLength.getText(), fieldWidth.getText())
                .scale()
                .ifPresent(scale -> photographs.get().ifPresent(those -> {
                    those.writeFibers(scale, one.marks().widths());
                    changed.run();
                    said.setText(
                            WindowTexts.get("photograph.written", one.marks().widths().length + ""));
                })));
    }

    private TextField field(String key) {
        TextField field = new TextField();
        field.setId("photograph-" + key);
        field.setPrefColumnCount(7);
        field.setAccessibleText(WindowTexts.get("photograph." + key));
        field.setPromptText("mm");
        field.textProperty().addListener(observed -> read());
        return field;
    }

    private static Label labeled(String key, TextField field) {
        Label label = new Label(WindowTexts.get("photograph." + key));
        label.setLabelFor(field);
        return label;
    }

    private static FlowPane row(Node... parts) {
        FlowPane row = new FlowPane(6, 4, parts);
        row.getStyleClass().add("tool-row");
        return row;
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(WindowTexts.get("photograph." + key));
        button.setId("photograph-" + key);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** The window, for tests. */
    Stage stage() {
        return stage;
    }
}

package org.coldpleat.ui.desktop.view.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.coldpleat.shared.casefile.catalog.Field;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.BareNumber;
import org.coldpleat.ui.desktop.viewmodel.SheetRow;

/** A value on a sheet: its name, what was typed, what stands beside it, and why it is not understood. */
final class ValueRow extends VBox {
    private final String path;
    private final SheetEdits edits;
    private final Consumer<Control> next;
    private final Label problem = new Label();
    private final Label meaning = new Label();
    private final VBox parts = new VBox(2);
    private final ToggleButton more = new ToggleButton("\u00b1");
    private final List<Control> inputs = new ArrayList<>();
    private SheetRow row;
    private boolean filling;

    /** @param next told which input is done with, so that the keyboard can go on */
    ValueRow(SheetRow row, SheetEdits edits, Consumer<Control> next) {
        super(2);
        this.row = row;
        this.path = row.path();
        this.edits = edits;
        this.next = next;
        boolean quantity = row.field().type() == Field.Type.QUANTITY;
        Control input = row.field().choices().isEmpty()
                ? text(path, row.label())
                : choice(path, row.label(), row.field().choices());
        input.setTooltip(new Tooltip(row.field().hint()));
        if (input instanceof TextField field && !row.field().unit().isEmpty()) {
            field.setPromptText(row.field().unit());
        }
        String unit = row.field().unit();
        Label label = new Label(unit.isEmpty() ? row.label() : WindowTexts.get("field.unit", row.label(), unit));
        label.setWrapText(true);
        label.setLabelFor(input);
        HBox line = new HBox(2, input);
        HBox.setHgrow(input, Priority.ALWAYS);
        if (quantity) {
            more.setId("more:" + path);
            more.setAccessibleText(WindowTexts.get("field.more", row.label()));
            more.setTooltip(new Tooltip(WindowTexts.get("field.more", row.label())));
            more.setSelected(row.isSpelledOut());
            more.setOnAction(event -> open());
            line.getChildren().add(more);
            parts.getStyleClass().add("parts");
        }
        problem.setId("problem:" + path);
        problem.setWrapText(true);
        problem.getStyleClass().add("problem");
        meaning.setId("meaning:" + path);
        meaning.setWrapText(true);
        meaning.getStyleClass().add("meaning");
        getChildren().addAll(label, line, meaning, parts, problem);
        update(row);
    }

    private void open() {
        boolean open = more.isSelected() || row.isSpelledOut();
        // most rows never show them, and a sheet that held those of all its rows would be slow to lay out
        if (open && parts.getChildren().isEmpty()) {
            parts.getChildren()
                    .addAll(
                            text(path + ".plusMinus", FieldCatalog.part("plusMinus")),
                            choice(path + ".provenance", FieldCatalog.part("provenance"), FieldCatalog.provenances()),
                            text(path + ".note", FieldCatalog.part("note")));
            fill();
        }
        parts.setVisible(open);
        parts.setManaged(open);
    }

    /** Shows what stands in the case now. */
    void update(SheetRow now) {
        row = now;
        fill();
        boolean bad = !now.problem().isEmpty();
        problem.setText(bad ? WindowTexts.get("refused", now.problem()) : "");
        problem.setVisible(bad);
        problem.setManaged(bad);
        inputs.get(0).getStyleClass().remove("refused");
        if (bad) {
            inputs.get(0).getStyleClass().add("refused");
        }
        inputs.get(0).setAccessibleHelp(bad ? now.problem() : now.field().hint());
        open();
    }

    private void fill() {
        filling = true;
        List<String> texts = texts();
        for (int i = 0; i < inputs.size(); i++) {
            set(inputs.get(i), texts.get(i));
        }
        filling = false;
    }

    private List<String> texts() {
        return List.of(row.typed(), row.plusMinus(), row.provenance(), row.note());
    }

    /** Says what the value is understood as; blank says nothing. */
    void mean(String words) {
        meaning.setText(words);
        meaning.setVisible(!words.isEmpty());
        meaning.setManaged(!words.isEmpty());
    }

    /** The inputs the keyboard can go to, in their order. */
    List<Control> inputs() {
        return parts.isVisible() ? inputs : inputs.subList(0, 1);
    }

    private static void set(Control input, String text) {
        if (input instanceof TextField field) {
            if (!field.getText().equals(text)) {
                field.setText(text);
            }
        } else if (input instanceof ComboBox<?> box) {
            box.getEditor().setText(text);
            box.getSelectionModel().clearSelection();
            box.getEditor().setText(text);
        }
    }

    private String shown(Control input) {
        return texts().get(inputs.indexOf(input));
    }

    private TextField text(String at, String name) {
        TextField field = new TextField();
        prepare(field, field, at, name);
        return field;
    }

    private ComboBox<String> choice(String at, String name, List<String> words) {
        ComboBox<String> box = new ComboBox<>();
        box.setEditable(true);
        box.getItems().setAll(words);
        box.setMaxWidth(Double.MAX_VALUE);
        box.setCellFactory(list -> new WordCell());
        prepare(box, box.getEditor(), at, name);
        box.setOnAction(event -> {
            if (!filling && box.getValue() != null) {
                commit(box, box.getValue(), at);
            }
        });
        return box;
    }

    private void prepare(Control input, TextField editor, String at, String name) {
        inputs.add(input);
        input.setId("field:" + at);
        input.setAccessibleText(name);
        TypedInput.of(
                input, () -> editor.getText().strip().equals(shown(input)), () -> commit(input, editor.getText(), at));
        if (!at.equals(path)) {
            editor.setPromptText(name);
            input.setTooltip(new Tooltip(name));
        }
        input.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                event.consume();
                String typed = editor.getText();
                next.accept(input);
                commit(input, typed, at);
            }
        });
        input.focusedProperty().addListener((observed, was, is) -> {
            if (!is) {
                // the next owner of the keyboard must be known before the sheet is laid out anew
                String typed = editor.getText();
                Platform.runLater(() -> commit(input, typed, at));
            }
        });
    }

    private void commit(Control input, String typed, String at) {
        if (typed != null && !typed.strip().equals(shown(input))) {
            boolean number = at.equals(path) || at.equals(path + ".plusMinus");
            edits.write(at, number ? BareNumber.completed(typed, row.field().unit()) : typed);
        }
    }
}

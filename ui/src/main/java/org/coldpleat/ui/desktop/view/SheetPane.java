package org.coldpleat.ui.desktop.view;

import java.util.List;
import java.util.function.BiConsumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.coldpleat.ui.desktop.viewmodel.SheetField;

/** The bench sheet of one candidate, a field a quantity. */
final class SheetPane extends ScrollPane {
    private final VBox rows = new VBox(3);
    private final BiConsumer<String, String> edited;

    /** @param edited told the path and the text of a field that was changed */
    SheetPane(BiConsumer<String, String> edited) {
        this.edited = edited;
        setId("sheet");
        setFitToWidth(true);
        rows.getStyleClass().add("sheet");
        setContent(rows);
        setAccessibleText(WindowTexts.get("sheet"));
    }

    /** Shows fields anew; the one that had the keyboard keeps it. */
    void show(List<SheetField> fields) {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        String focused = owner instanceof TextField && owner.getId() != null ? owner.getId() : "";
        rows.getChildren().clear();
        for (SheetField field : fields) {
            TextField input = new TextField(field.written());
            input.setId("field:" + field.path());
            input.setAccessibleText(field.label());
            Label label = new Label(field.label());
            label.setWrapText(true);
            label.setLabelFor(input);
            rows.getChildren().addAll(label, input);
            if (!field.problem().isEmpty()) {
                input.getStyleClass().add("refused");
                Label problem = new Label(WindowTexts.get("refused", field.problem()));
                problem.setId("problem");
                problem.setWrapText(true);
                problem.getStyleClass().add("problem");
                rows.getChildren().add(problem);
            }
            input.setOnKeyPressed(event -> {
                if (event.getCode() == KeyCode.ENTER) {
                    event.consume();
                    toNext(input);
                    edited.accept(field.path(), input.getText());
                }
            });
            input.focusedProperty().addListener((observed, was, is) -> {
                if (!is && input.getScene() != null && !input.getText().equals(field.written())) {
                    // The next owner of the keyboard must be known before the fields are made anew.
                    String typed = input.getText();
                    Platform.runLater(() -> edited.accept(field.path(), typed));
                }
            });
        }
        rows.getChildren().stream()
                .filter(node -> focused.equals(node.getId()))
                .findFirst()
                .ifPresent(Node::requestFocus);
    }

    private void toNext(TextField input) {
        boolean passed = false;
        for (Node node : rows.getChildren()) {
            if (passed && node instanceof TextField) {
                node.requestFocus();
                return;
            }
            passed |= node == input;
        }
    }
}

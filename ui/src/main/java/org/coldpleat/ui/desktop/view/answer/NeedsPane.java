package org.coldpleat.ui.desktop.view.answer;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.service.Problem;

/** Says what a case still needs before anything can be worked out; pressing a line goes to where it is written. */
public final class NeedsPane extends ScrollPane {
    /** Parts that a case cannot be without; each has words of its own for a case that is written from nothing. */
    private static final Map<String, String> PARTS = Map.of(
            "oil", "needs.oil",
            "candidates", "needs.candidates",
            "flowStand", "needs.flowStand");

    private static final int MOST = 12;

    private final VBox lines = new VBox(8);
    private final Consumer<String> go;

    /** @param go told the path of the field that is to be shown */
    public NeedsPane(Consumer<String> go) {
        this.go = go;
        setId("needs");
        setFitToWidth(true);
        setContent(lines);
        lines.getStyleClass().add("needs");
        hide();
    }

    /** Shows what is missing, in place of what cannot be shown. */
    public void show(List<Problem> problems) {
        Label head = new Label(WindowTexts.get("needs"));
        head.getStyleClass().add("heading");
        head.setWrapText(true);
        lines.getChildren().setAll(head);
        problems.stream().limit(MOST).forEach(problem -> lines.getChildren().add(line(problem)));
        if (problems.size() > MOST) {
            lines.getChildren().add(new Label(WindowTexts.get("needs.more", problems.size() - MOST + "")));
        }
        setVisible(true);
    }

    public void hide() {
        setVisible(false);
    }

    private Button line(Problem problem) {
        String part = PARTS.get(problem.field());
        String place = problem.path().isEmpty() ? "" : problem.path() + ": ";
        Button button = new Button(part == null ? place + problem.text() : WindowTexts.get(part));
        button.setId("needs:" + problem.field());
        button.setWrapText(true);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(event -> go.accept(problem.field()));
        return button;
    }
}

package org.coldpleat.ui.desktop.view;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.coldpleat.model.run.CandidateResult;
import org.coldpleat.model.run.Comparison;
import org.coldpleat.model.run.Verdict;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.commandline.Pages;
import org.coldpleat.ui.service.Sentences;

/** The answers and the verdict of the chosen state, in the words of the command line. */
final class VerdictPane extends ScrollPane {
    private final VBox lines = new VBox(6);
    private final Consumer<String> explain;

    /** @param explain told the candidate whose answer is to be explained */
    VerdictPane(Consumer<String> explain) {
        this.explain = explain;
        setId("verdict");
        setFitToWidth(true);
        lines.getStyleClass().add("verdict");
        setContent(lines);
        setAccessibleText(WindowTexts.get("verdict"));
    }

    void show(Comparison comparison, int state, UnitSystem units) {
        lines.getChildren().clear();
        heading(WindowTexts.get("answers"));
        for (CandidateResult candidate : comparison.candidates()) {
            Button answer = new Button(WindowTexts.get(
                    "answer", candidate.name(), Pages.answer(candidate.states().get(state), comparison, units)));
            answer.setId("answer:" + candidate.name());
            answer.setWrapText(true);
            answer.setMaxWidth(Double.MAX_VALUE);
            answer.setMinHeight(USE_PREF_SIZE);
            answer.setAccessibleHelp(WindowTexts.get("explain"));
            answer.setOnAction(event -> explain.accept(candidate.name()));
            lines.getChildren().add(answer);
        }
        heading(WindowTexts.get("verdict"));
        String chosen = comparison.candidates().get(0).states().get(state).state();
        for (Verdict verdict : comparison.verdicts()) {
            if (verdict.state().isEmpty() || verdict.state().equals(chosen)) {
                sentence(Sentences.of(verdict));
            }
        }
        heading(WindowTexts.get("notices"));
        comparison.notices().forEach(notice -> sentence(Pages.notice(notice)));
    }

    /** What the pane says, for tests and for copying. */
    String words() {
        StringBuilder words = new StringBuilder();
        for (Node node : lines.getChildren()) {
            words.append(node instanceof Button button ? button.getText() : ((Label) node).getText())
                    .append('\n');
        }
        return words.toString();
    }

    private void heading(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("heading");
        lines.getChildren().add(label);
    }

    private void sentence(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        lines.getChildren().add(label);
    }
}

package org.coldpleat.ui.desktop.view.answer;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.part.Stale;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.text.Pages;

/** The answers and the verdict of the chosen state, in the words of the command line. */
public final class VerdictPane extends ScrollPane {
    private final VBox lines = new VBox(6);
    private final Consumer<String> explain;
    private final Label answers = heading();

    /** @param explain told the candidate whose answer is to be explained */
    public VerdictPane(Consumer<String> explain) {
        this.explain = explain;
        setId("verdict");
        setFitToWidth(true);
        lines.getStyleClass().add("verdict");
        setContent(lines);
        setAccessibleText(WindowTexts.get("verdict"));
    }

    /** Says whether what stands here belongs to values before a change. */
    public void stale(boolean stale) {
        Stale.mark(this, stale);
        answers.setText(WindowTexts.get(stale ? "answers.stale" : "answers"));
    }

    /**
     * Shows the answers for a state.
     *
     * @param stale true if they belong to values before a change
     */
    public void show(Comparison comparison, String chosen, UnitSystem units, boolean stale) {
        int state = comparison.candidates().get(0).states().stream()
                .map(StateResult::state)
                .toList()
                .indexOf(chosen);
        if (state < 0) {
            return; // a state that came with the change; its answers come with the comparison
        }
        lines.getChildren().setAll(answers);
        stale(stale);
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
        for (Verdict verdict : comparison.verdicts()) {
            if (verdict.state().isEmpty() || verdict.state().equals(chosen)) {
                sentence(Sentences.of(verdict, units));
            }
        }
        heading(WindowTexts.get("notices"));
        comparison.notices().forEach(notice -> sentence(Pages.notice(notice, units)));
    }

    /** What the pane says, for tests and for copying. */
    public String words() {
        StringBuilder words = new StringBuilder();
        for (Node node : lines.getChildren()) {
            words.append(node instanceof Button button ? button.getText() : ((Label) node).getText())
                    .append('\n');
        }
        return words.toString();
    }

    private static Label heading() {
        Label label = new Label();
        label.setWrapText(true);
        label.getStyleClass().add("heading");
        return label;
    }

    private void heading(String words) {
        Label label = heading();
        label.setText(words);
        lines.getChildren().add(label);
    }

    private void sentence(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        lines.getChildren().add(label);
    }
}

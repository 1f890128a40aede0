package org.coldpleat.ui.desktop.view.answer;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.coldpleat.ui.desktop.view.part.Stale;
import org.coldpleat.ui.desktop.view.part.WindowTexts;

/** Says at the foot of the window what happens, and how far what is being worked out has come. */
public final class StatusLine extends HBox {
    private final Label words = new Label(WindowTexts.get("status.empty"));
    private final ProgressBar progress = new ProgressBar();

    public StatusLine() {
        words.setId("status");
        words.setMaxWidth(Double.MAX_VALUE);
        setHgrow(words, Priority.ALWAYS);
        progress.setId("status-progress");
        progress.setAccessibleText(WindowTexts.get("study.progress"));
        progress.managedProperty().bind(progress.visibleProperty());
        setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(words, progress);
        over();
    }

    /** Says something in place of what was said before. */
    public void say(String what) {
        words.setText(what);
    }

    /** Says whether what the window shows belongs to values before a change. */
    public void stale(boolean stale) {
        Stale.mark(words, stale);
    }

    /** Shows how far the work has come. Counts that come in late, from several threads, do not take it back. */
    void advanced(double share) {
        progress.setProgress(progress.isVisible() ? Math.max(share, progress.getProgress()) : share);
        progress.setVisible(true);
    }

    /** Nothing is being worked out any more. */
    void over() {
        progress.setVisible(false);
    }
}

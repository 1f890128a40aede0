package org.coldpleat.ui.desktop.view.file;

import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.Recovery;

/** Says that an earlier window left something unsaved, and what can be done about it. */
public final class RecoveryBar extends VBox {
    private final FileDesk files;

    public RecoveryBar(FileDesk files) {
        super(2);
        this.files = files;
        setId("recovery");
        for (Recovery.LeftBehind left : files.leftBehind()) {
            String name = left.file().map(Path::toString).orElse(WindowTexts.get("recovery.new"));
            Label words = new Label(WindowTexts.get("recovery", name));
            HBox line = new HBox(8, words);
            line.getChildren().add(button("takeUp", line, one -> files.takeUp(one), left));
            line.getChildren().add(button("giveUp", line, one -> files.giveUp(one), left));
            line.getStyleClass().add("recovery");
            getChildren().add(line);
        }
    }

    private Button button(String key, HBox line, Consumer<Recovery.LeftBehind> action, Recovery.LeftBehind left) {
        Button button = new Button(WindowTexts.get(key));
        button.setId(key);
        button.setOnAction(event -> {
            action.accept(left);
            getChildren().removeIf(other -> other == line && !files.leftBehind().contains(left));
        });
        return button;
    }
}

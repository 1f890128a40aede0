package org.coldpleat.ui.desktop.view;

import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.coldpleat.ui.desktop.view.part.WindowTexts;

/** A short walk through the window, one place at a time, above everything else. It can be left at any step. */
final class TourBar extends HBox {
    private static final String SHOWN = "toured";
    private static final List<String> STEPS = List.of("start", "sheet", "tabs", "verdict", "tools", "photographs");

    private final Map<String, Node> places;
    private final Runnable seen;
    private final Label words = new Label();
    private final Button next = new Button();
    private int step;

    /**
     * @param places parts of the window by the step that shows them
     * @param seen told when the tour is over or was skipped
     */
    TourBar(Map<String, Node> places, Runnable seen) {
        super(8);
        this.places = places;
        this.seen = seen;
        setId("tour");
        getStyleClass().add("recovery");
        words.setId("tour-words");
        words.setWrapText(true);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        next.setId("tour-next");
        next.setOnAction(event -> show(step + 1));
        Button skip = new Button(WindowTexts.get("tour.skip"));
        skip.setId("tour-skip");
        skip.setOnAction(event -> show(STEPS.size()));
        next.setMinWidth(USE_PREF_SIZE);
        skip.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(words, next, skip);
        setVisible(false);
        setManaged(false);
    }

    /** Begins at the first step. */
    void begin() {
        show(0);
        next.requestFocus();
    }

    private void show(int number) {
        places.values().forEach(place -> place.getStyleClass().remove(SHOWN));
        step = number;
        boolean on = number < STEPS.size();
        setVisible(on);
        setManaged(on);
        if (!on) {
            seen.run();
            return;
        }
        String key = STEPS.get(number);
        words.setText(WindowTexts.get("tour.step", number + 1 + "", STEPS.size() + "", WindowTexts.get("tour." + key)));
        next.setText(WindowTexts.get(number + 1 < STEPS.size() ? "tour.next" : "tour.done"));
        Node place = places.get(key);
        if (place != null) {
            place.getStyleClass().add(SHOWN);
        }
    }
}

package org.coldpleat.ui.desktop.view.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TitledPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.Knob;
import org.coldpleat.ui.desktop.viewmodel.WhatIf;

/** Sliders that try values out on the chosen candidate, and a line that says what they change. */
public final class WhatIfPane extends TitledPane {
    private static final int COLUMNS = 2;
    private static final int CELLS = 3;

    /** Steps of an arrow key over the length of a slider [1]. */
    private static final double STEPS = 100;

    private final Consumer<WhatIf> turned;
    private final GridPane grid = new GridPane();
    private final Label words = new Label();
    private final Button reset = new Button(WindowTexts.get("whatIf.reset"));
    private final Button keep = new Button(WindowTexts.get("whatIf.keep"));
    private final HBox buttons = new HBox(4, reset, keep);
    private final Map<String, Slider> sliders = new HashMap<>();
    private final Map<String, Label> values = new HashMap<>();
    private List<String> keys = List.of();
    private WhatIf tried = WhatIf.none();
    private boolean filling;

    /**
     * @param turned told what is to be tried now
     * @param kept asked to keep what was tried as a candidate
     */
    WhatIfPane(Consumer<WhatIf> turned, Runnable kept) {
        this.turned = turned;
        setId("whatIf");
        setText(WindowTexts.get("whatIf"));
        setExpanded(false);
        setAnimated(false);
        grid.setHgap(8);
        grid.setVgap(2);
        words.setId("whatIf-words");
        words.setWrapText(true);
        words.setMinHeight(USE_PREF_SIZE);
        reset.setId("whatIf-reset");
        reset.setOnAction(event -> turn(tried.reset()));
        keep.setId("whatIf-keep");
        keep.setTooltip(new Tooltip(WindowTexts.get("whatIf.keepHint")));
        keep.setOnAction(event -> kept.run());
        setContent(new VBox(4, grid, words));
    }

    /** What is tried now. */
    WhatIf tried() {
        return tried;
    }

    /** Offers knobs. The sliders stay, with the keyboard on them, while the knobs are the same. */
    void offer(WhatIf fresh, UnitSystem units) {
        tried = fresh;
        filling = true;
        List<String> offered = fresh.knobs().stream().map(Knob::key).toList();
        if (!offered.equals(keys)) {
            keys = offered;
            lay();
        }
        WhatIfWords said = new WhatIfWords(units);
        for (Knob knob : fresh.knobs()) {
            Slider slider = sliders.get(knob.key());
            slider.setMin(knob.low());
            slider.setMax(knob.high());
            slider.setBlockIncrement((knob.high() - knob.low()) / STEPS);
            slider.setValue(fresh.value(knob));
            String value = said.value(fresh, knob);
            values.get(knob.key()).setText(value);
            slider.setAccessibleHelp(value);
        }
        filling = false;
        reset.setDisable(fresh.moved().isEmpty());
        keep.setDisable(!fresh.canKeep());
    }

    /** Says what comes of it. */
    public void say(String sentence) {
        words.setText(sentence);
    }

    private void turn(WhatIf next) {
        turned.accept(next);
    }

    private void lay() {
        grid.getChildren().clear();
        sliders.clear();
        values.clear();
        List<String> laid = new ArrayList<>();
        for (String key : keys) {
            Slider slider = new Slider();
            slider.setId("whatIf:" + key);
            slider.setPrefWidth(150);
            slider.setAccessibleText(WindowTexts.get("whatIf." + key));
            slider.setTooltip(new Tooltip(WindowTexts.get("whatIf." + key + ".hint")));
            slider.valueProperty().addListener((observed, was, is) -> {
                if (!filling) {
                    turn(tried.turn(key, is.doubleValue()));
                }
            });
            Label name = new Label(WindowTexts.get("whatIf." + key));
            name.setLabelFor(slider);
            name.setMinWidth(USE_PREF_SIZE);
            Label value = new Label();
            value.setMinWidth(USE_PREF_SIZE);
            value.setId("whatIf-value:" + key);
            sliders.put(key, slider);
            values.put(key, value);
            int cell = CELLS * (laid.size() % COLUMNS);
            grid.add(name, cell, laid.size() / COLUMNS);
            grid.add(slider, cell + 1, laid.size() / COLUMNS);
            grid.add(value, cell + 2, laid.size() / COLUMNS);
            laid.add(key);
        }
        grid.add(buttons, CELLS * (laid.size() % COLUMNS), laid.size() / COLUMNS, CELLS, 1);
    }
}

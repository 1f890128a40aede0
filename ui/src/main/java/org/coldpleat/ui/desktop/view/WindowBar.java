package org.coldpleat.ui.desktop.view;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.control.Tooltip;
import javafx.util.StringConverter;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.text.Pages;

/** The bar above the sheet and the charts: steps back, what is looked at, and how it is shown. */
final class WindowBar extends ToolBar {
    private final Button undo;
    private final Button redo;
    private final ChoiceBox<String> states = new ChoiceBox<>();
    private final ChoiceBox<UnitSystem> units = new ChoiceBox<>();
    private final Slider temperature = new Slider(-40, 150, 20);
    private final Label temperatureText = new Label();
    private final ToggleButton dark = new ToggleButton(WindowTexts.get("dark"));
    private final Slider type = new Slider(80, 180, 100);
    private final PictureLook look = new PictureLook();
    private boolean filling;

    /**
     * @param root of the window, which is made dark or light
     * @param looked told when another state or other units are to be shown
     * @param moved told when another temperature is to be shown
     */
    WindowBar(Parent root, Runnable undone, Runnable redone, Runnable looked, Runnable moved) {
        undo = button("undo", undone);
        redo = button("redo", redone);
        units.getItems().setAll(UnitSystem.METRIC, UnitSystem.US, UnitSystem.SI);
        units.setValue(UnitSystem.METRIC);
        units.setConverter(new StringConverter<>() {
            @Override
            public String toString(UnitSystem system) {
                return WindowTexts.get(
                        switch (system) {
                            case METRIC -> "units.metric";
                            case US -> "units.trade";
                            case SI -> "units.coherent";
                        });
            }

            @Override
            public UnitSystem fromString(String words) {
                throw new UnsupportedOperationException("units are chosen, not typed");
            }
        });
        name(states, "state", looked);
        name(units, "units", () -> {
            words();
            looked.run();
        });
        temperature.setId("temperature");
        temperature.setAccessibleText(WindowTexts.get("temperature"));
        temperature.setPrefWidth(220);
        temperature.valueProperty().addListener(observed -> {
            words();
            moved.run();
        });
        words();
        dark.setId("dark");
        look.dark().bind(dark.selectedProperty());
        look.type().bind(type.valueProperty().divide(100));
        dark.selectedProperty().addListener(observed -> {
            root.getStyleClass().remove("dark");
            if (dark.isSelected()) {
                root.getStyleClass().add("dark");
            }
        });
        type.setId("type");
        type.setAccessibleText(WindowTexts.get("type"));
        type.setPrefWidth(90);
        type.valueProperty().addListener(observed -> root.setStyle("-fx-font-size: " + type.getValue() / 100 + "em;"));
        getItems()
                .addAll(
                        undo,
                        redo,
                        new Label(WindowTexts.get("state")),
                        states,
                        new Label(WindowTexts.get("temperature")),
                        temperature,
                        temperatureText,
                        units,
                        new Label(WindowTexts.get("type")),
                        type,
                        dark);
        steps(false, false);
    }

    /** How pictures are shown. */
    PictureLook look() {
        return look;
    }

    /** Says which steps can be taken. */
    void steps(boolean back, boolean again) {
        undo.setDisable(!back);
        redo.setDisable(!again);
    }

    /** Offers the states of a case; the one that was looked at stays if it is still there. */
    void states(List<String> names) {
        if (!states.getItems().equals(names)) {
            String chosen = state();
            filling = true;
            states.getItems().setAll(names);
            states.setValue(names.contains(chosen) ? chosen : names.isEmpty() ? null : names.get(0));
            filling = false;
        }
    }

    String state() {
        return states.getValue() == null ? "" : states.getValue();
    }

    UnitSystem units() {
        return units.getValue();
    }

    /** Shows values in other units. */
    void units(UnitSystem chosen) {
        units.setValue(chosen);
    }

    /** Size of the type [%]. */
    double type() {
        return type.getValue();
    }

    /** Makes the type larger or smaller [%]. */
    void type(double percent) {
        type.setValue(percent);
    }

    /** Makes the window dark or light. */
    void dark(boolean on) {
        dark.setSelected(on);
    }

    /** What is told when light or dark is chosen by hand. */
    void onChosen(Consumer<Boolean> told) {
        dark.setOnAction(event -> told.accept(dark.isSelected()));
    }

    /** Oil temperature [K]. */
    double temperature() {
        return temperature.getValue() + 273.15;
    }

    private void words() {
        temperatureText.setText(Pages.temperature(temperature(), units.getValue()));
    }

    private <T> void name(ChoiceBox<T> box, String key, Runnable chosen) {
        box.setId(key);
        box.setAccessibleText(WindowTexts.get(key));
        box.valueProperty().addListener(observed -> {
            if (!filling) {
                chosen.run();
            }
        });
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(WindowTexts.get(key));
        button.setId(key);
        button.setTooltip(new Tooltip(WindowTexts.get(key)));
        button.setOnAction(event -> action.run());
        return button;
    }
}

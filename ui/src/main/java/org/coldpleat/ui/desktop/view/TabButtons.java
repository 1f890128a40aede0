package org.coldpleat.ui.desktop.view;

import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** One button for each tab, in as many rows as they need, in place of a row of tabs that hides what does not fit. */
final class TabButtons extends FlowPane {
    private final ToggleGroup group = new ToggleGroup();

    /** @param pane whose own row of tabs is hidden by the style {@code without-tabs} */
    TabButtons(TabPane pane) {
        getStyleClass().add("tab-buttons");
        pane.getStyleClass().add("without-tabs");
        pane.getTabs().forEach(tab -> getChildren().add(button(pane, tab)));
        group.selectedToggleProperty().addListener((observed, before, now) -> {
            if (now == null) {
                // one tab is always shown
                group.selectToggle(before);
            }
        });
        pane.getSelectionModel().selectedItemProperty().addListener(observed -> follow(pane));
        follow(pane);
    }

    private ToggleButton button(TabPane pane, Tab tab) {
        ToggleButton button = new ToggleButton(tab.getText());
        button.setId("show-" + tab.getId());
        button.setUserData(tab);
        button.setToggleGroup(group);
        button.setOnAction(event -> pane.getSelectionModel().select(tab));
        return button;
    }

    private void follow(TabPane pane) {
        for (Toggle button : group.getToggles()) {
            if (button.getUserData() == pane.getSelectionModel().getSelectedItem()) {
                group.selectToggle(button);
            }
        }
    }
}

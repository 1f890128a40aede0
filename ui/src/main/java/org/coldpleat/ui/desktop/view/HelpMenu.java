package org.coldpleat.ui.desktop.view;

import javafx.scene.control.Alert;
import javafx.scene.control.Menu;
import javafx.scene.control.TextArea;
import javafx.stage.Stage;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.text.Pages;

/** The help menu: a demo case, the tour, the lesson, the look of the system, what the program is made of. */
final class HelpMenu {
    private HelpMenu() {}

    /** What the menu does. */
    record Actions(Runnable demo, Runnable tour, Runnable lesson, Runnable followSystem, Runnable about) {}

    static Menu of(Actions actions) {
        return new Menu(
                WindowTexts.get("menu.help"),
                null,
                WindowMenu.item("demo", "Shortcut+Shift+D", actions.demo()),
                WindowMenu.item("tour", "F1", actions.tour()),
                WindowMenu.item("lesson", "F2", actions.lesson()),
                WindowMenu.item("followSystem", "Shortcut+Shift+L", actions.followSystem()),
                WindowMenu.item("about", "Shift+F1", actions.about()));
    }

    /** Says what the program is, and on whose work it stands. */
    static Alert about(Stage owner) {
        Alert about = new Alert(Alert.AlertType.INFORMATION);
        about.initOwner(owner);
        about.setTitle(WindowTexts.get("about"));
        about.setHeaderText(WindowTexts.get("about.head", Pages.version()));
        TextArea licenses = new TextArea(String.join(
                "\n\n", WindowTexts.get("about.words"), WindowTexts.get("about.libraries"), Libraries.words()));
        licenses.setId("about-words");
        licenses.setAccessibleText(WindowTexts.get("about"));
        licenses.setEditable(false);
        licenses.setWrapText(true);
        licenses.setPrefColumnCount(52);
        licenses.setPrefRowCount(18);
        about.getDialogPane().setContent(licenses);
        about.getDialogPane().getStylesheets().addAll(owner.getScene().getStylesheets());
        about.getDialogPane().getStyleClass().addAll(owner.getScene().getRoot().getStyleClass());
        return about;
    }
}

package org.coldpleat.ui.desktop.view;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCombination;
import org.coldpleat.ui.desktop.view.part.WindowTexts;

/** The menu of the window. */
final class WindowMenu {
    private WindowMenu() {}

    /** What the menu does. */
    record Actions(
            Runnable fresh,
            Runnable open,
            Supplier<List<Path>> recent,
            Consumer<Path> openRecent,
            Runnable save,
            Runnable saveAs,
            Runnable importSheets,
            Runnable exportSheets,
            Runnable report,
            Runnable undo,
            Runnable redo,
            Runnable add,
            Runnable copy,
            Runnable remove,
            Runnable stop,
            Runnable earlier,
            Runnable later,
            Runnable photographs) {}

    static MenuBar of(Actions actions) {
        Menu recent = new Menu(WindowTexts.get("recent"));
        recent.setId("recent");
        Menu file = new Menu(
                WindowTexts.get("menu.file"),
                null,
                item("new", "Shortcut+N", actions.fresh()),
                item("open", "Shortcut+O", actions.open()),
                recent,
                item("save", "Shortcut+S", actions.save()),
                item("saveAs", "Shortcut+Shift+S", actions.saveAs()),
                item("importSheets", "Shortcut+I", actions.importSheets()),
                item("exportSheets", "Shortcut+E", actions.exportSheets()),
                item("report", "Shortcut+R", actions.report()));
        file.setOnShowing(event -> {
            recent.getItems().clear();
            for (Path path : actions.recent().get()) {
                MenuItem item = new MenuItem(path.toString());
                item.setMnemonicParsing(false);
                item.setOnAction(chosen -> actions.openRecent().accept(path));
                recent.getItems().add(item);
            }
            recent.setDisable(recent.getItems().isEmpty());
        });
        Menu edit = new Menu(
                WindowTexts.get("menu.edit"),
                null,
                item("undo", "Shortcut+Z", actions.undo()),
                item("redo", "Shortcut+Y", actions.redo()),
                item("addFilter", "Shortcut+Plus", actions.add()),
                item("copyFilter", "Shortcut+D", actions.copy()),
                item("removeFilter", "Shortcut+Minus", actions.remove()),
                item("earlier", "Shortcut+Shift+Up", actions.earlier()),
                item("later", "Shortcut+Shift+Down", actions.later()),
                item("photographs", "Shortcut+P", actions.photographs()),
                item("stop", "Shortcut+Period", actions.stop()));
        return new MenuBar(file, edit);
    }

    static MenuItem item(String key, String keys, Runnable action) {
        MenuItem item = new MenuItem(WindowTexts.get(key));
        item.setId("menu-" + key);
        item.setAccelerator(KeyCombination.valueOf(keys));
        item.setOnAction(event -> action.run());
        return item;
    }
}

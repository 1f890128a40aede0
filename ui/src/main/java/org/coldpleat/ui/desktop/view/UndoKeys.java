package org.coldpleat.ui.desktop.view;

import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.coldpleat.ui.desktop.view.bench.TypedInput;

/**
 * Gives the keys for undo and redo to the case rather than to the field that has the keyboard, unless something was typed
 * into the field that does not stand in the case yet.
 */
final class UndoKeys {
    private static final KeyCombination UNDO = new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination REDO = new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN);

    private UndoKeys() {}

    static void on(Scene scene, Runnable undo, Runnable redo) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            boolean back = UNDO.match(event);
            if ((back || REDO.match(event)) && TypedInput.isSettled(scene.getFocusOwner())) {
                event.consume();
                (back ? undo : redo).run();
            }
        });
    }
}

package org.coldpleat.ui.desktop.view.bench;

import javafx.scene.control.ListCell;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.ui.desktop.view.part.WindowTexts;

/** A word of the file in a list of choices, with what it means behind it. */
final class WordCell extends ListCell<String> {
    @Override
    protected void updateItem(String word, boolean empty) {
        super.updateItem(word, empty);
        if (empty || word == null) {
            setText("");
        } else {
            String words = FieldCatalog.choice(word);
            setText(words.equals(word) ? word : WindowTexts.get("choice", word, words));
        }
    }
}

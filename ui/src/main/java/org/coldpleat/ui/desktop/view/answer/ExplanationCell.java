package org.coldpleat.ui.desktop.view.answer;

import javafx.beans.binding.Bindings;
import javafx.scene.control.TreeCell;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.coldpleat.ui.text.ExplainedLink;

/** One link of a chain: what it is and its value, and smaller below how it came about, wrapped to the width of the tree. */
final class ExplanationCell extends TreeCell<ExplainedLink> {
    /** Indentation of a level, arrow included [px]. */
    private static final double LEVEL = 20;

    /** Room for edges and scroll bar [px]. */
    private static final double EDGES = 44;

    private static final double NARROWEST = 120;

    @Override
    protected void updateItem(ExplainedLink link, boolean empty) {
        super.updateItem(link, empty);
        setText(null);
        if (empty || link == null) {
            setGraphic(null);
            setAccessibleText(null);
            return;
        }
        VBox lines = new VBox(text(link.headline(), "link"));
        link.lines().forEach(line -> lines.getChildren().add(text(line, "origin")));
        setGraphic(lines);
        setAccessibleText(link.headline());
    }

    private Text text(String words, String style) {
        Text text = new Text(words);
        text.getStyleClass().addAll("explained", style);
        int level = getTreeView().getTreeItemLevel(getTreeItem());
        text.wrappingWidthProperty()
                .bind(Bindings.max(NARROWEST, getTreeView().widthProperty().subtract(level * LEVEL + EDGES)));
        return text;
    }
}

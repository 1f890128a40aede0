package org.coldpleat.ui.desktop.view.answer;

import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TreeItem;
import javafx.scene.control.TreeView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.text.ExplainedLink;

/** Chains of values as a tree: the answer on top, what it was computed from folded below, down to the bench sheet. */
final class ExplanationPane extends BorderPane {
    /** Levels that stand open at first. */
    private static final int OPEN = 2;

    private final TreeView<ExplainedLink> tree = new TreeView<>(new TreeItem<>());
    private final FlowPane tools = new FlowPane();
    private List<ExplainedLink> shown = List.of();

    ExplanationPane() {
        tree.setId("explanation");
        tree.setShowRoot(false);
        tree.setAccessibleText(WindowTexts.get("tab.explanation"));
        tree.setCellFactory(view -> new ExplanationCell());
        tools.getStyleClass().add("chart-tools");
        tools.setPadding(new Insets(0));
        tools.getChildren()
                .addAll(
                        button("unfold", () -> open(tree.getRoot(), Integer.MAX_VALUE)),
                        button("fold", () -> open(tree.getRoot(), OPEN)),
                        button("copyChain", this::copy));
        tools.setDisable(true);
        setTop(tools);
        Label hint = new Label(WindowTexts.get("explanation.hint"));
        hint.setWrapText(true);
        setCenter(hint);
    }

    /** Shows chains one below the other. */
    void show(List<ExplainedLink> chains) {
        shown = List.copyOf(chains);
        setCenter(tree);
        tree.setRoot(new TreeItem<>());
        chains.forEach(chain -> tree.getRoot().getChildren().add(item(chain)));
        open(tree.getRoot(), OPEN);
        tools.setDisable(chains.isEmpty());
        tree.getSelectionModel().selectFirst();
        tree.scrollTo(0);
    }

    private static TreeItem<ExplainedLink> item(ExplainedLink link) {
        TreeItem<ExplainedLink> item = new TreeItem<>(link);
        link.below().forEach(one -> item.getChildren().add(item(one)));
        return item;
    }

    private static void open(TreeItem<ExplainedLink> item, int levels) {
        item.setExpanded(levels > 0);
        item.getChildren().forEach(below -> open(below, levels - 1));
    }

    private void copy() {
        ClipboardContent content = new ClipboardContent();
        content.putString(shown.stream().map(ExplainedLink::text).collect(Collectors.joining("\n")));
        Clipboard.getSystemClipboard().setContent(content);
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(WindowTexts.get(key));
        button.setId("explanation-" + key);
        button.setOnAction(event -> action.run());
        return button;
    }
}

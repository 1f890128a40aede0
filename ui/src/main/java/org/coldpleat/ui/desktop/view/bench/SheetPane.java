package org.coldpleat.ui.desktop.view.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.SheetMeaning;
import org.coldpleat.ui.desktop.viewmodel.SheetRow;

/** A sheet: all its fields in the order of the work. Sections that hold nothing yet can be opened and closed. */
final class SheetPane extends ScrollPane {
    private static final String TESTS = ".tests.";

    private final VBox lines = new VBox(4);
    private final SheetEdits edits;
    private final Map<String, ValueRow> values = new HashMap<>();
    private final Map<String, Label> problems = new HashMap<>();
    private final Map<String, Label> amounts = new HashMap<>();
    private Map<LineKey, Node> built = Map.of();
    private final Set<String> opened = new HashSet<>();
    private SheetMeaning meant = SheetMeaning.NONE;
    private List<String> shape = List.of();
    private List<SheetRow> rows = List.of();

    /** What a line is built from; the texts in it are filled in afterwards. */
    private record LineKey(SheetRow.Type type, String path, String label, int depth, boolean used) {}

    SheetPane(SheetEdits edits) {
        this.edits = edits;
        setId("sheet");
        setFitToWidth(true);
        lines.getStyleClass().add("sheet");
        setContent(lines);
        setAccessibleText(WindowTexts.get("sheet"));
    }

    /** Shows a sheet. Where only values changed, the lines stay; the input that had the keyboard keeps it. */
    void show(List<SheetRow> fresh, SheetMeaning meaning) {
        meant = meaning;
        rows = fresh;
        List<SheetRow> shown = fresh.stream().filter(row -> !isHidden(row)).toList();
        List<String> freshShape =
                shown.stream().map(row -> row.type() + " " + row.path()).toList();
        if (!freshShape.equals(shape)) {
            shape = freshShape;
            build(shown);
        }
        for (SheetRow row : shown) {
            if (row.type() == SheetRow.Type.VALUE) {
                values.get(row.path()).update(row);
                values.get(row.path())
                        .mean(meaning.of(row)
                                .map(words -> WindowTexts.get("sheet.means", words))
                                .orElse(""));
            } else {
                problem(problems.get(row.type() + row.path()), row.problem());
                problem(
                        amounts.get(row.type() + row.path()),
                        meaning.amount(row)
                                .map(amount -> WindowTexts.get(amount.key(), amount.value()))
                                .orElse(""));
            }
        }
    }

    /** Lines of a test that was not made stay closed until they are asked for. */
    private boolean isHidden(SheetRow row) {
        String section = test(row.path());
        boolean head = row.path().equals(section) && row.type() == SheetRow.Type.SECTION;
        return !section.isEmpty() && !head && !opened.contains(section) && !isUsed(section);
    }

    private boolean isUsed(String section) {
        return rows.stream()
                .anyMatch(row -> row.path().startsWith(section)
                        && (!row.typed().isEmpty() || row.type() == SheetRow.Type.ENTRY));
    }

    /** Path of the test a line belongs to; blank for other lines. */
    private static String test(String path) {
        int at = path.indexOf(TESTS);
        if (at < 0) {
            return "";
        }
        int end = at + TESTS.length();
        while (end < path.length() && Character.isLetterOrDigit(path.charAt(end))) {
            end++;
        }
        return path.substring(0, end);
    }

    /** Builds the lines that are new. Those that were there stay as they are, since laying a line out takes its time. */
    private void build(List<SheetRow> shown) {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        String focused = owner == null || owner.getId() == null ? "" : owner.getId();
        Map<LineKey, Node> fresh = new LinkedHashMap<>();
        for (SheetRow row : shown) {
            boolean used = row.path().equals(test(row.path())) && isUsed(row.path());
            LineKey key = new LineKey(row.type(), row.path(), row.label(), row.depth(), used);
            Node known = built.get(key);
            fresh.put(key, known != null ? known : row.type() == SheetRow.Type.VALUE ? value(row) : head(row));
        }
        built = fresh;
        Set<String> paths = shown.stream().map(SheetRow::path).collect(Collectors.toSet());
        values.keySet().retainAll(paths);
        Set<String> heads = shown.stream().map(row -> row.type() + row.path()).collect(Collectors.toSet());
        problems.keySet().retainAll(heads);
        amounts.keySet().retainAll(heads);
        List<Node> wanted = List.copyOf(fresh.values());
        lines.getChildren().retainAll(wanted);
        if (lines.getChildren().isEmpty()) {
            lines.getChildren().setAll(wanted);
        }
        for (int i = 0; i < wanted.size(); i++) {
            if (i == lines.getChildren().size() || lines.getChildren().get(i) != wanted.get(i)) {
                lines.getChildren().remove(wanted.get(i));
                lines.getChildren().add(i, wanted.get(i));
            }
        }
        inputs().stream()
                .filter(input -> focused.equals(input.getId()))
                .findFirst()
                .ifPresent(Control::requestFocus);
    }

    private Node value(SheetRow row) {
        ValueRow line = new ValueRow(row, edits, this::toNext);
        values.put(row.path(), line);
        return line;
    }

    private Node head(SheetRow row) {
        Label problem = new Label();
        problem.setWrapText(true);
        problem.setMinHeight(USE_PREF_SIZE);
        problem.getStyleClass().add("problem");
        problems.put(row.type() + row.path(), problem);
        HBox line = new HBox(6);
        switch (row.type()) {
            case ANOTHER -> {
                Button add = new Button(WindowTexts.get("sheet.another", row.label()));
                add.setId("another:" + row.path());
                add.setOnAction(event -> edits.another(row.path()));
                line.getChildren().add(add);
            }
            case ENTRY -> {
                Button remove = new Button(WindowTexts.get("sheet.without"));
                remove.setId("without:" + row.path());
                remove.setAccessibleText(WindowTexts.get("sheet.withoutEntry", row.label()));
                remove.setOnAction(event -> edits.without(row.path()));
                line.getChildren().addAll(heading(row), remove);
            }
            default -> line.getChildren().add(row.path().equals(test(row.path())) ? toggle(row) : heading(row));
        }
        Label amount = new Label();
        amount.setId("amount:" + row.path());
        amount.setWrapText(true);
        amount.setMinHeight(USE_PREF_SIZE);
        amount.getStyleClass().add("meaning");
        amounts.put(row.type() + row.path(), amount);
        return new VBox(2, line, amount, problem);
    }

    private static Label heading(SheetRow row) {
        Label heading = new Label(row.label());
        heading.setId("heading:" + row.path());
        heading.getStyleClass().add(row.depth() > 1 ? "subheading" : "heading");
        return heading;
    }

    private Node toggle(SheetRow row) {
        if (isUsed(row.path())) {
            return heading(row);
        }
        ToggleButton toggle = new ToggleButton(WindowTexts.get("sheet.test", row.label()));
        toggle.setId("test:" + row.path());
        toggle.setSelected(opened.contains(row.path()));
        toggle.setOnAction(event -> {
            if (!opened.remove(row.path())) {
                opened.add(row.path());
            }
            show(rows, meant);
        });
        return toggle;
    }

    private static void problem(Label label, String text) {
        label.setText(text);
        label.setVisible(!text.isEmpty());
        label.setManaged(!text.isEmpty());
    }

    private List<Control> inputs() {
        List<Control> inputs = new ArrayList<>();
        for (Node line : lines.getChildren()) {
            if (line instanceof ValueRow row) {
                inputs.addAll(row.inputs());
            }
        }
        return inputs;
    }

    /**
     * Gives the keyboard to the input of a field.
     *
     * @param field path of a field, or of a section whose first input is meant; the first of all if there is none
     */
    void focus(String field) {
        List<Control> inputs = inputs();
        inputs.stream()
                .filter(input -> input.getId().startsWith("field:" + field))
                .findFirst()
                .or(() -> inputs.stream().findFirst())
                .ifPresent(input -> {
                    input.requestFocus();
                    applyCss();
                    layout();
                    scrollTo(input);
                });
    }

    /** Gives the keyboard to the input behind one. */
    private void toNext(Control input) {
        List<Control> inputs = inputs();
        int at = inputs.indexOf(input);
        if (at >= 0 && at + 1 < inputs.size()) {
            inputs.get(at + 1).requestFocus();
            scrollTo(inputs.get(at + 1));
        }
    }

    private void scrollTo(Node node) {
        double height = lines.getHeight() - getViewportBounds().getHeight();
        if (height > 0) {
            double top = lines.sceneToLocal(node.localToScene(0, 0)).getY();
            double seen = getVvalue() * height;
            if (top < seen || top > seen + getViewportBounds().getHeight() - 80) {
                setVvalue(Math.min(1, Math.max(0, (top - 60) / height)));
            }
        }
    }
}

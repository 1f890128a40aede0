package org.coldpleat.ui.desktop.view.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.desktop.viewmodel.Photographs;

/** The side of the window where a case is written: which sheet, which filter, and the sheet itself. */
public final class BenchSide extends VBox {
    private static final String FILTER = "candidates";
    private static final String WHOLE = "case";

    /** Sheets of a case in the order they are usually filled in. */
    private static final List<String> SHEETS =
            List.of(FILTER, "oil", "engine", "flowStand", "temperatures", "start", "duty", WHOLE);

    private static final Pattern ENTRY = Pattern.compile("candidates\\[(\\d+)]");

    private final Supplier<Optional<CaseBench>> bench;
    private final Runnable changed;
    private final Supplier<UnitSystem> units;
    private final ChoiceBox<String> sheets = new ChoiceBox<>();
    private final ChoiceBox<Integer> filters = new ChoiceBox<>();
    private final Label problems = new Label();
    private final SheetPane sheet;
    private boolean filling;

    /**
     * @param changed told when the case was changed
     * @param chosen told when another filter was chosen
     * @param photographs shows the photographs of the chosen filter
     * @param units that are preferred now
     */
    public BenchSide(
            Supplier<Optional<CaseBench>> bench,
            Runnable changed,
            Runnable chosen,
            Runnable photographs,
            Supplier<UnitSystem> units) {
        super(4);
        this.bench = bench;
        this.changed = changed;
        this.units = units;
        sheet = new SheetPane(edits());
        sheets.setId("sheets");
        sheets.setAccessibleText(WindowTexts.get("sheets"));
        sheets.setConverter(words(BenchSide::title));
        sheets.getItems().setAll(SHEETS);
        sheets.setValue(FILTER);
        sheets.setMaxWidth(Double.MAX_VALUE);
        sheets.valueProperty().addListener(observed -> refresh());
        filters.setId("candidate");
        filters.setAccessibleText(WindowTexts.get("candidate"));
        filters.setConverter(words(this::name));
        filters.setMaxWidth(Double.MAX_VALUE);
        filters.valueProperty().addListener(observed -> {
            if (!filling) {
                sheets.setValue(FILTER);
                refresh();
                chosen.run();
            }
        });
        FlowPane actions = new FlowPane(
                4,
                4,
                button("addFilter", this::add),
                button("copyFilter", this::copy),
                button("removeFilter", this::remove),
                button("earlier", this::earlier),
                button("later", this::later),
                button("photographs", photographs));
        problems.setId("problem");
        problems.setWrapText(true);
        problems.setMinHeight(USE_PREF_SIZE);
        problems.getStyleClass().add("problem");
        getStyleClass().add("bench");
        VBox.setVgrow(sheet, Priority.ALWAYS);
        getChildren().addAll(sheets, filters, actions, problems, sheet);
    }

    private SheetEdits edits() {
        return new SheetEdits() {
            @Override
            public void write(String path, String typed) {
                change(one -> one.edit(path, typed));
            }

            @Override
            public void another(String list) {
                change(one -> {
                    one.addEntry(list);
                    return true;
                });
            }

            @Override
            public void without(String entry) {
                change(one -> {
                    one.removeEntry(entry);
                    return true;
                });
            }
        };
    }

    private void change(Function<CaseBench, Boolean> edit) {
        if (bench.get().map(edit).orElse(false)) {
            changed.run();
        }
    }

    public void add() {
        choose(one -> one.addCandidate(WindowTexts.get("newFilter")));
    }

    public void copy() {
        choose(one -> one.candidates().isEmpty() ? -1 : one.copyCandidate(number()));
    }

    public void remove() {
        choose(one -> {
            if (!one.candidates().isEmpty()) {
                one.removeCandidate(number());
            }
            return Math.max(0, number() - 1);
        });
    }

    /** Moves the chosen filter one place toward the first. */
    public void earlier() {
        move(-1);
    }

    /** Moves the chosen filter one place toward the last. */
    public void later() {
        move(1);
    }

    private void move(int by) {
        int to = number() + by;
        bench.get()
                .filter(one -> to >= 0 && to < one.candidates().size())
                .ifPresent(known -> choose(one -> {
                    one.moveCandidate(number(), to);
                    return to;
                }));
    }

    /** True if a case has a filter to be chosen. */
    public boolean hasFilter(CaseBench one) {
        return number() < one.candidates().size();
    }

    /** The photographs of the chosen filter. */
    public Photographs photographs(CaseBench one) {
        return new Photographs(one, number());
    }

    private void choose(Function<CaseBench, Integer> edit) {
        bench.get().ifPresent(one -> {
            choose(edit.apply(one));
            changed.run();
        });
    }

    /** Shows the sheet of a filter by its number; of the one that was shown if there is no such number. */
    public void choose(int number) {
        refresh();
        if (number >= 0 && number < filters.getItems().size()) {
            filters.setValue(number);
        }
        sheets.setValue(FILTER);
    }

    /**
     * Goes to where a field is written.
     *
     * @param field path of the field; the sheet of filters begins one if there is none
     */
    public void go(String field) {
        String part = field.replaceAll("[.\\[].*", "");
        if (part.equals(FILTER)) {
            Matcher entry = ENTRY.matcher(field);
            if (entry.find()) {
                choose(Integer.parseInt(entry.group(1)));
            } else {
                add();
            }
        } else {
            sheets.setValue(SHEETS.contains(part) ? part : WHOLE);
        }
        sheet.focus(field);
    }

    /** Number of the chosen filter, from 0. */
    private int number() {
        return filters.getValue() == null ? 0 : filters.getValue();
    }

    /** Name of the chosen filter; blank if there is none. */
    public String candidate() {
        return name(number());
    }

    /** Shows the first filter of another case. */
    public void first() {
        filling = true;
        filters.getItems().clear();
        filling = false;
        sheets.setValue(FILTER);
        refresh();
    }

    /** Shows what stands in the case now. */
    public void refresh() {
        if (bench.get().isEmpty()) {
            return;
        }
        CaseBench one = bench.get().get();
        int chosen = number();
        int count = one.candidates().size();
        filling = true;
        // the names stand behind the numbers, so the items are set anew even if only a name changed
        filters.getItems().clear();
        for (int i = 0; i < count; i++) {
            filters.getItems().add(i);
        }
        filters.setValue(count == 0 ? null : Math.min(chosen, count - 1));
        filling = false;
        String key = sheets.getValue();
        String path = key.equals(WHOLE) ? "" : key.equals(FILTER) ? FILTER + "[" + number() + "]" : key;
        sheet.show(key.equals(FILTER) && count == 0 ? List.of() : one.sheet(path), one.meaning(path, units.get()));
        // a case that was never understood says in the middle of the window what it needs
        problems.setText(one.opened().isEmpty() ? "" : elsewhere(one, path));
        problems.setManaged(!problems.getText().isEmpty());
    }

    /** The first problem that the sheet does not show, so that nothing keeps a case from running in secret. */
    private static String elsewhere(CaseBench bench, String path) {
        return bench.problems().stream()
                .filter(problem -> path.isEmpty()
                        ? problem.field().contains(".")
                        : !(problem.field() + ".").startsWith(path + "."))
                .findFirst()
                .map(problem -> problem.path().isEmpty()
                        ? problem.text()
                        : WindowTexts.get("elsewhere", problem.path(), problem.text()))
                .orElse("");
    }

    private String name(int number) {
        return bench.get()
                .map(CaseBench::candidates)
                .filter(names -> number < names.size())
                .map(names -> names.get(number))
                .orElse("");
    }

    private static String title(String key) {
        return key.equals(WHOLE)
                ? WindowTexts.get("sheet.case")
                : FieldCatalog.root().field(key).label();
    }

    private static <T> StringConverter<T> words(Function<T, String> words) {
        return new StringConverter<>() {
            @Override
            public String toString(T item) {
                return item == null ? "" : words.apply(item);
            }

            @Override
            public T fromString(String text) {
                throw new UnsupportedOperationException("items are chosen, not typed");
            }
        };
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(WindowTexts.get("short." + key));
        button.setId(key);
        button.setAccessibleText(WindowTexts.get(key));
        button.setTooltip(new Tooltip(WindowTexts.get("tip." + key)));
        button.setOnAction(event -> action.run());
        return button;
    }
}

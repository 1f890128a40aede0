package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToolBar;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import javafx.util.StringConverter;
import org.coldpleat.model.run.Comparison;
import org.coldpleat.model.run.MapResult;
import org.coldpleat.model.run.PointResult;
import org.coldpleat.model.run.ServiceResult;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.RunCharts;
import org.coldpleat.ui.chart.ServiceCharts;
import org.coldpleat.ui.chart.ShareGrid;
import org.coldpleat.ui.chart.ShareMapChart;
import org.coldpleat.ui.chart.StateSheet;
import org.coldpleat.ui.chart.TemperatureCharts;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.commandline.Pages;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Problem;
import org.jfree.chart.JFreeChart;

/** One case in a window: bench sheet, charts, verdict. Model runs happen on a thread of their own. */
final class CaseWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    /** What a run gave, all of one text. */
    private record Results(Comparison comparison, Optional<ServiceResult> service) {}

    private final Stage stage;
    private final CaseService service;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "model");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicLong newestRun = new AtomicLong();
    private final AtomicLong newestPoint = new AtomicLong();
    private final BorderPane root = new BorderPane();
    private final ChoiceBox<String> candidates = new ChoiceBox<>();
    private final ChoiceBox<String> states = new ChoiceBox<>();
    private final ChoiceBox<UnitSystem> units = new ChoiceBox<>();
    private final Slider temperature = new Slider(-40, 150, 20);
    private final Label temperatureText = new Label();
    private final Label status = new Label(WindowTexts.get("status.empty"));
    private final Button undo = button("undo", this::undo);
    private final Button redo = button("redo", this::redo);
    private final SheetPane sheet = new SheetPane(this::edit);
    private final VerdictPane verdict = new VerdictPane(this::explain);
    private final ChartPane pressure = new ChartPane("chart-pressure");
    private final ChartPane share = new ChartPane("chart-share");
    private final ChartPane map = new ChartPane("chart-map");
    private final ChartPane opening = new ChartPane("chart-opening");
    private final ChartPane drop = new ChartPane("chart-drop");
    private final ChartPane cutaway = new ChartPane("cutaway");
    private final TextArea page = text("page");
    private final TextArea explanation = text("explanation");
    private final TabPane tabs = new TabPane();
    private Optional<Path> file = Optional.empty();
    private Optional<CaseBench> bench = Optional.empty();
    private Optional<Results> results = Optional.empty();
    private boolean filling;

    CaseWindow(Stage stage, CaseService service) {
        this.stage = stage;
        this.service = service;
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
        name(candidates, "candidate", this::candidateChosen);
        name(states, "state", this::show);
        name(units, "units", this::show);
        temperature.setId("temperature");
        temperature.setAccessibleText(WindowTexts.get("temperature"));
        temperature.setPrefWidth(220);
        temperature.valueProperty().addListener(observed -> point());
        ToggleButton dark = new ToggleButton(WindowTexts.get("dark"));
        dark.setId("dark");
        dark.setOnAction(event -> {
            root.getStyleClass().remove("dark");
            if (dark.isSelected()) {
                root.getStyleClass().add("dark");
            }
        });
        Slider type = new Slider(80, 180, 100);
        type.setId("type");
        type.setPrefWidth(90);
        type.setAccessibleText(WindowTexts.get("type"));
        type.valueProperty()
                .addListener(
                        observed -> root.setStyle("-fx-font-size: " + Math.round(type.getValue()) / 100.0 + "em;"));
        root.setTop(new ToolBar(
                button("open", this::choose),
                button("save", this::save),
                undo,
                redo,
                new Label(WindowTexts.get("candidate")),
                candidates,
                new Label(WindowTexts.get("state")),
                states,
                new Label(WindowTexts.get("temperature")),
                temperature,
                temperatureText,
                units,
                new Label(WindowTexts.get("type")),
                type,
                dark));
        for (ChartPane pane : new ChartPane[] {pressure, share}) {
            pane.onWhole(this::show);
        }
        for (ChartPane pane : new ChartPane[] {map, opening, drop}) {
            pane.onWhole(this::late);
        }
        tabs.setId("tabs");
        tab("pressure", pressure);
        tab("share", share);
        tab("cutaway", cutaway);
        tab("shareMap", map);
        tab("opening", opening);
        tab("drop", drop);
        tab("page", page);
        tab("explanation", explanation);
        SplitPane panes = new SplitPane(sheet, tabs, verdict);
        panes.setDividerPositions(0.19, 0.75);
        root.setCenter(panes);
        status.setId("status");
        status.setMaxWidth(Double.MAX_VALUE);
        root.setBottom(status);
        tabs.getSelectionModel().selectedItemProperty().addListener(observed -> late());
        Scene scene = new Scene(root, WIDTH, HEIGHT);
        scene.getStylesheets().add(CaseWindow.class.getResource("window.css").toExternalForm());
        accelerator(scene, "Shortcut+Z", this::undo);
        accelerator(scene, "Shortcut+Y", this::redo);
        accelerator(scene, "Shortcut+O", this::choose);
        accelerator(scene, "Shortcut+S", this::save);
        stage.setScene(scene);
        stage.setTitle(WindowTexts.get("window"));
        buttons();
    }

    /** Opens a case file; one that is no case shows its problems. */
    void open(Path path) {
        try {
            CaseBench opened = new CaseBench(service, path.toString(), Files.readString(path));
            file = Optional.of(path);
            bench = Optional.of(opened);
            results = Optional.empty();
            if (opened.opened().isEmpty()) {
                fields();
                status.setText(WindowTexts.get(
                        "status.problems",
                        opened.problems().stream()
                                .map(Problem::text)
                                .reduce((a, b) -> a + " " + b)
                                .orElse("")));
                return;
            }
            OpenedCase known = opened.opened().get();
            filling = true;
            candidates.getItems().setAll(known.candidates());
            candidates.setValue(known.candidates().get(0));
            states.getItems().setAll(known.states());
            states.setValue(known.states().get(0));
            filling = false;
            candidateChosen();
            run();
        } catch (IOException e) {
            status.setText(WindowTexts.get("status.problems", e.toString()));
        }
    }

    /** What the verdict panel says. */
    String verdictWords() {
        return verdict.words();
    }

    void close() {
        worker.shutdownNow();
    }

    private void edit(String path, String typed) {
        boolean changed = bench.map(one -> one.edit(path, typed)).orElse(false);
        fields();
        if (changed) {
            run();
        }
        buttons();
    }

    private void undo() {
        bench.filter(CaseBench::canUndo).ifPresent(one -> {
            one.undo();
            fields();
            run();
        });
    }

    private void redo() {
        bench.filter(CaseBench::canRedo).ifPresent(one -> {
            one.redo();
            fields();
            run();
        });
    }

    private void choose() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(WindowTexts.get("open"));
        Optional.ofNullable(chooser.showOpenDialog(stage)).ifPresent(chosen -> open(chosen.toPath()));
    }

    private void save() {
        if (file.isPresent() && bench.isPresent()) {
            try {
                Path part = file.get().resolveSibling("." + file.get().getFileName() + ".part");
                Files.writeString(part, bench.get().text());
                Files.move(part, file.get(), StandardCopyOption.REPLACE_EXISTING);
                bench.get().markSaved();
                status.setText(WindowTexts.get("status.saved", file.get().toString()));
                buttons();
            } catch (IOException e) {
                status.setText(WindowTexts.get("status.problems", e.toString()));
            }
        }
    }

    /** Works the case out anew; what is shown is stale until then and says so. */
    private void run() {
        buttons();
        long own = newestRun.incrementAndGet();
        OpenedCase known = bench.flatMap(CaseBench::opened).orElseThrow();
        status.setText(WindowTexts.get("status.stale"));
        root.getStyleClass().remove("stale");
        root.getStyleClass().add("stale");
        later(() -> {
            if (own != newestRun.get()) {
                return;
            }
            Results fresh = new Results(service.compare(known), Optional.empty());
            Platform.runLater(() -> take(own, fresh));
        });
        point();
    }

    /** Does work off the thread of the window; what goes wrong there is said in the status line. */
    private void later(Runnable work) {
        worker.execute(() -> {
            try {
                work.run();
            } catch (RuntimeException e) {
                Platform.runLater(() -> status.setText(WindowTexts.get("status.problems", e.toString())));
            }
        });
    }

    private void take(long own, Results fresh) {
        if (own == newestRun.get()) {
            results = Optional.of(fresh);
            root.getStyleClass().remove("stale");
            status.setText(WindowTexts.get(
                    fresh.comparison().invented() ? "status.invented" : "status.ready",
                    fresh.comparison().title()));
            show();
        }
    }

    private void candidateChosen() {
        if (!filling) {
            fields();
            point();
            late();
        }
    }

    private void fields() {
        bench.ifPresent(one -> sheet.show(one.fields(candidates.getValue())));
    }

    private void show() {
        if (filling || results.isEmpty()) {
            return;
        }
        Comparison comparison = results.get().comparison();
        int state = Math.max(0, states.getItems().indexOf(states.getValue()));
        StateSheet curves = RunCharts.sheets(comparison).get(state);
        chart(pressure, TemperatureCharts.pressure(curves), TemperatureCharts.pressureDescription(curves));
        chart(share, TemperatureCharts.share(curves), TemperatureCharts.shareDescription(curves));
        verdict.show(comparison, state, units.getValue());
        page.setText(Pages.comparison(comparison, units.getValue()));
        point();
        late();
    }

    private static void chart(ChartPane pane, JFreeChart chart, String description) {
        pane.show(chart, description, ChartNumbers.rows(chart));
    }

    /** The operating point under the slider, for the drawing. */
    private void point() {
        double kelvin = temperature.getValue() + 273.15;
        temperatureText.setText(Pages.temperature(kelvin, units.getValue()));
        if (filling || bench.flatMap(CaseBench::opened).isEmpty()) {
            return;
        }
        OpenedCase known = bench.flatMap(CaseBench::opened).get();
        String candidate = candidates.getValue();
        String state = states.getValue();
        long own = newestPoint.incrementAndGet();
        later(() -> {
            if (own != newestPoint.get()) {
                return;
            }
            PointResult result = service.point(known, candidate, state, kelvin);
            CutawayDrawing drawing = Cutaway.of(known.sheet(candidate).orElseThrow(), result, result.flow());
            Platform.runLater(() -> cutaway.show(drawing));
        });
    }

    /** What takes long is worked out when its tab is looked at. */
    private void late() {
        Tab shown = tabs.getSelectionModel().getSelectedItem();
        if (shown == null
                || results.isEmpty()
                || bench.flatMap(CaseBench::opened).isEmpty()) {
            return;
        }
        OpenedCase known = bench.flatMap(CaseBench::opened).get();
        long own = newestRun.get();
        if (shown.getContent() == map) {
            String candidate = candidates.getValue();
            later(() -> {
                MapResult result = service.map(known, candidate);
                ShareGrid grid = RunCharts.grid(result, known.title(), known.invented());
                Platform.runLater(() ->
                        map.show(ShareMapChart.of(grid), ShareMapChart.description(grid), ChartNumbers.rows(grid)));
            });
        } else if (shown.getContent() == opening || shown.getContent() == drop) {
            if (results.get().service().isPresent()) {
                loading(results.get().service().get());
                return;
            }
            later(() -> service.service(known, OptionalDouble.empty())
                    .ifPresent(result -> Platform.runLater(() -> {
                        if (own == newestRun.get()) {
                            results = results.map(one -> new Results(one.comparison(), Optional.of(result)));
                            loading(result);
                        }
                    })));
        }
    }

    private void loading(ServiceResult result) {
        chart(opening, ServiceCharts.opening(result), ServiceCharts.openingDescription(result));
        chart(drop, ServiceCharts.drop(result), ServiceCharts.dropDescription(result));
    }

    private void explain(String candidate) {
        OpenedCase known = bench.flatMap(CaseBench::opened).orElseThrow();
        String state = states.getValue();
        later(() -> {
            String chain = Pages.explanation(
                    service.explain(known, candidate, Optional.of(state), Optional.empty()), units.getValue());
            Platform.runLater(() -> {
                explanation.setText(chain);
                tabs.getSelectionModel().selectLast();
            });
        });
    }

    private void buttons() {
        undo.setDisable(!bench.map(CaseBench::canUndo).orElse(false));
        redo.setDisable(!bench.map(CaseBench::canRedo).orElse(false));
        boolean changed = bench.map(CaseBench::isChanged).orElse(false);
        String mark = changed ? "* " : "";
        stage.setTitle(mark
                + file.map(path -> WindowTexts.get("window.file", path.toString()))
                        .orElse(WindowTexts.get("window")));
    }

    private void tab(String key, Node content) {
        Tab tab = new Tab(WindowTexts.get("tab." + key), content);
        tab.setId("tab-" + key);
        tab.setClosable(false);
        tabs.getTabs().add(tab);
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

    private static TextArea text(String id) {
        TextArea area = new TextArea();
        area.setId(id);
        area.setEditable(false);
        area.getStyleClass().add("page");
        area.setAccessibleText(WindowTexts.get("tab." + id));
        return area;
    }

    private static void accelerator(Scene scene, String keys, Runnable action) {
        scene.getAccelerators().put(KeyCombination.valueOf(keys), action);
    }
}

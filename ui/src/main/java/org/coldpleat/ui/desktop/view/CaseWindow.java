package org.coldpleat.ui.desktop.view;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.MenuBar;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.desktop.view.answer.CaseRun;
import org.coldpleat.ui.desktop.view.answer.ChartTabs;
import org.coldpleat.ui.desktop.view.answer.NeedsPane;
import org.coldpleat.ui.desktop.view.answer.ReportDesk;
import org.coldpleat.ui.desktop.view.answer.StatusLine;
import org.coldpleat.ui.desktop.view.answer.VerdictPane;
import org.coldpleat.ui.desktop.view.answer.WhatIfDesk;
import org.coldpleat.ui.desktop.view.bench.BenchSide;
import org.coldpleat.ui.desktop.view.bench.BenchWords;
import org.coldpleat.ui.desktop.view.bench.PhotographWindow;
import org.coldpleat.ui.desktop.view.bench.TypedInput;
import org.coldpleat.ui.desktop.view.file.FileDesk;
import org.coldpleat.ui.desktop.view.file.FileDrop;
import org.coldpleat.ui.desktop.view.file.FileQuestions;
import org.coldpleat.ui.desktop.view.file.RecoveryBar;
import org.coldpleat.ui.desktop.view.file.TableDesk;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.coldpleat.ui.desktop.viewmodel.Photographs;
import org.coldpleat.ui.desktop.viewmodel.Recovery;
import org.coldpleat.ui.lesson.LessonCase;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;

/** One case in a window: bench sheets, charts, verdict. */
final class CaseWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;

    private final Stage stage;
    private final CaseService service;
    private final BorderPane root = new BorderPane();
    private final StatusLine status = new StatusLine();
    private final Worker worker = new Worker(this::failed);
    /** For what takes milliseconds, so that it never waits behind a comparison of values typed before. */
    private final Worker quick = new Worker(this::failed);

    private final FileDesk files;
    private final ReportDesk reports;
    private final TableDesk tables;
    private final WindowBar bar;
    private final BenchSide side;
    private final ChartTabs tabs;
    private final WhatIfDesk whatIf;
    private final CaseRun run;
    private final NeedsPane needs;
    private final VerdictPane verdict;
    private final PhotographWindow photographs;
    private final LessonWindow lesson;
    private final WindowKeeper keeper;
    private final TourBar tour;
    private Optional<Comparison> comparison = Optional.empty();

    CaseWindow(Stage stage, CaseService service) {
        this(stage, service, Recovery.stateFolder(), FileQuestions.DIALOGS);
    }

    /**
     * @param state folder for what outlives the window
     * @param questions asks which file is meant
     */
    CaseWindow(Stage stage, CaseService service, Path state, FileQuestions questions) {
        this.stage = stage;
        this.service = service;
        files = new FileDesk(stage, service, questions, state, bench -> opened(), this::say);
        tables = new TableDesk(stage, questions, files::bench, this::say);
        reports = new ReportDesk(stage, questions, files::bench, this::say);
        bar = new WindowBar(root, this::undo, this::redo, this::look, this::point);
        side = new BenchSide(files::bench, this::changed, this::chosen, this::photographs, bar::units);
        tabs = new ChartTabs(worker, quick, this::view, bar.look());
        whatIf = new WhatIfDesk(files::bench, this::view, tabs, this::failed, this::kept);
        needs = new NeedsPane(side::go);
        whatIf.pane().visibleProperty().bind(tabs.showsTried());
        whatIf.pane().managedProperty().bind(tabs.showsTried());
        verdict = new VerdictPane(tabs::explain);
        run = new CaseRun(worker, quick, status, this::view, shown());
        keeper = new WindowKeeper(stage, bar, state);
        bar.onChosen(keeper::chosen);
        tour = new TourBar(Map.of("sheet", side, "tabs", tabs, "verdict", verdict, "tools", bar), keeper::toured);
        MenuBar menu = WindowMenu.of(new WindowMenu.Actions(
                entered(files::startNew),
                entered(files::choose),
                files::recentFiles,
                this::openIfMay,
                entered(this::save),
                entered(this::saveAs),
                entered(this::importSheets),
                entered(tables::put),
                entered(() -> reports.write(bar.units())),
                this::undo,
                this::redo,
                side::add,
                side::copy,
                side::remove,
                this::stop,
                side::earlier,
                side::later,
                this::photographs));
        menu.getMenus()
                .add(HelpMenu.of(new HelpMenu.Actions(
                        entered(files::startDemo),
                        tour::begin,
                        this::teach,
                        keeper::followSystem,
                        () -> HelpMenu.about(stage).show())));
        root.setTop(new VBox(menu, tour, bar, new RecoveryBar(files)));
        Node charts = new BorderPane(tabs, new TabButtons(tabs), null, whatIf.pane(), null);
        charts.visibleProperty().bind(needs.visibleProperty().not());
        SplitPane panes = new SplitPane(side, new StackPane(charts, needs), verdict);
        panes.setDividerPositions(0.22, 0.76);
        root.setCenter(panes);
        root.setBottom(status);
        Scene scene = new Scene(root, WIDTH, HEIGHT);
        scene.getStylesheets().add(CaseWindow.class.getResource("window.css").toExternalForm());
        FileDrop.on(scene, this::take);
        UndoKeys.on(scene, this::undo, this::redo);
        stage.setScene(scene);
        photographs = new PhotographWindow(
                stage, questions, () -> files.bench().filter(side::hasFilter).map(side::photographs), this::changed);
        lesson = new LessonWindow(stage, this::lesson, worker, bar.look(), bar::units);
        stage.setOnCloseRequest(event -> {
            TypedInput.commit(scene);
            if (!files.mayLeave()) {
                event.consume();
            }
        });
        title();
    }

    /** Takes a file that was dropped: a picture goes to the chosen filter, anything else is opened as a case. */
    void take(Path file) {
        if (Photographs.isPicture(file)) {
            photographs.show();
            photographs.attach(file);
        } else {
            openIfMay(file);
        }
    }

    /** Opens a case file; one that is no case yet shows its problems. */
    void open(Path path) {
        files.open(path);
    }

    /** Puts a case on the bench of which nothing is known yet. */
    void startNew() {
        files.startNew();
    }

    /** Puts the window as it was left, before it is shown. */
    void restore() {
        keeper.restore();
    }

    /** Sees to the size of the window once it is shown. */
    void settle() {
        keeper.settle();
    }

    /** Remembers how the window is left. */
    void leave() {
        keeper.leave();
    }

    /** The first start of the program shows a demo case and the tour; later ones an empty case. */
    void welcome() {
        if (keeper.isNew()) {
            files.startDemo();
            tour.begin();
        } else {
            files.startNew();
        }
    }

    /** What the verdict panel says. */
    String verdictWords() {
        return verdict.words();
    }

    /** The case on the bench. */
    Optional<CaseBench> bench() {
        return files.bench();
    }

    boolean saveTo(Path file) {
        boolean done = files.saveTo(file);
        title();
        return done;
    }

    void close() {
        worker.close();
        quick.close();
        tabs.close();
        photographs.close();
        lesson.close();
        whatIf.close();
        reports.close();
        files.close();
    }

    /** An action that takes what is being typed along. */
    private Runnable entered(Runnable action) {
        return () -> {
            TypedInput.commit(stage.getScene());
            action.run();
        };
    }

    private void openIfMay(Path file) {
        entered(() -> files.openIfMay(file)).run();
    }

    private void opened() {
        comparison = Optional.empty();
        tabs.clear();
        whatIf.forget();
        verdict.setVisible(false);
        side.first();
        run();
    }

    private void changed() {
        files.changed();
        side.refresh();
        run();
    }

    private void kept(int number) {
        side.choose(number);
        changed();
    }

    private void chosen() {
        whatIf.follow();
        tabs.changed();
        tabs.point();
        tabs.late();
    }

    private void teach() {
        lesson.show(stage);
    }

    private Optional<Supplier<LessonCase>> lesson() {
        return files.bench().flatMap(one -> {
            CaseDraft draft = one.draft();
            return one.opened().map(opened -> () -> LessonCase.of(service, draft, opened));
        });
    }

    private void photographs() {
        photographs.show();
    }

    private void undo() {
        files.bench().filter(CaseBench::canUndo).ifPresent(one -> {
            one.undo();
            changed();
        });
    }

    private void redo() {
        files.bench().filter(CaseBench::canRedo).ifPresent(one -> {
            one.redo();
            changed();
        });
    }

    private void save() {
        files.save();
        title();
    }

    private void saveAs() {
        files.saveAs();
        title();
    }

    private void importSheets() {
        if (tables.take()) {
            side.first();
            changed();
        }
    }

    /** Works the case out anew. */
    private void run() {
        title();
        run.changed();
        CaseBench bench = files.bench().orElseThrow();
        tabs.changed();
        if (!bench.isUnderstood() || bench.opened().isEmpty()) {
            say(BenchWords.problems(bench));
            if (bench.opened().isEmpty()) {
                bar.states(List.of());
                needs.show(bench.problems());
            }
            return;
        }
        needs.hide();
        OpenedCase known = bench.opened().get();
        bar.states(known.states());
        say(WindowTexts.get("status.stale"));
        run.begin();
        tabs.point();
        whatIf.follow();
    }

    private void stop() {
        if (!reports.stop()) {
            run.stop();
        }
    }

    private CaseRun.Shown shown() {
        return new CaseRun.Shown() {
            @Override
            public void stale(boolean stale) {
                status.stale(stale);
                tabs.stale(stale);
                verdict.stale(stale);
            }

            @Override
            public void glanced(QuickCurves quickCurves) {
                tabs.quickCurves(quickCurves);
            }

            @Override
            public void compared(Comparison fresh) {
                comparison = Optional.of(fresh);
                say(files.bench().map(BenchWords::setAside).orElse("")
                        + WindowTexts.get(fresh.invented() ? "status.invented" : "status.ready", fresh.title()));
                tabs.show(fresh);
                verdict();
            }
        };
    }

    private void look() {
        side.refresh();
        tabs.redraw();
        whatIf.follow();
        verdict();
        if (files.bench().map(CaseBench::isUnderstood).orElse(false)) {
            run.look();
        }
    }

    private void point() {
        tabs.point();
        whatIf.follow();
    }

    private void verdict() {
        verdict.setVisible(comparison.isPresent());
        view().ifPresent(now ->
                comparison.ifPresent(known -> verdict.show(known, now.state(), now.units(), run.isStale())));
    }

    private Optional<CaseView> view() {
        return files.bench()
                .flatMap(CaseBench::opened)
                .map(known -> new CaseView(known, side.candidate(), bar.state(), bar.temperature(), bar.units()));
    }

    private void failed(RuntimeException e) {
        say(WindowTexts.get("status.problems", e.toString()));
    }

    private void say(String words) {
        status.say(words);
    }

    private void title() {
        boolean back = files.bench().map(CaseBench::canUndo).orElse(false);
        boolean again = files.bench().map(CaseBench::canRedo).orElse(false);
        bar.steps(back, again);
        String mark = files.bench().map(CaseBench::isChanged).orElse(false) ? "* " : "";
        stage.setTitle(mark
                + files.bench()
                        .map(one -> WindowTexts.get(
                                "window.file",
                                one.file().map(Path::toString).orElse(WindowTexts.get("window.unsaved"))))
                        .orElse(WindowTexts.get("window")));
    }
}

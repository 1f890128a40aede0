package org.coldpleat.ui.desktop.view.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.stage.Stage;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.desktop.viewmodel.RecentCases;
import org.coldpleat.ui.desktop.viewmodel.Recovery;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.Problem;

/** Opens, keeps and saves the case of a window. */
public final class FileDesk {
    private final Stage stage;
    private final CaseService service;
    private final FileQuestions questions;
    private final Recovery recovery;
    private final RecentCases recent;
    private final Worker keeper;
    private final Consumer<CaseBench> opened;
    private final Consumer<String> said;
    private Optional<CaseBench> bench = Optional.empty();

    /**
     * @param questions asks which file is meant
     * @param state folder for recovery files and the list of recent cases
     * @param opened told of every case that comes on the bench
     * @param said told what happened, in words
     */
    public FileDesk(
            Stage stage,
            CaseService service,
            FileQuestions questions,
            Path state,
            Consumer<CaseBench> opened,
            Consumer<String> said) {
        this.stage = stage;
        this.service = service;
        this.questions = questions;
        this.opened = opened;
        this.said = said;
        recovery = new Recovery(state);
        recent = new RecentCases(state);
        keeper = new Worker(e -> said.accept(WindowTexts.get("status.problems", e.toString())));
    }

    public Optional<CaseBench> bench() {
        return bench;
    }

    public List<Path> recentFiles() {
        return recent.files();
    }

    /** What an earlier window left unsaved. */
    List<Recovery.LeftBehind> leftBehind() {
        return recovery.leftBehind();
    }

    void takeUp(Recovery.LeftBehind left) {
        if (mayLeave()) {
            put(CaseBench.recovered(service, left.file(), left.text()));
            changed();
            doing(() -> recovery.discard(left));
        }
    }

    void giveUp(Recovery.LeftBehind left) {
        doing(() -> recovery.discard(left));
    }

    public void startNew() {
        if (mayLeave()) {
            put(CaseBench.blank(service));
        }
    }

    /** Puts a demo case on the bench; it belongs to no file. */
    public void startDemo() {
        if (mayLeave()) {
            doing(() -> put(CaseBench.demo(service)));
        }
    }

    /** Opens a file, whatever is wrong with it. */
    public void open(Path file) {
        try {
            put(CaseBench.open(service, file));
        } catch (IOException e) {
            // the reader of case files has words for what is wrong with a file as such
            said.accept(WindowTexts.get(
                    "status.problems",
                    service.open(file).problems().stream()
                            .map(Problem::text)
                            .findFirst()
                            .orElse(e.toString())));
            return;
        }
        doing(() -> recent.opened(file));
    }

    /** Opens a file unless there is something unsaved that its owner wants to keep at. */
    public void openIfMay(Path file) {
        if (mayLeave()) {
            open(file);
        }
    }

    public void choose() {
        questions
                .open(stage, WindowTexts.get("open"), FileQuestions.Kind.CASE, beside())
                .ifPresent(this::openIfMay);
    }

    /** The file of the case, or else the one opened last. */
    private Optional<Path> beside() {
        return bench.flatMap(CaseBench::file).or(() -> recent.files().stream().findFirst());
    }

    private void put(CaseBench fresh) {
        bench = Optional.of(fresh);
        keeper.cancel("keep");
        doing(recovery::forget);
        opened.accept(fresh);
    }

    /** Keeps the draft where it outlives the program. */
    public void changed() {
        bench.ifPresent(one -> {
            Optional<Path> file = one.file();
            String text = one.draft().text();
            boolean unsaved = one.isChanged();
            Supplier<Boolean> keep = () -> {
                doing(() -> {
                    if (unsaved) {
                        recovery.keep(file, text);
                    } else {
                        recovery.forget();
                    }
                });
                return unsaved;
            };
            keeper.run("keep", keep, kept -> {});
        });
    }

    public boolean save() {
        return bench.isPresent()
                && (bench.get().file().isPresent() ? saveTo(bench.get().file().get()) : saveAs());
    }

    public boolean saveAs() {
        return questions
                .save(stage, WindowTexts.get("saveAs"), FileQuestions.Kind.CASE, beside(), "case.yaml")
                .map(this::saveTo)
                .orElse(false);
    }

    public boolean saveTo(Path file) {
        try {
            bench.orElseThrow().save(file);
            said.accept(WindowTexts.get("status.saved", file.toString()));
        } catch (IOException e) {
            said.accept(WindowTexts.get("status.notSaved", file.toString(), e.toString()));
            return false;
        }
        changed();
        doing(() -> recent.opened(file));
        return true;
    }

    /** True if nothing unsaved is lost by leaving the case: it is saved, or its owner gives it up. */
    public boolean mayLeave() {
        if (!bench.map(CaseBench::isChanged).orElse(false)) {
            return true;
        }
        ButtonType save = new ButtonType(WindowTexts.get("save"), ButtonData.YES);
        ButtonType leave = new ButtonType(WindowTexts.get("leave"), ButtonData.NO);
        Alert question =
                new Alert(Alert.AlertType.CONFIRMATION, WindowTexts.get("unsaved"), save, leave, ButtonType.CANCEL);
        question.initOwner(stage);
        question.setHeaderText(null);
        ButtonType answer = question.showAndWait().orElse(ButtonType.CANCEL);
        if (answer == leave) {
            doing(recovery::forget);
            return true;
        }
        return answer == save && save();
    }

    public void close() {
        keeper.close();
    }

    /** Something that can fail with the disk. */
    private interface Doing {
        void run() throws IOException;
    }

    private void doing(Doing what) {
        try {
            what.run();
        } catch (IOException e) {
            String words = WindowTexts.get("status.problems", e.toString());
            Platform.runLater(() -> said.accept(words));
        }
    }
}

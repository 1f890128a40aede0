package org.coldpleat.ui.desktop.view.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.concurrent.Task;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.chart.ChartPane;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.Stale;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.jfree.chart.JFreeChart;

/**
 * Asks a study and shows what came of it. The work runs beside the window, says how far it is and can be stopped; an
 * answer that belongs to values before a change says so until it is worked out anew.
 */
public final class StudyPane extends BorderPane {
    /** Part of the height for the sentences under the picture [1]; the rest of them is scrolled to. */
    private static final double SENTENCES = 0.14;

    /** What was stopped belongs to nothing, and does not begin by itself again. */
    private static final String STOPPED = "-";

    private final Study study;
    private final Executor executor;
    private final Supplier<Optional<CaseView>> view;
    private final ChartPane chart;
    private final List<TextField> inputs = new ArrayList<>();
    private final ChoiceBox<String> pictures = new ChoiceBox<>();
    private final Button run = new Button(WindowTexts.get("study.run"));
    private final Button stop = new Button(WindowTexts.get("study.stop"));
    private final ProgressBar progress = new ProgressBar();
    private final Label note = new Label();
    private final Label words = new Label();
    private Optional<Work> work = Optional.empty();
    private Optional<Study.Answer> answer = Optional.empty();
    private List<Study.Drawn> drawn = List.of();
    private UnitSystem drawnIn = UnitSystem.METRIC;
    /** What the shown answer, or the one being worked out, belongs to; blank if there is none. */
    private String belongs = "";
    /** Key of the words that say why work was given up; blank if it was not. */
    private String givenUp = "";

    /**
     * @param executor where the work is done
     * @param view what is looked at now; empty if there is nothing to ask about
     * @param look of the pictures
     */
    StudyPane(Study study, Executor executor, Supplier<Optional<CaseView>> view, PictureLook look) {
        this.study = study;
        this.executor = executor;
        this.view = view;
        chart = new ChartPane("chart-" + study.key(), look);
        String id = "study-" + study.key();
        setId(id);
        List<Node> bar = new ArrayList<>();
        for (Study.Input input : study.inputs()) {
            TextField field = new TextField();
            field.setId(id + ":" + input.key());
            field.setPrefColumnCount(input.key().equals("target") ? 24 : 7);
            field.setOnAction(event -> run());
            Label label = new Label(WindowTexts.get("study." + input.key()));
            label.setLabelFor(field);
            field.setAccessibleText(label.getText());
            inputs.add(field);
            bar.add(label);
            bar.add(field);
        }
        run.setId(id + "-run");
        run.setOnAction(event -> run());
        stop.setId(id + "-stop");
        stop.setOnAction(event -> stop("study.stopped"));
        progress.setId(id + "-progress");
        progress.setAccessibleText(WindowTexts.get("study.progress"));
        pictures.setId(id + "-pictures");
        pictures.setAccessibleText(WindowTexts.get("study.pictures"));
        pictures.getSelectionModel().selectedIndexProperty().addListener(observed -> draw());
        note.setId(id + "-note");
        note.setWrapText(true);
        note.getStyleClass().add("note");
        bar.addAll(List.of(run, stop, progress, pictures, note));
        chart.before(bar);
        words.setId(id + "-words");
        words.setWrapText(true);
        words.getStyleClass().add("sheet");
        ScrollPane sentences = new ScrollPane(words);
        sentences.setFitToWidth(true);
        sentences.setAccessibleText(WindowTexts.get("study.words"));
        sentences.prefHeightProperty().bind(heightProperty().multiply(SENTENCES));
        sentences.visibleProperty().bind(words.textProperty().isNotEmpty());
        sentences.managedProperty().bind(sentences.visibleProperty());
        chart.onWhole(this::draw);
        chart.getStyleClass().add("later");
        setCenter(chart);
        setBottom(new VBox(sentences));
        working(false);
        show(Optional.empty());
    }

    /** Key of the study. */
    public String key() {
        return study.key();
    }

    /** Works the answer out when it is looked at for the first time. */
    void looked() {
        propose();
        if (belongs.isEmpty()) {
            run();
        } else {
            draw();
        }
    }

    /** Works the answer out anew if what it belongs to was changed. */
    void follow() {
        propose();
        if (isOutdated() || belongs.isEmpty()) {
            run();
        } else {
            draw();
        }
    }

    /** Says that the case, or what is looked at, was changed; work on what stood before it is given up. */
    public void changed() {
        if (work.isPresent() && isOutdated()) {
            stop("study.overtaken");
        }
        mark();
    }

    /** Forgets everything, because another case is opened. */
    public void clear() {
        stop("");
        inputs.forEach(field -> field.setText(""));
        belongs = "";
        givenUp = "";
        show(Optional.empty());
    }

    private void propose() {
        view.get().ifPresent(now -> {
            for (int i = 0; i < inputs.size(); i++) {
                if (inputs.get(i).getText().isBlank()) {
                    inputs.get(i).setText(study.inputs().get(i).proposed().apply(now));
                }
            }
        });
    }

    private String belongsTo(CaseView now) {
        return now.opened().document().digest() + study.about().apply(now);
    }

    private boolean isOutdated() {
        return !belongs.isEmpty()
                && !view.get().map(now -> belongs.equals(belongsTo(now))).orElse(false);
    }

    private void run() {
        stop("");
        propose();
        view.get().ifPresent(now -> {
            List<String> typed = inputs.stream().map(TextField::getText).toList();
            Work fresh = new Work(now, typed);
            work = Optional.of(fresh);
            belongs = belongsTo(now);
            givenUp = "";
            working(true);
            mark();
            executor.execute(fresh);
        });
    }

    private void stop(String why) {
        if (work.isPresent()) {
            work.get().cancel();
            ended();
            belongs = STOPPED;
            givenUp = why;
            mark();
        }
    }

    private void ended() {
        work = Optional.empty();
        progress.progressProperty().unbind();
        working(false);
    }

    private void working(boolean on) {
        run.setDisable(on);
        stop.setDisable(!on);
        progress.setVisible(on);
        progress.setManaged(on);
        if (on) {
            progress.progressProperty().bind(work.orElseThrow().progressProperty());
        }
    }

    private void take(Study.Answer fresh) {
        ended();
        show(Optional.of(fresh));
    }

    private void show(Optional<Study.Answer> fresh) {
        int before = pictures.getSelectionModel().getSelectedIndex();
        answer = fresh;
        pictured(preferred());
        pictures.getItems().setAll(drawn.stream().map(Study.Drawn::name).toList());
        pictures.setVisible(drawn.size() > 1);
        pictures.setManaged(drawn.size() > 1);
        if (drawn.isEmpty()) {
            chart.empty(fresh.map(one -> one.words().apply(drawnIn)).orElse(WindowTexts.get("study.none")));
        } else {
            pictures.getSelectionModel().select(Math.max(0, Math.min(before, drawn.size() - 1)));
        }
        mark();
    }

    private UnitSystem preferred() {
        return view.get().map(CaseView::units).orElse(UnitSystem.METRIC);
    }

    private void pictured(UnitSystem units) {
        drawnIn = units;
        drawn = answer.map(one -> one.pictures().apply(units)).orElse(List.of());
        words.setText(drawn.isEmpty() ? "" : answer.orElseThrow().words().apply(units));
    }

    private void draw() {
        if (preferred() != drawnIn) {
            pictured(preferred());
        }
        int chosen = pictures.getSelectionModel().getSelectedIndex();
        if (chosen >= 0 && chosen < drawn.size()) {
            Study.Drawn one = drawn.get(chosen);
            JFreeChart picture = one.chart().get();
            chart.show(picture, one.description(), one.numbers().apply(picture));
        }
    }

    /** Says in words and by its look whether the answer is outdated. */
    private void mark() {
        boolean old = answer.isPresent() && (work.isPresent() || isOutdated());
        Stale.mark(chart, old);
        String key = work.isPresent() ? (old ? "study.again" : "study.working") : old ? "study.outdated" : "";
        String shown = givenUp.isEmpty() ? key : givenUp;
        note.setText(shown.isEmpty() ? "" : WindowTexts.get(shown));
    }

    /** One run of the study. */
    private final class Work extends Task<Study.Answer> {
        private final CaseView asked;
        private final List<String> typed;

        Work(CaseView asked, List<String> typed) {
            this.asked = asked;
            this.typed = typed;
            setOnSucceeded(event -> take(getValue()));
            setOnFailed(event -> take(Study.Answer.none(
                    WindowTexts.get("status.problems", getException().toString()))));
        }

        @Override
        protected Study.Answer call() {
            return study.answer().of(asked, typed, new Progress() {
                @Override
                public void done(long evaluations, long total) {
                    updateProgress(evaluations, total);
                }

                @Override
                public boolean cancelled() {
                    return isCancelled();
                }
            });
        }
    }
}

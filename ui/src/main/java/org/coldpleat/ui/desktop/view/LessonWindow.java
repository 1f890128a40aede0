package org.coldpleat.ui.desktop.view;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.ChartFit;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.desktop.view.chart.PicturePane;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.lesson.Lesson;
import org.coldpleat.ui.lesson.LessonCase;
import org.coldpleat.ui.lesson.LessonStep;
import org.coldpleat.ui.lesson.Turned;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;

/** The lesson about the case in the window: a question, a prediction, and only then answer, reason and picture. */
final class LessonWindow {
    private static final double WIDTH = 860;
    private static final double HEIGHT = 760;
    private static final int STOPS = 40;

    private final Stage stage = new Stage();
    private final Supplier<Optional<Supplier<LessonCase>>> lesson;
    private final Worker worker;
    private final Supplier<UnitSystem> units;
    private final Label title = words("title");
    private final Label question = words("question");
    private final Label answer = words("answer");
    private final Label unit = new Label();
    private final TextField guess = new TextField();
    private final Button show = button("show", this::showAnswer);
    private final PicturePane picture;
    private final Slider turn = new Slider();
    private final Label turned = words("turned");
    private String verdict = "";
    private boolean offering;
    private int place;
    private Optional<Asked> asked = Optional.empty();

    /** A step that was asked: what was found, in words and as a picture. */
    private record Asked(LessonCase one, Turned turned, Lesson.Told told, Optional<StateSheet> sheet) {}

    /**
     * @param lesson the case to be asked, as it is now, to be made beside the window; empty if it is not understood
     * @param worker computes the answers
     * @param look of the pictures
     * @param units that are preferred now
     */
    LessonWindow(
            Stage owner,
            Supplier<Optional<Supplier<LessonCase>>> lesson,
            Worker worker,
            PictureLook look,
            Supplier<UnitSystem> units) {
        this.units = units;
        this.lesson = lesson;
        this.worker = worker;
        picture = new PicturePane("lesson-picture", look);
        stage.initOwner(owner);
        stage.setTitle(WindowTexts.get("lesson"));
        guess.setId("lesson-guess");
        guess.setAccessibleText(WindowTexts.get("lesson.guess"));
        guess.setOnAction(event -> showAnswer());
        Label label = new Label(WindowTexts.get("lesson.guess"));
        label.setLabelFor(guess);
        FlowPane prediction = new FlowPane(6, 6, label, guess, unit, show);
        turn.setId("lesson-turn");
        turned.setLabelFor(turn);
        turn.valueProperty().addListener(observed -> turn());
        FlowPane steps = new FlowPane(6, 6, button("before", () -> go(-1)), button("next", () -> go(1)));
        Label caution = new Label(Lesson.caution());
        caution.setWrapText(true);
        BorderPane root = new BorderPane(picture);
        root.getStyleClass().addAll("photographs");
        root.setTop(new VBox(8, title, question, prediction, answer, turned, turn));
        root.setBottom(new VBox(8, steps, caution));
        Scene scene = new Scene(root, WIDTH, HEIGHT);
        scene.getStylesheets().addAll(owner.getScene().getStylesheets());
        stage.setScene(scene);
    }

    /** Shows the window with the step it stood at. */
    void show(Stage owner) {
        stage.getScene()
                .getRoot()
                .getStyleClass()
                .setAll(owner.getScene().getRoot().getStyleClass());
        stage.getScene().getRoot().getStyleClass().add("photographs");
        ask();
        stage.show();
        stage.toFront();
    }

    void close() {
        stage.close();
    }

    private void go(int steps) {
        place = Math.floorMod(place + steps, Lesson.STEPS.size());
        ask();
    }

    private void ask() {
        LessonStep step = Lesson.STEPS.get(place);
        title.setText(WindowTexts.get(
                "lesson.step", Integer.toString(place + 1), Integer.toString(Lesson.STEPS.size()), Lesson.title(step)));
        asked = Optional.empty();
        question.setText("");
        answer.setText("");
        unit.setText("");
        guess.clear();
        show.setDisable(true);
        picture.setVisible(false);
        turn.setVisible(false);
        turned.setText("");
        Optional<Supplier<LessonCase>> one = lesson.get();
        if (one.isEmpty()) {
            question.setText(WindowTexts.get("lesson.notUnderstood"));
            return;
        }
        worker.run(
                "lesson",
                () -> {
                    LessonCase asking = one.get().get();
                    Turned range = step.turned().apply(asking);
                    return asked(step, asking, range, range.base());
                },
                found -> shown(step, found));
    }

    private Optional<Asked> asked(LessonStep step, LessonCase one, Turned range, double value) {
        return Lesson.ask(step, one, value).map(found -> {
            Optional<QuickCurves> quickCurves = Lesson.picture(step, one, value);
            return new Asked(one, range, Lesson.told(step, found, units.get()), quickCurves.map(RunCharts::sheet));
        });
    }

    /** Offers what can be turned, at the value that the question names. */
    private void offer(LessonStep step, Turned range) {
        offering = true;
        turn.setMin(range.low());
        turn.setMax(range.high());
        turn.setBlockIncrement((range.high() - range.low()) / STOPS);
        turn.setValue(range.base());
        offering = false;
        said(step, range, range.base());
        turn.setVisible(true);
    }

    private void said(LessonStep step, Turned range, double value) {
        turned.setText(Lesson.turned(step, range, value, units.get()));
        turn.setAccessibleText(turned.getText());
    }

    /** Asks again with what was turned; the prediction was of the value that the question names. */
    private void turn() {
        asked.filter(one -> !offering).ifPresent(one -> {
            LessonStep step = Lesson.STEPS.get(place);
            double value = Math.max(one.turned().low(), Math.min(one.turned().high(), turn.getValue()));
            said(step, one.turned(), value);
            worker.run(
                    "lesson",
                    () -> asked(step, one.one(), one.turned(), value),
                    found -> found.ifPresentOrElse(this::tell, () -> answer.setText(Lesson.notHere(step))));
        });
    }

    private void shown(LessonStep step, Optional<Asked> found) {
        asked = found;
        question.setText(found.map(one -> one.told().question()).orElse(Lesson.notHere(step)));
        unit.setText(found.map(one -> one.told().unit()).orElse(""));
        show.setDisable(found.isEmpty());
    }

    private void showAnswer() {
        asked.ifPresent(one -> {
            OptionalDouble predicted = Lesson.prediction(guess.getText());
            verdict = predicted.isPresent() && one.told().number().isPresent()
                    ? Lesson.verdict(predicted.getAsDouble(), one.told()) + "\n"
                    : "";
            tell(one);
            offer(Lesson.STEPS.get(place), one.turned());
        });
    }

    private void tell(Asked one) {
        answer.setText(verdict
                + one.told().answer() + "\n" + one.told().reason() + "\n"
                + one.told().equation());
        one.sheet().ifPresent(sheet -> {
            JFreeChart chart = TemperatureCharts.pressure(sheet, units.get());
            picture.show(
                    (g2, area) -> ChartFit.draw(chart, g2, area, true, new ChartRenderingInfo()),
                    TemperatureCharts.pressureDescription(sheet));
            picture.setVisible(true);
        });
    }

    private static Label words(String id) {
        Label label = new Label();
        label.setId("lesson-" + id);
        label.setWrapText(true);
        label.setMinHeight(VBox.USE_PREF_SIZE);
        return label;
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(WindowTexts.get("lesson." + key));
        button.setId("lesson-" + key);
        button.setOnAction(event -> action.run());
        return button;
    }
}

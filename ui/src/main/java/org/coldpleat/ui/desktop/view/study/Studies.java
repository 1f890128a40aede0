package org.coldpleat.ui.desktop.view.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityReading;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.chart.ServiceCharts;
import org.coldpleat.ui.chart.SettingsChart;
import org.coldpleat.ui.chart.SizeChart;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.coldpleat.ui.service.Sentences;
import org.coldpleat.ui.service.SizingOutcome;
import org.coldpleat.ui.service.SizingQuestion;
import org.coldpleat.ui.service.UsualSettings;
import org.coldpleat.ui.text.Pages;

/** The studies of the window: loading, pleat count, valve setting, confidence. */
public final class Studies {
    /** Draws behind the chances of a size, and where those of an answer begin. */
    private static final int SIZE_DRAWS = 512;

    private static final int DRAWS = 4096;
    private static final int FEWEST_DRAWS = 16;
    private static final int MOST_DRAWS = 1 << 16;
    private static final long SEED = 1;

    private final ExecutorService executor = Executors.newCachedThreadPool(task -> {
        Thread thread = new Thread(task, "study");
        thread.setDaemon(true);
        return thread;
    });
    private final StudyPane loading;
    private final List<StudyPane> panes;

    /**
     * @param view what is looked at now; empty if there is nothing to ask about
     * @param look of the pictures
     */
    public Studies(Supplier<Optional<CaseView>> view, PictureLook look) {
        loading = new StudyPane(new Study("loading", List.of(), now -> "", this::loading), executor, view, look);
        panes = List.of(
                loading,
                new StudyPane(
                        new Study(
                                "pleats",
                                List.of(new Study.Input("target", Studies::target)),
                                CaseView::candidate,
                                this::pleats),
                        executor,
                        view,
                        look),
                new StudyPane(
                        new Study(
                                "settings",
                                List.of(
                                        new Study.Input("from", now -> UsualSettings.FROM),
                                        new Study.Input("to", now -> UsualSettings.TO)),
                                now -> "",
                                this::settings),
                        executor,
                        view,
                        look),
                new StudyPane(
                        new Study(
                                "confidence",
                                List.of(new Study.Input("draws", now -> Integer.toString(DRAWS))),
                                now -> "",
                                this::confidence),
                        executor,
                        view,
                        look));
    }

    /** One pane a study, in the order of the tabs. */
    public List<StudyPane> panes() {
        return panes;
    }

    /** Works out what a pane shows if it is one of a study. Loading is quick enough to follow every change. */
    public void looked(Object shown) {
        panes.stream().filter(pane -> pane == shown).forEach(pane -> {
            if (pane == loading) {
                pane.follow();
            } else {
                pane.looked();
            }
        });
    }

    public void close() {
        panes.forEach(StudyPane::clear);
        executor.shutdownNow();
    }

    private Study.Answer loading(CaseView now, List<String> typed, Progress progress) {
        Optional<ServiceResult> result =
                now.opened().service(OptionalDouble.empty()).flatMap(run -> run.with(progress));
        return result.map(life ->
                        new Study.Answer(units -> overTime(life, units), units -> sentences(life.verdicts(), units)))
                .orElseGet(() ->
                        Study.Answer.none(WindowTexts.get(progress.cancelled() ? "study.stopped" : "study.noDuty")));
    }

    private static List<Study.Drawn> overTime(ServiceResult life, UnitSystem units) {
        return ServiceCharts.all(life, units).stream()
                .map(one -> new Study.Drawn(one.chart().getTitle().getText(), one.drawing(), one.description()))
                .toList();
    }

    /** The coldest of the named temperatures, in the state that is looked at. */
    private static String target(CaseView now) {
        double coldest = now.opened().understood().entrySet().stream()
                .filter(entry -> entry.getKey().matches("temperatures\\.(from|named\\[\\d+].temperature)"))
                .filter(entry -> entry.getKey().contains("named") || !hasNamed(now))
                .map(entry -> entry.getValue().value())
                .min(Double::compare)
                .orElse(now.temperature());
        return WindowTexts.get("study.neverOpen", Pages.temperature(coldest, now.units()), now.state());
    }

    private static boolean hasNamed(CaseView now) {
        return now.opened().understood().containsKey("temperatures.named[0].temperature");
    }

    private Study.Answer pleats(CaseView now, List<String> typed, Progress progress) {
        SizingQuestion question = new SizingQuestion(
                now.candidate(),
                SizingResult.Variable.PLEATS,
                typed.get(0),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                SIZE_DRAWS,
                SEED);
        return now.opened()
                .size(question)
                .with(progress)
                .map(outcome -> sized(outcome, now.units()))
                .orElseGet(() -> Study.Answer.none(WindowTexts.get("study.stopped")));
    }

    private static Study.Answer sized(SizingOutcome outcome, UnitSystem inUnits) {
        return outcome.result()
                .map(size -> new Study.Answer(
                        units -> List.of(new Study.Drawn(
                                WindowTexts.get("tab.pleats"),
                                () -> SizeChart.of(size, units),
                                SizeChart.description(size))),
                        units -> sentences(size.verdicts(), units) + "\n" + notices(size.notices(), units)))
                .orElseGet(
                        () -> Study.Answer.none(Sentences.of(outcome.problem().orElseThrow(), inUnits)));
    }

    private Study.Answer settings(CaseView now, List<String> typed, Progress progress) {
        Optional<Double> from = pressure(typed.get(0));
        Optional<Double> to = pressure(typed.get(1));
        if (from.isEmpty() || to.isEmpty() || !(from.get() > 0 && from.get() < to.get())) {
            return Study.Answer.none(WindowTexts.get("study.range", typed.get(0), typed.get(1)));
        }
        return now.opened()
                .settings(Optional.empty(), from.get(), to.get())
                .with(progress)
                .map(result -> new Study.Answer(
                        units -> List.of(new Study.Drawn(
                                WindowTexts.get("tab.settings"),
                                () -> SettingsChart.of(result, units),
                                SettingsChart.description(result))),
                        units -> sentences(result.verdicts(), units)))
                .orElseGet(() -> Study.Answer.none(WindowTexts.get("study.stopped")));
    }

    private static Optional<Double> pressure(String typed) {
        QuantityReading reading = QuantityText.parse(typed, Kind.PRESSURE_DIFFERENCE, Provenance.MEASURED);
        return reading.value().map(Measured::value);
    }

    private Study.Answer confidence(CaseView now, List<String> typed, Progress progress) {
        String count = typed.get(0).strip();
        int draws = count.matches("\\d{1,6}") ? Integer.parseInt(count) : 0;
        if (draws < FEWEST_DRAWS || draws > MOST_DRAWS) {
            return Study.Answer.none(WindowTexts.get("study.drawsRange", FEWEST_DRAWS + "", MOST_DRAWS + "", count));
        }
        Optional<ConfidenceResult> result = now.opened().confidence(draws, SEED).with(progress);
        return result.map(sure -> new Study.Answer(
                        units -> ConfidencePictures.of(sure, now.opened().invented(), units),
                        units -> notices(sure.notices(), units)))
                .orElseGet(() -> Study.Answer.none(WindowTexts.get("study.stopped")));
    }

    private static String notices(List<Notice> notices, UnitSystem units) {
        return notices.stream().map(notice -> Pages.notice(notice, units)).collect(Collectors.joining("\n"));
    }

    private static String sentences(List<Verdict> verdicts, UnitSystem units) {
        return verdicts.stream().map(verdict -> Sentences.of(verdict, units)).collect(Collectors.joining("\n"));
    }
}

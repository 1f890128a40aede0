package org.coldpleat.ui.desktop.view.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.temperature.CandidateCurve;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.chart.temperature.StateSheet;
import org.coldpleat.ui.chart.temperature.TemperatureCharts;
import org.coldpleat.ui.chart.temperature.TriedCurve;
import org.coldpleat.ui.desktop.view.chart.CandidateLegend;
import org.coldpleat.ui.desktop.view.chart.ChartNumbers;
import org.coldpleat.ui.desktop.view.chart.ChartPane;
import org.coldpleat.ui.desktop.view.chart.LateCharts;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.Stale;
import org.coldpleat.ui.desktop.view.part.Wide;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.desktop.view.study.Studies;
import org.coldpleat.ui.desktop.view.study.StudyPane;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.coldpleat.ui.desktop.viewmodel.ShownCandidates;
import org.coldpleat.ui.text.ExplainedLink;
import org.coldpleat.ui.text.Pages;
import org.jfree.chart.JFreeChart;

/** Everything that is drawn or written of a case, a tab each. What takes long is worked out when it is looked at. */
public final class ChartTabs extends TabPane {
    private static final String POINT = "point";
    private static final String EXPLAIN = "explain";

    private final Worker worker;
    private final Worker quick;
    private final LateCharts late;
    private final ChartPane pressure;
    private final ChartPane share;
    private final ChartPane cutaway;
    private final ShownCandidates curvesShown = new ShownCandidates();
    private final List<CandidateLegend> legends;
    private final TextArea page;
    private final ExplanationPane explanation = new ExplanationPane();
    private final Supplier<Optional<CaseView>> view;
    private final Studies studies;
    /** What follows a change at once. */
    private final List<Node> live;
    /** What follows a change with the comparison, or when it is looked at. */
    private final List<Node> later;

    private Optional<Comparison> comparison = Optional.empty();
    private Optional<QuickCurves> quickCurves = Optional.empty();
    private Optional<QuickCurves.Candidate> tried = Optional.empty();

    /**
     * @param worker for what takes long
     * @param quick for what takes milliseconds
     * @param view what is looked at now; empty if there is nothing to show it for
     * @param look of the pictures
     */
    public ChartTabs(Worker worker, Worker quick, Supplier<Optional<CaseView>> view, PictureLook look) {
        this.worker = worker;
        this.quick = quick;
        this.view = view;
        pressure = new ChartPane("chart-pressure", look);
        share = new ChartPane("chart-share", look);
        late = new LateCharts(worker, look);
        cutaway = new ChartPane("cutaway", look);
        page = text("page", look);
        legends = List.of(
                new CandidateLegend("legend-pressure", curvesShown, this::curves, look),
                new CandidateLegend("legend-share", curvesShown, this::curves, look));
        studies = new Studies(view, look);
        setId("tabs");
        setAccessibleText(WindowTexts.get("charts"));
        tab("pressure", pressure);
        tab("share", share);
        tab("cutaway", cutaway);
        tab("shareMap", late.map());
        tab("coldStart", late.coldStart());
        studies.panes().forEach(pane -> tab(pane.key(), pane));
        tab("page", page);
        tab("explanation", explanation);
        pressure.legend(legends.get(0));
        share.legend(legends.get(1));
        pressure.onWhole(this::curves);
        share.onWhole(this::curves);
        late.panes().forEach(pane -> pane.onWhole(this::late));
        live = List.of(pressure, share, cutaway);
        live.forEach(one -> one.getStyleClass().add("live"));
        later = List.of(late.map(), late.coldStart(), page, explanation);
        later.forEach(one -> one.getStyleClass().add("later"));
        getSelectionModel().selectedItemProperty().addListener(observed -> late());
    }

    /** True while curves are looked at that a value tried moves. */
    public BooleanBinding showsTried() {
        return Bindings.createBooleanBinding(
                () -> {
                    Tab shown = getSelectionModel().getSelectedItem();
                    return shown != null && (shown.getContent() == pressure || shown.getContent() == share);
                },
                getSelectionModel().selectedItemProperty());
    }

    /** Says whether what is shown belongs to values before a change. */
    public void stale(boolean stale) {
        live.forEach(one -> Stale.mark(one, stale));
        later.forEach(one -> Stale.mark(one, stale));
    }

    /** Shows a new comparison; what belonged to the one before is gone. */
    public void show(Comparison fresh) {
        comparison = Optional.of(fresh);
        quickCurves = Optional.empty();
        setVisible(true);
        redraw();
    }

    /** Redraws the curves over temperature, without bands; the rest stays as it is until the comparison comes. */
    public void quickCurves(QuickCurves fresh) {
        quickCurves = Optional.of(fresh);
        live.forEach(one -> Stale.mark(one, false));
        setVisible(true);
        curves();
    }

    /** Forgets what is shown, because another case is opened. */
    public void clear() {
        comparison = Optional.empty();
        quickCurves = Optional.empty();
        tried = Optional.empty();
        curvesShown.all();
        quick.cancel(POINT);
        worker.cancel(EXPLAIN);
        late.clear();
        studies.panes().forEach(StudyPane::clear);
        setVisible(false);
    }

    /** Shows the same results in another view. */
    public void redraw() {
        curves();
        comparison.ifPresent(known -> view.get().ifPresent(now -> page.setText(Pages.comparison(known, now.units()))));
        point();
        late();
    }

    private void curves() {
        Optional<StateSheet> sheet = view.get().flatMap(now -> sheet(now.state()));
        sheet.ifPresent(all -> {
            UnitSystem units = view.get().orElseThrow().units();
            StateSheet curves = all.without(curvesShown.hidden());
            legends.forEach(legend -> legend.offer(all.candidates(), units));
            JFreeChart differences = TemperatureCharts.pressure(curves, units);
            JFreeChart shares = TemperatureCharts.share(curves, units);
            tried(curves).ifPresent(curve -> {
                TriedCurve.pressure(differences, curve, units);
                TriedCurve.share(shares, curve, units);
            });
            chart(pressure, differences, TemperatureCharts.pressureDescription(curves));
            chart(share, shares, TemperatureCharts.shareDescription(curves));
            String note = quickCurves.isPresent() ? WindowTexts.get("note.glance") : "";
            pressure.note(note);
            share.note(note);
        });
    }

    /** Draws what is tried on a candidate beside it; nothing if empty. */
    void tried(Optional<QuickCurves.Candidate> curve) {
        if (curve.isPresent() || tried.isPresent()) {
            tried = curve;
            curves();
        }
    }

    private Optional<CandidateCurve> tried(StateSheet shown) {
        return tried.flatMap(one -> shown.candidates().stream()
                .filter(curve -> curve.name().equals(one.name()))
                .findFirst()
                .map(curve -> RunCharts.curve(curve.index(), one, shown.from(), shown.to())));
    }

    /** The newest curves there are of a state; empty if it is a state of which nothing is worked out yet. */
    private Optional<StateSheet> sheet(String state) {
        Optional<StateSheet> quickest =
                quickCurves.filter(known -> known.state().equals(state)).map(RunCharts::sheet);
        return quickest.isPresent() || quickCurves.isPresent()
                ? quickest
                : comparison.stream()
                        .flatMap(known -> RunCharts.sheets(known).stream())
                        .filter(one -> one.state().equals(state))
                        .findFirst();
    }

    private static void chart(ChartPane pane, JFreeChart chart, String description) {
        pane.show(chart, description, ChartNumbers.rows(chart));
    }

    /** The operating point of the view, for the drawing. */
    public void point() {
        Optional<CaseView> now = view.get().filter(ChartTabs::isKnown);
        if (now.isEmpty()) {
            quick.cancel(POINT);
            return;
        }
        CaseView one = now.get();
        quick.run(
                POINT,
                () -> {
                    PointResult result = one.opened()
                            .point(one.candidate(), one.state(), one.temperature())
                            .now();
                    Section sheet = one.opened().sheet(one.candidate());
                    return Cutaway.of(sheet, result, result.flow(), one.units());
                },
                cutaway::show);
    }

    private static boolean isKnown(CaseView view) {
        return view.opened().candidates().contains(view.candidate())
                && view.opened().states().contains(view.state());
    }

    /** Works out what the chosen tab needs beyond the comparison. */
    public void late() {
        Tab shown = getSelectionModel().getSelectedItem();
        Optional<CaseView> now = view.get().filter(ChartTabs::isKnown);
        if (shown == null || comparison.isEmpty() || now.isEmpty()) {
            return;
        }
        if (shown.getContent() == late.map()) {
            late.map(now.get());
        } else if (shown.getContent() == late.coldStart()) {
            late.start(now.get());
        } else {
            studies.looked(shown.getContent());
        }
    }

    /** Says that the case, or what is looked at, was changed. */
    public void changed() {
        studies.panes().forEach(StudyPane::changed);
    }

    public void close() {
        studies.close();
    }

    /** Shows what the answer for a candidate was worked out from. */
    public void explain(String candidate) {
        view.get()
                .ifPresent(now -> worker.run(
                        EXPLAIN,
                        () -> Stream.of(
                                        ExplainRequest.of(candidate),
                                        ExplainRequest.of(candidate)
                                                .about("bypassShare")
                                                .at(now.temperature()),
                                        ExplainRequest.of(candidate).about("chanceOpen"))
                                .map(asked -> now.opened()
                                        .explain(asked.in(now.state()))
                                        .now())
                                .map(chain -> ExplainedLink.of(chain, now.units()))
                                .toList(),
                        chains -> {
                            explanation.show(chains);
                            getSelectionModel().selectLast();
                        }));
    }

    private void tab(String key, Node content) {
        Tab tab = new Tab(WindowTexts.get("tab." + key), content);
        tab.setId("tab-" + key);
        tab.setClosable(false);
        getTabs().add(tab);
    }

    private static TextArea text(String id, PictureLook look) {
        TextArea area = new TextArea();
        Wide.columns(area, Pages.WIDTH, look);
        area.setId(id);
        area.setEditable(false);
        area.getStyleClass().add("page");
        area.setAccessibleText(WindowTexts.get("tab." + id));
        return area;
    }
}

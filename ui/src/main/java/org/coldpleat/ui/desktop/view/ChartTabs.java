package org.coldpleat.ui.desktop.view;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import org.coldpleat.model.run.ColdStartRequest;
import org.coldpleat.model.run.Comparison;
import org.coldpleat.model.run.Glance;
import org.coldpleat.model.run.MapResult;
import org.coldpleat.model.run.PointResult;
import org.coldpleat.model.run.StartOutline;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.CandidateCurve;
import org.coldpleat.ui.chart.ColdStartCharts;
import org.coldpleat.ui.chart.RunCharts;
import org.coldpleat.ui.chart.ShareGrid;
import org.coldpleat.ui.chart.ShareMapChart;
import org.coldpleat.ui.chart.StateSheet;
import org.coldpleat.ui.chart.TemperatureCharts;
import org.coldpleat.ui.chart.TriedCurve;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;
import org.coldpleat.ui.commandline.Pages;
import org.coldpleat.ui.desktop.viewmodel.ShownCandidates;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.jfree.chart.JFreeChart;

/** Everything that is drawn or written of a case, a tab each. What takes long is worked out when it is looked at. */
final class ChartTabs extends TabPane {
    /** What the tabs show a case for. */
    record View(OpenedCase opened, String candidate, String state, double temperature, UnitSystem units) {}

    private static final String POINT = "point";
    private static final String MAP = "map";
    private static final String COLD_START = "coldStart";
    private static final String EXPLAIN = "explain";

    private final CaseService service;
    private final Worker worker;
    private final Worker quick;
    private final ChartPane pressure;
    private final ChartPane share;
    private final ChartPane map;
    private final ChartPane coldStart;
    private final ChartPane cutaway;
    private final ShownCandidates curvesShown = new ShownCandidates();
    private final List<CandidateLegend> legends;
    private final TextArea page = text("page");
    private final TextArea explanation = text("explanation");
    private final Supplier<Optional<View>> view;
    private final Studies studies;
    private Optional<Comparison> comparison = Optional.empty();
    private Optional<Glance> glance = Optional.empty();
    private Optional<Glance.Candidate> tried = Optional.empty();

    /**
     * @param worker for what takes long
     * @param quick for what takes milliseconds
     * @param view what is looked at now; empty if there is nothing to show it for
     * @param look of the pictures
     */
    ChartTabs(CaseService service, Worker worker, Worker quick, Supplier<Optional<View>> view, PictureLook look) {
        this.service = service;
        this.worker = worker;
        this.quick = quick;
        this.view = view;
        pressure = new ChartPane("chart-pressure", look);
        share = new ChartPane("chart-share", look);
        map = new ChartPane("chart-map", look);
        coldStart = new ChartPane("chart-coldStart", look);
        cutaway = new ChartPane("cutaway", look);
        legends = List.of(
                new CandidateLegend("legend-pressure", curvesShown, this::curves, look),
                new CandidateLegend("legend-share", curvesShown, this::curves, look));
        studies = new Studies(service, view, look);
        setId("tabs");
        setAccessibleText(WindowTexts.get("charts"));
        tab("pressure", pressure);
        tab("share", share);
        tab("cutaway", cutaway);
        tab("shareMap", map);
        tab("coldStart", coldStart);
        studies.panes().forEach(pane -> tab(pane.key(), pane));
        tab("page", page);
        tab("explanation", explanation);
        pressure.under(legends.get(0));
        share.under(legends.get(1));
        pressure.onWhole(this::curves);
        share.onWhole(this::curves);
        for (ChartPane pane : new ChartPane[] {map, coldStart}) {
            pane.onWhole(this::late);
        }
        for (Node live : new Node[] {pressure, share, cutaway}) {
            live.getStyleClass().add("live");
        }
        for (Node later : new Node[] {map, coldStart, page, explanation}) {
            later.getStyleClass().add("later");
        }
        getSelectionModel().selectedItemProperty().addListener(observed -> late());
    }

    /** Shows a new comparison; what belonged to the one before is gone. */
    void show(Comparison fresh) {
        comparison = Optional.of(fresh);
        glance = Optional.empty();
        setVisible(true);
        redraw();
    }

    /** Redraws the curves over temperature, without bands; the rest stays as it is until the comparison comes. */
    void glance(Glance fresh) {
        glance = Optional.of(fresh);
        setVisible(true);
        curves();
    }

    /** Forgets what is shown, because another case is opened. */
    void clear() {
        comparison = Optional.empty();
        glance = Optional.empty();
        tried = Optional.empty();
        curvesShown.all();
        quick.cancel(POINT);
        List.of(MAP, COLD_START, EXPLAIN).forEach(worker::cancel);
        studies.panes().forEach(StudyPane::clear);
        setVisible(false);
    }

    /** Shows the same results in another view. */
    void redraw() {
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
            legends.forEach(legend -> legend.offer(all.candidates()));
            JFreeChart differences = TemperatureCharts.pressure(curves, units);
            JFreeChart shares = TemperatureCharts.share(curves, units);
            tried(curves).ifPresent(curve -> {
                TriedCurve.pressure(differences, curve, units);
                TriedCurve.share(shares, curve, units);
            });
            chart(pressure, differences, TemperatureCharts.pressureDescription(curves));
            chart(share, shares, TemperatureCharts.shareDescription(curves));
            String note = glance.isPresent() ? WindowTexts.get("note.glance") : "";
            pressure.note(note);
            share.note(note);
        });
    }

    /** Draws what is tried on a candidate beside it; nothing if empty. */
    void tried(Optional<Glance.Candidate> curve) {
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
                glance.filter(known -> known.state().equals(state)).map(RunCharts::sheet);
        return quickest.isPresent() || glance.isPresent()
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
    void point() {
        Optional<View> now = view.get().filter(ChartTabs::isKnown);
        if (now.isEmpty()) {
            quick.cancel(POINT);
            return;
        }
        View one = now.get();
        quick.run(
                POINT,
                () -> {
                    PointResult result = service.point(one.opened(), one.candidate(), one.state(), one.temperature());
                    return Cutaway.of(
                            one.opened().sheet(one.candidate()).orElseThrow(), result, result.flow(), one.units());
                },
                (CutawayDrawing drawing) -> cutaway.show(drawing));
    }

    private static boolean isKnown(View view) {
        return view.opened().candidates().contains(view.candidate())
                && view.opened().states().contains(view.state());
    }

    /** Works out what the chosen tab needs beyond the comparison. */
    void late() {
        Tab shown = getSelectionModel().getSelectedItem();
        Optional<View> now = view.get().filter(ChartTabs::isKnown);
        if (shown == null || comparison.isEmpty() || now.isEmpty()) {
            return;
        }
        OpenedCase opened = now.get().opened();
        if (shown.getContent() == map) {
            String candidate = now.get().candidate();
            worker.run(
                    MAP,
                    () -> {
                        MapResult result = service.map(opened, candidate);
                        return RunCharts.grid(result, opened.title(), opened.invented());
                    },
                    (ShareGrid grid) -> map.show(
                            ShareMapChart.of(grid, now.get().units()),
                            ShareMapChart.description(grid),
                            ChartNumbers.rows(grid, now.get().units())));
        } else if (shown.getContent() == coldStart) {
            start(now.get());
        } else {
            studies.looked(shown.getContent());
        }
    }

    /** The start as the case states it, or why there is none to show. */
    private void start(View now) {
        OpenedCase opened = now.opened();
        Optional<StartOutline> outline = service.startOutline(opened);
        if (outline.isEmpty() || outline.get().from() >= outline.get().hot()) {
            worker.cancel(COLD_START);
            coldStart.empty(WindowTexts.get(outline.isEmpty() ? "coldStart.none" : "coldStart.hot"));
            return;
        }
        worker.run(
                COLD_START,
                () -> service.coldStart(opened, ColdStartRequest.AS_STATED),
                result -> result.ifPresent(start -> chart(
                        coldStart,
                        ColdStartCharts.timeline(start, opened.candidates(), now.units()),
                        ColdStartCharts.timelineDescription(start))));
    }

    /** Says that the case, or what is looked at, was changed. */
    void changed() {
        studies.panes().forEach(StudyPane::changed);
    }

    void close() {
        studies.close();
    }

    /** Shows what the answer for a candidate was worked out from. */
    void explain(String candidate) {
        view.get()
                .ifPresent(now -> worker.run(
                        EXPLAIN,
                        () -> Pages.explanation(
                                service.explain(now.opened(), candidate, Optional.of(now.state()), Optional.empty()),
                                now.units()),
                        chain -> {
                            explanation.setText(chain);
                            getSelectionModel().selectLast();
                        }));
    }

    private void tab(String key, Node content) {
        Tab tab = new Tab(WindowTexts.get("tab." + key), content);
        tab.setId("tab-" + key);
        tab.setClosable(false);
        getTabs().add(tab);
    }

    private static TextArea text(String id) {
        TextArea area = new TextArea();
        area.setId(id);
        area.setEditable(false);
        area.getStyleClass().add("page");
        area.setAccessibleText(WindowTexts.get("tab." + id));
        return area;
    }
}

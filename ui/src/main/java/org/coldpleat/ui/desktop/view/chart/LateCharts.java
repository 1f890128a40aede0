package org.coldpleat.ui.desktop.view.chart;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartOutline;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.ColdStartCharts;
import org.coldpleat.ui.chart.map.ShareGrid;
import org.coldpleat.ui.chart.map.ShareMapChart;
import org.coldpleat.ui.chart.temperature.RunCharts;
import org.coldpleat.ui.desktop.view.part.PictureLook;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.coldpleat.ui.service.OpenedCase;
import org.jfree.chart.JFreeChart;

/** The map and the minutes after a start: worked out when they are looked at. */
public final class LateCharts {
    private static final String MAP = "map";
    private static final String COLD_START = "coldStart";

    private final Worker worker;
    private final ChartPane map;
    private final ChartPane coldStart;

    public LateCharts(Worker worker, PictureLook look) {
        this.worker = worker;
        map = new ChartPane("chart-map", look);
        coldStart = new ChartPane("chart-coldStart", look);
    }

    public ChartPane map() {
        return map;
    }

    public ChartPane coldStart() {
        return coldStart;
    }

    /** All panes. */
    public List<ChartPane> panes() {
        return List.of(map, coldStart);
    }

    /** Ends what is being worked out, because another case is opened. */
    public void clear() {
        worker.cancel(MAP);
        worker.cancel(COLD_START);
    }

    /** Draws the map of the chosen filter. */
    public void map(CaseView now) {
        OpenedCase opened = now.opened();
        worker.watch(
                MAP,
                progress -> opened.map(now.candidate())
                        .with(progress)
                        .map(found -> RunCharts.grid(found, opened.title(), opened.invented())),
                grid -> draw(grid, now.units()),
                share -> {});
    }

    private void draw(ShareGrid grid, UnitSystem units) {
        map.show(ShareMapChart.of(grid, units), ShareMapChart.description(grid), ChartNumbers.rows(grid, units));
    }

    /** Draws the start as the case states it, or says why there is none to show. */
    public void start(CaseView now) {
        OpenedCase opened = now.opened();
        Optional<StartOutline> outline = opened.startOutline();
        if (outline.isEmpty() || outline.get().from() >= outline.get().hot()) {
            worker.cancel(COLD_START);
            coldStart.empty(WindowTexts.get(outline.isEmpty() ? "coldStart.none" : "coldStart.hot"));
            return;
        }
        worker.watch(
                COLD_START,
                progress -> opened.coldStart(ColdStartRequest.AS_STATED).flatMap(run -> run.with(progress)),
                start -> draw(start, now),
                share -> {});
    }

    private void draw(ColdStart start, CaseView now) {
        JFreeChart chart = ColdStartCharts.timeline(start, now.opened().candidates(), now.units());
        coldStart.show(chart, ColdStartCharts.timelineDescription(start), ChartNumbers.rows(chart));
    }
}

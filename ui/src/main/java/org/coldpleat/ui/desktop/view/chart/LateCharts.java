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
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.jfree.chart.JFreeChart;

/** The map and the minutes after a start: worked out when they are looked at, and kept to be drawn in other units. */
public final class LateCharts {
    private static final String MAP = "map";
    private static final String COLD_START = "coldStart";

    private final CaseService service;
    private final Worker worker;
    private final ChartPane map;
    private final ChartPane coldStart;
    private Optional<Known<ShareGrid>> knownMap = Optional.empty();
    private Optional<Known<ColdStart>> knownStart = Optional.empty();

    /** What was worked out, and what for. */
    private record Known<T>(OpenedCase opened, String candidate, T result) {
        boolean isOf(OpenedCase other, String name) {
            return opened == other && candidate.equals(name);
        }
    }

    public LateCharts(CaseService service, Worker worker, PictureLook look) {
        this.service = service;
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

    /** Forgets everything, because another case is opened. */
    public void clear() {
        worker.cancel(MAP);
        worker.cancel(COLD_START);
        knownMap = Optional.empty();
        knownStart = Optional.empty();
    }

    /** Draws the map of the chosen filter. */
    public void map(CaseView now) {
        OpenedCase opened = now.opened();
        String candidate = now.candidate();
        Optional<Known<ShareGrid>> known = knownMap.filter(one -> one.isOf(opened, candidate));
        if (known.isPresent()) {
            draw(known.get().result(), now.units());
            return;
        }
        worker.watch(
                MAP,
                progress -> service.map(opened, candidate, progress)
                        .map(found -> RunCharts.grid(found, opened.title(), opened.invented())),
                grid -> {
                    knownMap = Optional.of(new Known<>(opened, candidate, grid));
                    draw(grid, now.units());
                },
                share -> {});
    }

    private void draw(ShareGrid grid, UnitSystem units) {
        map.show(ShareMapChart.of(grid, units), ShareMapChart.description(grid), ChartNumbers.rows(grid, units));
    }

    /** Draws the start as the case states it, or says why there is none to show. */
    public void start(CaseView now) {
        OpenedCase opened = now.opened();
        Optional<Known<ColdStart>> known = knownStart.filter(one -> one.isOf(opened, ""));
        if (known.isPresent()) {
            draw(known.get().result(), now);
            return;
        }
        Optional<StartOutline> outline = service.startOutline(opened);
        if (outline.isEmpty() || outline.get().from() >= outline.get().hot()) {
            worker.cancel(COLD_START);
            coldStart.empty(WindowTexts.get(outline.isEmpty() ? "coldStart.none" : "coldStart.hot"));
            return;
        }
        worker.watch(
                COLD_START,
                progress -> service.coldStart(opened, ColdStartRequest.AS_STATED, progress),
                start -> {
                    knownStart = Optional.of(new Known<>(opened, "", start));
                    draw(start, now);
                },
                share -> {});
    }

    private void draw(ColdStart start, CaseView now) {
        JFreeChart chart = ColdStartCharts.timeline(start, now.opened().candidates(), now.units());
        coldStart.show(chart, ColdStartCharts.timelineDescription(start), ChartNumbers.rows(chart));
    }
}

package org.coldpleat.ui.show;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.coldstart.StartPoint;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.cutaway.Cutaway;
import org.coldpleat.ui.chart.cutaway.StageSheet;
import org.coldpleat.ui.chart.cutaway.StageSheet.Fact;
import org.coldpleat.ui.chart.cutaway.StageSheet.Mark;
import org.coldpleat.ui.chart.file.ChartFiles;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.chart.style.UnitWords;
import org.coldpleat.ui.service.OpenedCase;

/**
 * The frames of a start-up of one candidate. Flows, valve, temperatures and pressures are those of the computed start.
 * The clock runs slowly first, where most happens, and ever faster later. Only how the pressure drop of the filter is
 * spread over its parts, which the tone of the oil shows, is taken from steady flow of the same oil at the same rate.
 */
public final class StartFrames {
    /** How much faster the clock runs at the end than at the beginning: e to this power. */
    private static final double HURRY = 7;

    private static final double LEAST_FLOW = 1e-9;
    private static final double MINUTE = 60;
    private static final List<Double> MARKS = List.of(1.0, 10.0, 60.0, 600.0, 1800.0);

    private final OpenedCase opened;
    private final ColdStart start;
    private final ColdStartCandidate candidate;
    private final Section sheet;
    private final UnitWords words;
    private final double[] times;
    private final double[] course;

    private StartFrames(
            OpenedCase opened,
            ColdStart start,
            ColdStartCandidate candidate,
            Section sheet,
            UnitWords words,
            int frames) {
        this.opened = opened;
        this.start = start;
        this.candidate = candidate;
        this.sheet = sheet;
        this.words = words;
        List<StartPoint> series = candidate.start().series();
        double end = series.get(series.size() - 1).time();
        times = new double[frames];
        course = new double[frames];
        for (int i = 0; i < frames; i++) {
            times[i] = end * Math.expm1(HURRY * i / (frames - 1.0)) / Math.expm1(HURRY);
            course[i] = at(times[i]).bypassShare();
        }
    }

    /**
     * The frames of one candidate.
     *
     * @param units units of the facts
     * @param frames how many, at least 2
     * @return the frames; empty if its start was not computed to the end
     */
    public static Optional<StartFrames> of(
            OpenedCase opened, ColdStart start, ColdStartCandidate candidate, UnitSystem units, int frames) {
        if (frames < 2) {
            throw new IllegalArgumentException("frames must be at least 2, was " + frames);
        }
        if (!candidate.isComputed() || candidate.start().series().size() < 2) {
            return Optional.empty();
        }
        return Optional.of(
                new StartFrames(opened, start, candidate, opened.sheet(candidate.name()), UnitWords.of(units), frames));
    }

    /** How many frames there are. */
    public int count() {
        return times.length;
    }

    /** Name of its file without ending. */
    public String name() {
        return "start-" + ChartFiles.fileName(candidate.name());
    }

    /** One frame. */
    public Picture frame(int index, boolean ground) {
        StartPoint point = at(times[index]);
        double[] soFar = course.clone();
        Arrays.fill(soFar, index + 1, soFar.length, Double.NaN);
        StageSheet stage = new StageSheet(
                candidate.name(),
                ShowTexts.get(
                        start.invented() ? "start.subtitleInvented" : "start.subtitle",
                        start.title(),
                        start.schedule()),
                Cutaway.side(sheet, steady(point), 0),
                facts(point),
                soFar,
                marks());
        return Stages.picture(stage, ground);
    }

    private List<Fact> facts(StartPoint point) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(ShowTexts.get("fact.clock"), clock(point.time()), true));
        facts.add(Stages.share(point.bypassShare()));
        facts.add(
                candidate.hasValve()
                        ? Stages.lift(isOpen(point), point.lift())
                        : new Fact(ShowTexts.get("fact.valve"), ShowTexts.get("valve.none"), false));
        facts.add(new Fact(ShowTexts.get("fact.flow"), words.flow(point.mediumFlow() + point.bypassFlow()), false));
        facts.add(new Fact(ShowTexts.get("fact.oil"), words.temperature(point.oilTemperature()), false));
        facts.add(new Fact(ShowTexts.get("fact.gallery"), words.pressure(point.galleryPressure()), false));
        return facts;
    }

    private static boolean isOpen(StartPoint point) {
        return point.lift() > 0;
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        double end = times[times.length - 1];
        for (double time : MARKS) {
            if (time < 0.8 * end) {
                double at = Math.log1p(time / end * Math.expm1(HURRY)) / HURRY;
                String words = time < MINUTE
                        ? ShowTexts.get("unit.seconds", String.format(Locale.ROOT, "%.0f", time))
                        : ShowTexts.get("unit.minutes", String.format(Locale.ROOT, "%.0f", time / MINUTE));
                marks.add(new Mark(words, at));
            }
        }
        return marks;
    }

    private static String clock(double seconds) {
        if (seconds < MINUTE) {
            return ShowTexts.get("unit.seconds", String.format(Locale.ROOT, seconds < 10 ? "%.1f" : "%.0f", seconds));
        }
        long whole = Math.round(seconds);
        return ShowTexts.get("unit.clock", Long.toString(whole / 60), String.format(Locale.ROOT, "%02d", whole % 60));
    }

    /** What the drawing takes of a moment. */
    private PointResult steady(StartPoint point) {
        double flow = point.mediumFlow() + point.bypassFlow();
        PointResult like = opened.pointAtFlow(candidate.name(), Math.max(LEAST_FLOW, flow), point.oilTemperature())
                .now();
        double scale = like.pressureDrop() > 0 ? point.filterDrop() / like.pressureDrop() : 0;
        Optional<PointResult.Bypass> bypass = candidate.hasValve()
                ? Optional.of(new PointResult.Bypass(
                        isOpen(point),
                        point.bypassFlow(),
                        point.bypassShare(),
                        point.valveDifference(),
                        point.openingPressure(),
                        point.lift()))
                : Optional.empty();
        return new PointResult(
                candidate.name(),
                like.setting(),
                start.schedule(),
                like.status(),
                point.oilTemperature(),
                flow,
                point.filterDrop(),
                like.elementPressureDrop() * scale,
                like.parts().stream()
                        .map(part -> new PointResult.Part(part.name(), scale * part.pressureDrop()))
                        .toList(),
                bypass,
                like.oil(),
                Optional.empty(),
                0,
                0,
                List.of());
    }

    /** The state at a time, straight between the points of the series. */
    private StartPoint at(double time) {
        List<StartPoint> series = candidate.start().series();
        int after = 1;
        while (after < series.size() - 1 && series.get(after).time() < time) {
            after++;
        }
        StartPoint a = series.get(after - 1);
        StartPoint b = series.get(after);
        double span = b.time() - a.time();
        double w = span > 0 ? Math.min(1, Math.max(0, (time - a.time()) / span)) : 1;
        return new StartPoint(
                time,
                mix(a.oilTemperature(), b.oilTemperature(), w),
                mix(a.metalTemperature(), b.metalTemperature(), w),
                mix(a.elementTemperature(), b.elementTemperature(), w),
                mix(a.pumpPressure(), b.pumpPressure(), w),
                mix(a.galleryPressure(), b.galleryPressure(), w),
                mix(a.filterDrop(), b.filterDrop(), w),
                mix(a.valveDifference(), b.valveDifference(), w),
                w < 0.5 ? a.openingPressure() : b.openingPressure(),
                mix(a.lift(), b.lift(), w),
                mix(a.pumpFlow(), b.pumpFlow(), w),
                mix(a.reliefFlow(), b.reliefFlow(), w),
                mix(a.mediumFlow(), b.mediumFlow(), w),
                mix(a.bypassFlow(), b.bypassFlow(), w));
    }

    private static double mix(double a, double b, double weight) {
        return a + weight * (b - a);
    }
}

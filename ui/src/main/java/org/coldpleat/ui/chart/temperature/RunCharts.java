package org.coldpleat.ui.chart.temperature;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.ui.chart.map.ShareGrid;

/** From results of a run to what the charts take. */
public final class RunCharts {
    private RunCharts() {}

    /** One sheet a state, in the order of the case. */
    public static List<StateSheet> sheets(Comparison comparison) {
        int states = comparison.candidates().isEmpty()
                ? 0
                : comparison.candidates().get(0).states().size();
        return IntStream.range(0, states).mapToObj(s -> sheet(comparison, s)).toList();
    }

    /** The map of one candidate. */
    public static ShareGrid grid(MapResult map, String title, boolean invented) {
        return new ShareGrid(
                title,
                invented,
                map.candidate(),
                map.setting().equals("engine"),
                map.temperature(),
                map.drive(),
                map.share());
    }

    private static StateSheet sheet(Comparison comparison, int s) {
        List<CandidateCurve> curves = new ArrayList<>();
        for (int c = 0; c < comparison.candidates().size(); c++) {
            CandidateResult candidate = comparison.candidates().get(c);
            StateResult state = candidate.states().get(s);
            curves.add(new CandidateCurve(
                    c,
                    candidate.name(),
                    state.curve().temperature(),
                    state.curve().valveDifference(),
                    state.curve().bypassShare(),
                    candidate.sheet().openingPressure().map(RunCharts::positiveSpan),
                    openings(state, comparison.from(), comparison.to())));
        }
        return new StateSheet(
                comparison.title(),
                comparison.candidates().get(0).states().get(s).state(),
                comparison.invented(),
                comparison.from(),
                comparison.to(),
                named(comparison.named()),
                curves);
    }

    /** The sheet of one state, without bands. */
    public static StateSheet sheet(QuickCurves quickCurves) {
        List<CandidateCurve> curves = new ArrayList<>();
        for (int c = 0; c < quickCurves.candidates().size(); c++) {
            curves.add(curve(c, quickCurves.candidates().get(c), quickCurves.from(), quickCurves.to()));
        }
        return new StateSheet(
                quickCurves.title(),
                quickCurves.state(),
                quickCurves.invented(),
                quickCurves.from(),
                quickCurves.to(),
                named(quickCurves.named()),
                curves);
    }

    /**
     * The curve of one candidate, without bands.
     *
     * @param index place of the candidate in the case, from 0
     * @param from coldest oil temperature of the case [K]
     * @param to warmest [K]
     */
    public static CandidateCurve curve(int index, QuickCurves.Candidate candidate, double from, double to) {
        OptionalDouble pressure = candidate.openingPressure();
        return new CandidateCurve(
                index,
                candidate.name(),
                candidate.curve().temperature(),
                candidate.curve().valveDifference(),
                candidate.curve().bypassShare(),
                pressure.isPresent() ? Optional.of(Span.exact(pressure.getAsDouble())) : Optional.empty(),
                candidate.intervals().stream()
                        .flatMap(interval -> Arrays.stream(interval).boxed())
                        .filter(end -> end > from && end < to)
                        .map(Span::exact)
                        .toList());
    }

    private static List<StateSheet.Named> named(List<NamedTemperature> named) {
        return named.stream()
                .map(one -> new StateSheet.Named(one.name(), one.temperature()))
                .toList();
    }

    /** Ends of the open intervals inside the range; the one that is the opening temperature brings its band. */
    private static List<Span> openings(StateResult state, double from, double to) {
        List<Span> spans = new ArrayList<>();
        for (double[] interval : state.intervals()) {
            for (double end : interval) {
                if (end > from && end < to) {
                    spans.add(state.openingTemperature()
                            .filter(band -> Math.abs(band.value() - end) < SAME_TEMPERATURE)
                            .map(band -> span(band, from, to))
                            .orElseGet(() -> Span.exact(end)));
                }
            }
        }
        return spans;
    }

    /** Two temperatures nearer than this are the same end of an interval [K]. */
    private static final double SAME_TEMPERATURE = 0.01;

    /** The band cut off at the ends of the range: beyond them it is open-ended. */
    private static Span span(OpeningBand band, double from, double to) {
        return new Span(
                band.value(),
                Math.min(band.value(), Math.max(band.low(), from)),
                Math.max(band.value(), Math.min(band.high(), to)));
    }

    /** A pressure band cut off above 0, which a logarithmic axis cannot show. */
    private static Span positiveSpan(Band band) {
        return new Span(band.value(), Math.max(band.low(), 0.01 * band.value()), band.high());
    }
}

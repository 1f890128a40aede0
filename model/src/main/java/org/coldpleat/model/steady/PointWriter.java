package org.coldpleat.model.steady;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.filter.FilterState;
import org.coldpleat.model.filter.ValveState;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.shared.notice.Notice;

/** Writes out one operating point. */
public final class PointWriter {
    private PointWriter() {}

    public static PointResult inState(
            ResolvedCase resolved, int position, OperatingState operatingState, double temperature) {
        Oil oil = resolved.shared().oil().oil();
        if (!(temperature >= Oil.MIN_TEMPERATURE - 1e-6 && temperature <= Oil.MAX_TEMPERATURE + 1e-6)) {
            throw new IllegalArgumentException("temperature must be within " + Oil.MIN_TEMPERATURE + " to "
                    + Oil.MAX_TEMPERATURE + " K, was " + temperature + " K");
        }
        BuiltCandidate candidate = resolved.candidates().get(position);
        StateModel model = new StateModel(resolved.shared(), candidate.filter(), operatingState);
        SolvedPoint solved = model.at(temperature);
        FilterState filter = solved.filter();
        OperatingPoint point = solved.point();
        List<Notice> notices = new ArrayList<>(OilNotices.at(oil, temperature));
        notices.addAll(point.notices());
        notices.addAll(filter.notices());
        notices.addAll(candidate.notices());
        return new PointResult(
                candidate.name(),
                operatingState.setting(),
                operatingState.name(),
                solved.status(),
                temperature,
                filter.totalFlow(),
                filter.totalDrop(),
                filter.elementDrop(),
                parts(filter),
                bypass(model, filter),
                new PointResult.OilPoint(
                        oil.kinematicViscosity(temperature),
                        solved.fluid().dynamicViscosity(),
                        solved.fluid().density()),
                operatingState.isEngine() ? Optional.of(engine(point)) : Optional.empty(),
                Math.max(filter.flowResidual(), point.residuals().flow()),
                Math.max(filter.pressureResidual(), point.residuals().pressure()),
                notices);
    }

    private static List<PointResult.Part> parts(FilterState filter) {
        List<PointResult.Part> parts = new ArrayList<>();
        for (Map.Entry<FilterPart, Double> part : filter.partDrops().entrySet()) {
            parts.add(new PointResult.Part(part.getKey().name(), part.getValue()));
        }
        return parts;
    }

    private static Optional<PointResult.Bypass> bypass(StateModel model, FilterState filter) {
        if (!model.hasValve()) {
            return Optional.empty();
        }
        ValveState leading = filter.leadingValve();
        return Optional.of(new PointResult.Bypass(
                filter.isBypassOpen(),
                filter.bypassFlow(),
                filter.bypassShare(),
                leading.pressureDifference(),
                leading.openingPressure(),
                leading.liftShare()));
    }

    private static PointResult.EnginePoint engine(OperatingPoint point) {
        return new PointResult.EnginePoint(
                point.pumpPressure(),
                point.galleryPressure(),
                point.pumpFlow(),
                point.reliefFlow(),
                point.filterFlow(),
                point.filmTemperature());
    }
}

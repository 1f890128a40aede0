package org.coldpleat.model.steady;

import java.util.Optional;
import org.coldpleat.model.progress.Counted;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.OperatingState;

/** Computes the bypass share over oil temperature and engine speed, or flow where there is no engine. */
public final class MapWriter {
    private static final int TEMPERATURES = 81;
    private static final int DRIVES = 61;

    /** The map reaches this far beyond the fastest state [1]. */
    private static final double BEYOND = 1.25;

    private MapWriter() {}

    /** The map; nothing if cancelled. */
    public static Optional<MapResult> map(ResolvedCase resolved, int position, Progress progress) {
        boolean engine = resolved.shared().engine().isPresent();
        String setting = engine ? OperatingState.ENGINE : OperatingState.FLOW_STAND;
        double most = resolved.operatingStates().stream()
                .filter(operatingState -> operatingState.setting().equals(setting))
                .mapToDouble(OperatingState::drive)
                .max()
                .orElseThrow();
        double[] temperature = steps(resolved.from(), resolved.to(), TEMPERATURES);
        double[] drive = steps(BEYOND * most / DRIVES, BEYOND * most, DRIVES);
        double[][] share = new double[TEMPERATURES][DRIVES];
        BuiltCandidate candidate = resolved.candidates().get(position);
        boolean whole = new Counted(progress, DRIVES).each(DRIVES, j -> {
            OperatingState state = OperatingState.of(setting, "", drive[j]);
            StateSolver solver = new StateModel(resolved.shared(), candidate.filter(), state).solver();
            for (int i = TEMPERATURES - 1; i >= 0; i--) {
                share[i][j] = solver.at(temperature[i]) ? solver.bypassShare() : Double.NaN;
            }
        });
        return whole
                ? Optional.of(new MapResult(candidate.name(), setting, temperature, drive, share))
                : Optional.empty();
    }

    private static double[] steps(double from, double to, int count) {
        double[] steps = new double[count];
        for (int i = 0; i < count; i++) {
            steps[i] = from + (to - from) * i / (count - 1);
        }
        return steps;
    }
}

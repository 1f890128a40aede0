package org.coldpleat.model.certainty;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.DesignState;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.shared.source.Source;

/**
 * How far what is not known moves the valve ratio of a candidate in one state, over oil temperature; from it the band of
 * an opening at any setting. A setting keeps its relative spread, so the spread of the ratio does not depend on it.
 *
 * @param resolved case
 * @param operatingState state
 * @param temperature [K], rising
 * @param lnSigma standard uncertainty of the logarithm of the ratio at these temperatures [1]
 */
@Source("derived here: first-order propagation of ln(ratio), drawn between temperatures")
public record OpeningSpread(
        ResolvedCase resolved, OperatingState operatingState, double[] temperature, double[] lnSigma) {
    private static final int POINTS = 9;
    private static final double SMALLEST_RATIO = 1e-12;

    public static OpeningSpread of(
            ResolvedCase resolved, Variants variants, int position, OperatingState operatingState) {
        double[] at = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            at[i] = resolved.from() + (resolved.to() - resolved.from()) * i / (POINTS - 1);
        }
        StateModel best = new StateModel(
                resolved.shared(), resolved.candidates().get(position).filter(), operatingState);
        if (!best.hasValve()) {
            return new OpeningSpread(resolved, operatingState, at, new double[POINTS]);
        }
        List<Map<String, Double>> changes = variants.contributions(
                position,
                operatingState,
                POINTS,
                moved -> Arrays.stream(at)
                        .map(t -> Math.log(
                                Math.max(SMALLEST_RATIO, moved.heldShutSolver().ratioAt(t))))
                        .toArray());
        return new OpeningSpread(
                resolved,
                operatingState,
                at,
                changes.stream().mapToDouble(Variants::norm).toArray());
    }

    private double at(double kelvin) {
        int i = 0;
        while (i < temperature.length - 2 && temperature[i + 1] < kelvin) {
            i++;
        }
        double share = (kelvin - temperature[i]) / (temperature[i + 1] - temperature[i]);
        return lnSigma[i] + share * (lnSigma[i + 1] - lnSigma[i]);
    }

    /** Warmest open oil of a design with its band; ends infinite where it may never open, or be open however warm. */
    public OpeningBand band(Design design) {
        double value = opening(design);
        if (!Double.isFinite(value) || !DesignState.hasValve(design, operatingState)) {
            return new OpeningBand(value, value, value);
        }
        double reach = COVERAGE_95 * at(value);
        return new OpeningBand(
                value,
                opening(design.changed(change -> change.timesOpening(Math.exp(reach)))),
                opening(design.changed(change -> change.timesOpening(Math.exp(-reach)))));
    }

    private double opening(Design design) {
        return DesignState.of(design, operatingState).opening(resolved.from(), resolved.to());
    }
}

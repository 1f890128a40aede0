package org.coldpleat.model.filter;

import java.util.Optional;
import org.coldpleat.model.valve.SpringValve;

/**
 * What one bypass valve does.
 *
 * @param present whether there is such a valve
 * @param flowRate oil through it [m3/s]
 * @param pressureDifference what its faces see [Pa]; without a valve, what one there would see
 * @param openingPressure [Pa], or that at which it shuts while friction holds it open; infinite without a valve
 * @param fullLiftPressure at which the lid reaches its stop [Pa]; infinite without a valve
 * @param liftShare lift over the largest lift [0..1]; 0 without a valve
 */
public record ValveState(
        boolean present,
        double flowRate,
        double pressureDifference,
        double openingPressure,
        double fullLiftPressure,
        double liftShare) {
    static ValveState of(Optional<SpringValve> valve, double flowRate, double pressureDifference) {
        return new ValveState(
                valve.isPresent(),
                flowRate,
                pressureDifference,
                valve.map(one -> one.hangingLift() > 0 ? one.shutsAt() : one.openingPressure())
                        .orElse(Double.POSITIVE_INFINITY),
                valve.map(SpringValve::fullLiftPressure).orElse(Double.POSITIVE_INFINITY),
                valve.map(one -> one.lift(pressureDifference) / one.maximumLift())
                        .orElse(0.0));
    }

    /** Whether the difference exceeds the opening pressure. */
    public boolean isOpen() {
        return pressureDifference > openingPressure;
    }

    /** Whether the lid stands at its stop. */
    public boolean isLiftedFully() {
        return pressureDifference >= fullLiftPressure;
    }

    /** Difference over opening pressure [1]; 0 without a valve. */
    public double ratio() {
        return pressureDifference / openingPressure;
    }
}

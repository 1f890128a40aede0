package org.coldpleat.model.circuit;

import java.util.Objects;
import java.util.Optional;
import org.coldpleat.model.flow.PilotedLaw;
import org.coldpleat.shared.quantity.Require;

/**
 * Relief valve of the pump: dumps oil from the pump outlet to the sump. An ideal one holds its setting exactly; the
 * others are opened by the pressure they sense, while that of the pump drives the oil through them.
 *
 * @param sensing which pressure moves it
 * @param setPressure where it starts to open [Pa], above 0
 * @param law flow over sensed and pump pressure; empty for the ideal valve
 */
public record Relief(Sensing sensing, double setPressure, Optional<PilotedLaw> law) {
    /** Which pressure moves a relief valve. */
    public enum Sensing {
        PUMP_OUTLET,
        GALLERY
    }

    public Relief {
        Objects.requireNonNull(sensing, "sensing");
        Require.positive("setPressure", setPressure, "Pa");
        Objects.requireNonNull(law, "law");
    }

    /** Valve that holds its setting exactly, however much it dumps. */
    public static Relief ideal(Sensing sensing, double setPressure) {
        return new Relief(sensing, setPressure, Optional.empty());
    }

    /** Valve whose pressure rises by the override [Pa s/m3] times its flow. */
    public static Relief linear(Sensing sensing, double setPressure, double override) {
        return new Relief(sensing, setPressure, Optional.of(new LinearOverride(setPressure, override)));
    }

    /** Valve with a law of its own, such as a disc on a spring that can be too small when cold. */
    public static Relief valve(Sensing sensing, double setPressure, PilotedLaw law) {
        return new Relief(sensing, setPressure, Optional.of(law));
    }
}

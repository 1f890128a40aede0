package org.coldpleat.model.circuit;

import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PilotedLaw;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;

/**
 * Relief valve whose pressure rises linearly with its flow: {@code Q = (p - p_set)/m} above the setting, else none. The
 * corner is sharp; solvers of a circuit keep a bracket and cross it.
 *
 * @param setPressure p_set [Pa], above 0
 * @param override m [Pa s/m3], above 0
 */
@Source("linearized disc valve at small lift; common practice")
public record LinearOverride(double setPressure, double override) implements PilotedLaw {
    public LinearOverride {
        Require.positive("setPressure", setPressure, "Pa");
        Require.positive("override", override, "Pa s/m3");
    }

    @Override
    public Piloted at(double opening, double driving, Fluid fluid) {
        return new Piloted(
                Math.max(0, (opening - setPressure) / override), opening > setPressure ? 1 / override : 0, 0);
    }
}

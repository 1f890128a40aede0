package org.coldpleat.model.coldstart;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Start-up of an engine in time: the gallery fills, then oil, metal and filter element warm up while the viscosity falls
 * at each place; valves open and shut on the way.
 *
 * <p>Integrated by an embedded Runge-Kutta method with step control (order 5, or 8 for fine tolerances); every change of a valve, of the fill stage
 * and of the phase is located on the continuous solution and the integration starts afresh there. A bypass valve opens at
 * its opening pressure and shuts at its closing pressure.
 */
@Source(
        "Dormand and Prince 1980, J. Comput. Appl. Math. 6(1):19-26; order 8(5,3) after Hairer, Norsett, Wanner, Solving "
                + "Ordinary Differential Equations I; balances derived here")
@Validity("pressures settle at once (no waves, no inertia of the oil); the oil flows: below the pour point it may not")
public final class StartUp {
    private StartUp() {}

    /**
     * Computes a start.
     *
     * @return result whose status says whether its numbers may be used
     */
    public static StartUpResult run(StartUpSpec spec) {
        return new StartRun(spec).run();
    }
}

package org.coldpleat.validation.benchmark;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.valve.SpringValve;

/** The invented engine and filter of the benchmarks of points, and the temperatures that these go through. */
final class BenchmarkEngine {
    /** Speed of the pump [rev/s]. */
    static final double SPEED = 18;

    /** How many temperatures there are [1]. */
    static final int TEMPERATURES = 97;

    /** Opening pressure of the bypass valve [Pa]. */
    static final double OPENING_PRESSURE = 100e3;

    private static final FilterAssembly FILTER = new FilterAssembly(
                    Openings.hole(5e-3, 3e-3, Openings.SHORT_TUBE).parallelOf(6),
                    AdditiveLaw.NONE,
                    Passages.annulus(32e-3, 30.5e-3, 70e-3).laminar(),
                    6e9,
                    Openings.slot(0.8e-3, 12e-3, 0.6e-3, Openings.SHARP_EDGE).parallelOf(40),
                    Passages.collectingTube(30e-3, 70e-3),
                    Openings.hole(14e-3, 25e-3, Openings.SHORT_TUBE),
                    Optional.empty(),
                    BypassLocation.NONE,
                    Optional.empty())
            .withBypass(BypassLocation.DOME, SpringValve.disc(OPENING_PRESSURE, 11e-3, 1500, 3e-3, 1e-16));

    private static final EngineCircuit CIRCUIT = new EngineCircuit(
            Pump.unlimited(7e-6, 2.5e-12),
            List.of(Relief.valve(Relief.Sensing.PUMP_OUTLET, 450e3, SpringValve.disc(450e3, 10e-3, 8000, 3e-3, 1e-17))),
            FILTER.law(),
            new Gallery(
                    2e8,
                    new Bearings(1 / 1e11, 2e-8, 0.3, 5, 0.5),
                    List.of(new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHORT_TUBE), 2, 0))),
            new InventedOil(90, 13.5));

    private BenchmarkEngine() {}

    /** Engine with the filter on it. */
    static FilterOnEngine engine() {
        return new FilterOnEngine(CIRCUIT, FILTER);
    }

    /** The call that follows one; each is some kelvins away from the one before, and none comes twice in a round. */
    static int next(int call) {
        return (call + 7) % TEMPERATURES;
    }

    /** Temperature of the sump of a call [K], from -30 C on. */
    static double temperature(int call) {
        return 243.15 + call;
    }
}

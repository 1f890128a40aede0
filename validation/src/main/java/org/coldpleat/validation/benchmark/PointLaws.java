package org.coldpleat.validation.benchmark;

import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PilotedLaw;

/**
 * The laws of one operating point, each looked at once, with its slope, at the answer: what no solver can do without, had
 * it guessed the answer at once.
 */
final class PointLaws {
    private final EngineCircuit circuit;
    private final FilterAssembly filter;
    private final OperatingPoint answer;
    private final double mediumFlow;
    private final double valveDifference;

    /** Laws of an engine at a speed [rev/s] and a temperature [K]. */
    PointLaws(FilterOnEngine engine, double speed, double temperature) {
        FilterOnEngine.State state = engine.solve(speed, temperature);
        if (!state.isAnswer()) {
            throw new IllegalArgumentException("no answer at " + speed + " rev/s and " + temperature + " K");
        }
        circuit = engine.circuit();
        filter = engine.filter();
        answer = state.point();
        mediumFlow = state.filter().mediumFlow();
        valveDifference = state.filter().elementValve().pressureDifference();
    }

    /** Looks at all of them; the sum means nothing and keeps them from being left out. */
    double look() {
        Fluid sump = circuit.lubricant().at(answer.temperature());
        double mu = sump.dynamicViscosity();
        double pump = answer.pumpPressure();
        double flow = answer.filterFlow();
        double sum = circuit.lubricant().heatCapacity(answer.temperature())
                + circuit.lubricant().at(answer.filmTemperature()).dynamicViscosity()
                + circuit.pump().delivery(answer.speed(), pump, mu)
                + circuit.pump().deliverySlope(answer.speed(), pump, mu)
                + filter.inletHoles().pressureDrop(flow, sump)
                + filter.tubeOpenings().pressureDrop(mediumFlow, sump)
                + filter.outletBore().pressureDrop(flow, sump);
        for (Restrictor restrictor : circuit.gallery().restrictors()) {
            FlowWithSlope through = restrictor.passage(answer.bearingPressure(), sump);
            sum += through.flowRate() + through.slope();
        }
        for (Relief relief : circuit.reliefs()) {
            PilotedLaw.Piloted dumped = relief.law().orElseThrow().at(pump, pump, sump);
            sum += dumped.flowRate() + dumped.byOpening() + dumped.byDriving();
        }
        FlowWithSlope valve = filter.elementValve().orElseThrow().passage(valveDifference, sump);
        return sum + valve.flowRate() + valve.slope();
    }
}

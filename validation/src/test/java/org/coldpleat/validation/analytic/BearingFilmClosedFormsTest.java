package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.CircuitSolver;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/**
 * Bearing films against the closed form of an oil that exchanges heat along its way, at one viscosity and one flow: a pump
 * without slip pushes 1e-5 m3/s through bearings that set 500 W free, with 1653 kJ/(m3 K).
 */
class BearingFilmClosedFormsTest {
    private static final String SOURCE =
            "approach to the temperature at which metal and friction hold the oil; derived here";
    private static final double ICE = 273.15;
    private static final double VISCOSITY = 0.1;
    private static final double TURNS = 10;

    private static final Lubricant OIL = new Lubricant() {
        @Override
        public Fluid at(double temperature) {
            return new Fluid(VISCOSITY, 870);
        }

        @Override
        public double heatCapacity(double temperature) {
            return 1.653e6 / 870;
        }
    };

    /** 500 W in all: friction, and the pressure of 1e-5 m3/s through so wide a gap that it adds a hundred-thousandth. */
    private static OperatingPoint film(double conductance, double metal) {
        double omega = 2 * Math.PI * TURNS;
        Bearings bearings = new Bearings(1e-9, 0, 500 / (VISCOSITY * omega * omega), conductance, Bearings.UNMIXED);
        EngineCircuit circuit = new EngineCircuit(
                Pump.unlimited(1e-6, 0), List.of(), AdditiveLaw.NONE, new Gallery(0, bearings, List.of()), OIL);
        CircuitSolver solver = circuit.solver(AdditiveLaw.NONE.follower());
        assertTrue(solver.solve(TURNS, ICE + 20, ICE + metal).isAnswer());
        return solver.point();
    }

    private static void check(double conductance, double metal, double film, double toMetal) {
        OperatingPoint point = film(conductance, metal);
        String where = " at " + conductance + " W/K to metal of " + metal + " °C";
        ExternalCheck.of(Topic.CIRCUIT, "film temperature" + where, SOURCE)
                .expected(film, "°C")
                .computed(point.filmTemperature() - ICE)
                .within(2e-3, "digits of the closed form; pressure work left out there");
        ExternalCheck.of(Topic.CIRCUIT, "heat to the metal" + where, SOURCE)
                .expected(toMetal, "W")
                .computed(point.filmToMetal())
                .within(0.1, "digits of the closed form; pressure work left out there");
    }

    @Test
    void filmsAreHeldBetweenFrictionAndMetal() {
        check(0, 20, 35.124, 0);
        check(100, 20, 24.175, 417.5);
        check(100, 80, 74.281, -571.9);
    }

    @Test
    void metalHoldsTheFilmWhereItTakesMuch() {
        ExternalCheck.of(Topic.CIRCUIT, "film temperature with a conductance without bound", SOURCE)
                .expected(80, "°C")
                .computed(film(1e6, 80).filmTemperature() - ICE)
                .within(1e-3, "500 W over 1 MW/K");
    }
}

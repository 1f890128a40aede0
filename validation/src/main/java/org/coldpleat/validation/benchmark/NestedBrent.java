package org.coldpleat.validation.benchmark;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.Fluid;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The engine circuit solved the plain way: Brent's method around Brent's method around Brent's method, with the network
 * written down anew from flow balances and pressure sums. Uses the part laws of the model but none of its solvers. Which
 * library finds the roots is a choice.
 */
public final class NestedBrent {
    private static final double RELATIVE = 1e-15;

    /** Bracketed search of one unknown, as a library has it. */
    public enum Library {
        /** Brent's method. */
        COMMONS_MATH {
            @Override
            double root(UnivariateFunction f, double low, double high, double absolute) {
                return new BrentSolver(RELATIVE, absolute, 0).solve(MOST, f, low, high);
            }
        },
        /** Brent's method with inverse interpolation of its usual order. */
        HIPPARCHUS {
            @Override
            double root(UnivariateFunction f, double low, double high, double absolute) {
                return new BracketingNthOrderBrentSolver(RELATIVE, absolute, 0, ORDER).solve(MOST, f::value, low, high);
            }
        };

        private static final int MOST = 500;

        /** What the solver takes when asked for no other. */
        private static final int ORDER = 5;

        abstract double root(UnivariateFunction f, double low, double high, double absolute);
    }

    private final Library library;
    private final EngineCircuit circuit;
    private final FilterAssembly filter;
    private final double speed;
    private final double temperature;
    private final Fluid oil;
    private final double mu;
    private double mediumFlow;
    private double valveDifference;
    private double filmTemperature;

    /** One solve of a circuit around a filter; the filter law inside the circuit is not used. */
    public NestedBrent(
            Library library, EngineCircuit circuit, FilterAssembly filter, double speed, double temperature) {
        this.library = library;
        this.circuit = circuit;
        this.filter = filter;
        this.speed = speed;
        this.temperature = temperature;
        oil = circuit.lubricant().at(temperature);
        mu = oil.dynamicViscosity();
        filmTemperature = temperature;
    }

    /**
     * What the two solvers are compared by.
     *
     * @param pumpPressure [Pa]
     * @param galleryPressure [Pa]
     * @param filterFlow [m3/s]
     * @param filterDrop [Pa]
     * @param mediumFlow [m3/s]
     * @param valveDifference across the element valve, or across the filter without one [Pa]
     * @param filmTemperature [K]
     * @param starved whether the side flow is not met
     */
    public record Answer(
            double pumpPressure,
            double galleryPressure,
            double filterFlow,
            double filterDrop,
            double mediumFlow,
            double valveDifference,
            double filmTemperature,
            boolean starved) {}

    /** Solves the circuit. */
    public Answer solve() {
        double demand = circuit.gallery().bearings().sideFlow() * speed;
        boolean starved = demand > 0 && overPressed(demand, 0);
        double unknown = starved
                ? root(q -> overBalance(q, 0), 0, demand)
                : root(p -> overBalance(galleryFlow(p), p), 0, ceiling());
        double flow = starved ? unknown : galleryFlow(unknown);
        double gallery = (starved ? 0 : unknown) + mu * circuit.gallery().seriesResistance() * flow;
        double drop = filterDrop(flow);
        return new Answer(gallery + drop, gallery, flow, drop, mediumFlow, valveDifference, filmTemperature, starved);
    }

    private boolean overPressed(double flow, double bearingPressure) {
        return overBalance(flow, bearingPressure) < 0;
    }

    /** Falls through zero at the answer: surplus of flow, or room left below the tightest ideal relief valve. */
    private double overBalance(double flow, double bearingPressure) {
        double gallery = bearingPressure + mu * circuit.gallery().seriesResistance() * flow;
        double pump = gallery + filterDrop(flow);
        double delivered = circuit.pump().delivery(speed, pump, mu);
        double surplus = delivered - flow;
        double room = Double.POSITIVE_INFINITY;
        for (Relief relief : circuit.reliefs()) {
            double sensed = relief.sensing() == Relief.Sensing.PUMP_OUTLET ? pump : gallery;
            if (relief.law().isPresent()) {
                surplus -= relief.law().get().at(sensed, pump, oil).flowRate();
            } else {
                room = Math.min(room, 1 - sensed / relief.setPressure());
            }
        }
        return Math.min(surplus / (circuit.pump().displacement() * speed), room);
    }

    private double ceiling() {
        double p = 1e5;
        while (overBalance(galleryFlow(p), p) > 0) {
            p *= 4;
        }
        return p;
    }

    private double galleryFlow(double pressure) {
        double flow = bearingFlow(pressure);
        for (Restrictor restrictor : circuit.gallery().restrictors()) {
            flow += restrictor.flowRate(pressure, oil);
        }
        return flow;
    }

    private double bearingFlow(double pressure) {
        Bearings bearings = circuit.gallery().bearings();
        double side = bearings.sideFlow() * speed;
        if (bearings.filmPosition() == 0 || (bearings.conductance() == 0 && side == 0)) {
            return side + bearings.conductance() * pressure / mu;
        }
        double omega = 2 * Math.PI * speed;
        double density = oil.density();
        double capacity = circuit.lubricant().heatCapacity(temperature);
        UnivariateFunction balance = film -> {
            double filmViscosity = circuit.lubricant().at(film).dynamicViscosity();
            double flow = side + bearings.conductance() * pressure / filmViscosity;
            double freed = filmViscosity * bearings.friction() * omega * omega + pressure * flow;
            double n = bearings.metalConductance() / (density * capacity * flow);
            double e1 = n < 1e-5 ? 1 - n / 2 + n * n / 6 : -Math.expm1(-n) / n;
            double h = n < 1e-5 ? 0.5 - n / 6 + n * n / 24 : (1 - e1) / n;
            double mean = bearings.filmPosition() * e1 + (1 - bearings.filmPosition()) * (2 * h - e1);
            return freed - density * capacity * flow / mean * (film - temperature);
        };
        filmTemperature = pressure == 0 && side == 0 ? temperature : root(balance, temperature, 600);
        return side
                + bearings.conductance()
                        * pressure
                        / circuit.lubricant().at(filmTemperature).dynamicViscosity();
    }

    private double filterDrop(double flow) {
        if (filter.blockValve().isEmpty() || flow == 0) {
            return withinFilter(flow);
        }
        double through = root(q -> flow - q - filter.blockValve().get().flowRate(withinFilter(q), oil), 0, flow);
        return withinFilter(through);
    }

    private double withinFilter(double flow) {
        double along = mu * (filter.annulusResistance() + filter.centerTube().laminar());
        boolean dome = filter.elementValveLocation() == BypassLocation.DOME;
        double bypass = 0;
        if (filter.elementValve().isPresent() && flow != 0) {
            double top = seen(flow, 0, along, dome);
            double y = root(
                    d -> {
                        double v = filter.elementValve().get().flowRate(d, oil);
                        return seen(flow - v, v, along, dome) - d;
                    },
                    Math.min(top, 0),
                    Math.max(top, 0));
            bypass = filter.elementValve().get().flowRate(y, oil);
            valveDifference = y;
        }
        mediumFlow = flow - bypass;
        double tube = oil.density() * filter.centerTube().inertial();
        double carried = dome ? flow : mediumFlow;
        double drop = filter.inletHoles().pressureDrop(flow, oil)
                + filter.antiDrainFlap().pressureDrop(flow, oil)
                + along * (mediumFlow / 3 + (dome ? bypass / 2 : 0))
                + packAndOpenings(mediumFlow)
                + tube * carried * Math.abs(carried)
                + filter.outletBore().pressureDrop(flow, oil);
        if (filter.elementValve().isEmpty()) {
            valveDifference = drop;
        }
        return drop;
    }

    /** What the element valve sees with medium flow q and bypass flow v. */
    private double seen(double q, double v, double along, boolean dome) {
        if (dome) {
            return packAndOpenings(q) - along * (q / 6 + v / 2);
        }
        return packAndOpenings(q)
                + along * q / 3
                + oil.density() * filter.centerTube().inertial() * q * Math.abs(q);
    }

    private double packAndOpenings(double q) {
        return mu * filter.elementResistance() * q + filter.tubeOpenings().pressureDrop(q, oil);
    }

    private double root(UnivariateFunction falling, double low, double high) {
        double atLow = falling.value(low);
        double atHigh = falling.value(high);
        if (atLow == 0 || low == high) {
            return low;
        }
        if (atHigh == 0 || atLow * atHigh > 0) {
            return high;
        }
        double x = library.root(falling, low, high, Math.abs(high - low) * 1e-18);
        falling.value(x);
        return x;
    }
}

package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.coldstart.StartEvent.Kind;
import org.coldpleat.model.coldstart.StartPoint;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartStatus;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.coldstart.TemperatureTrace;
import org.coldpleat.model.coldstart.ThermalModel;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** Start-ups whose course is known in closed form; all derived here. */
class StartUpClosedFormsTest {
    private static final String SOURCE = "derived here";

    private static final double PSI = 1e9;
    private static final double FLOW = 1e-4;
    private static final double OPENING = 100e3;
    private static final double STEEPNESS = 0.05;

    /** Oil of 1 Pa s at 260 K that thins by a constant share per kelvin. */
    private static final Lubricant EXPONENTIAL = new Lubricant() {
        @Override
        public Fluid at(double temperature) {
            return new Fluid(Math.exp(-STEEPNESS * (temperature - 260)), 0);
        }

        @Override
        public double heatCapacity(double temperature) {
            return 1900;
        }
    };

    private static FilterAssembly valved(double closing) {
        SpringValve valve = new SpringValve(OPENING, 12e-3, 1500, 3e-3, 1, 0.62, AdditiveLaw.NONE, 0, 0, closing);
        return FilterAssembly.ofPack(PSI).withBypass(BypassLocation.BASE, valve);
    }

    private static EngineCircuit engine(Lubricant oil, Relief... reliefs) {
        return new EngineCircuit(
                Pump.unlimited(FLOW / 10, 0), List.of(reliefs), AdditiveLaw.NONE, Gallery.laminar(1e8), oil);
    }

    private static StartUpSpec spec(
            EngineCircuit engine,
            FilterAssembly filter,
            ThermalModel thermal,
            StartSchedule schedule,
            double start,
            double gallery,
            double hot,
            double horizon,
            double tolerance) {
        return new StartUpSpec(
                engine, filter, thermal, Optional.empty(), schedule, start, gallery, hot, horizon, tolerance);
    }

    private static StartUpResult traced(TemperatureTrace trace, double closing, double horizon) {
        return StartUp.run(new StartUpSpec(
                engine(EXPONENTIAL),
                valved(closing),
                ThermalModel.twoMass(4, 1e4, 0, 0, 0, 260),
                Optional.of(trace),
                StartSchedule.steady(10, 0, 0),
                280,
                0,
                400,
                horizon,
                1e-6));
    }

    @Test
    void oneLumpIsHotWhenItsClosedFormSays() {
        // 20 to 80 C, toward 95 C, lag 560 s: tau ln(75/15) = 901.3 s
        double capacity = 4 * 1900;
        ThermalModel thermal = ThermalModel.twoMass(4, 1, 0, capacity / 560, 0, 293.15);
        StartUpResult result = StartUp.run(spec(
                engine(new OneViscosity(0.1, 870)),
                valved(OPENING),
                thermal,
                StartSchedule.steady(0, 0, capacity / 560 * 75),
                293.15,
                0,
                353.15,
                1000,
                1e-11));
        double closed = 560 * Math.log(75.0 / 15);
        check("warm-up time of one lump, by hand")
                .expected(901.3, "s")
                .computed(closed)
                .within(0.05, "half the last digit");
        check("warm-up time of one lump")
                .expected(closed, "s")
                .computed(result.hotTime().orElseThrow())
                .withinRelative(1e-9, "integration error");
    }

    @Test
    void pumpWorkWarmsTheOilByTheAdiabaticRisePerPass() {
        double density = 870;
        double closed = ClosedForms.adiabaticRise(157e3, density, 1900);
        check("adiabatic rise of oil pressed through 157 kPa")
                .expected(0.09498, "K")
                .computed(closed)
                .within(5e-6, "half the last digit");
        // one sump volume pumped against an ideal relief at 157 kPa, nothing lost
        double volume = 4 / density;
        double time = volume / FLOW;
        StartUpResult result = StartUp.run(spec(
                engine(new OneViscosity(5, density), Relief.ideal(Relief.Sensing.PUMP_OUTLET, 157e3)),
                FilterAssembly.ofPack(PSI),
                ThermalModel.twoMass(4, 1e4, 0, 0, 0, 260),
                StartSchedule.steady(10, 0, 0),
                260,
                0,
                400,
                time,
                1e-9));
        StartPoint last = result.series().get(result.series().size() - 1);
        check("pump pressure under an ideal relief")
                .expected(157e3, "Pa")
                .computed(last.pumpPressure())
                .within(1e-6, "arithmetic");
        check("rise of a sump pumped once through a relief")
                .expected(closed, "K")
                .computed(last.oilTemperature() - 260)
                .within(1e-8 * 260, "integration error of the temperature");
    }

    @Test
    void galleryIsFullAfterItsVolumeOverTheFlow() {
        StartUpResult result = StartUp.run(spec(
                engine(new OneViscosity(0.5, 870)),
                FilterAssembly.ofPack(PSI),
                ThermalModel.twoMass(4, 1e4, 0, 0, 0, 260),
                StartSchedule.steady(10, 0, 0),
                260,
                0.2e-3,
                400,
                30,
                1e-9));
        check("time to fill the gallery")
                .expected(2, "s")
                .computed(result.fillTime().orElseThrow())
                .within(1e-9, "event located near rounding");
        check("volume that filled the gallery")
                .expected(0.2e-3, "m3")
                .computed(result.fill().filteredVolume())
                .within(1e-12, "arithmetic");
        // mu psi Q while filling; mu (psi_f + psi_g) Q from then on
        check("pump pressure while the gallery fills")
                .expected(0.5 * PSI * FLOW, "Pa")
                .computed(result.series().get(0).pumpPressure())
                .within(1e-6, "arithmetic");
        assertEquals(0, result.series().get(0).galleryPressure());
        StartPoint last = result.series().get(result.series().size() - 1);
        check("pump pressure when it is full")
                .expected(0.5 * (PSI + 1e8) * FLOW, "Pa")
                .computed(last.pumpPressure())
                .within(1e-6, "arithmetic");
    }

    @Test
    void reliefCapsTheDropWhileTheGalleryFills() {
        for (double viscosity = 0.1; viscosity < 30; viscosity *= 1.7) {
            StartUpResult result = StartUp.run(spec(
                    engine(new OneViscosity(viscosity, 870), Relief.ideal(Relief.Sensing.PUMP_OUTLET, 400e3)),
                    FilterAssembly.ofPack(PSI),
                    ThermalModel.twoMass(4, 1e4, 0, 0, 0, 260),
                    StartSchedule.steady(10, 0, 0),
                    260,
                    0.2e-3,
                    400,
                    1,
                    1e-9));
            double expected = Math.min(viscosity * PSI * FLOW, 400e3);
            StartPoint first = result.series().get(0);
            check("filter drop while the gallery fills")
                    .at(viscosity + " Pa s")
                    .expected(expected, "Pa")
                    .computed(first.filterDrop())
                    .withinRelative(1e-9, "exact; the solver stops near rounding");
            check("flow of the medium while the gallery fills")
                    .at(viscosity + " Pa s")
                    .expected(expected / (viscosity * PSI), "m3/s")
                    .computed(first.mediumFlow())
                    .within(1e-9 * first.mediumFlow(), "exact; the solver stops near rounding");
            check("flow of medium and relief together")
                    .at(viscosity + " Pa s")
                    .expected(FLOW, "m3/s")
                    .computed(first.mediumFlow() + first.reliefFlow())
                    .withinRelative(1e-12, "arithmetic");
        }
    }

    @Test
    void valveShutsWhenTheClosedFormSays() {
        // a sump so heavy that only the stated heat counts: T = 350 - 90 exp(-t/400); mu psi Q = p_b at T*
        double capacity = 1e12 * 1900;
        ThermalModel thermal = ThermalModel.twoMass(1e12, 1, 0, capacity / 400, 0, 250);
        StartUpResult result = StartUp.run(spec(
                engine(EXPONENTIAL),
                valved(OPENING),
                thermal,
                StartSchedule.steady(10, 0, capacity / 400 * 100),
                255,
                0,
                330,
                1000,
                1e-11));
        double crossing = 260 - Math.log(OPENING / (PSI * FLOW)) / STEEPNESS;
        double closed = 400 * Math.log(95 / (350 - crossing));
        check("time at which the valve shuts")
                .expected(closed, "s")
                .computed(result.closingTime().orElseThrow())
                .withinRelative(1e-9, "integration error");
        double hot = 400 * Math.log(95.0 / 20);
        check("time at which the oil is hot")
                .expected(hot, "s")
                .computed(result.hotTime().orElseThrow())
                .withinRelative(1e-9, "integration error");
        check("seconds the valve was open")
                .expected(closed, "s")
                .computed(result.total().openSeconds())
                .withinRelative(1e-9, "integration error");
    }

    @Test
    void heldOpenValveShutsAtItsClosingPressureAndOnlyOnce() {
        double capacity = 1e12 * 1900;
        ThermalModel thermal = ThermalModel.twoMass(1e12, 1, 0, capacity / 400, 0, 250);
        StartUpResult result = StartUp.run(spec(
                engine(EXPONENTIAL),
                valved(80e3),
                thermal,
                StartSchedule.steady(10, 0, capacity / 400 * 100),
                255,
                0,
                330,
                1000,
                1e-11));
        double crossing = 260 - Math.log(80e3 / (PSI * FLOW)) / STEEPNESS;
        double closed = 400 * Math.log(95 / (350 - crossing));
        check("time at which a valve with a lower closing pressure shuts")
                .expected(closed, "s")
                .computed(result.closingTime().orElseThrow())
                .withinRelative(1e-9, "integration error");
        assertEquals(1, result.events(Kind.VALVE_OPENS).size());
        assertEquals(1, result.events(Kind.VALVE_CLOSES).size());
    }

    @Test
    void elementIsFlushedWithItsTimeConstant() {
        // oil held at 300 K by the log, element from 280 K: lag (rho cp V + C)/(rho cp Q)
        OneViscosity oil = new OneViscosity(0.1, 870);
        ThermalModel thermal = new ThermalModel(4, 1e4, 0.3e-3, 200, 0, 0, 0, 0, 280);
        StartUpResult result = StartUp.run(new StartUpSpec(
                engine(oil),
                FilterAssembly.ofPack(PSI),
                thermal,
                Optional.of(new TemperatureTrace(new double[] {0, 100}, new double[] {300, 300})),
                StartSchedule.steady(10, 0, 0),
                280,
                0,
                400,
                8,
                1e-10));
        double lag = (870 * 1900 * 0.3e-3 + 200) / (870 * 1900 * FLOW);
        StartPoint last = result.series().get(result.series().size() - 1);
        check("temperature of an element flushed by warm oil")
                .expected(300 - 20 * Math.exp(-8 / lag), "K")
                .computed(last.elementTemperature())
                .within(1e-7, "integration error");
    }

    @Test
    void curveThatOnlyTouchesTheLimitIsSeenAndDoesNotOpenTheValve() {
        // coldest at 100 s; the drop there is the opening pressure less five millionths
        double coldest = 260 + 5e-6 / STEEPNESS;
        TemperatureTrace trace = new TemperatureTrace(new double[] {0, 100, 230}, new double[] {280, coldest, 290});
        StartUpResult result = traced(trace, OPENING, 230);
        assertTrue(result.events(Kind.VALVE_OPENS).isEmpty());
        assertEquals(1, result.events(Kind.VALVE_TOUCHED).size());
        check("time at which the limit is only touched")
                .expected(100, "s")
                .computed(result.events(Kind.VALVE_TOUCHED).get(0).time())
                .within(0.05, "flat top: five millionths of the drop are 0.05 s or less");
        check("greatest drop over the opening pressure")
                .expected(1 - 5e-6, "1")
                .computed(result.valveRatioPeak().value())
                .within(1e-9, "integration error");
        assertEquals("start.touched", result.notices().get(0).code());
    }

    @Test
    void curveThatGrazesAcrossTheLimitOpensTheValveOnceForTheRightTime() {
        double above = 1e-7;
        double coldest = 260 - above / STEEPNESS;
        TemperatureTrace trace = new TemperatureTrace(new double[] {0, 100, 230}, new double[] {280, coldest, 290});
        for (double closing : new double[] {OPENING, 90e3}) {
            StartUpResult result = traced(trace, closing, 230);
            assertEquals(StartStatus.COMPLETED, result.status());
            assertEquals(1, result.events(Kind.VALVE_OPENS).size());
            assertEquals(1, result.events(Kind.VALVE_CLOSES).size());
            double shut = bisect(trace, 260 - Math.log(closing / OPENING) / STEEPNESS, 100, 230);
            double opened = bisect(trace, 260, 100, 0);
            // crossings of a flat curve: an error of 1e-13 in the difference moves them by 1e-7 of their distance
            check("time at which a grazing curve opens the valve")
                    .at("closing at " + closing + " Pa")
                    .expected(opened, "s")
                    .computed(result.events(Kind.VALVE_OPENS).get(0).time())
                    .within(1e-6, "a flat curve moves its crossings by 1e-7 of their distance");
            check("time at which a grazing curve lets it shut")
                    .at("closing at " + closing + " Pa")
                    .expected(shut, "s")
                    .computed(result.closingTime().orElseThrow())
                    .within(1e-6, "a flat curve moves its crossings by 1e-7 of their distance");
            check("seconds open of a grazing curve")
                    .at("closing at " + closing + " Pa")
                    .expected(shut - opened, "s")
                    .computed(result.total().openSeconds())
                    .within(2e-6, "both crossings");
        }
    }

    /** Where the trace reaches a temperature between a colder and a warmer time. */
    private static double bisect(TemperatureTrace trace, double temperature, double colder, double warmer) {
        double low = colder;
        double high = warmer;
        for (int i = 0; i < 100; i++) {
            double middle = 0.5 * (low + high);
            if (trace.at(middle) < temperature) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.START, quantity, SOURCE);
    }
}

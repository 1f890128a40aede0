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
import org.junit.jupiter.api.Test;

/** Start-ups whose course is known in closed form; all derived here. */
class StartUpClosedFormsTest {
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
        SpringValve valve = new SpringValve(OPENING, 12e-3, 1500, 3e-3, 1, 0.62, 0, AdditiveLaw.NONE, 0, 0, closing);
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
        assertEquals(901.3, closed, 0.05);
        assertEquals(closed, result.hotTime().orElseThrow(), 1e-9 * closed);
    }

    @Test
    void pumpWorkWarmsTheOilByTheAdiabaticRisePerPass() {
        double density = 870;
        double closed = ClosedForms.adiabaticRise(157e3, density, 1900);
        assertEquals(0.09498, closed, 5e-6);
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
        assertEquals(157e3, last.pumpPressure(), 1e-6);
        assertEquals(closed, last.oilTemperature() - 260, 1e-8 * 260);
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
        assertEquals(2, result.fillTime().orElseThrow(), 1e-9);
        assertEquals(0.2e-3, result.fill().filteredVolume(), 1e-12);
        // mu psi Q while filling; mu (psi_f + psi_g) Q from then on
        assertEquals(0.5 * PSI * FLOW, result.series().get(0).pumpPressure(), 1e-6);
        assertEquals(0, result.series().get(0).galleryPressure());
        StartPoint last = result.series().get(result.series().size() - 1);
        assertEquals(0.5 * (PSI + 1e8) * FLOW, last.pumpPressure(), 1e-6);
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
            assertEquals(expected, first.filterDrop(), 1e-9 * expected);
            assertEquals(expected / (viscosity * PSI), first.mediumFlow(), 1e-9 * first.mediumFlow());
            assertEquals(FLOW, first.mediumFlow() + first.reliefFlow(), 1e-12 * FLOW);
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
        assertEquals(closed, result.closingTime().orElseThrow(), 1e-9 * closed);
        double hot = 400 * Math.log(95.0 / 20);
        assertEquals(hot, result.hotTime().orElseThrow(), 1e-9 * hot);
        assertEquals(closed, result.total().openSeconds(), 1e-9 * closed);
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
        assertEquals(closed, result.closingTime().orElseThrow(), 1e-9 * closed);
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
        assertEquals(300 - 20 * Math.exp(-8 / lag), last.elementTemperature(), 1e-7);
    }

    @Test
    void curveThatOnlyTouchesTheLimitIsSeenAndDoesNotOpenTheValve() {
        // coldest at 100 s; the drop there is the opening pressure less five millionths
        double coldest = 260 + 5e-6 / STEEPNESS;
        TemperatureTrace trace = new TemperatureTrace(new double[] {0, 100, 230}, new double[] {280, coldest, 290});
        StartUpResult result = traced(trace, OPENING, 230);
        assertTrue(result.events(Kind.VALVE_OPENS).isEmpty());
        assertEquals(1, result.events(Kind.VALVE_TOUCHED).size());
        assertEquals(100, result.events(Kind.VALVE_TOUCHED).get(0).time(), 0.05);
        assertEquals(1 - 5e-6, result.valveRatioPeak().value(), 1e-9);
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
            assertEquals(opened, result.events(Kind.VALVE_OPENS).get(0).time(), 1e-6);
            assertEquals(shut, result.closingTime().orElseThrow(), 1e-6);
            assertEquals(shut - opened, result.total().openSeconds(), 2e-6);
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
}

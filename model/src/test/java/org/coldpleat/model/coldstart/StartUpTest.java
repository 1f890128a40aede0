package org.coldpleat.model.coldstart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.notice.NoticeText;
import org.junit.jupiter.api.Test;

class StartUpTest {
    /** An invented oil: 3 Pa s at 0 C, 146 mPa s at 40 C, 14 mPa s at 100 C. */
    private static final Lubricant OIL = new Lubricant() {
        @Override
        public Fluid at(double temperature) {
            double nu = (Math.exp(Math.exp(21.0 - 3.37 * Math.log(temperature))) - 0.7) * 1e-6;
            double density = 880 * Math.exp(-7e-4 * (temperature - 288));
            return new Fluid(density * nu, density);
        }

        @Override
        public double heatCapacity(double temperature) {
            return 1800 + 3.6 * (temperature - 273);
        }
    };

    private static FilterAssembly filter(double resistance, double closing) {
        SpringValve valve = new SpringValve(100e3, 11e-3, 1200, 3e-3, 1, 0.62, AdditiveLaw.NONE, 1e-16, 0, closing);
        return FilterAssembly.ofPack(resistance).withBypass(BypassLocation.BASE, valve);
    }

    private static StartUpSpec spec(double resistance, double closing) {
        Restrictor jets = new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHORT_TUBE), 2, 0);
        Gallery gallery = new Gallery(1e8, new Bearings(5e-12, 2e-8, 0.3, 5, 0.5), List.of(jets));
        EngineCircuit engine = new EngineCircuit(
                Pump.unlimited(3e-6, 2e-12),
                List.of(Relief.linear(Relief.Sensing.PUMP_OUTLET, 400e3, 2e8)),
                AdditiveLaw.NONE,
                gallery,
                OIL);
        StartSchedule schedule = new StartSchedule(List.of(
                new StartPhase(2, 4, 0, 0), new StartPhase(60, 20, 3000, 200), StartPhase.endless(50, 4500, 500)));
        return new StartUpSpec(
                engine,
                filter(resistance, closing),
                new ThermalModel(1.5, 15e3, 0.2e-3, 150, 0, 40, 3, 25, 258),
                Optional.empty(),
                schedule,
                258,
                0.15e-3,
                353,
                600,
                StartUpSpec.USUAL_TOLERANCE);
    }

    @Test
    void valveOpensWhileFillingAndShutsAsTheOilWarms() {
        StartUpResult result = StartUp.run(spec(2e9, 90e3));
        assertEquals(StartStatus.COMPLETED, result.status());
        assertEquals(0, result.events(StartEvent.Kind.VALVE_OPENS).get(0).time());
        assertEquals(1, result.events(StartEvent.Kind.VALVE_CLOSES).size());
        double closing = result.closingTime().orElseThrow();
        assertEquals(closing, result.total().openSeconds(), 1e-9);
        StartEvent closes = result.events(StartEvent.Kind.VALVE_CLOSES).get(0);
        assertEquals(closing, closes.time());
        // shut valve law at the closing pressure of the held-open one: no flow in either, so the difference is
        // continuous
        assertEquals(90e3, closes.valveDifference(), 1);
        assertTrue(result.hotTime().orElseThrow() > closing);
        assertTrue(result.fill().unfilteredVolume() > 0 && result.connected().unfilteredVolume() > 0);
        assertFalse(result.openAtEnd());
    }

    @Test
    void phasesBeginExactlyWhenScheduled() {
        StartUpResult result = StartUp.run(spec(4e8, 100e3));
        List<StartEvent> phases = result.events(StartEvent.Kind.PHASE);
        assertEquals(
                List.of(0.0, 2.0, 62.0), phases.stream().map(StartEvent::time).toList());
        assertEquals(600, result.endTime());
    }

    @Test
    void eventsAndSeriesRunForwardAndStaySmall() {
        StartUpResult result = StartUp.run(spec(8e9, 80e3));
        for (int i = 1; i < result.events().size(); i++) {
            assertTrue(
                    result.events().get(i).time() >= result.events().get(i - 1).time());
        }
        for (int i = 1; i < result.series().size(); i++) {
            assertTrue(
                    result.series().get(i).time() >= result.series().get(i - 1).time());
        }
        assertTrue(result.series().size() <= StartUpResult.MOST_POINTS);
        assertTrue(result.events().size() < 20);
    }

    @Test
    void elementStaysColdWhileBypassed() {
        StartUpResult result = StartUp.run(spec(8e9, 90e3));
        StartPoint open = result.series().stream()
                .filter(p -> p.time() > 40 && p.time() < 60)
                .findFirst()
                .orElseThrow();
        assertTrue(open.oilTemperature() - open.elementTemperature() > 3, open::toString);
        StartPoint last = result.series().get(result.series().size() - 1);
        // flushed in about 2 s while the oil warms by about 0.1 K/s
        assertEquals(last.oilTemperature(), last.elementTemperature(), 0.5);
    }

    @Test
    void filterWithoutValveNeverBypasses() {
        StartUpResult result = StartUp.run(spec(2e9, 90e3).withFilter(FilterAssembly.ofPack(2e9)));
        assertEquals(0, result.total().openSeconds());
        assertEquals(0, result.total().unfilteredVolume());
        assertEquals(0, result.valveRatioPeak().value());
        assertTrue(result.closingTime().isEmpty());
    }

    @Test
    void loggedTemperatureReplacesTheHeatBalanceOfTheOil() {
        StartUpSpec base = spec(2e9, 90e3);
        TemperatureTrace trace =
                new TemperatureTrace(new double[] {0, 100, 300, 600}, new double[] {258, 280, 330, 355});
        StartUpResult result = StartUp.run(new StartUpSpec(
                base.engine(),
                base.filter(),
                base.thermal(),
                Optional.of(trace),
                base.schedule(),
                258,
                base.galleryVolume(),
                330,
                600,
                1e-5));
        assertEquals(300, result.hotTime().orElseThrow(), 1e-6);
        assertTrue(result.balance().isEmpty());
        assertEquals(355, result.series().get(result.series().size() - 1).oilTemperature());
    }

    @Test
    void traceIsMonotoneAndMeetsItsPointsAndSlopes() {
        TemperatureTrace trace = new TemperatureTrace(new double[] {0, 10, 20, 50}, new double[] {260, 260, 275, 276});
        double last = 0;
        for (double t = -5; t < 60; t += 0.1) {
            assertTrue(trace.at(t) >= last);
            last = trace.at(t);
            double difference = (trace.at(t + 1e-5) - trace.at(t - 1e-5)) / 2e-5;
            boolean atEnd = Math.abs(t) < 1e-3 || Math.abs(t - 50) < 1e-3;
            assertEquals(difference, atEnd ? difference : trace.rate(t), 1e-5);
        }
        assertEquals(275, trace.at(20), 1e-12);
    }

    @Test
    void everyFaultOfAScheduleIsFoundAtItsPhase() {
        List<StartFault> faults = StartSchedule.faults(List.of(
                new StartPhase(-1, 4, 0, 0), StartPhase.endless(-2, 0, 0), new StartPhase(5, 3, Double.NaN, -1)));
        assertEquals(
                List.of(
                        StartFault.Kind.DURATION_NOT_POSITIVE,
                        StartFault.Kind.ENDLESS_BEFORE_LAST,
                        StartFault.Kind.SPEED_NEGATIVE,
                        StartFault.Kind.HEAT_NEGATIVE,
                        StartFault.Kind.HEAT_NEGATIVE),
                faults.stream().map(StartFault::kind).toList());
        assertEquals(
                List.of(0, 1, 1, 2, 2), faults.stream().map(StartFault::phase).toList());
        assertEquals(
                StartFault.Kind.NO_PHASES,
                StartSchedule.faults(List.of()).get(0).kind());
        StartPhase still = new StartPhase(5, 0, 0, 0);
        assertEquals(
                StartFault.Kind.NEVER_TURNS,
                StartSchedule.faults(List.of(still)).get(0).kind());
        assertThrows(IllegalArgumentException.class, () -> new StartSchedule(List.of(still)));
    }

    @Test
    void everyFindingHasAText() {
        for (StartFault.Kind kind : StartFault.Kind.values()) {
            assertTrue(NoticeText.has(kind.code()), kind.code());
        }
        for (String code : List.of(
                "start.notCompleted",
                "start.openOnlyWhileFilling",
                "start.stillOpen",
                "start.touched",
                "start.neverFilled",
                "start.notHot",
                "start.balanceOff")) {
            assertTrue(NoticeText.has(code), code);
        }
    }

    @Test
    void failureIsAStatusNotAnException() {
        StartUpSpec base = spec(2e9, 90e3);
        Lubricant broken = new Lubricant() {
            @Override
            public Fluid at(double temperature) {
                return new Fluid(temperature > 270 ? 1e300 : 5, 880);
            }

            @Override
            public double heatCapacity(double temperature) {
                return 1900;
            }
        };
        EngineCircuit engine = new EngineCircuit(
                base.engine().pump(),
                base.engine().reliefs(),
                AdditiveLaw.NONE,
                base.engine().gallery(),
                broken);
        StartUpResult result = StartUp.run(new StartUpSpec(
                engine,
                base.filter(),
                base.thermal(),
                Optional.empty(),
                base.schedule(),
                258,
                base.galleryVolume(),
                353,
                600,
                1e-5));
        assertFalse(result.status().isAnswer());
        assertEquals("start.notCompleted", result.notices().get(0).code());
    }
}

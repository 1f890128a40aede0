package org.coldpleat.model.loading.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.coldpleat.model.Cases;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.casefile.Months;
import org.junit.jupiter.api.Test;

class DutyCycleTest {
    private static final double ZERO_CELSIUS = 273.15;

    private static String withDuty(String starts, String rest) {
        return Cases.OIL + """
                engine:
                  pump: {displacement: 5 cm3/rev}
                  reliefValves:
                    - {senses: outlet, openingPressure: 490 kPa}
                  gallery: {hotReading: {pressure: 300 kPa, temperature: 90 °C, speed: 3000 rpm, bearingShare: 1}}
                  states:
                    - {name: idle, speed: 900 rpm}
                    - {name: running, speed: 3000 rpm}
                candidates:
                  - name: Gray can
                    outside: {present: false}
                    basePlate: {inletHoles: {present: false}, outletBore: {present: false}}
                    antiDrainFlap: {present: false}
                    centerTube: {present: false}
                    pleats: {present: false}
                    bypass: {position: dome, openingPressure: 157 kPa}
                    medium:
                      family: cellulose
                      statedArea: 900 cm2
                      resistance: 2e8 1/m
                      capacity: {perArea: typical}
                      ratings: [{size: 20 um, efficiency: 95 %%}]
                duty:
                  running: {state: running, oilTemperature: 90 °C, hoursPerWeek: 12 h}
                  starts:
                    perWeek: 4
                    state: idle
                %s
                  dirt: {ingestion: 20 mg/h, dust: A3}
                  sump: {volume: 4 L}
                  horizon: 100 h
                %s
                """.formatted(starts.indent(4).stripTrailing(), rest);
    }

    private static String months(double januaryPerWeek) {
        StringBuilder rows = new StringBuilder("months:\n");
        for (int i = 0; i < Months.NAMES.size(); i++) {
            rows.append("  - {month: %s, temperature: %d °C%s}\n"
                    .formatted(Months.NAMES.get(i), i - 6, i == 0 ? ", perWeek: " + januaryPerWeek : ""));
        }
        return rows.toString();
    }

    @Test
    void aMonthMayHaveStartsOfItsOwn() {
        ResolvedCase resolved = Cases.resolve(withDuty("warmUp: 10 min\n" + months(8), ""));
        DutyCycle.Starts starts = DutyCycle.of(resolved).orElseThrow().starts().orElseThrow();
        long january = DoubleStream.of(starts.temperatures())
                .filter(t -> t < ZERO_CELSIUS - 5.5)
                .count();
        // 52/12 weeks of 8 and of 4 starts; a start is whole
        assertEquals(8 * 52 / 12.0, (double) january, 1);
        assertEquals((8 + 11 * 4) * 52 / 12.0, starts.temperatures().length, 1);
        assertEquals(12 * 3600 / 8.0, starts.hotSeconds()[0], 1e-9);
        assertEquals(12 * 3600 / 4.0, starts.hotSeconds()[starts.hotSeconds().length - 1], 1e-9);
        assertEquals(ZERO_CELSIUS - 6, starts.winterStart(), 1e-9);
    }

    @Test
    void seasonsAndMonthsThatSayTheSameGiveTheSameYear() {
        String seasons = "seasons: [{from: november, to: april, temperature: -8 °C}, "
                + "{from: may, to: october, temperature: 9 °C}]\n";
        StringBuilder rows = new StringBuilder("months:\n");
        for (int i = 0; i < Months.NAMES.size(); i++) {
            rows.append("  - {month: %s, temperature: %s °C}\n"
                    .formatted(Months.NAMES.get(i), i < 4 || i > 9 ? "-8" : "9"));
        }
        double[][] year = new double[2][];
        for (int i = 0; i < 2; i++) {
            String table = i == 0 ? seasons : rows.toString();
            year[i] = DutyCycle.of(Cases.resolve(withDuty("warmUp: 10 min\n" + table, "")))
                    .orElseThrow()
                    .starts()
                    .orElseThrow()
                    .temperatures();
        }
        assertEquals(
                DoubleStream.of(year[0]).boxed().toList(),
                DoubleStream.of(year[1]).boxed().toList());
    }

    @Test
    void withoutAStartSectionTheWarmUpIsSaidToBeAssumed() {
        ServiceResult result = Simulation.service(
                        Cases.resolve(withDuty("warmUp: 10 min\n" + months(4), "")), OptionalDouble.empty())
                .orElseThrow()
                .now();
        assertTrue(result.notices().stream().anyMatch(one -> one.code().equals("service.warmUpStated")));
        assertFalse(result.notices().stream().anyMatch(one -> one.code().equals("service.startsByBalance")));
    }

    @Test
    void aStartSectionWarmsTheOilByItsHeatBalance() {
        String start = """
                start:
                  galleryVolume: 0.1 L
                  schedules:
                    - {name: idling, phases: [{state: idle, duration: 5 min}]}
                    - {name: leaving, phases: [{state: idle, duration: 1 min}, {state: running, duration: 9 min}]}
                  thermal:
                    oilVolume: 4 L
                    metalMass: 80 kg
                    oilToMetal: 60 W/K
                    metalToAmbient: 20 W/K
                    oilToAmbient: 5 W/K
                    heats: [{state: idle, toMetal: 2 kW, toOil: 200 W}, {state: running, toMetal: 6 kW, toOil: 600 W}]
                """;
        ResolvedCase first = Cases.resolve(withDuty(months(4), start));
        DutyCycle.Warming warming =
                DutyCycle.of(first).orElseThrow().starts().orElseThrow().warming();
        assertEquals("idling", warming.plan().orElseThrow().name());
        assertEquals(300, warming.duration(), 1e-9);
        ResolvedCase named = Cases.resolve(withDuty("schedule: leaving\n" + months(4), start));
        assertEquals(
                600,
                DutyCycle.of(named)
                        .orElseThrow()
                        .starts()
                        .orElseThrow()
                        .warming()
                        .duration(),
                1e-9);
        ServiceResult result =
                Simulation.service(named, OptionalDouble.empty()).orElseThrow().now();
        assertTrue(result.notices().stream().anyMatch(one -> one.code().equals("service.startsByBalance")));
        assertTrue(result.candidates().get(0).isComputed());
    }
}

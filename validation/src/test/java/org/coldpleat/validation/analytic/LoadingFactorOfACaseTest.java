package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.OptionalDouble;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.junit.jupiter.api.Test;

/**
 * How many times its clean resistance a filter may take, from a case file through the whole program. Derived here: at
 * constant flow opening pressure over clean drop, 157/14; under an ideal relief valve the critical ratio 157/(490 - 157)
 * over that of the clean filter to its gallery, 0.156.
 */
class LoadingFactorOfACaseTest {
    private static final double CLEAN_DROP = 14e3;

    /** Gallery pressure at the hot reading: the clean filter has 0.156 of the resistance of the gallery [Pa]. */
    private static final double GALLERY = CLEAN_DROP / 0.156;

    private static ServiceResult.Candidate candidate(double mediumResistance) {
        String text = String.format(Locale.ROOT, """
                formatVersion: 1
                title: Loading factor
                invented: true
                oil:
                  grade: 10W-30
                  points:
                    - {temperature: 40 °C, kinematic: 69 cSt}
                    - {temperature: 100 °C, kinematic: 10.5 cSt}
                  density: 870 kg/m3
                engine:
                  pump: {displacement: 5 cm3/rev, slip: 0 m3}
                  reliefValves:
                    - {senses: outlet, openingPressure: 490 kPa}
                  gallery:
                    hotReading: {pressure: %.6f kPa, temperature: 90 °C, speed: 3000 rpm, bearingShare: 1}
                    film: none
                  states:
                    - {name: idle, speed: 900 rpm}
                    - {name: running, speed: 3000 rpm}
                temperatures: {from: -30 °C, to: 120 °C}
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
                      resistance: %.8e 1/m
                      capacity: {perArea: typical}
                      ratings: [{size: 20 um, efficiency: 95 %%}]
                duty:
                  running: {state: running, oilTemperature: 90 °C, hoursPerWeek: 12 h}
                  starts:
                    perWeek: 4
                    state: running
                    warmUp: 10 min
                    seasons: [{from: january, to: december, temperature: -20 °C}]
                  dirt: {ingestion: 20 mg/h, dust: A3}
                  sump: {volume: 4 L}
                  horizon: 50 h
                """, GALLERY / 1000, mediumResistance);
        return Simulation.service(
                        Simulation.resolve(CaseReader.read("factor.yaml", text)
                                        .document()
                                        .orElseThrow())
                                .resolved()
                                .orElseThrow(),
                        OptionalDouble.empty())
                .orElseThrow()
                .now()
                .candidates()
                .get(0);
    }

    @Test
    void hotAndColdFactorsAreThoseOfTheClosedForms() {
        double first = 2e8;
        double second = first * CLEAN_DROP / candidate(first).moments().get(0).pressureDrop();
        ServiceResult.Candidate tuned = candidate(second);
        assertEquals(CLEAN_DROP, tuned.moments().get(0).pressureDrop(), 1);
        // 157/14, to four digits
        assertEquals(11.21, tuned.hotFactor().closedForm().orElseThrow(), 0.01);
        assertEquals(11.21, tuned.hotFactor().simulated().orElseThrow(), 0.01);
        // 0.4715/0.156 = 3.02
        assertEquals(3.02, tuned.coldFactor().closedForm().orElseThrow(), 0.01);
        assertEquals(3.02, tuned.coldFactor().simulated().orElseThrow(), 0.02);
    }
}

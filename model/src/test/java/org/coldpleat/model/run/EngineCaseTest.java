package org.coldpleat.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.Cases;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.Comparison;
import org.junit.jupiter.api.Test;

/** Whole cases in an engine against the closed forms of the laminar circuit. */
class EngineCaseTest {
    private static final double PSI = 6894.757293168361;

    /** One laminar gap as gallery: 128 L / (pi d^4) + 24 / d^3 for d 6 mm, L 100 mm. */
    private static final double GALLERY = 128 * 0.1 / (Math.PI * Math.pow(0.006, 4)) + 24 / Math.pow(0.006, 3);

    private static String engine(String relief, String extra) {
        return Cases.OIL + """
                engine:
                  pump: {displacement: 7.2 cm3/rev, slip: 0 m3}
                  reliefValves:
                    - {name: relief, senses: outlet, openingPressure: %s}
                  gallery:
                    passages:
                      - {name: gap, kind: bearing, bore: 6 mm, length: 100 mm, count: 1}
                    film: none
                %s  states:
                    - {name: idle, speed: 900 rpm}
                candidates:
                """.formatted(relief, extra);
    }

    private static String candidate(double psi, String bypass) {
        return """
                  - name: One
                    outside: {present: false}
                    basePlate: {inletHoles: {present: false}, outletBore: {present: false}}
                    antiDrainFlap: {present: false}
                    centerTube: {present: false}
                    pleats: {present: false}
                    bypass: {%s}
                    medium: {statedArea: 1000 cm2 ± 0.001 cm2, resistance: %.6e 1/m}
                """.formatted(bypass, psi * 0.1);
    }

    private static StateResult run(String text) {
        return Simulation.compare(Cases.resolve(text))
                .now()
                .candidates()
                .get(0)
                .states()
                .get(0);
    }

    @Test
    void reliefSettingDoesNotMoveAnOpeningReachedBeforeTheReliefOpens() {
        String filter = candidate(GALLERY, "position: dome, openingPressure: 12 psi");
        double low = run(engine("60 psi", "") + filter)
                .openingTemperature()
                .orElseThrow()
                .value();
        double high = run(engine("80 psi", "") + filter)
                .openingTemperature()
                .orElseThrow()
                .value();
        assertEquals(low, high, 0.1);
    }

    @Test
    void deepColdElementDropIsItsShareOfTheReliefPressure() {
        ResolvedCase resolved =
                Cases.resolve(engine("60 psi", "") + candidate(GALLERY / 3, "position: dome, openingPressure: 80 psi"));
        PointResult point = Simulation.point(resolved, "One", "idle", 235).now();
        double share = (1.0 / 3) / (1 + 1.0 / 3);
        assertEquals(share * 60 * PSI, point.elementPressureDrop(), 1e-6 * 60 * PSI);
        assertTrue(point.flowResidual() < 1e-9);
        assertTrue(point.pressureResidual() < 1e-9);
    }

    @Test
    void hotReadingOfALaminarGalleryKeepsTheFilterFarFromOpening() {
        String text = Cases.OIL + """
                engine:
                  pump: {displacement: 7.2 cm3/rev, slip: 0 m3}
                  reliefValves:
                    - {name: relief, senses: outlet, openingPressure: 490 kPa}
                  gallery:
                    hotReading: {pressure: 300 kPa, temperature: 90 °C, speed: 3000 rpm, flow: 20 L/min, bearingShare: 100 %%}
                    film: none
                  states:
                    - {name: idle, speed: 900 rpm}
                candidates:
                %s""";
        ResolvedCase probe = Cases.resolve(text.formatted(candidate(1e9, "position: dome, openingPressure: 83 kPa")));
        double viscosity =
                Simulation.point(probe, "One", "idle", 363.15).now().oil().dynamicViscosity();
        double filter = 14e3 / (viscosity * 20.0 / 60e3);
        StateResult result = run(text.formatted(candidate(filter, "position: dome, openingPressure: 83 kPa")));
        assertEquals(StateResult.Answer.NEVER, result.answer());
        double ratio = 14.0 / 300;
        // r = 0.047, s p_r = 22 kPa of 490
        assertEquals(ratio / (1 + ratio) * 490 / 83, result.greatestRatio().value(), 1e-3);
    }

    @Test
    void criticalRatioDecidesWhetherTheValveEverOpens() {
        double critical = 157.0 / (490 - 157);
        String bypass = "position: dome, openingPressure: 157 kPa";
        assertEquals(
                StateResult.Answer.NEVER,
                run(engine("490 kPa", "") + candidate(0.99 * critical * GALLERY, bypass))
                        .answer());
        assertEquals(
                StateResult.Answer.BELOW,
                run(engine("490 kPa", "") + candidate(1.01 * critical * GALLERY, bypass))
                        .answer());
    }

    @Test
    void ofTwoValvesTheOneWithTheLowerPressureOpensFirst() {
        String block = "  blockBypass: {openingPressure: 16 to 19 psi}\n";
        Comparison comparison = Simulation.compare(Cases.resolve(
                        engine("60 psi", block) + candidate(GALLERY, "position: dome, openingPressure: 12 to 15 psi")))
                .now();
        assertTrue(
                comparison.notices().stream().anyMatch(notice -> notice.code().equals("valve.ownOpensFirst")));
        double both = comparison
                .candidates()
                .get(0)
                .states()
                .get(0)
                .openingTemperature()
                .orElseThrow()
                .value();
        double alone = run(engine("60 psi", "") + candidate(GALLERY, "position: dome, openingPressure: 12 to 15 psi"))
                .openingTemperature()
                .orElseThrow()
                .value();
        assertEquals(alone, both, 1e-3);
    }

    @Test
    void everyFormOfValveIsUnderstoodAndNoneIsWarnedAbout() {
        for (String form : List.of("coilPlate", "leaf", "liftingElement")) {
            StateResult result = run(engine("60 psi", "")
                    + candidate(GALLERY, "position: base, form: " + form + ", openingPressure: 12 psi"));
            assertEquals(StateResult.Answer.BELOW, result.answer(), form);
        }
        String block = "  blockBypass: {openingPressure: 12 psi}\n";
        assertEquals(
                StateResult.Answer.BELOW,
                run(engine("60 psi", block) + candidate(GALLERY, "position: block"))
                        .answer());
        Comparison none = Simulation.compare(Cases.resolve(engine("60 psi", "") + candidate(GALLERY, "position: none")))
                .now();
        assertEquals(
                StateResult.Answer.NO_VALVE,
                none.candidates().get(0).states().get(0).answer());
        assertTrue(none.notices().stream().anyMatch(notice -> notice.code().equals("valve.noBypass")));
    }
}

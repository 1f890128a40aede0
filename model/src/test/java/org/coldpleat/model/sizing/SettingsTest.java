package org.coldpleat.model.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.model.Cases;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.sizing.SettingsResult.Row;
import org.coldpleat.model.verdict.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Another setting on a flow stand, against sums done by hand. */
class SettingsTest {
    private static final double PSI = 6894.757293168361;
    private static final double ICE = 273.15;
    private static final double AREA = 2 * 55 * 0.014 * 0.060;
    private static final double RESISTANCE = 0.0008 / 2.2e-11;
    private static final String TALLER = Cases.mediumOnly("Plain", "16.25 psi").replace("924 cm2", "1108.8 cm2");

    /** A stand whose filter opens at a temperature with a setting of 16.25 psi, the middle of 12 and 22 in logarithms. */
    private static ResolvedCase standOpeningAt(double celsius, String candidate) {
        ResolvedCase any = Cases.resolve(Cases.stand("2 gpm") + "candidates:\n" + candidate);
        double viscosity = Simulation.pointAtFlow(any, "Plain", 1e-4, ICE + celsius)
                .now()
                .oil()
                .dynamicViscosity();
        double flow = 16.25 * PSI * AREA / (viscosity * RESISTANCE);
        return Cases.resolve(
                Cases.stand(String.format(Locale.ROOT, "%.6g L/min", 6e4 * flow)) + "candidates:\n" + candidate);
    }

    /** Derived here: the pressure goes with the viscosity, which falls by 6.5 % a kelvin near 0 °C and 8.5 % at -20 °C. */
    @ParameterizedTest
    @CsvSource({"0, 9", "-20, 7"})
    void settingOf22PsiInsteadOf12MovesTheOpeningByAFewKelvins(double middle, double kelvins) {
        ResolvedCase resolved = standOpeningAt(middle, Cases.mediumOnly("Plain", "16.25 psi"));
        List<Row> rows = Simulation.settings(resolved, Optional.empty(), 12 * PSI, 22 * PSI)
                .now()
                .candidates()
                .get(0)
                .rows();
        double low = rows.get(0).openings().get(0).value();
        double high = rows.get(rows.size() - 1).openings().get(0).value();
        // the note gives whole kelvins for an oil of its own
        assertEquals(kelvins, low - high, 0.7);
    }

    /** Derived here: ln 1.2 over the same slopes. */
    @ParameterizedTest
    @CsvSource({"0, 2.8", "-20, 2.1"})
    void fifthMoreAreaMovesTheOpeningByTwoToThreeKelvins(double middle, double kelvins) {
        ResolvedCase resolved = standOpeningAt(middle, Cases.mediumOnly("Plain", "16.25 psi"));
        double now = opening(resolved);
        assertEquals(ICE + middle, now, 0.01);
        String flow =
                resolved.document().quantities().get("flowStand.states[0].flow").written();
        double more = opening(Cases.resolve(Cases.stand(flow) + "candidates:\n" + TALLER));
        assertEquals(kelvins, now - more, 0.3);
    }

    private static double opening(ResolvedCase resolved) {
        return Simulation.compare(resolved)
                .now()
                .candidates()
                .get(0)
                .states()
                .get(0)
                .openingTemperature()
                .orElseThrow()
                .value();
    }

    @Test
    void rowAsMeasuredIsTheComparisonWithItsBand() {
        ResolvedCase resolved = standOpeningAt(-5, Cases.mediumOnly("Plain", "16.25 psi"));
        OpeningBand compared = Simulation.compare(resolved)
                .now()
                .candidates()
                .get(0)
                .states()
                .get(0)
                .openingTemperature()
                .orElseThrow();
        Row now = Simulation.settings(resolved, Optional.empty(), 60e3, 200e3)
                .now()
                .candidates()
                .get(0)
                .now();
        assertEquals(16.25 * PSI, now.setting(), 1e-6);
        // finders to 1 mK; bands drawn between nine temperatures here, along 161 there
        assertEquals(compared.value(), now.openings().get(0).value(), 0.005);
        assertEquals(compared.low(), now.openings().get(0).low(), 0.1 * compared.halfWidth());
        assertEquals(compared.high(), now.openings().get(0).high(), 0.1 * compared.halfWidth());
    }

    @Test
    void higherSettingOpensInColderOilAndLetsTheMediumBearMore() {
        ResolvedCase resolved = standOpeningAt(-5, Cases.mediumOnly("Plain", "16.25 psi"));
        SettingsResult result =
                Simulation.settings(resolved, Optional.of("Plain"), 40e3, 220e3).now();
        List<Row> rows = result.candidates().get(0).rows();
        assertEquals(20, rows.size());
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(rows.get(i).setting() > rows.get(i - 1).setting());
            assertTrue(rows.get(i).openings().get(0).value()
                    < rows.get(i - 1).openings().get(0).value());
            // where the valve is lifted fully in the coldest oil its setting says nothing any more
            assertTrue(rows.get(i).overRange().pressure()
                    >= (1 - 1e-9) * rows.get(i - 1).overRange().pressure());
        }
        assertTrue(result.notices().stream().anyMatch(notice -> notice.code().equals("settings.noStart")));
        assertTrue(result.notices().stream().anyMatch(notice -> notice.code().equals("caution.collapse")));
    }

    @Test
    void filterWithoutValveHasOneRowAndSaysSo() {
        String bare = Cases.mediumOnly("Bare", "12 psi")
                .replace("bypass: {position: dome, openingPressure: 12 psi}", "bypass: {position: none}");
        SettingsResult result = Simulation.settings(
                        Cases.resolve(Cases.stand("2 gpm") + "candidates:\n" + bare), Optional.empty(), 40e3, 220e3)
                .now();
        assertEquals(1, result.candidates().get(0).rows().size());
        assertEquals(
                List.of("settings.noValve"),
                result.verdicts().stream().map(Verdict::code).toList());
    }
}

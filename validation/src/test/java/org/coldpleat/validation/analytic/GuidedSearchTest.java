package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.coldpleat.model.certainty.CaseDraws;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The search led by the unmoved curve, which the draws use, against the search for every open interval, which knows of no
 * curve. Two roads to one number; the cases hold draws that open only over a narrow top where a relief valve begins to
 * dump, and draws that only just fail to open.
 */
class GuidedSearchTest {
    /** Both searches end at 0.1 micro-K or better; the rest is rounding of the circuit over the slope of the ratio. */
    private static final double SAME = 1e-6;

    @ParameterizedTest
    @ValueSource(strings = {"half-the-area", "ridge-hut-generator"})
    void agreesWithTheSearchForEveryInterval(String name) {
        agree(name, 500);
    }

    @ParameterizedTest
    @Tag("nightly")
    @ValueSource(strings = {"clinic-van", "half-the-area", "harbour-launch", "ridge-hut-generator"})
    void agreesWithTheSearchForEveryIntervalOverThousandsOfDraws(String name) {
        agree(name, 3000);
    }

    private static void agree(String name, int openings) {
        ResolvedCase resolved = Simulation.resolve(CaseReader.read(Path.of("../demo-cases/" + name + "/case.yaml"))
                        .document()
                        .orElseThrow())
                .resolved()
                .orElseThrow();
        CaseDraws draws = new CaseDraws(resolved);
        SplittableRandom random = new SplittableRandom(20);
        int compared = 0;
        while (compared < openings) {
            Map<String, Double> moved = new HashMap<>();
            for (Unknown unknown : draws.unknowns()) {
                double score = random.nextGaussian();
                moved.put(unknown.path(), unknown.moved(unknown.upwardOnly() ? Math.abs(score) : score));
            }
            compared += compare(draws, moved);
        }
    }

    /** Number of openings compared; none where no engine or filter can have the values. */
    private static int compare(CaseDraws draws, Map<String, Double> moved) {
        int compared = 0;
        Optional<CaseDraws.Common> common = draws.common(moved);
        for (int i = 0; i < draws.resolved().candidateNames().size(); i++) {
            int candidate = i;
            Optional<CaseDraws.Own> own = common.flatMap(one -> one.candidate(candidate, moved));
            for (int s = 0; s < draws.resolved().stateNames().size() && own.isPresent(); s++) {
                double full = own.get().openingByFullSearch(s);
                if (!Double.isNaN(full)) {
                    agree(full, own.get().opening(s));
                    agree(full, own.get().state(s).opening());
                    compared++;
                }
            }
        }
        return compared;
    }

    private static void agree(double full, double guided) {
        assertTrue(
                full == guided || Math.abs(full - guided) < SAME, () -> "full " + full + " K, guided " + guided + " K");
    }
}

package org.coldpleat.model.certainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.coldpleat.model.certainty.draw.Propagation;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class CaseConfidenceTest {
    private static final ResolvedCase CASE = read("ridge-hut-generator");

    private static ResolvedCase read(String name) {
        return Simulation.resolve(CaseReader.read(Path.of("../demo-cases/" + name + "/case.yaml"))
                        .document()
                        .orElseThrow())
                .resolved()
                .orElseThrow();
    }

    @Test
    void sameSeedGivesTheSameNumbersOnAnyThreads() {
        CaseModel model = new CaseModel(new CaseDraws(CASE));
        Propagation one =
                Propagation.run(model, model.unknowns(), 64, 7, Progress.NONE).orElseThrow();
        Propagation two =
                Propagation.run(model, model.unknowns(), 64, 7, Progress.NONE).orElseThrow();
        for (int k = 0; k < one.answerCount(); k++) {
            assertArrayEquals(one.answers(k), two.answers(k));
        }
    }

    /** The case holds draws whose valve opens only over a narrow top or at the cold end of the range. */
    @Test
    void quickSearchAgreesWithTheFullOne() {
        agree("half-the-area");
    }

    @Test
    @Tag("nightly")
    void quickSearchAgreesWithTheFullOneForManyFilters() {
        agree("ridge-hut-generator");
    }

    private static void agree(String name) {
        ConfidenceResult result =
                CaseConfidence.run(read(name), 128, 1, Progress.NONE).orElseThrow();
        assertTrue(result.verified().compared() > 100);
        assertEquals(0, result.verified().differing(), name);
    }

    @Test
    void chancesOfAPairAddUp() {
        addUp(read("half-the-area"));
    }

    @Test
    @Tag("nightly")
    void chancesOfManyPairsAddUp() {
        addUp(CASE);
    }

    private static void addUp(ResolvedCase resolved) {
        ConfidenceResult result =
                CaseConfidence.run(resolved, 64, 3, Progress.NONE).orElseThrow();
        assertFalse(result.pairs().isEmpty());
        for (ConfidenceResult.Warmer pair : result.pairs()) {
            double sum = pair.firstWarmer() + pair.equal() + pair.secondWarmer();
            // three shares of the same draws; rounding of a sum of three
            assertEquals(1, sum, 1e-12);
        }
    }

    @Test
    void cancelledRunGivesNothing() {
        Progress cancelling = new Progress() {
            @Override
            public void done(long evaluations, long total) {}

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertEquals(Optional.empty(), CaseConfidence.run(CASE, 64, 1, cancelling));
    }
}

package org.coldpleat.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A comparison says how far it is and ends when it is told to. */
class CompareProgressTest {
    private static final ResolvedCase CASE = Cases.resolve(Cases.stand("9 L/min") + "candidates:\n"
            + IntStream.range(0, 24)
                    .mapToObj(i -> Cases.mediumOnly("Filter " + i, "12 psi"))
                    .collect(Collectors.joining()));

    /** Ends the work after so many steps. */
    private static final class Watch implements Progress {
        private final AtomicLong seen = new AtomicLong();
        private final AtomicLong total = new AtomicLong();
        private final long enough;

        Watch(long enough) {
            this.enough = enough;
        }

        @Override
        public void done(long evaluations, long of) {
            seen.incrementAndGet();
            total.set(of);
        }

        @Override
        public boolean cancelled() {
            return seen.get() >= enough;
        }
    }

    @Test
    void allStepsAreTold() {
        Watch watch = new Watch(Long.MAX_VALUE);
        Optional<Comparison> found = Simulation.compare(CASE, watch);
        assertTrue(found.isPresent());
        assertEquals(watch.total.get(), watch.seen.get());
        assertEquals((long) CASE.candidates().size() * CASE.duties().size(), watch.total.get());
    }

    @Test
    void workThatIsEndedGivesNothingAndGoesNoFurther() {
        Watch watch = new Watch(1);
        assertEquals(Optional.empty(), Simulation.compare(CASE, watch));
        // work that was under way on other processors is finished
        assertTrue(watch.seen.get() <= 1 + Runtime.getRuntime().availableProcessors(), "steps: " + watch.seen.get());
    }
}

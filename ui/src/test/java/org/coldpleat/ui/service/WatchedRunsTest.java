package org.coldpleat.ui.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.progress.Progress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Long runs count what they do, and end soon once they are told to. */
class WatchedRunsTest {
    private static final CaseService SERVICE = CaseService.standard();
    private static OpenedCase opened;

    /** The runs that are watched. */
    enum Run {
        COMPARE {
            @Override
            Optional<?> of(Progress progress) {
                return opened.compare().with(progress);
            }
        },
        MAP {
            @Override
            Optional<?> of(Progress progress) {
                return opened.map(opened.candidates().get(0)).with(progress);
            }
        },
        COLD_START {
            @Override
            Optional<?> of(Progress progress) {
                return opened.coldStart(ColdStartRequest.AS_STATED).flatMap(run -> run.with(progress));
            }
        },
        SERVICE_LIFE {
            @Override
            Optional<?> of(Progress progress) {
                return opened.service(OptionalDouble.empty()).flatMap(run -> run.with(progress));
            }
        };

        abstract Optional<?> of(Progress progress);
    }

    /** Counts, and ends the run after a number of parts. */
    private static final class Ending implements Progress {
        private final Set<Long> counted = new ConcurrentSkipListSet<>();
        private final long after;
        private volatile long total;

        Ending(long after) {
            this.after = after;
        }

        @Override
        public void done(long evaluations, long whole) {
            counted.add(evaluations);
            total = whole;
        }

        @Override
        public boolean cancelled() {
            return counted.size() >= after;
        }
    }

    @BeforeEach
    void openAnew() {
        opened = SERVICE.open(Path.of("../demo-cases/half-the-area/case.yaml"))
                .opened()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void everyPartIsCountedOnce(Run run) {
        Ending progress = new Ending(Long.MAX_VALUE);
        assertTrue(run.of(progress).isPresent());
        assertTrue(progress.total > 1, "parts: " + progress.total);
        assertEquals(LongStream.rangeClosed(1, progress.total).boxed().collect(Collectors.toSet()), progress.counted);
    }

    @ParameterizedTest
    @EnumSource
    void endedRunHasNoResultAndBeginsNoFurtherPart(Run run) {
        Ending progress = new Ending(1);
        assertEquals(Optional.empty(), run.of(progress));
        // parts that other threads had begun by then come to their end
        int begun = Runtime.getRuntime().availableProcessors() + 1;
        assertTrue(progress.counted.size() <= begun, progress.counted.size() + " of " + progress.total);
    }

    @ParameterizedTest
    @EnumSource
    void runThatIsEndedBeforeItBeginsDoesNothing(Run run) {
        Ending progress = new Ending(0);
        assertEquals(Optional.empty(), run.of(progress));
        assertEquals(Set.of(), progress.counted);
    }
}

package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import javafx.stage.Stage;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Work beside the window ends when it is void, and not only its result. */
@ExtendWith(ApplicationExtension.class)
class WorkerTest {
    private static final long SECONDS = 20;

    private final List<String> shown = new CopyOnWriteArrayList<>();
    private final List<Double> shares = new CopyOnWriteArrayList<>();
    private final Worker worker = new Worker(e -> shown.add(e.toString()));
    private final AtomicLong counted = new AtomicLong();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch ended = new CountDownLatch(1);

    @Start
    void start(Stage stage) {
        stage.show();
    }

    @AfterEach
    void close() {
        worker.close();
    }

    /** Counts without end unless it is told to end. */
    private Optional<String> endless(Progress progress) {
        while (!progress.cancelled()) {
            counted.incrementAndGet();
            begun.countDown();
        }
        ended.countDown();
        return Optional.of("late");
    }

    private void begin() throws InterruptedException {
        worker.watch("line", this::endless, shown::add, shares::add);
        assertTrue(begun.await(SECONDS, TimeUnit.SECONDS));
    }

    private void endsAndShowsNothing() throws InterruptedException {
        assertTrue(ended.await(SECONDS, TimeUnit.SECONDS), "still counting at " + counted.get());
        long then = counted.get();
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(then, counted.get());
        assertFalse(shown.contains("late"));
    }

    @Test
    void cancelledWorkStopsCounting() throws InterruptedException {
        begin();
        worker.cancel("line");
        endsAndShowsNothing();
    }

    @Test
    void newerWorkOfTheSameLineEndsTheOlderAndTakesItsTurn() throws Exception {
        begin();
        worker.run("line", () -> "new", shown::add);
        endsAndShowsNothing();
        WindowProbe.until((int) SECONDS, () -> shown.equals(List.of("new")));
    }

    @Test
    void closingTheWindowEndsTheWork() throws InterruptedException {
        begin();
        worker.close();
        endsAndShowsNothing();
    }

    @Test
    void advanceIsToldAsAShare() throws Exception {
        worker.watch(
                "line",
                progress -> {
                    progress.done(1, 4);
                    progress.done(4, 4);
                    return Optional.of("done");
                },
                shown::add,
                shares::add);
        WindowProbe.until((int) SECONDS, () -> shown.equals(List.of("done")));
        assertEquals(List.of(0.25, 1.0), shares);
    }
}

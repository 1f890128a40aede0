package org.coldpleat.ui.desktop.view;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import org.coldpleat.model.run.Progress;

/**
 * Does work off the thread of the window. Work of one line of jobs makes earlier work of that line void: what has not
 * begun is left out, and what comes too late is not shown.
 */
final class Worker {
    private final ExecutorService executor = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "model");
        thread.setDaemon(true);
        return thread;
    });
    private final Map<String, AtomicLong> newest = new ConcurrentHashMap<>();
    private final Consumer<RuntimeException> failed;

    /** @param failed told on the thread of the window what went wrong */
    Worker(Consumer<RuntimeException> failed) {
        this.failed = failed;
    }

    /**
     * Does work and shows what came of it on the thread of the window.
     *
     * @param line name of the line of jobs
     */
    <T> void run(String line, Supplier<T> work, Consumer<T> shown) {
        AtomicLong counter = newest.computeIfAbsent(line, key -> new AtomicLong());
        long own = counter.incrementAndGet();
        executor.execute(() -> {
            if (own != counter.get()) {
                return;
            }
            try {
                T result = work.get();
                Platform.runLater(() -> {
                    if (own == counter.get()) {
                        shown.accept(result);
                    }
                });
            } catch (RuntimeException e) {
                Platform.runLater(() -> failed.accept(e));
            }
        });
    }

    /**
     * Does work that can be stopped half way, and shows what came of it on the thread of the window. It is stopped as soon as
     * it is void.
     *
     * @param line name of the line of jobs
     * @param told how much of it is done [0..1], on the thread of the window
     */
    <T> void runWatched(String line, Function<Progress, Optional<T>> work, Consumer<T> shown, DoubleConsumer told) {
        AtomicLong counter = newest.computeIfAbsent(line, key -> new AtomicLong());
        long own = counter.get() + 1;
        Progress progress = new Progress() {
            @Override
            public void done(long evaluations, long total) {
                Platform.runLater(() -> {
                    if (own == counter.get()) {
                        told.accept((double) evaluations / total);
                    }
                });
            }

            @Override
            public boolean cancelled() {
                return own != counter.get();
            }
        };
        run(line, () -> work.apply(progress), result -> result.ifPresent(shown));
    }

    /** Makes all work of a line void. */
    void cancel(String line) {
        newest.computeIfAbsent(line, key -> new AtomicLong()).incrementAndGet();
    }

    void close() {
        newest.keySet().forEach(this::cancel);
        executor.shutdown();
    }
}

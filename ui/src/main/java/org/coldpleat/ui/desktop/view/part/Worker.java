package org.coldpleat.ui.desktop.view.part;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.application.Platform;
import org.coldpleat.model.progress.Progress;

/**
 * Does work off the thread of the window. Work of one line of jobs makes earlier work of that line void: what has not
 * begun is left out, what watches its progress is ended, and what comes too late is not shown.
 */
public final class Worker {
    private final ExecutorService executor = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "model");
        thread.setDaemon(true);
        return thread;
    });
    private final Map<String, AtomicLong> newest = new ConcurrentHashMap<>();
    private final Consumer<RuntimeException> failed;

    /** @param failed told on the thread of the window what went wrong */
    public Worker(Consumer<RuntimeException> failed) {
        this.failed = failed;
    }

    /**
     * Does work and shows what came of it on the thread of the window.
     *
     * @param line name of the line of jobs
     */
    public <T> void run(String line, Supplier<T> work, Consumer<T> shown) {
        watch(line, progress -> Optional.of(work.get()), shown, share -> {});
    }

    /**
     * Does work that is ended as soon as it is void, and shows what came of it on the thread of the window.
     *
     * @param line name of the line of jobs
     * @param work empty if it was ended
     * @param advanced told on the thread of the window which share of the work is done [0..1]
     */
    public <T> void watch(
            String line, Function<Progress, Optional<T>> work, Consumer<T> shown, DoubleConsumer advanced) {
        if (executor.isShutdown()) {
            // a field that loses the keyboard while the window closes asks for work that nobody will see
            return;
        }
        AtomicLong counter = newest.computeIfAbsent(line, key -> new AtomicLong());
        long own = counter.incrementAndGet();
        BooleanSupplier isVoid = () -> own != counter.get();
        executor.execute(() -> {
            if (isVoid.getAsBoolean()) {
                return;
            }
            try {
                work.apply(progress(isVoid, advanced)).ifPresent(result -> show(isVoid, () -> shown.accept(result)));
            } catch (RuntimeException e) {
                Platform.runLater(() -> failed.accept(e));
            }
        });
    }

    private static void show(BooleanSupplier isVoid, Runnable what) {
        Platform.runLater(() -> {
            if (!isVoid.getAsBoolean()) {
                what.run();
            }
        });
    }

    private static Progress progress(BooleanSupplier isVoid, DoubleConsumer advanced) {
        return new Progress() {
            @Override
            public void done(long evaluations, long total) {
                show(isVoid, () -> advanced.accept((double) evaluations / total));
            }

            @Override
            public boolean cancelled() {
                return isVoid.getAsBoolean();
            }
        };
    }

    /** Makes all work of a line void, and ends what can be ended. */
    public void cancel(String line) {
        newest.computeIfAbsent(line, key -> new AtomicLong()).incrementAndGet();
    }

    public void close() {
        newest.keySet().forEach(this::cancel);
        executor.shutdown();
    }
}

package org.coldpleat.model.progress;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Runs many evaluations in fixed chunks on all processors; the outcome does not depend on the number of threads. */
public final class Evaluations {
    private static final int CHUNK = 32;

    private Evaluations() {}

    /** Results of {@code task} for 0 to count - 1, in that order; empty if cancelled. */
    public static Optional<double[][]> run(int count, IntFunction<double[]> task, Progress progress) {
        double[][] results = new double[count][];
        AtomicLong done = new AtomicLong();
        int chunks = (count + CHUNK - 1) / CHUNK;
        IntStream.range(0, chunks).parallel().forEach(chunk -> {
            int end = Math.min(count, (chunk + 1) * CHUNK);
            for (int i = chunk * CHUNK; i < end; i++) {
                if (progress.cancelled()) {
                    return;
                }
                results[i] = task.apply(i);
            }
            progress.done(done.addAndGet(end - chunk * CHUNK), count);
        });
        return done.get() == count ? Optional.of(results) : Optional.empty();
    }
}

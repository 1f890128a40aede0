package org.coldpleat.model.progress;

import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** Does the parts of a run side by side, counts them for the one who watches, and leaves out the rest once it is ended. */
public final class Counted {
    private final Progress progress;
    private final long total;
    private final AtomicLong done = new AtomicLong();

    /** @param total number of parts of the whole run */
    public Counted(Progress progress, long total) {
        this.progress = Objects.requireNonNull(progress, "progress");
        this.total = total;
    }

    /**
     * Does some of the parts, in any order.
     *
     * @return true if all of them were done
     */
    public boolean each(int count, IntConsumer part) {
        IntStream.range(0, count).parallel().forEach(i -> {
            if (!progress.cancelled()) {
                part.accept(i);
                progress.done(done.incrementAndGet(), total);
            }
        });
        return !progress.cancelled();
    }
}

package org.coldpleat.model.progress;

import java.util.Optional;

/**
 * A question that was put and waits to be worked out. Working it out twice gives the same, bit for bit.
 *
 * @param <T> the answer
 */
@FunctionalInterface
public interface Run<T> {
    /**
     * Works it out on this thread, watched.
     *
     * @param progress told of the advance; may cancel
     * @return the answer, or nothing if cancelled
     */
    Optional<T> with(Progress progress);

    /** Works it out on this thread. */
    default T now() {
        return with(Progress.NONE).orElseThrow();
    }
}

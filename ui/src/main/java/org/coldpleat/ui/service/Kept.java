package org.coldpleat.ui.service;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.progress.Run;

/**
 * The last answers, by what they depend on: the text of the case, what was changed on it, and the question. Nothing is
 * worked out twice, not even when it is asked for again while it is being worked out. For any number of threads.
 */
final class Kept {
    private static final int MOST = 64;
    private static final long LOOK_ABOUT_MS = 20;

    private final Map<List<Object>, Place<?>> places = new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Object>, Place<?>> eldest) {
            return size() > MOST;
        }
    };

    /** The same run, which is worked out only if its answer is not kept. */
    <T> Run<T> run(List<Object> dependsOn, Run<T> run) {
        return progress -> this.<T>place(dependsOn).answer(run, progress);
    }

    @SuppressWarnings("unchecked")
    private <T> Place<T> place(List<Object> dependsOn) {
        synchronized (places) {
            return (Place<T>) places.computeIfAbsent(dependsOn, key -> new Place<T>());
        }
    }

    private static final class Place<T> {
        private final ReentrantLock working = new ReentrantLock();
        private Optional<T> answer = Optional.empty();

        Optional<T> answer(Run<T> run, Progress progress) {
            if (!waited(progress)) {
                return Optional.empty();
            }
            try {
                if (answer.isEmpty()) {
                    answer = run.with(progress);
                }
                return answer;
            } finally {
                working.unlock();
            }
        }

        /** True once it is this thread's turn; false if the run was ended while another thread worked it out. */
        private boolean waited(Progress progress) {
            try {
                while (!working.tryLock(LOOK_ABOUT_MS, TimeUnit.MILLISECONDS)) {
                    if (progress.cancelled()) {
                        return false;
                    }
                }
                return true;
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
    }
}

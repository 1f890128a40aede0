package org.coldpleat.ui.service;

/** Watches a long run and may end it. Called from several threads. */
public interface Advance {
    /** Lets everything run. */
    Advance NONE = new Advance() {
        @Override
        public void done(long evaluations, long total) {}

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /** Told now and then how many of the evaluations are done. */
    void done(long evaluations, long total);

    /** True as soon as the run should end without a result. */
    boolean cancelled();
}

package org.coldpleat.model.progress;

/** Watches a long run and may end it. Called from several threads. */
public interface Progress {
    /** Lets everything run. */
    Progress NONE = new Progress() {
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

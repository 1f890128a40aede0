package org.coldpleat.ui.desktop.view.answer;

import java.util.Optional;
import java.util.function.Supplier;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.desktop.viewmodel.CaseView;

/**
 * Works the case out anew after each change: curves without bands at once, then all of it. What the window shows is
 * marked as stale from the change until the comparison stands.
 */
public final class CaseRun {
    private static final String RUN = "run";
    private static final String GLANCE = "glance";

    private final Worker worker;
    private final Worker quick;
    private final StatusLine status;
    private final Supplier<Optional<CaseView>> view;
    private final Shown shown;
    private boolean comparisonDue;
    private boolean stale;
    private boolean glanced;

    /** What is done with what was worked out, on the thread of the window. */
    public interface Shown {
        /** What is shown belongs to the values before the last change, or no longer does. */
        void stale(boolean stale);

        /** The curves of the state that is looked at stand. */
        void glanced(QuickCurves quickCurves);

        /** The comparison stands. */
        void compared(Comparison comparison);
    }

    /**
     * @param worker for what takes its time
     * @param quick for what takes milliseconds, so that it never waits behind a comparison of values typed before
     * @param view what is looked at, if the case is understood
     */
    public CaseRun(Worker worker, Worker quick, StatusLine status, Supplier<Optional<CaseView>> view, Shown shown) {
        this.worker = worker;
        this.quick = quick;
        this.status = status;
        this.view = view;
        this.shown = shown;
    }

    /** Ends what was being worked out; what is shown is stale from now on. */
    public void changed() {
        cancel();
        mark(true);
    }

    /** Works out what is looked at, then everything. */
    public void begin() {
        comparisonDue = true;
        quickCurves();
    }

    /** Redraws the curves of the state that is looked at, unless they stand. */
    public void look() {
        if (stale) {
            quickCurves();
        }
    }

    public boolean isStale() {
        return stale;
    }

    /** Gives up what is being worked out; the results of before stay, and stay marked. */
    public void stop() {
        cancel();
        if (stale) {
            status.say(WindowTexts.get(glanced ? "status.stoppedAfterGlance" : "status.stopped"));
        }
    }

    private void quickCurves() {
        view.get()
                .ifPresent(now -> quick.run(
                        GLANCE, () -> now.opened().quickCurves(now.state()).now(), fresh -> {
                            shown.glanced(fresh);
                            glanced = true;
                            status.say(WindowTexts.get("status.glance"));
                            compare();
                        }));
    }

    private void compare() {
        if (comparisonDue) {
            comparisonDue = false;
            view.get()
                    .ifPresent(now -> worker.watch(
                            RUN, progress -> now.opened().compare().with(progress), this::take, status::advanced));
        }
    }

    private void take(Comparison fresh) {
        status.over();
        mark(false);
        shown.compared(fresh);
    }

    private void cancel() {
        comparisonDue = false;
        worker.cancel(RUN);
        quick.cancel(GLANCE);
        status.over();
    }

    private void mark(boolean now) {
        stale = now;
        glanced = false;
        shown.stale(now);
    }
}

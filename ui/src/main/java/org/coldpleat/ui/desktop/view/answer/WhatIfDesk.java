package org.coldpleat.ui.desktop.view.answer;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.view.part.Worker;
import org.coldpleat.ui.desktop.viewmodel.CaseBench;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.coldpleat.ui.desktop.viewmodel.WhatIf;
import org.coldpleat.ui.service.Trials;
import org.coldpleat.ui.service.TriedOut;

/** Brings the sliders, the model and the charts of what is tried together. */
public final class WhatIfDesk {
    private static final String TRY = "try";

    private final Supplier<Optional<CaseBench>> bench;
    private final Supplier<Optional<CaseView>> view;
    private final ChartTabs tabs;
    private final Worker worker;
    /** Used on the thread of the worker alone. */
    private final Trials trials;

    private final WhatIfPane pane;

    /**
     * @param view what is looked at now; empty if there is nothing to try anything on
     * @param tabs where the curve of what is tried is drawn
     * @param failed told what went wrong
     * @param kept told the number of a candidate that was added
     */
    public WhatIfDesk(
            Supplier<Optional<CaseBench>> bench,
            Supplier<Optional<CaseView>> view,
            ChartTabs tabs,
            Consumer<RuntimeException> failed,
            Consumer<Integer> kept) {
        this.bench = bench;
        this.view = view;
        this.tabs = tabs;
        worker = new Worker(failed);
        trials = new Trials();
        pane = new WhatIfPane(this::turn, () -> keep(kept));
        pane.expandedProperty().addListener(observed -> follow());
    }

    public WhatIfPane pane() {
        return pane;
    }

    public void close() {
        worker.close();
    }

    /** Forgets what was tried, because another case is opened. */
    public void forget() {
        worker.cancel(TRY);
        pane.offer(WhatIf.none(), UnitSystem.METRIC);
        pane.say("");
    }

    /** Follows a change of the case, the candidate, the state, the temperature or the units. */
    public void follow() {
        Optional<CaseView> now = view.get().filter(this::canTry);
        if (now.isEmpty()) {
            worker.cancel(TRY);
            tabs.tried(Optional.empty());
            return;
        }
        CaseView one = now.get();
        WhatIf fresh = WhatIf.of(
                one.opened(),
                one.opened().candidates().indexOf(one.candidate()),
                one.opened().present(one.candidate()),
                one.state());
        turn(pane.tried().onto(fresh));
    }

    private boolean canTry(CaseView now) {
        return pane.isExpanded()
                && bench.get().map(CaseBench::isUnderstood).orElse(false)
                && now.opened().candidates().contains(now.candidate())
                && now.opened().states().contains(now.state());
    }

    private void turn(WhatIf next) {
        view.get().filter(this::canTry).ifPresent(now -> {
            pane.offer(next, now.units());
            if (next.moved().isEmpty()) {
                worker.cancel(TRY);
                tabs.tried(Optional.empty());
                pane.say(WindowTexts.get("whatIf.nothing"));
                return;
            }
            worker.run(
                    TRY,
                    () -> trials.out(
                            now.opened(),
                            next.change(),
                            now.candidate(),
                            now.state(),
                            now.temperature(),
                            next.inService()),
                    out -> show(next, out, now));
        });
    }

    private void show(WhatIf tried, TriedOut out, CaseView now) {
        tabs.tried(out.after().map(Trial::curve));
        pane.say(new WhatIfWords(now.units()).sentence(tried, out, now));
    }

    private void keep(Consumer<Integer> kept) {
        view.get().filter(this::canTry).ifPresent(now -> {
            int number =
                    bench.get().orElseThrow().keep(now.opened().candidates().indexOf(now.candidate()), pane.tried());
            turn(pane.tried().reset());
            kept.accept(number);
        });
    }
}

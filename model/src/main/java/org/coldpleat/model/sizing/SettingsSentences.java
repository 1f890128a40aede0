package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.sizing.SettingsResult.AfterStart;
import org.coldpleat.model.sizing.SettingsResult.Candidate;
import org.coldpleat.model.sizing.SettingsResult.Row;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;

/** Says what another setting would bring, both risks in one breath. */
final class SettingsSentences {
    private final List<String> states;
    private final List<Verdict> verdicts = new ArrayList<>();

    private SettingsSentences(List<String> states) {
        this.states = states;
    }

    static List<Verdict> of(ResolvedCase resolved, List<Candidate> candidates) {
        SettingsSentences sentences = new SettingsSentences(resolved.stateNames());
        candidates.forEach(sentences::candidate);
        return List.copyOf(sentences.verdicts);
    }

    private void candidate(Candidate one) {
        if (!one.hasValve()) {
            say("settings.noValve", "", one, Amount.pressure(one.now().elementPeak()));
            return;
        }
        if (one.inBlock()) {
            say("settings.inBlock", "", one);
        }
        Row first = one.rows().get(0);
        Row last = one.rows().get(one.rows().size() - 1);
        int state = warmest(first);
        if (state < 0) {
            say("settings.shutAnyway", "", one, Amount.pressure(first.setting()));
        } else {
            opening(one, first, last, state);
        }
        if (first.afterStart().isPresent()) {
            start(one, first, last);
        }
        say(
                "settings.bears",
                "",
                one,
                Amount.pressure(first.elementPeak()),
                Amount.pressure(one.now().elementPeak()),
                Amount.pressure(last.elementPeak()));
    }

    /** State in which the valve opens in the warmest oil; -1 if in none. */
    private static int warmest(Row row) {
        int warmest = -1;
        for (int i = 0; i < row.openings().size(); i++) {
            double here = row.openings().get(i).value();
            double there = warmest < 0
                    ? Double.NEGATIVE_INFINITY
                    : row.openings().get(warmest).value();
            warmest = here > there ? i : warmest;
        }
        return warmest;
    }

    private void opening(Candidate one, Row first, Row last, int state) {
        OpeningBand low = first.openings().get(state);
        OpeningBand high = last.openings().get(state);
        Amount from = Amount.pressure(first.setting());
        Amount to = Amount.pressure(last.setting());
        if (Double.isInfinite(low.value())) {
            return;
        }
        if (Double.isInfinite(high.value())) {
            OptionalDouble shut = leastShut(one, state);
            say(
                    "settings.movesToShut",
                    states.get(state),
                    one,
                    from,
                    temperature(low),
                    shut.isPresent() ? Amount.pressure(shut.getAsDouble()) : to);
        } else {
            say(
                    "settings.moves",
                    states.get(state),
                    one,
                    from,
                    temperature(low),
                    to,
                    temperature(high),
                    Amount.difference(low.value() - high.value()));
        }
    }

    private static Amount temperature(OpeningBand opening) {
        return Amount.temperature(opening.value()).withBand(opening.halfWidth());
    }

    private static OptionalDouble leastShut(Candidate one, int state) {
        return one.rows().stream()
                .filter(row -> row.openings().get(state).value() == Double.NEGATIVE_INFINITY)
                .mapToDouble(Row::setting)
                .min();
    }

    private void start(Candidate one, Row first, Row last) {
        AfterStart low = first.afterStart().orElseThrow();
        AfterStart now = one.now().afterStart().orElseThrow();
        AfterStart high = last.afterStart().orElseThrow();
        if (!low.completed() || !now.completed() || !high.completed()) {
            return;
        }
        OptionalDouble none = one.rows().stream()
                .filter(row -> row.afterStart()
                        .filter(start -> start.openSeconds() == 0)
                        .isPresent())
                .mapToDouble(Row::setting)
                .min();
        say(
                none.isPresent() ? "settings.startNone" : "settings.startLeft",
                "",
                one,
                liters(low),
                liters(now),
                none.isPresent() ? Amount.pressure(none.getAsDouble()) : liters(high));
    }

    /** In liters throughout, so that the numbers of a sentence can be compared at a glance. */
    private static Amount liters(AfterStart start) {
        return new Amount(Look.ROUGH_VOLUME, start.unfilteredVolume());
    }

    private void say(String code, String state, Candidate one, Shown... values) {
        verdicts.add(new Verdict(code, "", state, List.of(one.name()), List.of(values)));
    }

    /** The result with its findings. */
    static SettingsResult withNotices(
            ResolvedCase resolved, Optional<StartPlan> plan, SettingsResult bare, int[] positions) {
        Set<Notice> notices = new LinkedHashSet<>(resolved.oilNotices());
        double coldest = plan.map(one -> one.model().from()).orElse(resolved.from());
        notices.addAll(OilNotices.at(resolved.shared().oil().oil(), Math.min(coldest, resolved.from())));
        for (int position : positions) {
            notices.addAll(resolved.candidates().get(position).notices());
        }
        plan.ifPresent(one -> notices.addAll(one.notices()));
        if (plan.isEmpty()) {
            String code = StartPlan.isStated(resolved) ? "settings.startHot" : "settings.noStart";
            notices.add(Notice.of(code, Severity.WARNING, ""));
        }
        if (!bare.isAnswered()) {
            notices.add(Notice.of("settings.unanswered", Severity.WARNING, ""));
        }
        notices.add(Notice.of("settings.spread", Severity.INFO, ""));
        notices.add(Notice.of("settings.range", Severity.INFO, ""));
        notices.add(Notice.of("caution.collapse", Severity.CAUTION, ""));
        notices.add(Notice.of("caution.specification", Severity.CAUTION, ""));
        List<Notice> ordered = new ArrayList<>(notices);
        ordered.sort(Comparator.comparing(Notice::severity));
        return new SettingsResult(
                bare.title(),
                bare.invented(),
                bare.digest(),
                bare.start(),
                bare.states(),
                bare.candidates(),
                bare.verdicts(),
                bare.assumptions(),
                ordered);
    }
}

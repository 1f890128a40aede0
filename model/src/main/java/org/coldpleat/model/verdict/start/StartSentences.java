package org.coldpleat.model.verdict.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.model.coldstart.BypassTally;
import org.coldpleat.model.coldstart.StartEvent;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.plan.HoldUp;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.verdict.RankSentences;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Shown;

/** Says what each candidate does in a start, how the filling stage differs, who stays open longer and why. */
final class StartSentences {
    /** Difference of open times from which one candidate is said to stay open longer [s]. */
    private static final double WORTH_SAYING = 1;

    private final ResolvedCase resolved;
    private final StartPlan plan;
    private final List<Verdict> verdicts = new ArrayList<>();

    private StartSentences(ResolvedCase resolved, StartPlan plan) {
        this.resolved = resolved;
        this.plan = plan;
    }

    static List<Verdict> of(ResolvedCase resolved, StartPlan plan, List<ColdStartCandidate> candidates) {
        StartSentences sentences = new StartSentences(resolved, plan);
        candidates.forEach(sentences::answer);
        sentences.rank(candidates);
        sentences.hot(candidates);
        return List.copyOf(sentences.verdicts);
    }

    private void answer(ColdStartCandidate one) {
        StartUpResult start = one.start();
        if (!start.status().isAnswer()) {
            say(
                    "start.noAnswer",
                    List.of(one.name()),
                    Shown.word(start.status().name()),
                    Amount.duration(start.endTime()));
            return;
        }
        if (!one.hasValve()) {
            say(
                    "start.noValve",
                    List.of(one.name()),
                    Amount.pressure(start.filterDropPeak().value()),
                    Amount.duration(start.filterDropPeak().time()));
        } else if (start.total().openSeconds() == 0) {
            String code = one.openSeconds().high() > 0 ? "start.shutPerhaps" : "start.shut";
            say(
                    code,
                    List.of(one.name()),
                    Amount.percent(start.valveRatioPeak().value()),
                    Amount.duration(start.valveRatioPeak().time()),
                    Amount.duration(one.openSeconds().high())
                            .withBand(one.openSeconds().halfWidth()));
        } else {
            open(one, start);
        }
    }

    private void open(ColdStartCandidate one, StartUpResult start) {
        List<Shown> values = new ArrayList<>();
        values.addAll(banded(one.openSeconds(), Amount::duration));
        values.addAll(banded(one.unfilteredVolume(), Amount::volume));
        values.add(Amount.percent(start.total().bypassShare()));
        say("start.open", List.of(one.name()), values.toArray(Shown[]::new));
        BypassTally fill = start.fill();
        if (start.connected().openSeconds() > 0) {
            closing(one, start);
        }
        if (fill.openSeconds() > 0 && start.connected().openSeconds() > 0) {
            say(
                    "start.fillShare",
                    List.of(one.name()),
                    Amount.duration(fill.openSeconds()),
                    Amount.volume(fill.unfilteredVolume()));
        } else if (fill.openSeconds() > 0) {
            say("start.fillOnly", List.of(one.name()), Amount.duration(fill.seconds()));
        }
    }

    /** A value and the ends of its band. */
    private static List<Amount> banded(StartBand band, DoubleFunction<Amount> amount) {
        return DoubleStream.of(band.value(), band.low(), band.high())
                .mapToObj(value -> amount.apply(value).withBand(band.halfWidth()))
                .toList();
    }

    private void closing(ColdStartCandidate one, StartUpResult start) {
        Optional<StartEvent> last =
                start.events(StartEvent.Kind.VALVE_CLOSES).stream().max(Comparator.comparingDouble(StartEvent::time));
        if (start.closingTime().isPresent() && last.isPresent()) {
            say(
                    "start.closes",
                    List.of(one.name()),
                    Amount.duration(start.closingTime().getAsDouble()),
                    Amount.temperature(last.get().oilTemperature()));
        }
        int openings = start.events(StartEvent.Kind.VALVE_OPENS).size();
        if (openings > 1) {
            say("start.again", List.of(one.name()), Shown.count(openings));
        }
    }

    /** Neighbors in the order of open time, then of how near the shut ones come. */
    private void rank(List<ColdStartCandidate> candidates) {
        List<ColdStartCandidate> ordered = candidates.stream()
                .filter(one -> one.start().status().isAnswer() && one.hasValve())
                .sorted(Comparator.comparingDouble(
                                (ColdStartCandidate one) -> -one.start().total().openSeconds())
                        .thenComparingDouble(
                                one -> -one.start().valveRatioPeak().value()))
                .toList();
        for (int i = 0; i + 1 < ordered.size(); i++) {
            ColdStartCandidate first = ordered.get(i);
            ColdStartCandidate second = ordered.get(i + 1);
            double longer =
                    first.start().total().openSeconds() - second.start().total().openSeconds();
            List<String> names = List.of(first.name(), second.name());
            if (longer >= WORTH_SAYING) {
                boolean overlap =
                        first.openSeconds().low() <= second.openSeconds().high();
                say(
                        overlap ? "start.longerPerhaps" : "start.longer",
                        names,
                        Amount.duration(longer),
                        Amount.volume(first.start().total().unfilteredVolume()
                                - second.start().total().unfilteredVolume()));
                reasons(first, second, names);
            } else if (second.start().total().openSeconds() > 0) {
                say("start.sameTime", names);
            }
        }
    }

    private void reasons(ColdStartCandidate first, ColdStartCandidate second, List<String> names) {
        int one = position(first);
        int other = position(second);
        for (StartReasons.Reason reason : new StartReasons(resolved, plan).between(one, other)) {
            List<Shown> values = new ArrayList<>();
            values.add(Amount.duration(Math.abs(reason.seconds())));
            values.addAll(values(reason.code(), one, other));
            String direction = reason.seconds() > 0 ? ".longer" : ".shorter";
            verdicts.add(new Verdict(
                    "start.reason." + reason.code() + direction, OperatingState.ENGINE, plan.name(), names, values));
        }
    }

    private List<Shown> values(String code, int one, int other) {
        if (code.equals(StartReasons.HOLD_UP)) {
            List<HoldUp> holdUps = plan.model().holdUps();
            return List.of(
                    Amount.volume(holdUps.get(one).oilVolume()),
                    Amount.volume(holdUps.get(other).oilVolume()));
        }
        return RankSentences.reasonValues(
                code, resolved.candidates().get(one), resolved.candidates().get(other));
    }

    private int position(ColdStartCandidate one) {
        return resolved.positionOf(one.name()).orElseThrow();
    }

    private void hot(List<ColdStartCandidate> candidates) {
        candidates.stream().filter(ColdStartCandidate::isComputed).findFirst().ifPresent(one -> {
            StartBand hot = one.band(StartQuantity.HOT_TIME);
            Amount at = Amount.temperature(plan.model().hot());
            if (Double.isFinite(hot.high())) {
                List<Amount> after = banded(hot, Amount::duration);
                say("start.hotAt", List.of(), at, after.get(0), after.get(1), after.get(2));
            } else if (Double.isFinite(hot.value())) {
                say(
                        "start.hotOrLater",
                        List.of(),
                        at,
                        Amount.duration(hot.value()).withBand(hot.halfWidth()),
                        Amount.duration(one.endTime()));
            } else {
                say("start.hotNever", List.of(), at, Amount.duration(one.endTime()));
            }
        });
    }

    private void say(String code, List<String> candidates, Shown... values) {
        verdicts.add(new Verdict(code, OperatingState.ENGINE, plan.name(), candidates, List.of(values)));
    }
}

package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.coldstart.BypassTally;
import org.coldpleat.model.coldstart.Peak;
import org.coldpleat.model.coldstart.StartEvent;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.filter.FilterPart;

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
        return List.copyOf(sentences.verdicts);
    }

    private void answer(ColdStartCandidate one) {
        StartUpResult start = one.start();
        if (!start.status().isAnswer()) {
            say("start.noAnswer", List.of(one.name()), start.status().name(), Text.duration(start.endTime()));
            return;
        }
        if (!one.hasValve()) {
            say(
                    "start.noValve",
                    List.of(one.name()),
                    Text.kilopascals(start.filterDropPeak().value()),
                    Text.duration(start.filterDropPeak().time()));
        } else if (start.total().openSeconds() == 0) {
            String code = one.openSeconds().high() > 0 ? "start.shutPerhaps" : "start.shut";
            say(
                    code,
                    List.of(one.name()),
                    Text.percent(start.valveRatioPeak().value()),
                    Text.duration(start.valveRatioPeak().time()),
                    Text.duration(one.openSeconds().high()));
        } else {
            open(one, start);
        }
        medium(one, start);
    }

    private void open(ColdStartCandidate one, StartUpResult start) {
        say(
                "start.open",
                List.of(one.name()),
                Text.duration(one.openSeconds().value()),
                Text.duration(one.openSeconds().low()),
                Text.duration(one.openSeconds().high()),
                Text.liters(one.unfilteredVolume().value()),
                Text.liters(one.unfilteredVolume().low()),
                Text.liters(one.unfilteredVolume().high()),
                Text.percent(start.total().bypassShare()));
        closing(one, start);
        BypassTally fill = start.fill();
        if (fill.openSeconds() > 0 && start.connected().openSeconds() > 0) {
            say(
                    "start.fillShare",
                    List.of(one.name()),
                    Text.duration(fill.openSeconds()),
                    Text.liters(fill.unfilteredVolume()));
        } else if (fill.openSeconds() > 0) {
            say("start.fillOnly", List.of(one.name()), Text.duration(fill.seconds()));
        }
    }

    private void closing(ColdStartCandidate one, StartUpResult start) {
        Optional<StartEvent> last =
                start.events(StartEvent.Kind.VALVE_CLOSES).stream().max(Comparator.comparingDouble(StartEvent::time));
        if (start.closingTime().isPresent() && last.isPresent()) {
            say(
                    "start.closes",
                    List.of(one.name()),
                    Text.duration(start.closingTime().getAsDouble()),
                    Text.celsius(last.get().oilTemperature()));
        }
        int openings = start.events(StartEvent.Kind.VALVE_OPENS).size();
        if (openings > 1) {
            say("start.again", List.of(one.name()), openings + "");
        }
    }

    private void medium(ColdStartCandidate one, StartUpResult start) {
        Peak pack = start.partPeaks().get(FilterPart.PLEAT_PACK);
        if (pack != null) {
            say("start.mediumBears", List.of(one.name()), Text.kilopascals(pack.value()), Text.duration(pack.time()));
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
                        Text.duration(longer),
                        Text.liters(first.start().total().unfilteredVolume()
                                - second.start().total().unfilteredVolume()));
                reasons(first, second, names);
            } else if (second.start().total().openSeconds() > 0) {
                say("start.sameTime", names);
            }
        }
    }

    private void reasons(ColdStartCandidate first, ColdStartCandidate second, List<String> names) {
        BuiltCandidate one = built(first);
        BuiltCandidate other = built(second);
        Duty duty = plan.longestPhase();
        for (Reasons.Reason reason :
                new Reasons(resolved.shared(), duty, plan.model().from()).between(one, other)) {
            List<String> values = new ArrayList<>();
            values.add(Text.number(Math.exp(Math.abs(reason.logEffect()))));
            values.addAll(RankSentences.reasonValues(reason.code(), one, other));
            String direction = reason.logEffect() > 0 ? ".earlier" : ".later";
            verdicts.add(
                    new Verdict("reason." + reason.code() + direction, duty.setting(), duty.name(), names, values));
        }
    }

    private BuiltCandidate built(ColdStartCandidate one) {
        return resolved.candidates().get(resolved.positionOf(one.name()).orElseThrow());
    }

    private void say(String code, List<String> candidates, String... values) {
        verdicts.add(new Verdict(code, Duty.ENGINE, plan.name(), candidates, List.of(values)));
    }
}

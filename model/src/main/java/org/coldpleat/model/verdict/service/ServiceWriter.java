package org.coldpleat.model.verdict.service;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.service.DutyCycle;
import org.coldpleat.model.loading.service.ServiceLife;
import org.coldpleat.model.progress.Counted;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;

/** Service life of all candidates, their order and the reasons for it. */
public final class ServiceWriter {
    /** Least difference of the logarithm that is worth a sentence [1]. */
    private static final double WORTH_SAYING = 0.05;

    private final ResolvedCase resolved;
    private final DutyCycle cycle;
    private final List<ServiceAnalyzer> analyzers = new ArrayList<>();
    private final List<ServiceResult.Candidate> results = new ArrayList<>();
    private final List<Verdict> verdicts = new ArrayList<>();

    private ServiceWriter(ResolvedCase resolved, DutyCycle cycle) {
        this.resolved = resolved;
        this.cycle = cycle;
    }

    /** The service life; nothing if cancelled. */
    public static Optional<ServiceResult> write(ResolvedCase resolved, DutyCycle cycle, Progress progress) {
        ServiceWriter writer = new ServiceWriter(resolved, cycle);
        if (!writer.compute(progress)) {
            return Optional.empty();
        }
        writer.say();
        return Optional.of(writer.result());
    }

    private boolean compute(Progress progress) {
        Variants variants = new Variants(resolved);
        int count = resolved.candidates().size();
        for (int i = 0; i < count; i++) {
            analyzers.add(new ServiceAnalyzer(resolved, variants, i, cycle));
        }
        ServiceResult.Candidate[] found = new ServiceResult.Candidate[count];
        boolean whole = new Counted(progress, count)
                .each(count, i -> found[i] = analyzers.get(i).analyze());
        results.addAll(whole ? List.of(found) : List.of());
        return whole;
    }

    private ServiceResult result() {
        Set<Notice> notices = new LinkedHashSet<>();
        analyzers.forEach(one -> notices.addAll(one.notices()));
        cycle.starts().ifPresent(starts -> notices.add(warming(starts.warming())));
        notices.add(Notice.of("service.oneElement", Severity.INFO, ""));
        notices.add(Notice.of("loading.dirtScatter", Severity.INFO, ""));
        notices.add(Notice.of("caution.service", Severity.CAUTION, ""));
        List<Notice> ordered = new ArrayList<>(notices);
        ordered.sort(Comparator.comparing(Notice::severity));
        return new ServiceResult(
                resolved.title(),
                resolved.isInvented(),
                resolved.digest(),
                cycle.horizon(),
                cycle.starts().map(DutyCycle.Starts::winterStart).orElse(Double.NaN),
                results,
                verdicts,
                ordered);
    }

    /** How the oil warms up in the starts of the year: from the heat balance of the case, or as stated. */
    private static Notice warming(DutyCycle.Warming warming) {
        Amount time = Amount.duration(warming.duration());
        return warming.plan()
                .map(plan -> Notice.of(
                        "service.startsByBalance", Severity.INFO, "duty.starts", Shown.word(plan.name()), time))
                .orElseGet(() -> Notice.of("service.warmUpStated", Severity.INFO, "duty.starts", time));
    }

    private void say() {
        for (ServiceResult.Candidate one : results) {
            one.hotBypass().ifPresent(event -> opening("service.hot", one, event, Shown.word("")));
            one.winterBypass()
                    .ifPresent(event -> opening(
                            "service.winter",
                            one,
                            event,
                            Amount.temperature(cycle.starts().orElseThrow().winterStart())));
        }
        List<Integer> order = IntStream.range(0, results.size())
                .boxed()
                .filter(i ->
                        results.get(i).hotBypass().isPresent() && results.get(i).isComputed())
                .sorted(Comparator.comparingDouble(
                        (Integer i) -> results.get(i).hotBypass().get().time()))
                .toList();
        for (int i = 0; i + 1 < order.size(); i++) {
            rank(order.get(i), order.get(i + 1));
        }
    }

    private void opening(String code, ServiceResult.Candidate one, ServiceResult.Event event, Shown where) {
        String kind = event.time() == 0 ? ".clean" : event.happens() ? ".after" : ".never";
        say(
                code + kind,
                List.of(one.name()),
                event.happens()
                        ? hours(event, event.time())
                        : Amount.hours(one.last().time()),
                hours(event, event.low()),
                hours(event, event.high()),
                where);
    }

    private void rank(int first, int second) {
        ServiceResult.Event early = results.get(first).hotBypass().orElseThrow();
        ServiceResult.Event late = results.get(second).hotBypass().orElseThrow();
        if (!early.happens()) {
            return;
        }
        List<String> names =
                List.of(results.get(first).name(), results.get(second).name());
        boolean separated = Math.log(late.time() / early.time()) > reach(early, late);
        say(separated ? "service.first" : "service.firstNotSeparated", names, hours(early, early.time()));
        reasons(first, second, names);
    }

    /** Difference of the logarithms of two lives that can be told apart [1]; the dirt rate is common to both and cancels. */
    private double reach(ServiceResult.Event early, ServiceResult.Event late) {
        double shared = COVERAGE_95 * cycle.dirtLnSigma();
        double own = half(early);
        double other = late.happens() ? half(late) : own;
        return Math.sqrt(Math.max(0, own * own + other * other - 2 * shared * shared));
    }

    /** A life within a band by a factor: each of its numbers is as sharp as that factor allows. */
    private static Amount hours(ServiceResult.Event event, double time) {
        return Amount.roughHours(time).withBand(event.happens() ? half(event) * time : 0);
    }

    private static double half(ServiceResult.Event event) {
        return event.time() == 0 ? 0 : Math.log(event.high() / event.low()) / 2;
    }

    /** What of the difference in dirt until opening comes from area, from the medium, from the headroom. */
    private void reasons(int first, int second, List<String> names) {
        Optional<BlockingLaw> one = analyzers.get(first).law();
        Optional<BlockingLaw> other = analyzers.get(second).law();
        var ratios = List.of(
                results.get(first).hotFactor().simulated(),
                results.get(second).hotFactor().simulated());
        double area = resolved.candidates().get(first).pack().effectiveArea();
        double otherArea = resolved.candidates().get(second).pack().effectiveArea();
        reason("area", Math.log(otherArea / area), names, Amount.area(area), Amount.area(otherArea));
        if (ratios.get(0).isEmpty() || one.isEmpty() || other.isEmpty()) {
            return;
        }
        double own = ratios.get(0).getAsDouble();
        if (own > 1) {
            double mine = one.get().massPerArea(own);
            double yours = other.get().massPerArea(own);
            reason(
                    "capacity",
                    Math.log(yours / mine),
                    names,
                    new Amount(Look.DIRT, mine),
                    new Amount(Look.DIRT, yours));
            if (ratios.get(1).isEmpty()) {
                say("service.reason.headroomOpen", names, Amount.ratio(own), Amount.ratio(ServiceLife.ELEMENT_LIMIT));
                return;
            }
            double ratio = ratios.get(1).getAsDouble();
            double wider = other.get().massPerArea(ratio);
            reason("headroom", Math.log(wider / yours), names, Amount.ratio(own), Amount.ratio(ratio));
        }
    }

    private void reason(String code, double logFactor, List<String> names, Shown mine, Shown yours) {
        if (Math.abs(logFactor) >= WORTH_SAYING && Double.isFinite(logFactor)) {
            say(
                    "service.reason." + code + (logFactor > 0 ? ".earlier" : ".later"),
                    names,
                    mine,
                    yours,
                    Amount.ratio(Math.exp(Math.abs(logFactor))));
        }
    }

    private void say(String code, List<String> names, Shown... values) {
        verdicts.add(
                new Verdict(code, cycle.running().setting(), cycle.running().name(), names, List.of(values)));
    }
}

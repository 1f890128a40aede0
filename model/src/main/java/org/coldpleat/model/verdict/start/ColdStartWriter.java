package org.coldpleat.model.verdict.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.coldpleat.model.certainty.ColdStartCandidate;
import org.coldpleat.model.certainty.StartBands;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.coldstart.StartSweep;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartModel;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.progress.Counted;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;

/** Computes starts and sweeps of starts of a case. */
public final class ColdStartWriter {
    private static final double SWEEP_STEP = 2.5;

    /** The same with bands, each of which takes some fifty starts [K]. */
    private static final double BANDED_STEP = 5;

    /** A swept start this close to the hot temperature is no cold start any more [K]. */
    private static final double BELOW_HOT = 5;
    /** Warmest swept start [K]: 50 degrees C. */
    private static final double WARMEST_START = 323.15;

    /** What the verdict says already. */
    private static final Set<String> IN_SENTENCES = Set.of("start.openOnlyWhileFilling", "start.notHot");

    private final ResolvedCase resolved;
    private final ColdStartRequest request;
    private final StartPlan plan;
    private final int[] positions;

    public ColdStartWriter(ResolvedCase resolved, ColdStartRequest request) {
        this.resolved = resolved;
        this.request = request;
        plan = new StartPlan(resolved, request);
        positions = resolved.positions(request.candidate());
    }

    /** The start of all candidates; nothing if cancelled. */
    public Optional<ColdStart> run(Progress progress) {
        Variants variants = new Variants(resolved);
        StartModel model = plan.model();
        if (model.from() >= model.hot()) {
            throw new IllegalArgumentException("from "
                    + Amount.temperature(model.from()).text() + " must be colder than the stated hot temperature "
                    + Amount.temperature(model.hot()).text());
        }
        List<StartBands> bands = IntStream.of(positions)
                .parallel()
                .mapToObj(position -> new StartBands(resolved, variants, plan, position))
                .toList();
        Counted counted = new Counted(
                progress, bands.stream().mapToInt(StartBands::starts).sum());
        List<ColdStartCandidate> candidates = bands.parallelStream()
                .flatMap(one -> one.candidate(counted).stream())
                .toList();
        if (candidates.size() < positions.length) {
            return Optional.empty();
        }
        return Optional.of(new ColdStart(
                resolved.title(),
                resolved.isInvented(),
                resolved.digest(),
                plan.name(),
                phases(model),
                model.from(),
                model.ambient(),
                model.hot(),
                model.trace().isPresent(),
                candidates,
                StartSentences.of(resolved, plan, candidates),
                assumptions(),
                notices(candidates)));
    }

    /**
     * The start from a range of temperatures.
     *
     * @param banded true for bands, from fewer temperatures
     * @return nothing if cancelled
     */
    public Optional<ColdStartSweep> sweep(boolean banded, Progress progress) {
        StartModel model = plan.model();
        if (model.trace().isPresent()) {
            throw new IllegalArgumentException("a logged oil temperature is one start; it cannot be swept");
        }
        double warmest = Math.min(Math.min(resolved.to(), WARMEST_START), model.hot() - BELOW_HOT);
        double step = banded ? BANDED_STEP : SWEEP_STEP;
        double[] temperatures = DoubleStream.iterate(resolved.from(), at -> at <= warmest, at -> at + step)
                .toArray();
        List<ColdStartSweep.Candidate> candidates = banded
                ? new SweepBands(resolved, request).candidates(positions, temperatures, progress)
                : plain(temperatures);
        if (candidates.size() < positions.length) {
            return Optional.empty();
        }
        return Optional.of(new ColdStartSweep(
                resolved.title(),
                resolved.isInvented(),
                resolved.digest(),
                plan.name(),
                phases(model),
                model.hot(),
                candidates,
                assumptions(),
                sweepNotices()));
    }

    private List<ColdStartSweep.Candidate> plain(double[] temperatures) {
        List<ColdStartSweep.Candidate> candidates = new ArrayList<>();
        for (int position : positions) {
            BuiltCandidate built = resolved.candidates().get(position);
            StartSweep sweep = StartSweep.of(plan.spec(resolved.shared(), built, position, plan.model()), temperatures);
            candidates.add(new ColdStartSweep.Candidate(
                    built.name(),
                    plan.hasValve(built),
                    sweep.rows().stream().map(row -> row(row, Optional.empty())).toList()));
        }
        return candidates;
    }

    /** A swept start as it is told, with its bands if there are any. */
    static ColdStartSweep.Row row(StartSweep.Row row, Optional<ColdStartSweep.Bands> bands) {
        return new ColdStartSweep.Row(
                row.startTemperature(),
                row.status().name(),
                row.status().isAnswer(),
                row.fill().openSeconds(),
                row.connected().openSeconds(),
                row.fill().unfilteredVolume(),
                row.connected().unfilteredVolume(),
                row.greatestRatio(),
                bands);
    }

    private List<ColdStart.Phase> phases(StartModel model) {
        return plan.phases(model).stream()
                .map(phase -> new ColdStart.Phase(
                        phase.state(), phase.speed(), phase.duration(), phase.toMetal(), phase.toOil()))
                .toList();
    }

    private List<Notice> sweepNotices() {
        Set<Notice> notices = new LinkedHashSet<>(resolved.oilNotices());
        notices.addAll(OilNotices.at(resolved.shared().oil().oil(), resolved.from()));
        notices.addAll(plan.notices());
        notices.add(Notice.of("start.scope", Severity.INFO, ""));
        notices.add(Notice.of("caution.specification", Severity.CAUTION, ""));
        return ordered(notices);
    }

    private static List<Notice> ordered(Set<Notice> notices) {
        List<Notice> ordered = new ArrayList<>(notices);
        ordered.sort(Comparator.comparing(Notice::severity));
        return ordered;
    }

    private List<Assumption> assumptions() {
        Map<String, Assumption> all = new LinkedHashMap<>();
        Stream.concat(plan.assumptions().stream(), resolved.assumptions().stream())
                .filter(one -> one.candidate() < 0
                        || IntStream.of(positions).anyMatch(position -> position == one.candidate()))
                .forEach(one -> all.putIfAbsent(one.path(), one));
        return List.copyOf(all.values());
    }

    private List<Notice> notices(List<ColdStartCandidate> candidates) {
        Set<Notice> notices = new LinkedHashSet<>(resolved.oilNotices());
        double coldest = Math.min(plan.model().from(), resolved.coldestNamed());
        notices.addAll(OilNotices.at(resolved.shared().oil().oil(), coldest));
        notices.addAll(plan.notices());
        candidates.forEach(one -> one.start().notices().stream()
                .filter(notice -> !IN_SENTENCES.contains(notice.code()))
                .map(notice -> new Notice(notice.code(), notice.severity(), one.name(), notice.values()))
                .forEach(notices::add));
        if (plan.model().trace().isPresent()) {
            notices.add(Notice.of("start.traceRules", Severity.INFO, "start"));
        }
        greatest(candidates, notices);
        notices.add(Notice.of("start.scope", Severity.INFO, ""));
        notices.add(Notice.of("caution.specification", Severity.CAUTION, ""));
        return ordered(notices);
    }

    /** What the most loaded medium must bear. */
    private static void greatest(List<ColdStartCandidate> candidates, Set<Notice> notices) {
        ColdStartCandidate worst = null;
        double most = 0;
        for (ColdStartCandidate one : candidates) {
            double peak = pack(one.start());
            if (one.start().status().isAnswer() && peak > most) {
                most = peak;
                worst = one;
            }
        }
        if (worst != null) {
            notices.add(Notice.of("start.elementCollapse", Severity.CAUTION, worst.name(), Amount.pressure(most)));
        }
    }

    private static double pack(StartUpResult start) {
        return start.partPeaks().containsKey(FilterPart.PLEAT_PACK)
                ? start.partPeaks().get(FilterPart.PLEAT_PACK).value()
                : 0;
    }
}

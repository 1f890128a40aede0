package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.certainty.OpeningSpread;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.coldstart.Peak;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.progress.Counted;
import org.coldpleat.model.progress.Progress;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Assumption;

/** Sets the bypass valves of a case to one opening pressure after another. */
public final class SettingsWriter {
    /** Settings looked at [1]. */
    private static final int STEPS = 19;

    /** A setting this near to the one as measured gives way to it [1]. */
    private static final double SAME = 1e-3;

    private final ResolvedCase resolved;
    private final int[] positions;
    private final double from;
    private final double to;
    private final Optional<StartPlan> plan;
    private final List<List<OpeningSpread>> spreads = new ArrayList<>();

    private SettingsWriter(ResolvedCase resolved, int[] positions, double from, double to) {
        this.resolved = resolved;
        this.positions = positions;
        this.from = from;
        this.to = to;
        plan = StartPlan.isStated(resolved)
                ? Optional.of(new StartPlan(resolved, ColdStartRequest.AS_STATED))
                        .filter(one -> one.model().from() < one.model().hot())
                : Optional.empty();
    }

    /** The comparison; nothing if cancelled. */
    public static Optional<SettingsResult> write(
            ResolvedCase resolved, Optional<String> candidate, double from, double to, Progress progress) {
        SettingsWriter writer = new SettingsWriter(resolved, resolved.positions(candidate), from, to);
        return writer.result(progress);
    }

    private record Task(int index, Design design, double setting, double measured) {}

    private Optional<SettingsResult> result(Progress progress) {
        Variants variants = new Variants(resolved);
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < positions.length; i++) {
            int position = positions[i];
            spreads.add(resolved.operatingStates().stream()
                    .map(duty -> OpeningSpread.of(resolved, variants, position, duty))
                    .toList());
            Design design = Design.of(resolved, position);
            double measured = design.openingPressure().orElse(Double.NaN);
            for (double setting : settings(measured)) {
                tasks.add(new Task(i, design, setting, measured));
            }
        }
        SettingsResult.Row[] rows = new SettingsResult.Row[tasks.size()];
        if (!new Counted(progress, rows.length).each(rows.length, t -> rows[t] = row(tasks.get(t)))) {
            return Optional.empty();
        }
        List<SettingsResult.Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < positions.length; i++) {
            List<SettingsResult.Row> own = new ArrayList<>();
            for (int t = 0; t < rows.length; t++) {
                if (tasks.get(t).index() == i) {
                    own.add(rows[t]);
                }
            }
            Design design = Design.of(resolved, positions[i]);
            candidates.add(new SettingsResult.Candidate(
                    resolved.candidates().get(positions[i]).name(),
                    design.openingPressure().orElse(Double.NaN),
                    design.opensInBlock(),
                    own));
        }
        SettingsResult bare = new SettingsResult(
                resolved.title(),
                resolved.isInvented(),
                resolved.digest(),
                plan.map(one -> new SettingsResult.Start(one.name(), one.model().from())),
                resolved.stateNames(),
                candidates,
                SettingsSentences.of(resolved, candidates),
                assumptions(),
                List.of());
        return Optional.of(SettingsSentences.withNotices(resolved, plan, bare, positions));
    }

    /** Settings in even steps, the one as measured among them; one without a number where there is no valve. */
    private SortedSet<Double> settings(double measured) {
        SortedSet<Double> settings = new TreeSet<>();
        settings.add(measured);
        for (int i = 0; i < STEPS && !Double.isNaN(measured); i++) {
            double setting = from + (to - from) * i / (STEPS - 1);
            if (Math.abs(setting - measured) > SAME * measured) {
                settings.add(setting);
            }
        }
        return settings;
    }

    private SettingsResult.Row row(Task task) {
        boolean valve = !Double.isNaN(task.measured());
        Design design = valve
                ? task.design().changed(change -> change.timesOpening(task.setting() / task.measured()))
                : task.design();
        List<OpeningBand> openings = new ArrayList<>();
        for (int d = 0; d < resolved.operatingStates().size(); d++) {
            openings.add(spreads.get(task.index()).get(d).band(design));
        }
        return new SettingsResult.Row(
                task.setting(),
                !valve || task.setting() == task.measured(),
                openings,
                plan.map(one -> afterStart(one, design, positions[task.index()])),
                ElementPeak.overRange(resolved, design));
    }

    private static SettingsResult.AfterStart afterStart(StartPlan plan, Design design, int position) {
        StartUpResult start = StartUp.run(plan.spec(design.shared(), design.built(), position, plan.model()));
        Peak peak = start.partPeaks().get(FilterPart.PLEAT_PACK);
        return new SettingsResult.AfterStart(
                start.status().isAnswer(),
                start.total().bypassShare(),
                start.total().openSeconds(),
                start.total().unfilteredVolume(),
                peak == null ? 0 : peak.value());
    }

    private List<Assumption> assumptions() {
        Map<String, Assumption> all = new LinkedHashMap<>();
        plan.ifPresent(one -> one.assumptions().forEach(each -> all.putIfAbsent(each.path(), each)));
        resolved.assumptions().stream()
                .filter(one -> one.candidate() < 0 || IntStream.of(positions).anyMatch(at -> at == one.candidate()))
                .forEach(one -> all.putIfAbsent(one.path(), one));
        return List.copyOf(all.values());
    }
}

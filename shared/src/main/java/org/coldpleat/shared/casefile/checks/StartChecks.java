package org.coldpleat.shared.casefile.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.TypicalStates;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.NearestWord;

/** Checks of a start in time against itself and against the engine. */
final class StartChecks {
    private final CaseChecks checks;

    StartChecks(CaseChecks checks) {
        this.checks = checks;
    }

    void check(Section start, Section root) {
        Optional<Section> engine = root.section("engine");
        if (!root.has("engine")) {
            checks.at(start, "start.noEngine");
        }
        List<String> states = new ArrayList<>();
        engine.map(TypicalStates::of).ifPresent(states::addAll);
        checks.uniqueNames(start.sections("schedules"));
        start.sections("schedules").forEach(schedule -> schedule(schedule, engine, states));
        temperatures(start, root);
        Optional<Section> trace = start.section("trace");
        trace.ifPresent(this::trace);
        boolean typical = engine.map(one -> one.has("kind")).orElse(false);
        if (!start.has("trace") && !start.has("thermal") && !typical) {
            checks.at(start, "start.noHeat");
        }
        start.section("thermal").ifPresent(thermal -> thermal(thermal, start.has("trace") || typical, states));
    }

    private void schedule(Section schedule, Optional<Section> engine, List<String> states) {
        boolean turns = false;
        List<Section> phases = schedule.sections("phases");
        for (Section phase : phases) {
            stateOrSpeed(phase, states);
            turns |= turns(phase, engine);
        }
        if (!turns && !phases.isEmpty()) {
            checks.at(schedule, "start.neverTurns");
        }
    }

    /** False only where the speed is understood and 0. */
    private static boolean turns(Section phase, Optional<Section> engine) {
        Optional<Measured> speed = phase.quantity("speed");
        if (phase.has("speed")) {
            return speed.map(value -> value.value() > 0).orElse(true);
        }
        Optional<String> name = phase.text("state");
        return engine.stream()
                .flatMap(one -> one.sections("states").stream())
                .filter(state -> state.text("name").equals(name))
                .findFirst()
                .flatMap(state -> state.quantity("speed"))
                .map(value -> value.value() > 0)
                .orElse(true);
    }

    private void stateOrSpeed(Section section, List<String> states) {
        if (section.has("state") && section.has("speed")) {
            checks.atKey(section, "speed", "start.stateAndSpeed");
        } else if (!section.has("state") && !section.has("speed")) {
            checks.at(section, "start.noSpeed");
        }
        section.text("state").filter(name -> !states.contains(name)).ifPresent(name -> {
            String known = String.join(", ", states);
            Optional<String> near = NearestWord.to(name, states);
            if (near.isPresent()) {
                checks.atKey(section, "state", "start.unknownState.near", name, known, near.get());
            } else {
                checks.atKey(section, "state", "start.unknownState", name, known);
            }
        });
    }

    private void temperatures(Section start, Section root) {
        Optional<Measured> hot = start.quantity("hot");
        if (hot.isEmpty()) {
            return;
        }
        for (String key : List.of("from", "ambient")) {
            start.quantity(key)
                    .filter(value -> value.value() >= hot.get().value())
                    .ifPresent(value -> checks.atKey(
                            start,
                            key,
                            "start.hotterThanHot",
                            value.written(),
                            hot.get().written()));
        }
        if (!start.has("from")) {
            root.section("temperatures").stream()
                    .flatMap(section -> section.sections("named").stream())
                    .flatMap(named -> named.quantity("temperature").stream())
                    .min((a, b) -> Double.compare(a.value(), b.value()))
                    .filter(coldest -> coldest.value() >= hot.get().value())
                    .ifPresent(coldest -> checks.atKey(
                            start, "hot", "start.hotBelowNamed", hot.get().written(), coldest.written()));
        }
    }

    private void thermal(Section thermal, boolean traced, List<String> states) {
        if (thermal.has("metalMass") && thermal.has("metalHeatCapacity")) {
            checks.atKey(thermal, "metalHeatCapacity", "start.metalTwice");
        }
        if (!traced) {
            if (!thermal.has("oilVolume")) {
                checks.at(thermal, "start.noOilVolume");
            }
            if (!thermal.has("metalMass") && !thermal.has("metalHeatCapacity")) {
                checks.at(thermal, "start.noMetal");
            }
        }
        Map<String, Integer> lines = new HashMap<>();
        for (Section heat : thermal.sections("heats")) {
            stateOrSpeed(heat, states);
            String key = heat.text("state")
                    .or(() -> heat.quantity("speed").map(speed -> speed.value() + ""))
                    .orElse("");
            Integer before = key.isEmpty() ? null : lines.putIfAbsent(key, heat.line());
            if (before != null) {
                checks.at(heat, "start.heatTwice", before.toString());
            }
        }
    }

    private void trace(Section trace) {
        boolean file = trace.has("file");
        if (file && trace.has("points")) {
            checks.atKey(trace, "points", "start.traceTwice");
        } else if (!file && !trace.has("points")) {
            checks.at(trace, "start.traceEmpty");
        }
        List<Section> points = trace.sections("points");
        for (int i = 1; i < points.size(); i++) {
            Optional<Measured> before = points.get(i - 1).quantity("time");
            Optional<Measured> now = points.get(i).quantity("time");
            if (before.isPresent()
                    && now.isPresent()
                    && now.get().value() <= before.get().value()) {
                checks.atKey(
                        points.get(i),
                        "time",
                        "start.traceUnordered",
                        now.get().written(),
                        before.get().written());
            }
        }
    }
}

package org.coldpleat.model.certainty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.casefile.TypicalStates;
import org.coldpleat.shared.source.Source;

/** Says what a case takes its engine for, and which question to the owner would narrow the cold answer most. */
@Source("JCGM 100:2008 (GUM), 5.1.2: variance of independent inputs, first order")
public final class EngineProfiler {
    /** Oil of the cold answer [K]: -20 degrees C. */
    private static final double COLD = 253.15;

    private static final String ENGINE = "engine.";
    private static final String READING = "engine.gallery.hotReading.";
    private static final List<String> SECTIONS = List.of(ENGINE, "start.", "duty.");

    /** What an owner may know; a question is open as long as its first value stands in. */
    private static final List<Topic> TOPICS = List.of(
            new Topic("relief", List.of("engine.reliefValves[0].openingPressure")),
            new Topic("hotIdle", List.of(READING + "pressure", READING + "speed", READING + "temperature")),
            new Topic("jets", List.of(READING + "jetBore", READING + "jetLength")),
            new Topic("pump", List.of("engine.pump.displacement", "engine.pump.slip")));

    private record Topic(String about, List<String> paths) {}

    private EngineProfiler() {}

    /** True if the engine of a case is known by its kind and has a cold idle, and a valve acts on the first candidate. */
    public static boolean isPossible(ResolvedCase resolved) {
        return !resolved.standIns().isEmpty()
                && resolved.operatingState(TypicalStates.COLD_IDLE)
                        .filter(OperatingState::isEngine)
                        .filter(idle -> model(resolved, idle).hasValve())
                        .isPresent();
    }

    private static StateModel model(ResolvedCase resolved, OperatingState idle) {
        return new StateModel(resolved.shared(), resolved.candidates().get(0).filter(), idle);
    }

    /** The profile of the engine, its cold answer with the first candidate. */
    public static EngineProfile profile(ResolvedCase resolved) {
        OperatingState idle = resolved.operatingState(TypicalStates.COLD_IDLE).orElseThrow();
        Map<String, Double> changes = new Variants(resolved)
                .contributions(0, idle, 1, moved -> new double[] {lnRatio(moved)})
                .get(0);
        double engine = variance(changes, path -> path.startsWith(ENGINE));
        List<EngineProfile.Question> questions = new ArrayList<>();
        for (Topic topic : TOPICS) {
            if (resolved.standIns().containsKey(topic.paths().get(0))) {
                double part = variance(
                        changes,
                        path -> topic.paths().contains(path)
                                && resolved.standIns().containsKey(path));
                questions.add(new EngineProfile.Question(topic.about(), part / engine, Math.sqrt(engine - part)));
            }
        }
        questions.sort(Comparator.comparingDouble(EngineProfile.Question::share).reversed());
        return new EngineProfile(
                values(resolved),
                idle.name(),
                COLD,
                Math.exp(lnRatio(model(resolved, idle))),
                Math.sqrt(variance(changes, path -> true)),
                Math.sqrt(engine),
                questions);
    }

    private static double lnRatio(StateModel model) {
        return Math.log(model.heldShutSolver().ratioAt(COLD));
    }

    private static double variance(Map<String, Double> changes, Predicate<String> of) {
        return changes.entrySet().stream()
                .filter(entry -> of.test(entry.getKey()))
                .mapToDouble(entry -> entry.getValue() * entry.getValue())
                .sum();
    }

    private static List<EngineProfile.Value> values(ResolvedCase resolved) {
        List<EngineProfile.Value> values = new ArrayList<>();
        resolved.understood().forEach((path, value) -> {
            TypicalEngine.Row row = resolved.standIns().get(path);
            if (row != null) {
                values.add(new EngineProfile.Value(path, value, row.sureness(), row.source()));
            } else if (!value.provenance().isAssumption() && SECTIONS.stream().anyMatch(path::startsWith)) {
                values.add(new EngineProfile.Value(path, value, "", ""));
            }
        });
        return values;
    }
}

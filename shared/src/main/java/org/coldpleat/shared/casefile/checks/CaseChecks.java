package org.coldpleat.shared.casefile.checks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.casefile.FileProblems;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/**
 * Checks that tie several fields of the circuit side of a case together. They judge what was given, so a field that is
 * there but was not understood gives no second problem here.
 */
public final class CaseChecks {
    private static final List<String> DISC = List.of("seatDiameter", "springRate", "maximumLift");

    private final FileProblems problems;

    public CaseChecks(FileProblems problems) {
        this.problems = problems;
    }

    public void check(Section root) {
        if (!root.has("flowStand") && !root.has("engine")) {
            problems.add(root.place().key("flowStand"), root.line(), root.column(), "case.noCircuit");
        }
        root.section("oil").ifPresent(oil -> {
            oil(oil);
            oil.section("topUp").ifPresent(this::oil);
        });
        root.section("flowStand").ifPresent(stand -> uniqueNames(stand.sections("states")));
        root.section("engine").ifPresent(this::engine);
        root.section("temperatures").ifPresent(this::temperatures);
        root.section("start").ifPresent(start -> new StartChecks(this).check(start, root));
        root.section("duty").ifPresent(duty -> new DutyChecks(this).check(duty, root));
        List<Section> candidates = root.sections("candidates");
        uniqueNames(candidates);
        boolean blockValve =
                root.section("engine").map(engine -> engine.has("blockBypass")).orElse(false);
        CandidateChecks filters = new CandidateChecks(this);
        candidates.forEach(candidate -> filters.check(candidate, blockValve));
    }

    void oil(Section oil) {
        List<Section> points = oil.sections("points");
        boolean onePoint = oil.has("points") && points.size() == 1;
        if (!oil.has("grade") && (!oil.has("points") || onePoint)) {
            at(oil, onePoint ? "case.oneOilPoint" : "case.oilUnknown");
        }
        points.forEach(this::oneViscosity);
        oil.section("coldPoint").ifPresent(this::oneViscosity);
        Map<Double, Integer> lines = new HashMap<>();
        for (Section point : points) {
            Optional<Measured> temperature = point.quantity("temperature");
            if (temperature.isPresent()) {
                Integer before = lines.putIfAbsent(temperature.get().value(), point.line());
                if (before != null) {
                    atKey(
                            point,
                            "temperature",
                            "case.sameTemperature",
                            temperature.get().written(),
                            before.toString());
                }
            }
        }
        for (int i = 1; i < points.size(); i++) {
            viscosityFalls(points.get(i - 1), points.get(i));
        }
    }

    private void oneViscosity(Section point) {
        boolean kinematic = point.has("kinematic");
        boolean dynamic = point.has("dynamic");
        if (kinematic && dynamic) {
            atKey(point, "dynamic", "case.viscosityTwice");
        } else if (!kinematic && !dynamic) {
            at(point, "case.viscosityMissing");
        }
    }

    private void viscosityFalls(Section before, Section after) {
        for (String key : List.of("kinematic", "dynamic")) {
            Optional<Measured> first = before.quantity(key);
            Optional<Measured> second = after.quantity(key);
            Optional<Measured> firstAt = before.quantity("temperature");
            Optional<Measured> secondAt = after.quantity("temperature");
            if (first.isEmpty() || second.isEmpty() || firstAt.isEmpty() || secondAt.isEmpty()) {
                continue;
            }
            double warmer = secondAt.get().value() - firstAt.get().value();
            double thicker = second.get().value() - first.get().value();
            if (warmer * thicker > 0) {
                atKey(
                        after,
                        key,
                        "case.viscosityRises",
                        first.get().written(),
                        firstAt.get().written(),
                        second.get().written(),
                        secondAt.get().written());
            }
        }
    }

    /** A relief valve told by its disc is told whole. */
    private void relief(Section relief) {
        if (relief.has("override") || DISC.stream().noneMatch(relief::has)) {
            return;
        }
        DISC.stream()
                .filter(key -> !relief.has(key))
                .findFirst()
                .ifPresent(key -> atKey(relief, key, "case.reliefDisc", key));
    }

    private void engine(Section engine) {
        uniqueNames(engine.sections("states"));
        needed(engine, engine.has("kind") ? List.of("displacement") : List.of("pump", "gallery", "states"));
        engine.sections("reliefValves").forEach(valve -> {
            needed(valve, engine.has("kind") ? List.of() : List.of("senses", "openingPressure"));
            relief(valve);
        });
        engine.section("pump").ifPresent(pump -> {
            if (pump.has("displacement") && pump.has("deliveries")) {
                atKey(pump, "deliveries", "case.pumpTwice");
            } else if (!pump.has("displacement") && !pump.has("deliveries") && !engine.has("kind")) {
                at(pump, "case.pumpUnknown");
            } else if (pump.has("slip") && pump.has("deliveries")) {
                atKey(pump, "slip", "case.slipWithDeliveries");
            }
        });
        engine.section("gallery").ifPresent(gallery -> {
            if (!gallery.has("hotReading")
                    && !gallery.has("passages")
                    && !gallery.has("bearings")
                    && !engine.has("kind")) {
                at(gallery, "case.galleryUnknown");
            }
            gallery.section("hotReading").ifPresent(reading -> needed(reading, readingOf(engine, reading)));
            passage(gallery);
        });
        engine.section("blockBypass").ifPresent(valve -> {
            if (!valve.has("openingPressure")) {
                at(valve, "case.openingMissing", "block");
            }
            closesBelowOpening(valve);
        });
    }

    /** What a hot reading cannot be without; that of a known kind of engine may tell jets alone. */
    private static List<String> readingOf(Section engine, Section reading) {
        if (!engine.has("kind")) {
            return List.of("pressure", "temperature", "speed");
        }
        return reading.has("speed") || reading.has("temperature") || reading.has("minimum")
                ? List.of("pressure")
                : List.of();
    }

    private void needed(Section section, List<String> keys) {
        keys.stream()
                .filter(key -> !section.has(key))
                .forEach(key -> problems.add(
                        section.place().key(key),
                        section.line(),
                        section.column(),
                        "key.missing",
                        key,
                        section.description(key)));
    }

    private void passage(Section gallery) {
        if (gallery.has("passage") && gallery.has("passageResistance")) {
            atKey(gallery, "passageResistance", "case.passageTwice");
        }
    }

    private void temperatures(Section temperatures) {
        List<Section> named = temperatures.sections("named");
        uniqueNames(named);
        Optional<Measured> from = temperatures.quantity("from");
        Optional<Measured> to = temperatures.quantity("to");
        if (from.isPresent() && to.isPresent() && from.get().value() >= to.get().value()) {
            atKey(
                    temperatures,
                    "from",
                    "case.temperaturesReversed",
                    from.get().written(),
                    to.get().written());
        }
    }

    void closesBelowOpening(Section valve) {
        Optional<Measured> opening = valve.quantity("openingPressure");
        Optional<Measured> closing = valve.quantity("closingPressure");
        if (opening.isPresent()
                && closing.isPresent()
                && closing.get().value() > opening.get().value()) {
            atKey(
                    valve,
                    "closingPressure",
                    "case.closingAboveOpening",
                    closing.get().written(),
                    opening.get().written());
        }
    }

    /** Notes names that stand twice. */
    void uniqueNames(List<Section> named) {
        Map<String, Integer> lines = new HashMap<>();
        for (Section section : named) {
            Optional<String> name = section.text("name");
            if (name.isPresent()) {
                Integer before = lines.putIfAbsent(name.get(), section.lineOf("name"));
                if (before != null) {
                    atKey(section, "name", "case.nameTwice", name.get(), before.toString());
                }
            }
        }
    }

    /** Notes a problem of a whole section. */
    void at(Section section, String code, String... values) {
        problems.add(section.place(), section.line(), section.column(), code, values);
    }

    /** Notes a problem of one key. */
    public void atKey(Section section, String key, String code, String... values) {
        int column = section.has(key) ? section.entry(key).column() : section.column();
        problems.add(section.place().key(key), section.lineOf(key), column, code, values);
    }
}

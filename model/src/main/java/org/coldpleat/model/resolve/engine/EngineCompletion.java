package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Completion;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.TypicalStates;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;

/**
 * Completes a case whose engine is known by kind and size: whatever it leaves out about engine, start and service gets a
 * typical value with its band, in the words of the case file. What the case states stays.
 */
public final class EngineCompletion {
    /** Exponent and reference displacement by which the slip of pumps grows with their size [1, m3/rev]. */
    private static final double SLIP_EXPONENT = 0.67;

    private static final double SLIP_REFERENCE = 8e-6;

    /** Speed at which the override of relief valves is told [rev/s]: 2500 rpm. */
    private static final double OVERRIDE_SPEED = 2500.0 / 60;

    /** Displacement of one cylinder where their number is not told [m3]. */
    @Source("common practice, no source")
    private static final double USUAL_CYLINDER = 0.45e-3;

    /** Fast idle over the first idle [1]. */
    @Source("common practice, no source")
    private static final double FASTER = 1.3;

    private static final double LITER = 1e-3;
    private static final double CUBIC_CENTIMETER = 1e-6;

    private final Section engine;
    private final StandIns standIns;
    private final double cylinders;

    private EngineCompletion(Section engine) {
        this.engine = engine;
        double displacement = engine.quantity("displacement").orElseThrow().value();
        standIns = new StandIns(new TypicalEngine(kind(engine), displacement / LITER));
        cylinders = engine.quantity("cylinders").map(Measured::value).orElse((double)
                Math.max(1, Math.round(displacement / USUAL_CYLINDER)));
    }

    /**
     * A case with everything that stands in.
     *
     * @param document the case
     * @param standIns row of the table of typical engines behind each value that stands in, by the path of the value
     */
    public record Completed(CaseDocument document, Map<String, TypicalEngine.Row> standIns) {}

    /** The case with everything that stands in. */
    public static Completed complete(CaseDocument document) {
        Optional<Section> engine = document.root().section("engine").filter(one -> one.has("kind"));
        if (engine.isEmpty()) {
            return new Completed(document, Map.of());
        }
        EngineCompletion completion = new EngineCompletion(engine.get());
        Section root = new Completion(document.root())
                .section("engine", completion::engine)
                .section("start", completion::start)
                .section("duty", completion::duty)
                .done();
        return new Completed(document.withRoot(root), completion.standIns.rows());
    }

    /** Kind and fuel as the table of typical engines has them. */
    private static String kind(Section engine) {
        String kind = engine.choice("kind").orElseThrow();
        String fuel = engine.choice("fuel").orElse(kind.equals("heavy") ? "diesel" : "gasoline");
        List<String> kinds = TypicalEngine.kinds();
        return List.of(kind + " " + fuel, kind).stream()
                .filter(kinds::contains)
                .findFirst()
                .orElseGet(() -> kinds.stream()
                        .filter(one -> one.startsWith(kind + " "))
                        .findFirst()
                        .orElseThrow());
    }

    private boolean isRolling() {
        return engine.choice("crankshaft").filter("rolling"::equals).isPresent();
    }

    private void engine(Completion whole) {
        whole.section("pump", this::pump);
        double displacement = whole.done()
                .section("pump")
                .flatMap(pump -> pump.quantity("displacement"))
                .map(Measured::value)
                .orElseGet(this::usualPump);
        whole.list("reliefValves", List.of(relief -> relief.text("name", "relief")));
        whole.each("reliefValves", relief -> relief(relief, displacement));
        whole.section("gallery", this::gallery);
        whole.list("states", states());
    }

    private void pump(Completion pump) {
        if (pump.has("deliveries")) {
            pump.section("suction", suction -> suction(suction, usualPump()));
            return;
        }
        standIns.fill(pump, "displacement", "pumpDisplacement", Kind.DISPLACEMENT);
        double displacement = pump.quantity("displacement").orElseThrow().value();
        standIns.fill(pump, "slip", "pumpSlip", Kind.SLIP, Math.pow(displacement / SLIP_REFERENCE, SLIP_EXPONENT));
        pump.section("suction", suction -> suction(suction, displacement));
    }

    private double usualPump() {
        return standIns.typical().of("pumpDisplacement", Kind.DISPLACEMENT).value();
    }

    private void suction(Completion suction, double displacement) {
        standIns.fill(suction, "pressure", "suctionPressure", Kind.PRESSURE_DIFFERENCE);
        if (!suction.has("resistance")) {
            standIns.fill(suction, "bore", "suctionBore", Kind.LENGTH, Math.cbrt(displacement / CUBIC_CENTIMETER));
            standIns.fill(suction, "length", "suctionLength", Kind.LENGTH);
        }
    }

    private String senses() {
        return engine.choice("kind").filter("heavy"::equals).isPresent() ? "gallery" : "outlet";
    }

    private void relief(Completion relief, double displacement) {
        relief.text("senses", senses());
        standIns.fill(relief, "openingPressure", "reliefOpening", Kind.GAUGE_PRESSURE);
        if (!relief.has("seatDiameter")) {
            double opening = relief.quantity("openingPressure").orElseThrow().value();
            Measured rise = standIns.typical().of("reliefOverride", Kind.RATIO);
            double override = rise.value() * opening / (displacement * OVERRIDE_SPEED);
            standIns.following(relief, "override", "reliefOverride", Kind.OVERRIDE, override, rise);
        }
    }

    private void gallery(Completion gallery) {
        if (!gallery.has("passageResistance")) {
            gallery.section("passage", passage -> {
                standIns.fill(passage, "bore", "galleryBore", Kind.LENGTH);
                standIns.fill(passage, "length", "galleryLengthPerCylinder", Kind.LENGTH, cylinders);
            });
        }
        if (isRolling()) {
            gallery.section("film", film -> film.flag("present", false));
        }
        boolean listed = gallery.has("bearings");
        if (!listed && !isRolling()) {
            standIns.fill(gallery, "sideFlow", "sideFlow", Kind.DISPLACEMENT);
            gallery.section("film", film -> {
                standIns.fill(film, "dissipation", "dissipation", Kind.VOLUME);
                standIns.fill(film, "heatLoss", "filmToMetal", Kind.HEAT_CONDUCTANCE);
            });
        }
        if (!listed && !gallery.has("passages")) {
            gallery.section("hotReading", this::reading);
        }
    }

    private void reading(Completion reading) {
        if (reading.isTrue("minimum")) {
            Measured speed =
                    reading.quantity("speed").orElseGet(() -> standIns.typical().of("hotIdleSpeed", Kind.ROTATION));
            reading.quantity("pressure")
                    .ifPresent(least -> reading.replace("pressure", StatedMinimum.likely(least, isIdle(speed))));
        }
        if (reading.has("second")) {
            reading.section("second", this::second);
        }
        standIns.fill(reading, "pressure", isRolling() ? "rollingPressure" : "hotIdlePressure", Kind.GAUGE_PRESSURE);
        standIns.fill(reading, "speed", "hotIdleSpeed", Kind.ROTATION);
        standIns.fill(reading, "temperature", "readingTemperature", Kind.TEMPERATURE);
        standIns.fill(reading, "bearingShare", "bearingShare", Kind.FRACTION);
        standIns.fill(reading, "jetBore", "jetBore", Kind.LENGTH);
        standIns.fill(reading, "jetLength", "jetLength", Kind.LENGTH);
    }

    private void second(Completion second) {
        if (second.isTrue("minimum")) {
            Measured speed = second.quantity("speed").orElseThrow();
            second.replace(
                    "pressure", StatedMinimum.likely(second.quantity("pressure").orElseThrow(), isIdle(speed)));
        }
    }

    private boolean isIdle(Measured speed) {
        return speed.value()
                < FASTER * standIns.typical().of("coldIdleSpeed", Kind.ROTATION).value();
    }

    private List<Consumer<Completion>> states() {
        return List.of(
                state(TypicalStates.CRANKING, "crankingSpeed", 1, "soaked"),
                state(TypicalStates.COLD_IDLE, "coldIdleSpeed", 1, "soaked"),
                state(TypicalStates.FAST_IDLE, "coldIdleSpeed", FASTER, "soaked"),
                state(TypicalStates.DRIVING, "drivingSpeed", 1, "running"));
    }

    private Consumer<Completion> state(String name, String speed, double factor, String metal) {
        return state -> {
            standIns.fill(state.text("name", name), "speed", speed, Kind.ROTATION, factor);
            state.text("metal", metal);
        };
    }

    private void start(Completion start) {
        StartCompletion.fill(start, engine, standIns);
    }

    private void duty(Completion duty) {
        List<String> states = TypicalStates.of(engine);
        duty.section("running", running -> {
            running.text("state", states.get(states.size() - 1));
            standIns.fill(running, "oilTemperature", "runningOil", Kind.TEMPERATURE);
            standIns.fill(running, "hoursPerWeek", "hoursPerWeek", Kind.DURATION);
        });
        duty.section("dirt", dirt -> {
            if (!dirt.has("ingestion")) {
                standIns.fill(dirt, "generation", "dirtRate", Kind.MASS_RATE);
            }
            if (!dirt.has("sizes")) {
                dirt.text("dust", "A3");
            }
        });
        duty.section("sump", sump -> StartCompletion.oilFill(sump, "volume", engine, standIns));
    }
}

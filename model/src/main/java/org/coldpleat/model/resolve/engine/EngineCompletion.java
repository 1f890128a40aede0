package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Completion;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.TypicalStates;
import org.coldpleat.shared.quantity.Coverage;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
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

    /** Pressure that pushes oil into the pump, vapor and air in the oil counted off [Pa]. */
    @Source("common practice, no source: air comes out below")
    private static final double[] SUCTION_PRESSURE = {70e3, 90e3};

    /** Oil of a hot reading [K]: 95 degrees C give or take 8. */
    @Source("workshop manuals, from notes: 80 to 105 degrees C")
    private static final double[] READING_TEMPERATURE = {360.15, 376.15};

    /** Displacement of one cylinder where their number is not told [m3]. */
    @Source("common practice, no source")
    private static final double USUAL_CYLINDER = 0.45e-3;

    /** Fast idle over the first idle [1]. */
    @Source("common practice, no source")
    private static final double FASTER = 1.3;

    private static final double LITER = 1e-3;
    private static final double CUBIC_CENTIMETER = 1e-6;

    /** Readings of an engine with rolling bearings [Pa], and the share of oil through what leaks there [1]. */
    @Source("one manual of a small motorcycle: 10 to 30 kPa; common practice, no source, for the rest")
    private static final double[] ROLLING_PRESSURE = {10e3, 60e3};

    private final Section engine;
    private final TypicalEngine typical;
    private final double cylinders;

    private EngineCompletion(Section engine) {
        this.engine = engine;
        double displacement = engine.quantity("displacement").orElseThrow().value();
        typical = new TypicalEngine(kind(engine), displacement / LITER);
        cylinders = engine.quantity("cylinders").map(Measured::value).orElse((double)
                Math.max(1, Math.round(displacement / USUAL_CYLINDER)));
    }

    /** The case with everything that stands in. */
    public static CaseDocument complete(CaseDocument document) {
        Optional<Section> engine = document.root().section("engine").filter(one -> one.has("kind"));
        if (engine.isEmpty()) {
            return document;
        }
        EngineCompletion completion = new EngineCompletion(engine.get());
        Section root = new Completion(document.root())
                .section("engine", completion::engine)
                .section("start", completion::start)
                .section("duty", completion::duty)
                .done();
        return document.withRoot(root);
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
                .orElseGet(() -> typical.of("pumpDisplacement", Kind.DISPLACEMENT))
                .value();
        whole.list(
                "reliefValves", List.of(relief -> relief.text("name", "relief").text("senses", senses())));
        whole.each("reliefValves", relief -> relief(relief, displacement));
        whole.section("gallery", this::gallery);
        whole.list("states", states());
    }

    private void pump(Completion pump) {
        if (pump.has("deliveries")) {
            pump.section("suction", suction -> suction(suction, usualPump()));
            return;
        }
        pump.quantity("displacement", typical.of("pumpDisplacement", Kind.DISPLACEMENT));
        double displacement = pump.quantity("displacement").orElseThrow().value();
        pump.quantity(
                "slip", typical.of("pumpSlip", Kind.SLIP, Math.pow(displacement / SLIP_REFERENCE, SLIP_EXPONENT)));
        pump.section("suction", suction -> suction(suction, displacement));
    }

    private double usualPump() {
        return typical.of("pumpDisplacement", Kind.DISPLACEMENT).value();
    }

    private void suction(Completion suction, double displacement) {
        suction.quantity(
                "pressure",
                Measured.between(
                        Kind.PRESSURE_DIFFERENCE, SUCTION_PRESSURE[0], SUCTION_PRESSURE[1], Provenance.TYPICAL));
        if (!suction.has("resistance")) {
            suction.quantity(
                    "bore", typical.of("suctionBore", Kind.LENGTH, Math.cbrt(displacement / CUBIC_CENTIMETER)));
            suction.quantity("length", typical.of("suctionLength", Kind.LENGTH));
        }
    }

    private String senses() {
        return engine.choice("kind").filter("heavy"::equals).isPresent() ? "gallery" : "outlet";
    }

    private void relief(Completion relief, double displacement) {
        relief.quantity("openingPressure", typical.of("reliefOpening", Kind.GAUGE_PRESSURE));
        if (!relief.has("seatDiameter")) {
            double opening = relief.quantity("openingPressure").orElseThrow().value();
            Measured rise = typical.of("reliefOverride", Kind.RATIO);
            relief.quantity(
                    "override",
                    Measured.factor(
                            Kind.OVERRIDE,
                            rise.value() * opening / (displacement * OVERRIDE_SPEED),
                            rise.halfWidth(),
                            Provenance.TYPICAL));
        }
    }

    private void gallery(Completion gallery) {
        if (!gallery.has("passageResistance")) {
            gallery.section(
                    "passage",
                    passage -> passage.quantity("bore", typical.of("galleryBore", Kind.LENGTH))
                            .quantity("length", typical.of("galleryLengthPerCylinder", Kind.LENGTH, cylinders)));
        }
        if (isRolling()) {
            gallery.section("film", film -> film.flag("present", false));
        }
        boolean listed = gallery.has("bearings");
        if (!listed && !isRolling()) {
            gallery.quantity("sideFlow", typical.of("sideFlow", Kind.DISPLACEMENT));
            gallery.section(
                    "film",
                    film -> film.quantity("dissipation", typical.of("dissipation", Kind.VOLUME))
                            .quantity("heatLoss", typical.of("filmToMetal", Kind.HEAT_CONDUCTANCE)));
        }
        if (!listed && !gallery.has("passages")) {
            gallery.section("hotReading", this::reading);
        }
    }

    private void reading(Completion reading) {
        Measured pressure = reading.quantity("pressure").orElseGet(this::hotIdle);
        Measured speed = reading.quantity("speed").orElseGet(() -> typical.of("hotIdleSpeed", Kind.ROTATION));
        if (reading.isTrue("minimum")) {
            reading.replace("pressure", StatedMinimum.likely(pressure, isIdle(speed)));
        }
        if (reading.has("second")) {
            reading.section("second", this::second);
        }
        reading.quantity("pressure", pressure)
                .quantity("speed", speed)
                .quantity(
                        "temperature",
                        Measured.between(
                                Kind.TEMPERATURE, READING_TEMPERATURE[0], READING_TEMPERATURE[1], Provenance.TYPICAL))
                .quantity("bearingShare", typical.of("bearingShare", Kind.FRACTION))
                .quantity("jetBore", typical.of("jetBore", Kind.LENGTH))
                .quantity("jetLength", typical.of("jetLength", Kind.LENGTH));
    }

    private void second(Completion second) {
        if (second.isTrue("minimum")) {
            Measured speed = second.quantity("speed").orElseThrow();
            second.replace(
                    "pressure", StatedMinimum.likely(second.quantity("pressure").orElseThrow(), isIdle(speed)));
        }
    }

    private Measured hotIdle() {
        return isRolling()
                ? Measured.between(Kind.GAUGE_PRESSURE, ROLLING_PRESSURE[0], ROLLING_PRESSURE[1], Provenance.TYPICAL)
                : typical.of("hotIdlePressure", Kind.GAUGE_PRESSURE);
    }

    private boolean isIdle(Measured speed) {
        return speed.value()
                < FASTER * typical.of("coldIdleSpeed", Kind.ROTATION).value();
    }

    private List<Consumer<Completion>> states() {
        return List.of(
                state(TypicalStates.CRANKING, typical.of("crankingSpeed", Kind.ROTATION), "soaked"),
                state(TypicalStates.COLD_IDLE, typical.of("coldIdleSpeed", Kind.ROTATION), "soaked"),
                state(TypicalStates.FAST_IDLE, typical.of("coldIdleSpeed", Kind.ROTATION, FASTER), "soaked"),
                state(TypicalStates.DRIVING, typical.of("drivingSpeed", Kind.ROTATION), "running"));
    }

    private static Consumer<Completion> state(String name, Measured speed, String metal) {
        return state -> state.text("name", name).quantity("speed", speed).text("metal", metal);
    }

    private void start(Completion start) {
        StartCompletion.fill(start, engine, typical);
    }

    private void duty(Completion duty) {
        List<String> states = TypicalStates.of(engine);
        duty.section(
                "running",
                running -> running.text("state", states.get(states.size() - 1))
                        .quantity("oilTemperature", typical.of("runningOil", Kind.TEMPERATURE))
                        .quantity(
                                "hoursPerWeek",
                                Measured.exact(Kind.DURATION, StartCompletion.WEEKLY, Provenance.TYPICAL)));
        duty.section("dirt", dirt -> {
            if (!dirt.has("ingestion")) {
                dirt.quantity("generation", typical.of("dirtRate", Kind.MASS_RATE));
            }
            if (!dirt.has("sizes")) {
                dirt.text("dust", "A3");
            }
        });
        duty.section("sump", sump -> sump.quantity("volume", StartCompletion.fill(engine, typical)));
    }

    /** Standard uncertainty of the logarithm that a 95 % factor stands for [1]. */
    static double lnSigma(double factor) {
        return Math.log(factor) / Coverage.COVERAGE_95;
    }
}

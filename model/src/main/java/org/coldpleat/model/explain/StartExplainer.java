package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.coldstart.StartEvent;
import org.coldpleat.model.coldstart.StartPoint;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.HoldUp;
import org.coldpleat.model.coldstart.plan.StartModel;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.coldstart.plan.StartQuantity;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.thermal.HeatBalance;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;

/** Builds the chain behind the time a bypass valve is open in the start of a case, and the oil that goes round meanwhile. */
final class StartExplainer {
    static final String SECONDS_OPEN = "secondsOpen";
    static final String UNFILTERED = "unfilteredVolume";

    private final Section start;
    private final Section sheet;
    private final StartPlan plan;
    private final StartModel model;
    private final HoldUp holdUp;
    private final StartUpResult result;
    private final ResolvedCase resolved;
    private final int position;

    private StartExplainer(ResolvedCase resolved, int position) {
        this.resolved = resolved;
        this.position = position;
        start = resolved.document().root().section("start").orElseThrow();
        sheet = resolved.sheet(position);
        plan = new StartPlan(resolved, ColdStartRequest.AS_STATED);
        model = plan.model();
        holdUp = model.holdUps().get(position);
        result = StartUp.run(plan.spec(resolved.shared(), resolved.candidates().get(position), position, model));
    }

    static Explanation secondsOpen(ResolvedCase resolved, int position) {
        return resolved.document().root().has("start")
                ? new StartExplainer(resolved, position).secondsOpen()
                : ChainEnds.link("noStart", Kind.DURATION, Double.NaN, List.of());
    }

    static Explanation unfiltered(ResolvedCase resolved, int position) {
        return resolved.document().root().has("start")
                ? new StartExplainer(resolved, position).unfiltered()
                : ChainEnds.link("noStart", Kind.VOLUME, Double.NaN, List.of());
    }

    private Explanation unfiltered() {
        return top(
                UNFILTERED,
                Kind.VOLUME,
                StartQuantity.UNFILTERED,
                List.of(
                        value("unfilteredFilling", Kind.VOLUME, StartQuantity.UNFILTERED_FILLING),
                        value("unfilteredAfter", Kind.VOLUME, StartQuantity.UNFILTERED_AFTER),
                        value("filteredVolume", Kind.VOLUME, StartQuantity.FILTERED),
                        ChainEnds.link(
                                "startShare", Kind.FRACTION, result.total().bypassShare(), List.of()),
                        secondsOpen()));
    }

    private Explanation secondsOpen() {
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(filling());
        inputs.add(after());
        inputs.add(oil());
        inputs.add(element());
        return top(SECONDS_OPEN, Kind.DURATION, StartQuantity.OPEN_SECONDS, inputs);
    }

    private Explanation top(String key, Kind kind, StartQuantity quantity, List<Explanation> inputs) {
        String subject = resolved.candidates().get(position).name() + ", " + plan.name();
        return new Explanation(key, subject, kind, quantity.of(result), inputs);
    }

    private Explanation value(String key, Kind kind, StartQuantity quantity) {
        return ChainEnds.link(key, kind, quantity.of(result), List.of());
    }

    private Explanation filling() {
        double time = result.fillTime().orElse(Double.NaN);
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(ChainEnds.link("fillTime", Kind.DURATION, time, ChainEnds.of(Optional.of(start), "galleryVolume")));
        result.series().stream()
                .filter(point -> !(point.time() >= time))
                .max(Comparator.comparingDouble(StartPoint::valveDifference))
                .ifPresent(point -> inputs.add(ChainEnds.link(
                        "fillDifference", Kind.PRESSURE_DIFFERENCE, point.valveDifference(), List.of(opening()))));
        return ChainEnds.link("openFilling", Kind.DURATION, StartQuantity.OPEN_SECONDS_FILLING.of(result), inputs);
    }

    private Explanation opening() {
        double pressure = result.series().stream()
                .mapToDouble(StartPoint::openingPressure)
                .filter(Double::isFinite)
                .findFirst()
                .orElse(Double.NaN);
        Optional<Section> own = sheet.section("bypass").filter(section -> section.has("openingPressure"));
        Optional<Section> engine =
                resolved.document().root().section("engine").flatMap(section -> section.section("blockBypass"));
        return ChainEnds.link(
                "openingPressure",
                Kind.PRESSURE_DIFFERENCE,
                pressure,
                ChainEnds.of(own.isPresent() ? own : engine, "openingPressure"));
    }

    private Explanation after() {
        List<Explanation> inputs = new ArrayList<>();
        if (result.connected().openSeconds() > 0) {
            result.events(StartEvent.Kind.VALVE_CLOSES).stream()
                    .max(Comparator.comparingDouble(StartEvent::time))
                    .ifPresent(event -> {
                        inputs.add(ChainEnds.link("closingTime", Kind.DURATION, event.time(), List.of()));
                        inputs.add(ChainEnds.link("closingOil", Kind.TEMPERATURE, event.oilTemperature(), List.of()));
                    });
        } else {
            inputs.add(ChainEnds.link("nearestRatio", Kind.RATIO, afterFilling(), List.of()));
        }
        return ChainEnds.link("openAfter", Kind.DURATION, StartQuantity.OPEN_SECONDS_AFTER.of(result), inputs);
    }

    /** Greatest difference over opening pressure once the passages are full [1]. */
    private double afterFilling() {
        double full = result.fillTime().orElse(Double.POSITIVE_INFINITY);
        return result.series().stream()
                .filter(point -> point.time() > full)
                .mapToDouble(point -> point.valveDifference() / point.openingPressure())
                .max()
                .orElse(Double.NaN);
    }

    private Explanation oil() {
        List<Explanation> inputs = new ArrayList<>(ChainEnds.of(Optional.of(start), "from", "ambient"));
        if (model.trace().isPresent()) {
            return ChainEnds.link("oilAsLogged", Kind.TEMPERATURE, last().oilTemperature(), inputs);
        }
        Optional<Section> thermal = start.section("thermal");
        inputs.addAll(ChainEnds.of(
                thermal,
                "oilVolume",
                "metalMass",
                "metalHeatCapacity",
                "oilToMetal",
                "metalToAmbient",
                "oilToAmbient"));
        thermal.ifPresent(one -> one.sections("heats")
                .forEach(heat -> inputs.addAll(ChainEnds.of(Optional.of(heat), "toMetal", "toOil"))));
        plan.assumptions().stream()
                .filter(one -> one.path().startsWith("start.thermal"))
                .forEach(one -> inputs.add(ChainEnds.assumed(one)));
        result.balance().ifPresent(balance -> inputs.addAll(shares(balance)));
        return ChainEnds.link("oilAtEnd", Kind.TEMPERATURE, last().oilTemperature(), inputs);
    }

    private static List<Explanation> shares(HeatBalance balance) {
        double all = balance.supplied();
        return List.of(
                share("heatOfPump", balance.pumpWork() / all),
                share("heatOfFilms", balance.filmFriction() / all),
                share("heatOfFuel", (balance.toMetal() + balance.toOil()) / all),
                share("heatLost", (balance.oilLoss() + balance.metalLoss()) / all),
                share(
                        "heatStored",
                        (balance.storedInOil() + balance.storedInMetal() + balance.storedInElement()) / all));
    }

    private static Explanation share(String key, double value) {
        return ChainEnds.link(key, Kind.FRACTION, value, List.of());
    }

    private Explanation element() {
        List<Explanation> inputs =
                new ArrayList<>(ChainEnds.of(sheet.section("outside"), "diameter", "length", "mass"));
        plan.assumptions().stream()
                .filter(one -> one.candidate() == position
                        || one.path().equals("start.oilInCan")
                        || one.path().equals("start.domeFlush"))
                .forEach(one -> inputs.add(ChainEnds.assumed(one)));
        inputs.addAll(ChainEnds.of(Optional.of(start), "oilInCan", "domeFlush"));
        double lag = result.series().stream()
                .mapToDouble(point -> point.oilTemperature() - point.elementTemperature())
                .max()
                .orElse(0);
        inputs.add(ChainEnds.link("greatestLag", Kind.TEMPERATURE_DIFFERENCE, lag, List.of()));
        return ChainEnds.link("oilHeld", Kind.VOLUME, holdUp.oilVolume(), inputs);
    }

    private StartPoint last() {
        return result.series().get(result.series().size() - 1);
    }
}

package org.coldpleat.model.resolve.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.resolve.candidate.ValveBuilder;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.casefile.Section;

/** Makes the engine of a case. */
public final class EngineBuilder {
    /** Pressure that pushes oil into the pump if none is stated [Pa]: a little less than the air pressure. */
    private static final double SUCTION_PRESSURE = 90e3;

    private EngineBuilder() {}

    public static EngineModel engine(Section engine, Lubricant oil, Inputs inputs) {
        Section pumpSection = engine.section("pump").orElseThrow();
        double turns = inputs.valueOr(pumpSection, "turnsPerEngineTurn", 1);
        Pump pump = pump(pumpSection, oil, inputs);
        List<Relief> reliefs = new ArrayList<>();
        for (Section section : engine.sections("reliefValves")) {
            reliefs.add(relief(section, inputs));
        }
        GalleryBuilder.Built gallery = GalleryBuilder.gallery(engine, pump, turns, oil, inputs);
        Optional<SpringValve> block =
                engine.section("blockBypass").flatMap(section -> ValveBuilder.valve(section, inputs, 0));
        return new EngineModel(
                pump,
                reliefs,
                gallery.gallery(),
                block,
                turns,
                inputs.constant("engine.metalLeadSoaked"),
                inputs.constant("engine.metalLeadRunning"),
                gallery.laminarShare());
    }

    private static Pump pump(Section section, Lubricant oil, Inputs inputs) {
        double suction = suctionResistance(section, inputs);
        double available = section.section("suction")
                .map(below -> inputs.valueOr(below, "pressure", SUCTION_PRESSURE))
                .orElse(SUCTION_PRESSURE);
        List<Section> deliveries = section.sections("deliveries");
        Pump bare = deliveries.isEmpty()
                ? Pump.unlimited(
                        inputs.value(section, "displacement").orElseThrow(), inputs.valueOr(section, "slip", 0))
                : fitted(deliveries, oil, inputs);
        return new Pump(bare.displacement(), bare.slip(), suction, available);
    }

    /** The pump through two deliveries; a pressure counts at the viscosity of the first one. */
    private static Pump fitted(List<Section> deliveries, Lubricant oil, Inputs inputs) {
        double viscosity = viscosity(deliveries.get(0), oil, inputs);
        Pump.DeliveryPoint[] points = new Pump.DeliveryPoint[2];
        for (int i = 0; i < 2; i++) {
            Section section = deliveries.get(i);
            points[i] = new Pump.DeliveryPoint(
                    inputs.value(section, "speed").orElseThrow(),
                    inputs.value(section, "pressure").orElseThrow() * viscosity / viscosity(section, oil, inputs),
                    inputs.value(section, "flow").orElseThrow());
        }
        return Pump.fromDelivery(points[0], points[1], viscosity);
    }

    private static double viscosity(Section delivery, Lubricant oil, Inputs inputs) {
        return oil.at(inputs.value(delivery, "temperature").orElseThrow()).dynamicViscosity();
    }

    private static double suctionResistance(Section pump, Inputs inputs) {
        Optional<Section> suction = pump.section("suction");
        if (suction.isEmpty()) {
            return 0;
        }
        OptionalDouble stated = inputs.value(suction.get(), "resistance");
        OptionalDouble bore = inputs.value(suction.get(), "bore");
        if (stated.isPresent() || bore.isEmpty()) {
            return stated.orElse(0);
        }
        return Openings.hole(bore.getAsDouble(), inputs.valueOr(suction.get(), "length", 0), Openings.SHORT_TUBE)
                .laminar();
    }

    private static Relief relief(Section section, Inputs inputs) {
        Relief.Sensing sensing =
                section.choice("senses").filter("gallery"::equals).isPresent()
                        ? Relief.Sensing.GALLERY
                        : Relief.Sensing.PUMP_OUTLET;
        double pressure = inputs.value(section, "openingPressure").orElseThrow();
        if (section.has("override")) {
            return Relief.linear(
                    sensing, pressure, inputs.value(section, "override").orElseThrow());
        }
        if (section.has("seatDiameter")) {
            SpringValve disc = SpringValve.disc(
                    pressure,
                    inputs.value(section, "seatDiameter").orElseThrow(),
                    inputs.value(section, "springRate").orElseThrow(),
                    inputs.value(section, "maximumLift").orElseThrow(),
                    0);
            return Relief.valve(sensing, pressure, disc);
        }
        return Relief.ideal(sensing, pressure);
    }
}

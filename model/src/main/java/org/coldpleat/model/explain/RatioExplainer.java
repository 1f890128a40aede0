package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.circuit.ClosedForms;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.engine.EngineModel;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.steady.SolvedPoint;
import org.coldpleat.model.steady.StateModel;
import org.coldpleat.shared.quantity.Kind;

/** Builds the chain behind the ratio of filter to gallery resistance, with the closed forms that follow from it. */
final class RatioExplainer {
    private static final String RATIO = Explainer.RATIO;

    private final ResolvedCase resolved;
    private final OperatingState operatingState;
    private final StateModel model;

    RatioExplainer(ResolvedCase resolved, OperatingState operatingState, StateModel model) {
        this.resolved = resolved;
        this.operatingState = operatingState;
        this.model = model;
    }

    /** Filter over gallery resistance in the creeping limit, and the closed forms that follow from it. */
    Explanation ratio(double at) {
        if (!operatingState.isEngine()) {
            return ChainEnds.link(RATIO, Kind.RATIO, Double.NaN, List.of());
        }
        EngineModel engine = resolved.shared().engine().orElseThrow();
        Fluid fluid = resolved.shared().oil().at(at);
        SolvedPoint point = model.heldShutAt(at);
        double filmRatio = resolved.shared()
                        .oil()
                        .at(Math.max(at, point.point().filmTemperature()))
                        .dynamicViscosity()
                / fluid.dynamicViscosity();
        double filter = creeping(model.filter());
        double gallery = engine.gallery().creepingResistance(filmRatio);
        List<Explanation> inputs = new ArrayList<>();
        inputs.add(ChainEnds.link("filterResistance", Kind.LAMINAR_RESISTANCE, filter, List.of()));
        List<Explanation> galleryInputs = new ArrayList<>(ChainEnds.of(
                resolved.document()
                        .root()
                        .section("engine")
                        .flatMap(one -> one.section("gallery"))
                        .flatMap(one -> one.section("hotReading")),
                "pressure",
                "temperature",
                "speed",
                "bearingShare",
                "jetBore",
                "jetLength"));
        galleryInputs.add(ChainEnds.link("filmViscosityRatio", Kind.RATIO, filmRatio, List.of()));
        engine.laminarShare()
                .ifPresent(share -> galleryInputs.add(ChainEnds.link("laminarShare", Kind.FRACTION, share, List.of())));
        inputs.add(ChainEnds.link("galleryResistance", Kind.LAMINAR_RESISTANCE, gallery, galleryInputs));
        inputs.addAll(closedForms(engine, filter, gallery));
        return ChainEnds.link(RATIO, Kind.RATIO, filter / gallery, inputs);
    }

    private List<Explanation> closedForms(EngineModel engine, double filter, double gallery) {
        List<Explanation> forms = new ArrayList<>();
        double shutFlow =
                ClosedForms.shutFlow(engine.pump(), operatingState.drive() * engine.pumpTurns(), filter, gallery);
        forms.add(ChainEnds.link("closed.shutFlow", Kind.FLOW_RATE, shutFlow, List.of()));
        Optional<Double> opening = model.filter()
                .elementValve()
                .or(() -> model.filter().blockValve())
                .map(valve -> valve.openingPressure());
        engine.reliefs().stream().findFirst().ifPresent(relief -> {
            double set = relief.setPressure();
            boolean outlet = relief.sensing() == Relief.Sensing.PUMP_OUTLET;
            double ceiling = outlet
                    ? ClosedForms.reliefCeiling(filter, gallery, set)
                    : ClosedForms.gallerySensingDrop(filter / gallery, set);
            forms.add(ChainEnds.link(
                    outlet ? "closed.ceiling" : "closed.galleryCeiling", Kind.PRESSURE_DIFFERENCE, ceiling, List.of()));
            opening.filter(pressure -> pressure < set)
                    .ifPresent(pressure -> forms.add(ChainEnds.link(
                            outlet ? "closed.criticalRatio" : "closed.galleryCriticalRatio",
                            Kind.RATIO,
                            outlet ? ClosedForms.criticalRatio(pressure, set) : pressure / set,
                            List.of())));
        });
        opening.ifPresent(pressure -> forms.add(ChainEnds.link(
                "closed.thresholdViscosity",
                Kind.DYNAMIC_VISCOSITY,
                ClosedForms.thresholdViscosity(pressure, filter, shutFlow),
                List.of())));
        return forms;
    }

    /** Resistance of the whole filtered path in the creeping limit [1/m3]; the flap counts as lifted. */
    private static double creeping(FilterAssembly filter) {
        return laminar(filter.inletHoles())
                + (filter.annulusResistance() + filter.centerTube().laminar()) / 3
                + filter.elementResistance()
                + filter.tubeOpenings().laminar()
                + filter.outletBore().laminar();
    }

    private static double laminar(PressureDropLaw law) {
        return law instanceof AdditiveLaw additive ? additive.laminar() : 0;
    }
}

package org.coldpleat.model.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.service.DutyCycle;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.candidate.CapacityBuilder;
import org.coldpleat.model.verdict.service.ServiceAnalyzer;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;

/** Builds the chain behind the hours until the bypass valve opens, while running warm or in a winter start. */
final class ServiceExplainer {
    static final String HOURS = "hoursToHotBypass";
    static final String WINTER_HOURS = "hoursToWinterBypass";

    private ServiceExplainer() {}

    static Explanation hours(ResolvedCase resolved, int position) {
        return hours(resolved, position, false);
    }

    static Explanation winterHours(ResolvedCase resolved, int position) {
        return hours(resolved, position, true);
    }

    private static Explanation hours(ResolvedCase resolved, int position, boolean winter) {
        Optional<DutyCycle> cycle = DutyCycle.of(resolved);
        if (cycle.isEmpty()) {
            return ChainEnds.link("noDuty", Kind.DURATION, Double.NaN, List.of());
        }
        ServiceAnalyzer analyzer = new ServiceAnalyzer(resolved, new Variants(resolved), position, cycle.get());
        ServiceResult.Candidate result = analyzer.analyze();
        ServiceResult.Factor factor = winter ? result.coldFactor() : result.hotFactor();
        double time = (winter ? result.winterBypass() : result.hotBypass())
                .filter(ServiceResult.Event::happens)
                .map(ServiceResult.Event::time)
                .orElse(Double.NaN);
        double ratio = factor.simulated().orElse(Double.NaN);
        List<Explanation> inputs = new ArrayList<>();
        List<Explanation> closed = new ArrayList<>();
        String name = winter ? "winterLoadingFactor" : "loadingFactor";
        factor.closedForm()
                .ifPresent(value -> closed.add(ChainEnds.link("closed." + name, Kind.RATIO, value, List.of())));
        inputs.add(ChainEnds.link(name, Kind.RATIO, ratio, closed));
        analyzer.law().ifPresent(law -> inputs.add(dirt(resolved, position, law, ratio)));
        Optional<Section> duty = resolved.document().root().section("duty");
        inputs.addAll(ChainEnds.of(duty.flatMap(one -> one.section("dirt")), "ingestion", "generation"));
        inputs.addAll(ChainEnds.of(duty.flatMap(one -> one.section("running")), "oilTemperature", "hoursPerWeek"));
        if (winter) {
            inputs.addAll(ChainEnds.of(duty, "winterStart"));
        }
        return ChainEnds.link(winter ? WINTER_HOURS : HOURS, Kind.DURATION, time, inputs);
    }

    /** Dirt that an evenly loaded medium holds at the ratio. */
    private static Explanation dirt(ResolvedCase resolved, int position, BlockingLaw law, double ratio) {
        BuiltCandidate candidate = resolved.candidates().get(position);
        Optional<Section> medium = resolved.sheet(position).section("medium");
        List<Explanation> inputs = new ArrayList<>(
                ChainEnds.of(medium.flatMap(one -> one.section("capacity")), "mass", "perArea", "area"));
        inputs.addAll(ChainEnds.of(medium.flatMap(one -> one.section("capacity")), "terminalPressureDrop", "atFlow"));
        inputs.add(ChainEnds.link("blockingExponent", Kind.RATIO, law.exponent(), List.of()));
        double perArea = ratio >= 1 ? law.massPerArea(CapacityBuilder.mediumRatio(candidate, ratio)) : Double.NaN;
        return ChainEnds.link("dirtHeld", Kind.MASS, perArea * candidate.pack().effectiveArea(), inputs);
    }
}

package org.coldpleat.model.certainty.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.coldpleat.model.bench.AntiDrainLeak;
import org.coldpleat.model.bench.ScaleTest;
import org.coldpleat.model.evidence.EvidenceCombination;
import org.coldpleat.model.evidence.ValueCombination;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.bench.RigReader;
import org.coldpleat.model.resolve.candidate.BenchEvidence;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.model.resolve.candidate.ValveBuilder;
import org.coldpleat.model.resolve.engine.EngineModel;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/** Says what is known of a candidate, and from where. */
public final class EvidenceWriter {
    private EvidenceWriter() {}

    public static EvidenceReport report(ResolvedCase resolved, int position) {
        BuiltCandidate candidate = resolved.candidates().get(position);
        BenchEvidence bench = resolved.bench(position);
        List<EvidenceReport.Combined> combined = new ArrayList<>();
        combined.add(resistance(candidate.evidence()));
        Optional<Section> bypass = resolved.sheet(position).section("bypass");
        if (bypass.isPresent() && bench.scale().isPresent()) {
            ScaleTest.Result scale = bench.scale().get();
            Inputs inputs = Inputs.ofCandidate(position);
            ValveBuilder.combined(
                            bypass.get(),
                            inputs,
                            "openingPressure",
                            Kind.PRESSURE_DIFFERENCE,
                            scale.opening().value())
                    .ifPresent(one -> combined.add(valve("openingPressure", Kind.PRESSURE_DIFFERENCE, one)));
            if (scale.springRate().isPresent()) {
                ValveBuilder.combined(bypass.get(), inputs, "springRate", Kind.SPRING_RATE, scale.springRate())
                        .ifPresent(one -> combined.add(valve("springRate", Kind.SPRING_RATE, one)));
            }
        }
        List<TestReport> tests = bench.reports().stream()
                .map(test -> withRefill(resolved, position, test))
                .toList();
        return new EvidenceReport(candidate.name(), tests, combined);
    }

    /** A leak test, with the time the pump needs to refill what leaks out at standstill where that can be told. */
    private static TestReport withRefill(ResolvedCase resolved, int position, TestReport test) {
        Optional<Section> leak = resolved.document()
                .root()
                .sections("candidates")
                .get(position)
                .section("tests")
                .flatMap(tests -> tests.section("antiDrainLeak"))
                .filter(section -> section.has("standing") && section.has("drainable"));
        Optional<EngineModel> engine = resolved.shared().engine();
        if (!test.test().equals("antiDrainLeak") || leak.isEmpty() || engine.isEmpty()) {
            return test;
        }
        OperatingState first = resolved.operatingStates().stream()
                .filter(OperatingState::isEngine)
                .findFirst()
                .orElseThrow();
        double viscosity = resolved.shared().oil().at(resolved.coldestNamed()).dynamicViscosity();
        double flow = engine.get().pump().delivery(first.drive() * engine.get().pumpTurns(), 0, viscosity);
        if (!(flow > 0)) {
            return test;
        }
        double delay = AntiDrainLeak.refillDelay(
                RigReader.number(leak.get(), "volume") / RigReader.number(leak.get(), "time"),
                RigReader.number(leak.get(), "standing"),
                RigReader.number(leak.get(), "drainable"),
                flow);
        List<TestReport.Value> values = new ArrayList<>(test.values());
        values.add(new TestReport.Value("refillDelay", Measured.exact(Kind.DURATION, delay, Provenance.MEASURED)));
        return test.withValues(values);
    }

    private static EvidenceReport.Combined resistance(EvidenceCombination combination) {
        List<EvidenceReport.Member> members = new ArrayList<>();
        for (int i = 0; i < combination.members().size(); i++) {
            var member = combination.members().get(i);
            members.add(new EvidenceReport.Member(
                    member.kind().name().toLowerCase(Locale.ROOT),
                    member.label(),
                    member.median(),
                    member.lnSigma(),
                    combination.weights().get(i),
                    combination.disagreeing().contains(member)));
        }
        return new EvidenceReport.Combined(
                "mediumResistance",
                Kind.MEDIUM_RESISTANCE,
                combination.median(),
                combination.lnSigma(),
                combination.birgeRatio(),
                combination.conflict(),
                members);
    }

    private static EvidenceReport.Combined valve(String quantity, Kind kind, ValueCombination combination) {
        List<EvidenceReport.Member> members = new ArrayList<>();
        for (int i = 0; i < combination.members().size(); i++) {
            ValueCombination.Member member = combination.members().get(i);
            members.add(new EvidenceReport.Member(
                    member.name(),
                    "",
                    member.value().value(),
                    member.lnSigma(),
                    combination.weights().get(i),
                    combination.conflict()));
        }
        return new EvidenceReport.Combined(
                quantity,
                kind,
                combination.value().value(),
                combination.value().halfWidth(),
                combination.birgeRatio(),
                combination.conflict(),
                members);
    }
}

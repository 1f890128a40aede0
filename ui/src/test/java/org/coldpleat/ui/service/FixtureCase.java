package org.coldpleat.ui.service;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.certainty.StateResult.Answer;
import org.coldpleat.model.certainty.StateResult.ShareAt;
import org.coldpleat.model.explain.ExplainRequest;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.progress.Run;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.steady.StateCurve;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.model.verdict.CandidateSheet.EvidenceLine;
import org.coldpleat.model.verdict.CandidateSheet.HotReference;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Provenance;

/** Results that look like those of the model but come from a toy formula: for tests of the faces only. */
public final class FixtureCase {
    public static final double ICE = 273.15;
    private static final double FROM = ICE - 40;
    private static final double TO = ICE + 120;
    private static final int POINTS = 161;
    private static final String[] NAMES = {"Blue can", "Tall white, 1st lot", "=Gray", "Old stock \"B\"", "No valve"};
    private static final double[] RESISTANCE = {2.4e9, 4.2e9, 1.2e9, 7.5e9, 3.3e9};
    private static final double[] OPENING = {105e3, 80e3, 82e3, 150e3, 0};
    private static final double[] SPEEDS = {13.3, 50};

    private FixtureCase() {}

    /** A service that knows the files {@code good.yaml}, {@code bad.yaml} and {@code unresolved.yaml}. */
    public static CaseService service() {
        return new CaseService(file -> switch (file.getFileName().toString()) {
            case "good.yaml" -> Opening.of(new Toy(false));
            case "unresolved.yaml" -> Opening.of(new Toy(true));
            default ->
                Opening.failed(List.of(
                        new Problem(12, "candidates[0].pleats.count", "must be a whole number from 4 to 400, was 3"),
                        new Problem(0, "", "the file has no oil")));
        });
    }

    /** A case that answers with the toy formula; what the toy does not know is that of the case underneath. */
    private static final class Toy extends OpenedCase {
        private static final ResolvedCase UNDERNEATH = CaseService.standard()
                .open(Path.of("../demo-cases/ridge-hut-generator/case.yaml"))
                .opened()
                .orElseThrow()
                .resolved();

        private final boolean unresolved;

        Toy(boolean unresolved) {
            super(UNDERNEATH, List.of("toy", unresolved), new Kept());
            this.unresolved = unresolved;
        }

        @Override
        public String title() {
            return "Fixture: four cans and a spacer";
        }

        @Override
        public List<String> candidates() {
            return List.of(NAMES);
        }

        @Override
        public List<String> states() {
            return List.of("stand, 20 L/min", "idle after start");
        }

        @Override
        public Run<Comparison> compare() {
            return progress -> Optional.of(comparison(unresolved));
        }

        @Override
        public Run<PointResult> point(String candidate, String state, double temperature) {
            return progress -> Optional.of(FixtureCase.point(candidate, state, temperature, 2e-4, unresolved));
        }

        @Override
        public Run<PointResult> pointAtFlow(String candidate, double flow, double temperature) {
            return progress -> Optional.of(FixtureCase.point(candidate, "", temperature, flow, unresolved));
        }

        @Override
        public Run<MapResult> map(String candidate) {
            return progress -> Optional.of(FixtureCase.map(candidate, unresolved));
        }

        @Override
        public Run<Explanation> explain(ExplainRequest request) {
            return progress -> Optional.of(explanation(request.candidate()));
        }
    }

    /** Dynamic viscosity of the toy oil [Pa s]. */
    static double viscosity(double kelvin) {
        return 6e-5 * Math.exp(1100 / (kelvin - 141));
    }

    private static double shutDrop(int c, double kelvin, double flow) {
        if (flow > 3e-4) {
            return 0.25 * RESISTANCE[c] * viscosity(kelvin) * flow;
        }
        double resistance = RESISTANCE[c] * viscosity(kelvin);
        double rest = 5.5e9 * viscosity(kelvin);
        return 400e3 * resistance / (resistance + rest) * Math.min(1, 6 * flow / 2e-4) + 3e3 * flow / 2e-4;
    }

    private static double bend(double kelvin, double flow) {
        return flow > 3e-4 ? 1 : 0.2 + 1.4 / (1 + Math.exp((kelvin - ICE + 4) / 14));
    }

    private static double valve(int c, double kelvin, double flow) {
        double shut = shutDrop(c, kelvin, flow) * bend(kelvin, flow);
        if (OPENING[c] == 0 || shut <= OPENING[c]) {
            return shut;
        }
        return OPENING[c] + 0.12 * (shut - OPENING[c]);
    }

    private static double share(int c, double kelvin, double flow) {
        double shut = shutDrop(c, kelvin, flow) * bend(kelvin, flow);
        return OPENING[c] == 0 || shut <= OPENING[c] ? 0 : 1 - OPENING[c] / shut;
    }

    public static Comparison comparison(boolean unresolved) {
        List<NamedTemperature> named = List.of(
                new NamedTemperature("winter morning", ICE - 20),
                new NamedTemperature("frost", ICE),
                new NamedTemperature("hot", ICE + 90));
        List<CandidateResult> candidates = new ArrayList<>();
        for (int c = 0; c < NAMES.length; c++) {
            List<StateResult> states = new ArrayList<>();
            states.add(state(c, "flowStand", "stand, 20 L/min", 3.3e-4, named, false));
            states.add(state(c, "engine", "idle after start", SPEEDS[0] * 1e-5, named, unresolved && c == 1));
            candidates.add(new CandidateResult(NAMES[c], sheet(c), states));
        }
        return new Comparison(
                "Fixture: four cans and a spacer",
                true,
                "3fa94c1b2d07aa55e0b1c2d3e4f5061728394a5b6c7d8e9f00112233445566778",
                FROM,
                TO,
                named,
                candidates,
                List.of(new Verdict(
                        "test.verdict",
                        "engine",
                        "idle after start",
                        List.of("Blue can"),
                        List.of(Shown.word("-12 °C")))),
                List.of(
                        new Assumption(
                                "candidates[1].medium.thickness",
                                1,
                                Measured.between(Kind.LENGTH, 5e-4, 9e-4, Provenance.TYPICAL),
                                "test.assumption"),
                        new Assumption(
                                "valve.flowForceFactor",
                                -1,
                                Measured.exact(Kind.RATIO, 0, Provenance.GUESSED),
                                "test.assumption")),
                List.of(
                        Notice.of("test.notice", Severity.WARNING, "candidate Blue can", "3.1 %"),
                        Notice.of("test.caution", Severity.CAUTION, "", "x")));
    }

    private static CandidateSheet sheet(int c) {
        return new CandidateSheet(
                new Band(0.118 + 0.021 * c, 0.002),
                new Band(0.108 + 0.02 * c, 0.002),
                c == 2 ? OptionalDouble.empty() : OptionalDouble.of(0.125),
                c == 2 ? OptionalDouble.empty() : OptionalDouble.of(0.21),
                new Band(RESISTANCE[c] / 8, RESISTANCE[c] / 40),
                c == 2 ? OptionalDouble.empty() : OptionalDouble.of(2.5e-12),
                c == 1
                        ? List.of(
                                new EvidenceLine("flowBench", 3e8, 0.1, 0.9),
                                new EvidenceLine("airTest", 4e8, 0.3, 0.1))
                        : List.of(new EvidenceLine("typical", 3e8, 0.4, 1)),
                new Band(1.18 + 0.1 * c, 0.06),
                c == 3 ? 0.31 : 0,
                new Band(11.3e3 + 4e3 * c, 1.2e3),
                new HotReference("idle after start", ICE + 90),
                OPENING[c] == 0 ? Optional.empty() : Optional.of(new Band(OPENING[c], 0.04 * OPENING[c])));
    }

    private static OpeningBand opening(int c, double opens) {
        return switch (c) {
            case 1 -> new OpeningBand(opens, opens - 3, opens + 7);
            case 2 -> new OpeningBand(opens, Double.NEGATIVE_INFINITY, opens + 4);
            default -> new OpeningBand(opens, opens - 3.1, opens + 3.1);
        };
    }

    private static StateResult state(
            int c, String setting, String name, double flow, List<NamedTemperature> named, boolean unresolved) {
        double[] t = new double[POINTS];
        double[] drop = new double[POINTS];
        double[] valve = new double[POINTS];
        double[] share = new double[POINTS];
        double opens = Double.NaN;
        for (int i = 0; i < POINTS; i++) {
            t[i] = FROM + (TO - FROM) * i / (POINTS - 1);
            boolean gap = unresolved && i < 20;
            valve[i] = gap || OPENING[c] == 0 ? Double.NaN : valve(c, t[i], flow);
            drop[i] = gap ? Double.NaN : valve(c, t[i], flow) * 1.1;
            share[i] = gap ? Double.NaN : share(c, t[i], flow);
            if (i > 0 && share[i] == 0 && share[i - 1] > 0) {
                opens = (t[i] + t[i - 1]) / 2;
            }
        }
        Answer answer = OPENING[c] == 0
                ? Answer.NO_VALVE
                : unresolved
                        ? Answer.UNRESOLVED
                        : c == 0 && setting.equals("engine")
                                ? Answer.INTERVALS
                                : Double.isNaN(opens) ? Answer.NEVER : Answer.BELOW;
        List<double[]> intervals = new ArrayList<>();
        if (Double.isFinite(opens)) {
            intervals.add(new double[] {FROM, opens});
        }
        if (answer == Answer.INTERVALS) {
            intervals.add(new double[] {ICE + 40.2, ICE + 44.1});
        }
        List<ShareAt> shares = named.stream()
                .map(n -> new ShareAt(
                        n.name(),
                        n.temperature(),
                        unresolved && n.temperature() < ICE - 10
                                ? new Band(Double.NaN, 0)
                                : new Band(share(c, n.temperature(), flow), share(c, n.temperature(), flow) * 0.07),
                        valve(c, n.temperature(), flow) * 1.1,
                        unresolved && n.temperature() < ICE - 10 ? "MAX_ITERATIONS" : "CONVERGED"))
                .toList();
        return new StateResult(
                setting,
                name,
                answer,
                intervals,
                Double.isFinite(opens) ? Optional.of(opening(c, opens)) : Optional.empty(),
                new Band(1.8, 0.2),
                FROM,
                ICE - 5,
                0.97,
                shares,
                new StateCurve(t, drop, valve, share));
    }

    private static PointResult point(String candidate, String state, double kelvin, double flow, boolean unresolved) {
        int c = List.of(NAMES).indexOf(candidate);
        double drop = unresolved ? Double.NaN : valve(c, kelvin, flow) * 1.1;
        boolean engine = state.equals("idle after start");
        return new PointResult(
                candidate,
                engine ? "engine" : "flowStand",
                state,
                unresolved ? "MAX_ITERATIONS" : "CONVERGED",
                kelvin,
                unresolved ? Double.NaN : flow,
                drop,
                0.8 * drop,
                List.of(
                        new PointResult.Part("PLEAT_PACK", 0.8 * drop),
                        new PointResult.Part("OUTLET_BORE", 0.2 * drop)),
                OPENING[c] == 0
                        ? Optional.empty()
                        : Optional.of(new PointResult.Bypass(
                                share(c, kelvin, flow) > 0,
                                share(c, kelvin, flow) * flow,
                                share(c, kelvin, flow),
                                drop,
                                OPENING[c],
                                share(c, kelvin, flow))),
                new PointResult.OilPoint(viscosity(kelvin) / 880, viscosity(kelvin), 880),
                engine
                        ? Optional.of(new PointResult.EnginePoint(5e5, 3.4e5, 2.4e-4, 0.4e-4, 2e-4, kelvin + 14))
                        : Optional.empty(),
                1e-12,
                1e-11,
                List.of(Notice.of("test.notice", Severity.INFO, "oil", "4 %")));
    }

    public static MapResult map(String candidate, boolean unresolved) {
        int c = List.of(NAMES).indexOf(candidate);
        double[] t = new double[41];
        double[] speed = new double[24];
        double[][] share = new double[t.length][speed.length];
        for (int i = 0; i < t.length; i++) {
            t[i] = FROM + 3 * i;
            for (int j = 0; j < speed.length; j++) {
                speed[j] = 8 + 2 * j;
                boolean gap = unresolved || (i < 3 && j > 18);
                share[i][j] = gap ? Double.NaN : share(c, t[i], speed[j] * 2.2e-6);
            }
        }
        return new MapResult(candidate, "engine", t, speed, share);
    }

    private static Explanation explanation(String candidate) {
        Explanation area = new Explanation(
                "grossArea",
                "",
                Kind.AREA,
                0.118,
                Optional.of(Measured.between(Kind.AREA, 0.1178, 0.1182, Provenance.MEASURED)),
                "candidates[0].medium.strip, line 31, measured",
                List.of());
        return new Explanation(
                "openingTemperature",
                candidate,
                Kind.TEMPERATURE,
                ICE - 12.4,
                Optional.empty(),
                "",
                List.of(area, new Explanation("choice", "", Kind.RATIO, Double.NaN, Optional.empty(), "", List.of())));
    }
}

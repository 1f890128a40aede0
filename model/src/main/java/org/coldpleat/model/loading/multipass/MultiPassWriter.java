package org.coldpleat.model.loading.multipass;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.CaptureCurve;
import org.coldpleat.model.loading.SizeClasses;
import org.coldpleat.model.loading.TestDust;
import org.coldpleat.model.loading.sump.Leak;
import org.coldpleat.model.loading.sump.SumpFlows;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.candidate.CapacityBuilder;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;

/** Runs a virtual multi-pass test on a candidate. */
public final class MultiPassWriter {
    /** Test dust in the stream before the filter, if all is caught [kg/m3]. */
    @Source("common practice, no source: base upstream concentration of multi-pass tests, about 10 mg/L")
    private static final double BASE_CONCENTRATION = 0.010;

    /** Reservoir volume over flow [s]. */
    @Source("common practice, no source: reservoir of a quarter of the flow in a minute")
    private static final double RESERVOIR = 15;

    @Source("common practice, no source: test fluid of 15 mm2/s and 870 kg/m3")
    private static final double VISCOSITY = 15e-6 * 870;

    @Source("common practice, no source: face velocity of a test where none is stated [m/s]")
    private static final double FACE_VELOCITY = 2e-3;

    private static final double[] SIZES = {5e-6, 10e-6, 15e-6, 20e-6, 30e-6};
    private static final int CLASSES = 40;
    private static final int STEPS = 240;
    private static final double LONGEST = 500 * 3600.0;

    private MultiPassWriter() {}

    /** True if the sheet says what such a test needs. */
    public static boolean isPossible(ResolvedCase resolved, int position) {
        return CapacityBuilder.blocking(
                        resolved.sheet(position), resolved.candidates().get(position))
                .isPresent();
    }

    public static MultiPassReport run(ResolvedCase resolved, int position, Leak leak) {
        Section sheet = resolved.sheet(position);
        BuiltCandidate candidate = resolved.candidates().get(position);
        CapacityBuilder.Blocking blocking =
                CapacityBuilder.blocking(sheet, candidate).orElseThrow();
        CapacityBuilder.Capture capture = CapacityBuilder.capture(sheet);
        var test = sheet.section("medium").flatMap(medium -> medium.section("capacity"));
        double flow = test.flatMap(one -> one.quantity("atFlow"))
                .map(Measured::value)
                .orElse(FACE_VELOCITY * candidate.pack().effectiveArea());
        double viscosity = test.flatMap(one -> one.quantity("viscosity"))
                .map(value -> value.value() / 15e-6 * VISCOSITY)
                .orElse(VISCOSITY);
        double clean = viscosity * candidate.pack().resistance() * flow;
        double terminal = test.flatMap(one -> one.quantity("terminalPressureDrop"))
                .map(Measured::value)
                .orElse(CapacityBuilder.TYPICAL_END_RATIO * clean);
        double held = blocking.law().massPerArea(CapacityBuilder.mediumRatio(candidate, terminal / clean));
        BlockingLaw element = BlockingLaw.reaching(blocking.law().exponent(), held, terminal / clean);
        MultiPassSetup setup = setup(element, capture.estimate().likely(), candidate, flow, clean, terminal, leak);
        double capacity = element.capacity(candidate.pack().effectiveArea(), clean, terminal);
        double expected = capacity / setup.injectionRate();
        MultiPassResult result = MultiPassTest.run(setup, 2 * expected / STEPS, LONGEST);
        List<MultiPassReport.Moment> moments = new ArrayList<>();
        for (MultiPassResult.Point point : result.series()) {
            double[] beta = new double[SIZES.length];
            for (int i = 0; i < beta.length; i++) {
                beta[i] = point.beta(i);
            }
            moments.add(new MultiPassReport.Moment(
                    point.time(), point.pressureDrop(), point.retainedMass(), point.upstream(), beta));
        }
        double[] mean = new double[SIZES.length];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = result.meanBeta(i);
        }
        List<Notice> notices = new ArrayList<>(blocking.notices());
        notices.addAll(capture.notices(candidate.name(), SIZES[0]));
        notices.addAll(result.notices(candidate.name()));
        double spread = Math.exp(COVERAGE_95 * blocking.lnSigma());
        return new MultiPassReport(
                resolved.title(),
                resolved.isInvented(),
                candidate.name(),
                result.status() == MultiPassResult.Status.TERMINAL_REACHED,
                SIZES.clone(),
                moments,
                mean,
                result.injectedMass(),
                result.retainedMass(),
                result.retainedMass() / spread,
                result.retainedMass() * spread,
                result.duration(),
                result.massClosure(),
                notices);
    }

    private static MultiPassSetup setup(
            BlockingLaw law,
            CaptureCurve capture,
            BuiltCandidate candidate,
            double flow,
            double clean,
            double terminal,
            Leak leak) {
        SizeClasses classes = TestDust.A3.sizes().classes(CLASSES);
        double[] efficiency = capture.efficiencies(classes);
        return new MultiPassSetup(
                classes,
                TestDust.A3.sizes().shares(classes),
                TestDust.GRAIN_DENSITY,
                efficiency,
                SumpFlows.of(RESERVOIR * flow, flow, 0),
                BASE_CONCENTRATION * flow,
                law,
                candidate.pack().effectiveArea(),
                clean,
                terminal,
                leak,
                SIZES);
    }
}

package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.coldpleat.model.bench.BenchEstimate.Status;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Warm oil runs through the filter by its own weight, from a vessel whose level falls or is kept: laminar resistance of
 * the filter. The falling head is integrated with the temperature drifting linearly between readings.
 */
@Source(
        "derived here: S dh/dt = -Q, rho g h = mu psi Q + rho b Q^2; without inertia ln(h0/h) = g/(S psi) int rho/mu dt")
@Validity("quasi-steady flow, outlet free and full, filter filled with oil before the first reading")
public final class DrainTest {
    private static final List<String> CAUTIONS = List.of("bench.caution.hotOil", "bench.caution.spill");
    private static final String PLACE = "drain test";
    private static final int STEPS_BETWEEN_READINGS = 16;

    private DrainTest() {}

    /**
     * What the rig is.
     *
     * @param vesselArea free cross-section of the vessel at the level [m2]
     * @param hose laminar and inertial resistance of hose and fittings without the filter
     * @param headUncertainty standard uncertainty of one head reading [m], above 0
     * @param zeroUncertainty standard uncertainty of the zero of the head scale [m], common to all readings
     * @param temperatureUncertainty standard uncertainty of the temperature [K], common to all readings
     * @param viscosityLnSigma relative standard uncertainty of the viscosity curve [1]
     * @param hoseLnSigma relative standard uncertainty of the hose resistance [1]
     */
    public record Rig(
            Measured vesselArea,
            AdditiveLaw hose,
            double headUncertainty,
            double zeroUncertainty,
            double temperatureUncertainty,
            double viscosityLnSigma,
            double hoseLnSigma) {
        public Rig {
            Require.positive("vesselArea", vesselArea.value(), "m2");
            Require.positive("headUncertainty", headUncertainty, "m");
            Require.notNegative("zeroUncertainty", zeroUncertainty, "m");
            Require.notNegative("temperatureUncertainty", temperatureUncertainty, "K");
            Require.notNegative("viscosityLnSigma", viscosityLnSigma, "1");
            Require.notNegative("hoseLnSigma", hoseLnSigma, "1");
        }
    }

    /** Pressure difference of a head of oil [Pa]; 24 in of 850 kg/m3 give 5.08 kPa. */
    public static double headPressure(double head, double density) {
        return density * Gravity.FREE_FALL * head;
    }

    /**
     * Heads to expect at the times of a log for a given filter, from its first head on.
     *
     * @param laminar laminar resistance of the filter [1/m3]
     * @param firstHead head at the first reading [m]
     * @param log times and temperatures; its heads are not used
     */
    public static double[] heads(
            double laminar, double firstHead, List<DrainReading> log, Rig rig, DoubleFunction<Fluid> oil) {
        AdditiveLaw way = AdditiveLaw.laminarOnly(laminar).plus(rig.hose);
        double[] heads = new double[log.size()];
        double head = firstHead;
        heads[0] = head;
        for (int i = 1; i < heads.length; i++) {
            DrainReading from = log.get(i - 1);
            DrainReading to = log.get(i);
            double step = (to.time() - from.time()) / STEPS_BETWEEN_READINGS;
            for (int k = 0; k < STEPS_BETWEEN_READINGS; k++) {
                Fluid early = oilBetween(from, to, k, oil);
                Fluid middle = oilBetween(from, to, k + 0.5, oil);
                Fluid late = oilBetween(from, to, k + 1.0, oil);
                double a = fall(head, early, way, rig);
                double b = fall(head * Math.exp(-a * step / 2), middle, way, rig);
                double c = fall(head * Math.exp(-b * step / 2), middle, way, rig);
                double d = fall(head * Math.exp(-c * step), late, way, rig);
                head *= Math.exp(-(a + 2 * b + 2 * c + d) / 6 * step);
            }
            heads[i] = head;
        }
        return heads;
    }

    /** Evaluates a falling head; at least two readings with the head falling. */
    public static BenchEstimate fallingHead(List<DrainReading> log, Rig rig, DoubleFunction<Fluid> oil) {
        int count = log.size();
        if (count < 2 || !(log.get(count - 1).head() < log.get(0).head())) {
            throw new IllegalArgumentException("log must hold at least 2 readings with the head falling, had " + count);
        }
        double[][] places = new double[count][];
        double[] read = new double[count];
        double[] uncertainties = new double[count];
        double age = 0;
        for (int i = 0; i < count; i++) {
            places[i] = new double[] {i};
            read[i] = log.get(i).head();
            uncertainties[i] = rig.headUncertainty;
            if (i > 0) {
                double step = log.get(i).time() - log.get(i - 1).time();
                Require.positive("time between readings", step, "s");
                Fluid mean = oilBetween(log.get(i - 1), log.get(i), STEPS_BETWEEN_READINGS / 2.0, oil);
                age += mean.density() / mean.dynamicViscosity() * step;
            }
        }
        double fallen = Math.log(read[0] / read[count - 1]);
        double guess = Gravity.FREE_FALL * age / (rig.vesselArea.value() * fallen);
        double unit = guess - rig.hose.laminar();
        if (!(unit > 0)) {
            return BenchEstimate.refused(List.of(Notice.of("bench.drain.hoseTooTight", Severity.WARNING, PLACE)));
        }
        HeadCurve curve = new HeadCurve(log, rig, oil, unit, read[0]);
        RobustFit.Result fit =
                RobustFit.fit(curve, places, read, uncertainties, new double[] {1, 1}, RobustFit.Loss.HUBER);
        if (!fit.converged()) {
            return BenchEstimate.refused(List.of(Notice.of("bench.notConverged", Severity.WARNING, PLACE)));
        }
        double laminar = curve.laminar(fit.parameters());
        double total = laminar + rig.hose.laminar();
        double scatter = fit.standardUncertainty(0) * laminar / total;
        double zero = (1 / read[count - 1] - 1 / read[0]) / fallen * rig.zeroUncertainty;
        double warmest =
                log.stream().mapToDouble(DrainReading::temperature).max().orElseThrow();
        return estimate(total, scatter, zero, oil, warmest, rig, count, fit.outliers(), fit.scatter());
    }

    /**
     * Evaluates a head kept constant.
     *
     * @param head kept above the outlet [m]
     * @param volume collected [m3]
     * @param duration of collecting [s]
     * @param temperature of the oil [K]
     */
    public static BenchEstimate constantHead(
            Measured head, Measured volume, Measured duration, double temperature, Rig rig, DoubleFunction<Fluid> oil) {
        Fluid fluid = oil.apply(temperature);
        double flow =
                Require.positive("volume", volume.value(), "m3") / Require.positive("duration", duration.value(), "s");
        double pressure = headPressure(Require.positive("head", head.value(), "m"), fluid.density());
        double inertia = fluid.density() * rig.hose.inertial() * flow * flow;
        double total = (pressure - inertia) / (fluid.dynamicViscosity() * flow);
        if (!(total > 0)) {
            return BenchEstimate.refused(List.of(Notice.of("bench.drain.hoseTooTight", Severity.WARNING, PLACE)));
        }
        double left = pressure - inertia;
        double byHead = pressure / left * head.standardUncertainty() / head.value();
        double byFlow = (1 + 2 * inertia / left)
                * Math.hypot(
                        volume.standardUncertainty() / volume.value(),
                        duration.standardUncertainty() / duration.value());
        double zero = pressure / left * rig.zeroUncertainty / head.value();
        Rig known = new Rig(
                Measured.exact(Kind.AREA, rig.vesselArea.value(), rig.vesselArea.provenance()),
                rig.hose,
                rig.headUncertainty,
                rig.zeroUncertainty,
                rig.temperatureUncertainty,
                rig.viscosityLnSigma,
                rig.hoseLnSigma);
        return estimate(total, Math.hypot(byHead, byFlow), zero, oil, temperature, known, 1, List.of(), 1);
    }

    /**
     * What to expect of a falling head.
     *
     * @param laminar guessed laminar resistance of filter and hose [1/m3]
     * @param firstHead [m]
     * @param lastHead [m], below the first
     * @param temperature of the oil [K]
     * @param resolution of the head scale [m]
     * @param presentLnSigma what is known now [1]
     * @return expected reading is the fall of the head, the duration that of the fall
     */
    public static Plan plan(
            double laminar,
            double firstHead,
            double lastHead,
            double temperature,
            Rig rig,
            DoubleFunction<Fluid> oil,
            double resolution,
            double presentLnSigma) {
        Require.positive("laminar", laminar, "1/m3");
        Require.positive("lastHead", lastHead, "m");
        Require.positive("fall of the head", firstHead - lastHead, "m");
        Fluid fluid = oil.apply(temperature);
        double fallen = Math.log(firstHead / lastHead);
        double duration = rig.vesselArea.value()
                * laminar
                * fluid.dynamicViscosity()
                * fallen
                / (fluid.density() * Gravity.FREE_FALL);
        double zero = (1 / lastHead - 1 / firstHead) / fallen * rig.zeroUncertainty;
        double other = Math.sqrt(zero * zero
                + Math.pow(temperatureEffect(oil, temperature, rig), 2)
                + rig.viscosityLnSigma * rig.viscosityLnSigma
                + Math.pow(rig.vesselArea.standardUncertainty() / rig.vesselArea.value(), 2));
        double fall = firstHead - lastHead;
        // both ends are read: d ln psi = hypot(dh/h1, dh/h2)/ln(h1/h2), expressed per relative change of the fall
        double sensitivity = Math.hypot(1 / firstHead, 1 / lastHead) / fallen * fall;
        return Plan.of(Kind.LENGTH, fall, duration, sensitivity, resolution, other, presentLnSigma, CAUTIONS);
    }

    private static BenchEstimate estimate(
            double total,
            double readings,
            double zero,
            DoubleFunction<Fluid> oil,
            double temperature,
            Rig rig,
            int repeats,
            List<Integer> conflicts,
            double scatter) {
        double laminar = total - rig.hose.laminar();
        List<Notice> notices = new ArrayList<>();
        if (!(laminar > 0)) {
            return BenchEstimate.refused(List.of(Notice.of("bench.drain.hoseTooTight", Severity.WARNING, PLACE)));
        }
        if (rig.hose.laminar() > laminar) {
            notices.add(Notice.of(
                    "bench.drain.hoseDominates",
                    Severity.WARNING,
                    PLACE,
                    new Amount(Look.PERCENT, rig.hose.laminar() / total)));
        }
        if (!conflicts.isEmpty()) {
            notices.add(Notice.of("bench.outliers", Severity.WARNING, PLACE, Shown.rows(conflicts)));
        }
        if (scatter > 2) {
            notices.add(Notice.of("bench.scatter", Severity.WARNING, PLACE, new Amount(Look.PLAIN_RATIO, scatter)));
        }
        double gain = total / laminar;
        List<Correction> corrections = List.of(
                new Correction("hose", -rig.hose.laminar() / laminar, rig.hose.laminar() / laminar * rig.hoseLnSigma),
                new Correction("readings", 0, gain * readings),
                new Correction("headZero", 0, gain * zero),
                new Correction("vesselArea", 0, gain * rig.vesselArea.standardUncertainty() / rig.vesselArea.value()),
                new Correction("temperature", 0, gain * temperatureEffect(oil, temperature, rig)),
                new Correction("viscosity", 0, gain * rig.viscosityLnSigma));
        return BenchEstimate.ofFactor(
                Status.USABLE, Kind.LAMINAR_RESISTANCE, laminar, repeats, corrections, conflicts, notices);
    }

    private static double temperatureEffect(DoubleFunction<Fluid> oil, double temperature, Rig rig) {
        double ratio = oil.apply(temperature - 0.5).dynamicViscosity()
                / oil.apply(temperature + 0.5).dynamicViscosity();
        return Math.abs(Math.log(ratio)) * rig.temperatureUncertainty;
    }

    /** Relative rate at which the head falls [1/s]. */
    private static double fall(double head, Fluid fluid, AdditiveLaw way, Rig rig) {
        return way.flowRate(headPressure(head, fluid.density()), fluid) / (rig.vesselArea.value() * head);
    }

    private static Fluid oilBetween(DrainReading from, DrainReading to, double step, DoubleFunction<Fluid> oil) {
        double share = step / STEPS_BETWEEN_READINGS;
        return oil.apply(from.temperature() + share * (to.temperature() - from.temperature()));
    }
}

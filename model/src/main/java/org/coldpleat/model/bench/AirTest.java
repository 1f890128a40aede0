package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.BenchEstimate.Status;
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
 * Air drawn or blown through a disc of medium or a whole element: resistance of the medium to oil. The leak with a solid
 * disc in place is taken off, and the expansion, the slip and the inertia of the air and the flow past the edge of the
 * clamp are corrected.
 */
@Source("ISO 9237:1995 and ASTM D737 for the principle; corrections as named at each step")
@Validity("pressure differences up to a tenth of the air pressure, face velocities up to 1 m/s")
public final class AirTest {
    private static final List<String> CAUTIONS =
            List.of("bench.caution.blower", "bench.caution.usedOilVapor", "bench.caution.airToOil");
    private static final String PLACE = "air test";

    /** Width the flow spreads past each edge of a clamp that covers both faces, in thicknesses [1]. */
    @Source("derived here by conformal mapping: ln 2/pi for an isotropic sheet, times sqrt(k_plane/k_through)")
    private static final double EDGE_SPREAD = Math.log(2) / Math.PI;

    /** Largest coefficient of the inertia term counted with one pressure only [1]. */
    @Source("Ward 1964, J. Hydraul. Div. ASCE 90:1 (0.55, from memory); light mats lie between 0 and this")
    private static final double LARGEST_INERTIA = 0.55;

    /** Relative standard uncertainty of the slip correction: its coefficient is about 1 [1]. */
    @Source("common practice, no source")
    private static final double SLIP_LN_SIGMA = 0.5;

    private AirTest() {}

    /**
     * One line of an air log.
     *
     * @param pressureDifference across the medium [Pa], above 0
     * @param flowRate volume flow at the state of the air in the meter [m3/s]
     */
    public record Row(double pressureDifference, double flowRate) {
        public Row {
            Require.positive("pressureDifference", pressureDifference, "Pa");
            Require.notNegative("flowRate", flowRate, "m3/s");
        }
    }

    /**
     * What was read.
     *
     * @param rows medium in place, at least 1; three or more pressures give the inertia of the air
     * @param leak rows with a solid disc in place, possibly none
     * @param area open area [m2]
     * @param clampedDiameter of a disc clamped on both faces within a larger sheet [m]; empty for an element or a disc
     *     cut to size
     * @param thickness of the medium [m], needed for edge and inertia; empty if unknown
     * @param poreRadius mean flow pore [m], needed for the slip; empty if unknown
     * @param pressureUncertainty standard uncertainty of a pressure difference [Pa], above 0
     * @param flowUncertainty relative standard uncertainty of the flow meter [1], common to all rows
     * @param suction true if the meter lies after the medium (vacuum cleaner), so that it sees thinner air
     */
    public record Readings(
            List<Row> rows,
            List<Row> leak,
            Measured area,
            Optional<Double> clampedDiameter,
            Optional<Double> thickness,
            Optional<Measured> poreRadius,
            double pressureUncertainty,
            double flowUncertainty,
            boolean suction) {
        public Readings {
            rows = List.copyOf(rows);
            leak = List.copyOf(leak);
            Require.positive("area", area.value(), "m2");
            Require.positive("pressureUncertainty", pressureUncertainty, "Pa");
            Require.notNegative("flowUncertainty", flowUncertainty, "1");
            thickness.ifPresent(t -> Require.positive("thickness", t, "m"));
            if (rows.isEmpty()) {
                throw new IllegalArgumentException("rows must be at least 1, had none");
            }
        }
    }

    /** Evaluates a log; {@code ambient} is the air before the rig. */
    public static BenchEstimate evaluate(Readings readings, Air ambient) {
        List<Notice> notices = new ArrayList<>();
        Status status = Status.USABLE;
        double leakage = leakage(readings.leak);
        if (readings.leak.isEmpty()) {
            notices.add(Notice.of("bench.air.noLeakTest", Severity.WARNING, PLACE));
            status = Status.WIDENED;
        }
        int count = readings.rows.size();
        double[][] velocities = new double[count][];
        double[] viscousPressures = new double[count];
        double[] uncertainties = new double[count];
        double leakShare = 0;
        double expansion = 0;
        double fastest = 0;
        for (int i = 0; i < count; i++) {
            Row row = readings.rows.get(i);
            double before = readings.suction ? ambient.pressure() : ambient.pressure() + row.pressureDifference;
            double mean = before - row.pressureDifference / 2;
            double meter = readings.suction ? ambient.pressure() - row.pressureDifference : ambient.pressure();
            double through = row.flowRate - leakage * row.pressureDifference;
            if (!(through > 0)) {
                notices.add(Notice.of("bench.air.allLeak", Severity.WARNING, PLACE, Shown.rows(List.of(i))));
                return BenchEstimate.refused(notices);
            }
            double velocity = through * meter / mean / readings.area.value();
            velocities[i] = new double[] {velocity, mean / ambient.pressure()};
            viscousPressures[i] = row.pressureDifference;
            uncertainties[i] = readings.pressureUncertainty;
            leakShare = Math.max(leakShare, leakage * row.pressureDifference / through);
            expansion = Math.max(expansion, Math.abs(meter / mean - 1));
            fastest = Math.max(fastest, velocity);
        }
        if (leakShare > 0.2) {
            notices.add(Notice.of("bench.air.largeLeak", Severity.WARNING, PLACE, new Amount(Look.PERCENT, leakShare)));
        }
        List<Correction> corrections = new ArrayList<>();
        double leakLnSigma = readings.leak.isEmpty() ? 0.05 : leakShare * 0.2;
        corrections.add(new Correction("leak", leakShare, leakLnSigma));
        corrections.add(new Correction("expansion", expansion, 0));
        Viscous viscous = viscous(velocities, viscousPressures, uncertainties, ambient, readings, notices);
        if (!(viscous.resistance > 0)) {
            notices.add(Notice.of("bench.notConverged", Severity.WARNING, PLACE));
            return BenchEstimate.refused(notices);
        }
        corrections.add(new Correction("inertia", viscous.inertia, viscous.inertiaLnSigma));
        double resistance = viscous.resistance;
        if (readings.clampedDiameter.isPresent() && readings.thickness.isPresent()) {
            // in-plane permeability one to four times the through-plane one: root 1 to 2, rectangular
            double spread = EDGE_SPREAD * readings.thickness.get() / readings.clampedDiameter.get();
            double widened = Math.pow(1 + 2 * 1.5 * spread, 2);
            resistance *= widened;
            corrections.add(new Correction("edge", widened - 1, 4 * 0.5 * spread / Math.sqrt(3)));
        }
        if (readings.poreRadius.isPresent()) {
            Measured radius = readings.poreRadius.get();
            double slip = 4 * ambient.meanFreePath() / Require.positive("poreRadius", radius.value(), "m");
            resistance *= 1 + slip;
            double known = Math.hypot(SLIP_LN_SIGMA, radius.standardUncertainty() / radius.value());
            corrections.add(new Correction("slip", slip, slip * known / (1 + slip)));
        } else {
            notices.add(Notice.of("bench.air.noPore", Severity.INFO, PLACE));
        }
        corrections.add(new Correction("readings", 0, viscous.lnSigma));
        corrections.add(new Correction("flowMeter", 0, readings.flowUncertainty));
        corrections.add(new Correction("area", 0, readings.area.standardUncertainty() / readings.area.value()));
        return BenchEstimate.ofFactor(
                status, Kind.MEDIUM_RESISTANCE, resistance, count, corrections, viscous.outliers, notices);
    }

    /**
     * What to expect.
     *
     * @param resistance guessed resistance of the medium [1/m]
     * @param area [m2]
     * @param pressureDifference intended [Pa]
     * @param resolution of the flow meter [m3/s]
     * @param secondsPerRow time of one reading [s]
     * @param otherLnSigma pressure, area, leak and slip together [1]
     * @param presentLnSigma what is known now [1]
     * @return expected reading is the flow
     */
    public static Plan plan(
            double resistance,
            double area,
            double pressureDifference,
            Air air,
            double resolution,
            double secondsPerRow,
            double otherLnSigma,
            double presentLnSigma) {
        double velocity =
                pressureDifference / (air.dynamicViscosity() * Require.positive("resistance", resistance, "1/m"));
        return Plan.of(
                Kind.FLOW_RATE,
                velocity * area,
                2 * 3 * secondsPerRow,
                1,
                resolution,
                otherLnSigma,
                presentLnSigma,
                CAUTIONS);
    }

    /** Leak per pressure difference [m3/(s Pa)], least squares through the origin. */
    private static double leakage(List<Row> rows) {
        double product = 0;
        double squares = 0;
        for (Row row : rows) {
            product += row.flowRate * row.pressureDifference;
            squares += row.pressureDifference * row.pressureDifference;
        }
        return squares > 0 ? product / squares : 0;
    }

    private record Viscous(
            double resistance, double lnSigma, double inertia, double inertiaLnSigma, List<Integer> outliers) {}

    private static Viscous viscous(
            double[][] velocities,
            double[] pressures,
            double[] uncertainties,
            Air air,
            Readings readings,
            List<Notice> notices) {
        int count = pressures.length;
        double mu = air.dynamicViscosity();
        double unit = pressures[0] / (mu * velocities[0][0]);
        double inertialUnit = unit * mu / (air.density() * velocities[0][0]);
        if (count >= 3) {
            RobustFit.Curve curve =
                    (x, p) -> mu * unit * p[0] * x[0] + air.density() * x[1] * inertialUnit * p[1] * x[0] * x[0];
            RobustFit.Result fit = RobustFit.fit(
                    curve, velocities, pressures, uncertainties, new double[] {1, 0.05}, RobustFit.Loss.HUBER);
            if (fit.converged() && fit.parameters()[1] >= 0) {
                if (!fit.outliers().isEmpty()) {
                    notices.add(Notice.of("bench.outliers", Severity.WARNING, PLACE, Shown.rows(fit.outliers())));
                }
                double fitted = fit.parameters()[0];
                return new Viscous(unit * fitted, fit.standardUncertainty(0) / fitted, fitted - 1, 0, fit.outliers());
            }
        }
        RobustFit.Curve line = (x, p) -> mu * unit * p[0] * x[0];
        RobustFit.Result fit =
                RobustFit.fit(line, velocities, pressures, uncertainties, new double[] {1}, RobustFit.Loss.HUBER);
        if (!fit.converged()) {
            return new Viscous(0, 0, 0, 0, List.of());
        }
        double apparent = unit * fit.parameters()[0];
        double lnSigma = fit.standardUncertainty(0) / fit.parameters()[0];
        if (readings.thickness.isEmpty()) {
            notices.add(Notice.of("bench.air.noThickness", Severity.INFO, PLACE));
            return new Viscous(apparent, lnSigma, 0, 0, fit.outliers());
        }
        double velocity = 0;
        for (double[] v : velocities) {
            velocity += v[0] / count;
        }
        // Forchheimer: R_apparent = R (1 + C rho v sqrt(k)/mu), k = t/R; C anywhere between 0 and its largest
        double full = withoutInertia(apparent, readings.thickness.get(), velocity, air, LARGEST_INERTIA);
        double middle = (apparent + full) / 2;
        double half = (apparent - full) / 2;
        return new Viscous(middle, lnSigma, middle / apparent - 1, half / Math.sqrt(3) / middle, fit.outliers());
    }

    /** Solves {@code R_apparent = R + C (rho v/mu) sqrt(t R)}, which is the law below with k = t/R. */
    @Source("Forchheimer 1901 (textbook form): dp/t = mu v/k + C rho v^2/sqrt(k)")
    private static double withoutInertia(
            double apparent, double thickness, double velocity, Air air, double coefficient) {
        double half = coefficient * air.density() * velocity / air.dynamicViscosity() * Math.sqrt(thickness) / 2;
        double root = apparent / (half + Math.sqrt(half * half + apparent));
        return root * root;
    }
}

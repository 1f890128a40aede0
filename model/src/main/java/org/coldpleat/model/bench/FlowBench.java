package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.coldpleat.model.bench.BenchEstimate.Status;
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
 * Pumped loop with a pressure gauge: laminar and inertial resistance of the filter from rows of pressure difference,
 * flow and temperature, with the empty head run the same way and taken off.
 */
@Source("derived here: sum of a laminar and an inertial loss, fitted by robust least squares")
@Validity("at least three rows at flows that differ by a factor of two or more; one phase, no foam")
public final class FlowBench {
    private static final List<String> CAUTIONS =
            List.of("bench.caution.hotOil", "bench.caution.pressurizedLoop", "bench.caution.noEngineApproval");

    private FlowBench() {}

    /**
     * What was read.
     *
     * @param rows filter in place, at least 3
     * @param tare head without the element or filter, at least 3 rows, or none
     * @param tareAllowance without tare rows: share of the pressure difference the empty head may take [1], as a band
     *     within 0 to 1; empty refuses the test
     * @param pressureUncertainty standard uncertainty of one pressure difference [Pa], above 0
     * @param flowUncertainty relative standard uncertainty of one flow reading [1]
     * @param temperatureUncertainty standard uncertainty of the temperature [K], the same error in all rows
     * @param viscosityLnSigma relative standard uncertainty of the viscosity curve [1]
     * @param compression true to let the resistance grow in proportion to the pressure difference
     */
    public record Readings(
            List<FlowRow> rows,
            List<FlowRow> tare,
            Optional<Measured> tareAllowance,
            double pressureUncertainty,
            double flowUncertainty,
            double temperatureUncertainty,
            double viscosityLnSigma,
            boolean compression) {
        public Readings {
            rows = List.copyOf(rows);
            tare = List.copyOf(tare);
            Require.positive("pressureUncertainty", pressureUncertainty, "Pa");
            Require.notNegative("flowUncertainty", flowUncertainty, "1");
            Require.notNegative("temperatureUncertainty", temperatureUncertainty, "K");
            Require.notNegative("viscosityLnSigma", viscosityLnSigma, "1");
            if (rows.size() < 3 || tare.size() == 1 || tare.size() == 2) {
                throw new IllegalArgumentException("rows must be at least 3, and tare none or at least 3, had "
                        + rows.size() + " and " + tare.size());
            }
        }
    }

    /**
     * What a flow bench says.
     *
     * @param laminar laminar resistance psi of the filter without the head [1/m3]
     * @param inertial inertial resistance [1/m4] of the filter without the head
     * @param inertialUncertainty its standard uncertainty [1/m4]
     * @param compression relative growth of the laminar resistance by pressure difference [1/Pa]; 0 if not asked for
     * @param fit fit of the rows with the filter: residuals [Pa], leverages, outliers
     */
    public record Result(
            BenchEstimate laminar,
            double inertial,
            double inertialUncertainty,
            double compression,
            RobustFit.Result fit) {}

    /** Evaluates a log with oil properties as a function of temperature [K]. */
    public static Result evaluate(Readings readings, DoubleFunction<Fluid> oil) {
        FlowFit filter = FlowFit.of(readings.rows, readings, oil, readings.compression);
        Optional<FlowFit> head = readings.tare.isEmpty()
                ? Optional.empty()
                : Optional.of(FlowFit.of(readings.tare, readings, oil, false));
        List<Notice> notices = new ArrayList<>();
        if (!filter.result().converged()
                || head.map(h -> !h.result().converged()).orElse(false)) {
            notices.add(Notice.of("bench.notConverged", Severity.WARNING, "flow bench"));
            return refused(filter, notices);
        }
        notices.addAll(findings(filter, readings.rows.size()));
        double spreadOfFlow = flowSpan(readings.rows);
        if (spreadOfFlow < 2) {
            notices.add(Notice.of(
                    "bench.flow.narrow", Severity.WARNING, "flow bench", new Amount(Look.PLAIN_RATIO, spreadOfFlow)));
        }
        List<Correction> corrections = new ArrayList<>();
        double laminar = filter.laminar();
        double uncertainty = filter.laminarUncertainty();
        double inertial = filter.inertial();
        double inertialUncertainty = filter.inertialUncertainty();
        Status status = Status.USABLE;
        if (head.isPresent()) {
            FlowFit h = head.get();
            laminar -= h.laminar();
            inertial -= h.inertial();
            inertialUncertainty = Math.hypot(inertialUncertainty, h.inertialUncertainty());
            if (!(laminar > 0)) {
                notices.add(Notice.of("bench.flow.tareTooLarge", Severity.WARNING, "flow bench"));
                return refused(filter, notices);
            }
            corrections.add(new Correction("tare", -h.laminar() / laminar, h.laminarUncertainty() / laminar));
        } else if (readings.tareAllowance.isPresent()) {
            Measured share = readings.tareAllowance.get();
            laminar *= 1 - share.value();
            uncertainty *= 1 - share.value();
            if (!(laminar > 0)) {
                throw new IllegalArgumentException("tareAllowance must be below 1 [1], was " + share.value());
            }
            corrections.add(new Correction(
                    "tareAllowance",
                    -share.value() / (1 - share.value()),
                    share.standardUncertainty() / (1 - share.value())));
            notices.add(Notice.of(
                    "bench.flow.tareAllowed",
                    Severity.WARNING,
                    "flow bench",
                    new Amount(Look.PERCENT, share.low()),
                    new Amount(Look.PERCENT, share.high())));
            status = Status.WIDENED;
        } else {
            notices.add(Notice.of("bench.flow.noTare", Severity.WARNING, "flow bench"));
            return refused(filter, notices);
        }
        corrections.add(new Correction("readings", 0, uncertainty / laminar));
        double slope = viscositySlope(readings.rows, oil);
        corrections.add(new Correction("temperature", 0, slope * readings.temperatureUncertainty));
        corrections.add(new Correction("viscosity", 0, readings.viscosityLnSigma));
        BenchEstimate estimate = BenchEstimate.ofFactor(
                status,
                Kind.LAMINAR_RESISTANCE,
                laminar,
                readings.rows.size(),
                corrections,
                filter.result().outliers(),
                notices);
        return new Result(estimate, inertial, inertialUncertainty, filter.compression(), filter.result());
    }

    /**
     * What to expect.
     *
     * @param laminar guessed laminar resistance of filter and head [1/m3]
     * @param flowRate intended flow [m3/s]
     * @param oil at the intended temperature
     * @param rows number of rows
     * @param secondsPerRow time to settle and read [s]
     * @param resolution scale step of the pressure gauge [Pa]
     * @param otherLnSigma flow, viscosity and temperature together [1]
     * @param presentLnSigma what is known now [1]
     */
    public static Plan plan(
            double laminar,
            double flowRate,
            Fluid oil,
            int rows,
            double secondsPerRow,
            double resolution,
            double otherLnSigma,
            double presentLnSigma) {
        double expected = oil.dynamicViscosity() * Require.positive("laminar", laminar, "1/m3") * flowRate;
        return Plan.of(
                Kind.PRESSURE_DIFFERENCE,
                expected,
                2 * rows * secondsPerRow,
                1,
                resolution,
                otherLnSigma,
                presentLnSigma,
                CAUTIONS);
    }

    private static Result refused(FlowFit filter, List<Notice> notices) {
        return new Result(BenchEstimate.refused(notices), 0, 0, 0, filter.result());
    }

    private static List<Notice> findings(FlowFit filter, int rows) {
        List<Notice> notices = new ArrayList<>();
        RobustFit.Result fit = filter.result();
        if (!fit.outliers().isEmpty()) {
            notices.add(Notice.of("bench.outliers", Severity.WARNING, "flow bench", Shown.rows(fit.outliers())));
        }
        List<Integer> heavy = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            if (fit.leverages()[i] > Math.max(0.5, 2.0 * fit.parameters().length / rows)) {
                heavy.add(i);
            }
        }
        if (!heavy.isEmpty()) {
            notices.add(Notice.of("bench.flow.leverage", Severity.INFO, "flow bench", Shown.rows(heavy)));
        }
        if (fit.degreesOfFreedom() > 0 && fit.scatter() > 2) {
            notices.add(Notice.of(
                    "bench.scatter", Severity.WARNING, "flow bench", new Amount(Look.PLAIN_RATIO, fit.scatter())));
        }
        return notices;
    }

    private static double flowSpan(List<FlowRow> rows) {
        double most = rows.stream().mapToDouble(FlowRow::flowRate).max().orElseThrow();
        double least = rows.stream().mapToDouble(FlowRow::flowRate).min().orElseThrow();
        return most / least;
    }

    /** Largest relative change of viscosity by temperature among the rows [1/K]. */
    private static double viscositySlope(List<FlowRow> rows, DoubleFunction<Fluid> oil) {
        return rows.stream()
                .mapToDouble(r ->
                        Math.abs(Math.log(oil.apply(r.temperature() + 0.5).dynamicViscosity()
                                / oil.apply(r.temperature() - 0.5).dynamicViscosity())))
                .max()
                .orElseThrow();
    }
}

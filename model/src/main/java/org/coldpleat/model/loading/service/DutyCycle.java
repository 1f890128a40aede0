package org.coldpleat.model.loading.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.coldpleat.model.coldstart.plan.ColdStartRequest;
import org.coldpleat.model.coldstart.plan.StartModel;
import org.coldpleat.model.coldstart.plan.StartPlan;
import org.coldpleat.model.loading.ParticleSizes;
import org.coldpleat.model.loading.TestDust;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.typical.DefaultSpreads;
import org.coldpleat.shared.casefile.Months;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/**
 * What the filters of a case go through in service.
 *
 * @param running state while warm
 * @param oilTemperature while warm [K]
 * @param hotSecondsPerWeek warm running a week [s]
 * @param starts cold starts
 * @param sizes sizes of the dirt
 * @param dirtRate dirt coming in [kg/s]
 * @param dirtLnSigma standard uncertainty of its logarithm [1]
 * @param grainDensity [kg/m3]
 * @param sumpVolume [m3]
 * @param oilLife running time between oil changes [s]; infinite for none
 * @param topUp [m3/s]
 * @param horizon running time to look at [s]
 */
public record DutyCycle(
        OperatingState running,
        double oilTemperature,
        double hotSecondsPerWeek,
        Optional<Starts> starts,
        ParticleSizes sizes,
        double dirtRate,
        double dirtLnSigma,
        double grainDensity,
        double sumpVolume,
        double oilLife,
        double topUp,
        double horizon) {
    private static final double HOUR = 3600;
    private static final double DEFAULT_HORIZON = 1000 * HOUR;
    private static final int WEEKS = 52;

    /**
     * Cold starts of a year.
     *
     * @param operatingState state in which opening temperatures and winter starts are judged
     * @param warming how the oil warms up
     * @param temperatures start temperature of each start of a year from the first month on [K]
     * @param hotSeconds warm running behind each of these starts [s]
     * @param winterStart start temperature whose hours are wanted [K]
     */
    public record Starts(
            OperatingState operatingState,
            Warming warming,
            double[] temperatures,
            double[] hotSeconds,
            double winterStart) {}

    /**
     * How the oil warms up.
     *
     * @param plan start by the heat balance of the case; empty if the time is stated
     * @param duration running time that a start takes [s]; without a heat balance the time to 95 % of the way to the
     *     warm oil temperature
     * @param galleryVolume passages that fill first [m3]; with a heat balance it has its own
     */
    public record Warming(Optional<StartPlan> plan, double duration, double galleryVolume) {}

    /** The duty cycle of a case; empty if it has none. */
    public static Optional<DutyCycle> of(ResolvedCase resolved) {
        return resolved.document().root().section("duty").map(duty -> read(duty, resolved));
    }

    private static DutyCycle read(Section duty, ResolvedCase resolved) {
        Section running = duty.section("running").orElseThrow();
        Section dirt = duty.section("dirt").orElseThrow();
        Section sump = duty.section("sump").orElseThrow();
        double rate = 0;
        double square = 0;
        for (String key : List.of("ingestion", "generation")) {
            Optional<Measured> one = dirt.quantity(key).map(value -> DefaultSpreads.complete(dirt.pathOf(key), value));
            if (one.isPresent()) {
                rate += one.get().value();
                square += Math.pow(one.get().standardUncertainty(), 2);
            }
        }
        return new DutyCycle(
                state(resolved, running),
                running.quantity("oilTemperature").orElseThrow().value(),
                running.quantity("hoursPerWeek").orElseThrow().value(),
                duty.section("starts").map(starts -> starts(starts, duty, resolved)),
                sizes(dirt),
                rate,
                rate > 0 ? Math.sqrt(square) / rate : 0,
                value(dirt, "grainDensity", TestDust.GRAIN_DENSITY),
                sump.quantity("volume").orElseThrow().value(),
                value(sump, "oilChange", Double.POSITIVE_INFINITY),
                value(sump, "topUp", 0),
                value(duty, "horizon", DEFAULT_HORIZON));
    }

    private static double value(Section section, String key, double otherwise) {
        return section.quantity(key).map(Measured::value).orElse(otherwise);
    }

    private static OperatingState state(ResolvedCase resolved, Section section) {
        String name = section.text("state").orElseThrow();
        return resolved.operatingStates().stream()
                .filter(state -> state.name().equals(name))
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    private static ParticleSizes sizes(Section dirt) {
        Optional<String> grade = dirt.choice("dust");
        if (grade.isPresent()) {
            return TestDust.valueOf(grade.get()).sizes();
        }
        List<Section> rows = dirt.sections("sizes");
        double[] size = rows.stream()
                .mapToDouble(row -> row.quantity("size").orElseThrow().value())
                .toArray();
        double[] finer = rows.stream()
                .mapToDouble(row -> row.quantity("finer").orElseThrow().value())
                .toArray();
        return new ParticleSizes(size, finer);
    }

    private static Starts starts(Section starts, Section duty, ResolvedCase resolved) {
        int year = Months.NAMES.size();
        double usual = starts.quantity("perWeek").orElseThrow().value();
        double[] temperature = new double[year];
        double[] perWeek = new double[year];
        for (Section row : starts.sections("months")) {
            fill(row, row.choice("month").orElseThrow(), 1, usual, temperature, perWeek);
        }
        for (Section row : starts.sections("seasons")) {
            String from = row.choice("from").orElseThrow();
            int last = Months.NAMES.indexOf(row.choice("to").orElseThrow());
            int count = Math.floorMod(last - Months.NAMES.indexOf(from), year) + 1;
            fill(row, from, count, usual, temperature, perWeek);
        }
        double hot = duty.section("running")
                .flatMap(running -> running.quantity("hoursPerWeek"))
                .orElseThrow()
                .value();
        int first = duty.choice("firstMonth").map(Months.NAMES::indexOf).orElse(0);
        List<Double> temperatures = new ArrayList<>();
        List<Double> hotSeconds = new ArrayList<>();
        double due = 0.5;
        for (int i = 0; i < year; i++) {
            int month = (first + i) % year;
            for (due += perWeek[month] * WEEKS / year; due >= 1; due--) {
                temperatures.add(temperature[month]);
                hotSeconds.add(hot / perWeek[month]);
            }
        }
        double coldest = DoubleStream.of(temperature).min().orElseThrow();
        return new Starts(
                state(resolved, starts),
                warming(starts, resolved),
                doubles(temperatures),
                doubles(hotSeconds),
                value(duty, "winterStart", coldest));
    }

    private static void fill(
            Section row, String from, int count, double usual, double[] temperature, double[] perWeek) {
        int first = Months.NAMES.indexOf(from);
        for (int i = 0; i < count; i++) {
            int month = (first + i) % temperature.length;
            temperature[month] = row.quantity("temperature").orElseThrow().value();
            perWeek[month] = value(row, "perWeek", usual);
        }
    }

    private static double[] doubles(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Warming warming(Section starts, ResolvedCase resolved) {
        boolean balance = resolved.document()
                .root()
                .section("start")
                .filter(start -> !start.has("trace"))
                .isPresent();
        if (!balance) {
            return new Warming(
                    Optional.empty(),
                    starts.quantity("warmUp").orElseThrow().value(),
                    value(starts, "galleryVolume", 0));
        }
        StartPlan plan = new StartPlan(
                resolved,
                new ColdStartRequest(
                        Optional.empty(),
                        starts.text("schedule"),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
        StartModel model = plan.model();
        double duration = plan.phases(model).stream()
                .mapToDouble(StartModel.Phase::duration)
                .sum();
        return new Warming(Optional.of(plan), duration, model.galleryVolume());
    }

    /** The same with another horizon [s]. */
    public DutyCycle withHorizon(double other) {
        return new DutyCycle(
                running,
                oilTemperature,
                hotSecondsPerWeek,
                starts,
                sizes,
                dirtRate,
                dirtLnSigma,
                grainDensity,
                sumpVolume,
                oilLife,
                topUp,
                other);
    }
}

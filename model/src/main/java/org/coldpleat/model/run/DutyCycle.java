package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.loading.ParticleSizes;
import org.coldpleat.model.loading.TestDust;
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
record DutyCycle(
        Duty running,
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
     * @param duty state while the oil warms up
     * @param perWeek starts a week [1]
     * @param warmUp time to 95 % of the way to the warm oil temperature [s]
     * @param galleryVolume passages that fill first [m3]
     * @param temperatures start temperature of each start of a year from the first month on [K]
     * @param winterStart start temperature whose hours are wanted [K]
     */
    record Starts(
            Duty duty,
            double perWeek,
            double warmUp,
            double galleryVolume,
            double[] temperatures,
            double winterStart) {}

    /** The duty cycle of a case; empty if it has none. */
    static Optional<DutyCycle> of(ResolvedCase resolved) {
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

    private static Duty state(ResolvedCase resolved, Section section) {
        String name = section.text("state").orElseThrow();
        return resolved.duties().stream()
                .filter(duty -> duty.name().equals(name))
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
        double[] months = new double[Months.NAMES.size()];
        double coldest = Double.POSITIVE_INFINITY;
        for (Section season : starts.sections("seasons")) {
            int from = Months.NAMES.indexOf(season.choice("from").orElseThrow());
            int count =
                    Math.floorMod(Months.NAMES.indexOf(season.choice("to").orElseThrow()) - from, months.length) + 1;
            double temperature = season.quantity("temperature").orElseThrow().value();
            coldest = Math.min(coldest, temperature);
            for (int i = 0; i < count; i++) {
                months[(from + i) % months.length] = temperature;
            }
        }
        double perWeek = starts.quantity("perWeek").orElseThrow().value();
        int first = duty.choice("firstMonth").map(Months.NAMES::indexOf).orElse(0);
        List<Double> year = new ArrayList<>();
        int count = Math.max(1, (int) Math.round(perWeek * WEEKS));
        for (int i = 0; i < count; i++) {
            year.add(months[(first + i * months.length / count) % months.length]);
        }
        return new Starts(
                state(resolved, starts),
                perWeek,
                starts.quantity("warmUp").orElseThrow().value(),
                value(starts, "galleryVolume", 0),
                year.stream().mapToDouble(Double::doubleValue).toArray(),
                value(duty, "winterStart", coldest));
    }

    /** The same with another horizon [s]. */
    DutyCycle withHorizon(double other) {
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

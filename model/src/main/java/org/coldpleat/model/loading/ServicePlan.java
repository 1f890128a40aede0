package org.coldpleat.model.loading;

import java.util.Objects;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.shared.quantity.Require;

/**
 * What an element goes through in service. Cycle after cycle the engine starts, which takes {@code startDuration}, and
 * then runs hot for the duration that belongs to this start; all times are running time.
 *
 * @param classes size classes of the dirt
 * @param efficiency share caught by the medium in one pass [0..1], double[classes]
 * @param source dirt coming into the oil, wear and ingestion together [kg/s], double[classes]
 * @param sumpVolume oil in circulation [m3], above 0
 * @param oilLife running time between oil changes [s], above 0; infinite for none
 * @param topUp oil lost with its dirt and made up with clean oil [m3/s], at least 0
 * @param pack pleat pack
 * @param mediumResistance of the clean medium [1/m], above 0
 * @param law how the medium blocks
 * @param hot flows while running hot
 * @param starts outcome of starts; not asked if {@code startDuration} is 0
 * @param startDuration running time that a start takes [s], at least 0; 0 for no starts
 * @param hotDurations hot running of each cycle of a year [s], each above 0, double[k]
 * @param startTemperatures start temperature of each cycle of a year [K], double[k], or double[0] without starts; begins
 *     again behind the last one
 * @param horizon running time to be computed [s], above 0
 */
public record ServicePlan(
        SizeClasses classes,
        double[] efficiency,
        double[] source,
        double sumpVolume,
        double oilLife,
        double topUp,
        PackModel pack,
        double mediumResistance,
        BlockingLaw law,
        HotDuty hot,
        StartDuty starts,
        double startDuration,
        double[] hotDurations,
        double[] startTemperatures,
        double horizon) {
    /** Flows through a filter whose pack has a resistance, hot. */
    @FunctionalInterface
    public interface HotDuty {
        /** State with a pack of a resistance ratio [1, loaded over clean pack]. */
        HotState at(double packRatio);
    }

    /**
     * Hot running with one pack.
     *
     * @param flow through filter and valves [m3/s]
     * @param bypassShare share of it that goes round the medium [1]
     * @param pressureDrop of the filter [Pa]
     */
    public record HotState(double flow, double bypassShare, double pressureDrop) {}

    /** Outcome of starts. */
    @FunctionalInterface
    public interface StartDuty {
        /** Outcome from a temperature [K] with a pack of a resistance ratio [1, loaded over clean pack]. */
        StartDose at(double temperature, double packRatio);
    }

    /**
     * Outcome of one start.
     *
     * @param unfilteredVolume oil that went round the medium [m3]
     * @param filteredVolume oil through the medium [m3]
     */
    public record StartDose(double unfilteredVolume, double filteredVolume) {}

    public ServicePlan {
        efficiency = efficiency.clone();
        source = source.clone();
        startTemperatures = startTemperatures.clone();
        hotDurations = hotDurations.clone();
        Require.entries("efficiency", efficiency.length, classes.count());
        Require.entries("source", source.length, classes.count());
        for (int i = 0; i < source.length; i++) {
            Require.within("efficiency", efficiency[i], 0, 1, "1");
            Require.notNegative("source", source[i], "kg/s");
        }
        Require.positive("sumpVolume", sumpVolume, "m3");
        if (!(oilLife > 0)) {
            throw new IllegalArgumentException("oilLife must be above 0 s, was " + oilLife);
        }
        Require.notNegative("topUp", topUp, "m3/s");
        Objects.requireNonNull(pack, "pack");
        Require.positive("mediumResistance", mediumResistance, "1/m");
        Objects.requireNonNull(law, "law");
        Objects.requireNonNull(hot, "hot");
        Objects.requireNonNull(starts, "starts");
        Require.notNegative("startDuration", startDuration, "s");
        Require.atLeast("number of hotDurations", hotDurations.length, 1, "1");
        for (double duration : hotDurations) {
            Require.positive("hotDurations", duration, "s");
        }
        if (startDuration > 0) {
            Require.entries("startTemperatures", startTemperatures.length, hotDurations.length);
        }
        Require.positive("horizon", horizon, "s");
    }

    /** The same service with another blocking law. */
    public ServicePlan withLaw(BlockingLaw other) {
        return new ServicePlan(
                classes,
                efficiency,
                source,
                sumpVolume,
                oilLife,
                topUp,
                pack,
                mediumResistance,
                other,
                hot,
                starts,
                startDuration,
                hotDurations,
                startTemperatures,
                horizon);
    }

    @Override
    public double[] efficiency() {
        return efficiency.clone();
    }

    @Override
    public double[] source() {
        return source.clone();
    }

    @Override
    public double[] startTemperatures() {
        return startTemperatures.clone();
    }

    @Override
    public double[] hotDurations() {
        return hotDurations.clone();
    }

    /** Start temperature of a cycle counted from 0 [K]. */
    double startTemperature(long cycleNumber) {
        return startTemperatures[(int) (cycleNumber % startTemperatures.length)];
    }
}

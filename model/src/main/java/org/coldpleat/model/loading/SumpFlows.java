package org.coldpleat.model.loading;

import org.coldpleat.shared.quantity.Require;

/**
 * Oil flows about a well-mixed sump of constant volume. Of the flow Q that leaves it, the upstream sample is taken off,
 * the rest meets the filter, where the bypass share goes round the medium uncaught; of what leaves the filter the
 * downstream sample is taken off, the rest returns.
 *
 * @param volume oil in the sump and its lines [m3], above 0
 * @param flowRate Q [m3/s], at least 0
 * @param bypassShare l, share of the filter flow that goes round the medium [0..1]
 * @param upstreamSample undiluted sample before the filter [m3/s], at most Q
 * @param downstreamSample undiluted sample behind the filter [m3/s], at most what passes it
 * @param replacement sump oil lost with its dirt and made up with other oil [m3/s]; the dirt of that oil is a source
 */
public record SumpFlows(
        double volume,
        double flowRate,
        double bypassShare,
        double upstreamSample,
        double downstreamSample,
        double replacement) {
    public SumpFlows {
        Require.positive("volume", volume, "m3");
        Require.notNegative("flowRate", flowRate, "m3/s");
        Require.within("bypassShare", bypassShare, 0, 1, "1");
        Require.notNegative("upstreamSample", upstreamSample, "m3/s");
        Require.notNegative("downstreamSample", downstreamSample, "m3/s");
        Require.notNegative("replacement", replacement, "m3/s");
        if (upstreamSample + downstreamSample > flowRate) {
            throw new IllegalArgumentException("samples " + upstreamSample + " and " + downstreamSample
                    + " m3/s must not exceed flowRate " + flowRate + " m3/s");
        }
    }

    /** Circulation without samples and oil loss. */
    public static SumpFlows of(double volume, double flowRate, double bypassShare) {
        return new SumpFlows(volume, flowRate, bypassShare, 0, 0, 0);
    }

    /** The same flows with another bypass share [0..1]. */
    public SumpFlows withBypassShare(double share) {
        return new SumpFlows(volume, flowRate, share, upstreamSample, downstreamSample, replacement);
    }

    /** Flow that meets the filter [m3/s]. */
    public double filterFlow() {
        return flowRate - upstreamSample;
    }

    /** Sump volume freed per time of particles that the medium catches with an efficiency [1]: into the medium [m3/s]. */
    double capturedFlow(double efficiency) {
        return FiltrationRatio.efficiencyWithLeak(efficiency, bypassShare) * filterFlow();
    }

    /** The same into the samples [m3/s]. */
    double sampledFlow(double efficiency) {
        return upstreamSample + downstreamSample * (1 - FiltrationRatio.efficiencyWithLeak(efficiency, bypassShare));
    }

    /** The same by all ways together [m3/s]. */
    double clearedFlow(double efficiency) {
        return capturedFlow(efficiency) + sampledFlow(efficiency) + replacement;
    }
}

package org.coldpleat.model.coldstart;

/**
 * What was filtered and what was not over a stretch of time.
 *
 * @param seconds length of the stretch [s]
 * @param openSeconds time with any bypass valve open [s]
 * @param unfilteredVolume oil round the medium, leaks of shut valves included [m3]
 * @param filteredVolume oil through the medium [m3]
 * @param pumpedVolume delivered by the pump, relief flow included [m3]
 */
public record BypassTally(
        double seconds, double openSeconds, double unfilteredVolume, double filteredVolume, double pumpedVolume) {
    /** Both stretches together. */
    public BypassTally plus(BypassTally other) {
        return new BypassTally(
                seconds + other.seconds,
                openSeconds + other.openSeconds,
                unfilteredVolume + other.unfilteredVolume,
                filteredVolume + other.filteredVolume,
                pumpedVolume + other.pumpedVolume);
    }

    /** Share of the oil that reached the engine unfiltered [1]; 0 at no flow. */
    public double bypassShare() {
        double total = unfilteredVolume + filteredVolume;
        return total == 0 ? 0 : unfilteredVolume / total;
    }
}

package org.coldpleat.model.run;

import java.util.List;
import org.coldpleat.model.coldstart.StartUpResult;

/**
 * The start of one candidate.
 *
 * @param name name
 * @param hasValve true if any bypass valve acts
 * @param start computed start
 * @param openSeconds time with a bypass valve open [s], fill stage included
 * @param unfilteredVolume oil round the medium [m3], fill stage included
 * @param included paths of the unknowns in the bands, strongest first
 */
public record ColdStartCandidate(
        String name,
        boolean hasValve,
        StartUpResult start,
        StartBand openSeconds,
        StartBand unfilteredVolume,
        List<String> included) {
    public ColdStartCandidate {
        included = List.copyOf(included);
    }
}

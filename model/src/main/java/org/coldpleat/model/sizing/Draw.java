package org.coldpleat.model.sizing;

import java.util.Optional;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.change.DirtLoad;

/**
 * One draw of a candidate.
 *
 * @param design clean; empty if no filter can have the drawn values together
 * @param dirt standard uncertainties by which dirt blocks it faster than on the best estimate [1]
 */
record Draw(Optional<Design> design, double dirt) {
    /** The draw under a condition. */
    Optional<Design> under(Optional<DirtLoad> load) {
        return load.isEmpty()
                ? design
                : design.map(
                        one -> one.changed(change -> change.withLoad(load.get().moved(dirt))));
    }
}

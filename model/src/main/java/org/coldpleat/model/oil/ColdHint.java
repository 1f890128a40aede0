package org.coldpleat.model.oil;

import java.util.Objects;
import java.util.Optional;

/**
 * What is said of an oil beside its viscosities that tells its class.
 *
 * @param base stated base, if any
 * @param isMultigrade true if its grade has a winter and a hot half: such an oil has viscosity improver, whatever its base
 */
record ColdHint(Optional<OilBase> base, boolean isMultigrade) {
    /** Nothing said. */
    static final ColdHint NONE = new ColdHint(Optional.empty(), false);

    ColdHint {
        Objects.requireNonNull(base, "base");
    }

    /** True if the oil is said to be of a base and nothing says that it has viscosity improver. */
    boolean isStraight(OilBase stated) {
        return !isMultigrade && base.filter(stated::equals).isPresent();
    }
}

package org.coldpleat.model.medium;

import org.coldpleat.shared.source.Source;

/** Families of fibrous lubricating-oil media, with what is typical of each. Typical values never replace a reading. */
@Source("common practice, no source; header of fiber_families.csv")
public enum FiberFamily {
    /** Resin-treated cellulose paper. */
    CELLULOSE,
    /** Cellulose with synthetic fibers. */
    BLEND,
    /** Glass micro-fiber layer, with or without a backing. */
    GLASS_MICROFIBER;

    /** What is typical of the family. */
    public TypicalMedium typical() {
        return TypicalMedium.of(this);
    }
}

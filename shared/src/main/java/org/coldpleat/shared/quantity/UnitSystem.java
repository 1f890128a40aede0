package org.coldpleat.shared.quantity;

/** The family of units a result is printed in. */
public enum UnitSystem {
    /** Coherent SI units. */
    SI,
    /** Units of the metric trade: mm, °C, kPa, L/min. */
    METRIC,
    /** Units of the US trade: in, °F, psi, gpm. */
    US
}

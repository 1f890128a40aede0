package org.coldpleat.model.filter;

/** Parts of the filtered path in the order the oil meets them. */
public enum FilterPart {
    INLET_HOLES,
    ANTI_DRAIN_FLAP,
    CAN_ANNULUS,
    PLEAT_PACK,
    TUBE_OPENINGS,
    CENTER_TUBE,
    OUTLET_BORE
}

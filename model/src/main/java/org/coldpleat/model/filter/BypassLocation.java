package org.coldpleat.model.filter;

/** Where the bypass valve sits, and so which stretch of the filtered path it is parallel to. */
public enum BypassLocation {
    /** Thread end: parallel to annulus, pack, tube openings and center tube. */
    BASE,
    /** Far end: sees pack and tube openings there; its flow runs the whole annulus and center tube. */
    DOME,
    /** In the engine block or filter head: parallel to the whole filter. */
    BLOCK,
    /** No bypass valve. */
    NONE
}

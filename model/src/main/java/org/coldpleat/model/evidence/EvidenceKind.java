package org.coldpleat.model.evidence;

/** Kinds of knowledge about the resistance of a medium, strongest first. */
public enum EvidenceKind {
    /** Pressure drop against flow of oil on a bench. */
    FLOW_BENCH,
    /** Warm oil draining through the filter. */
    DRAIN_TEST,
    /** Air through a disc or an element. */
    AIR_TEST,
    /** A stated resistance. */
    STATED,
    /** A stated permeability and a thickness. */
    PERMEABILITY,
    /** Solidity and fiber diameter through permeability laws. */
    STRUCTURE,
    /** Largest pore from the first bubble. */
    BUBBLE_POINT,
    /** Typical range of the fiber family. */
    FAMILY;

    /** True for kinds that only give the order of size. */
    public boolean isWeak() {
        return this == BUBBLE_POINT || this == FAMILY;
    }
}

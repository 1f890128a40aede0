/**
 * What is not known, carried through to the answer: draws of the unknowns, propagation, sensitivity indices, the
 * measurement worth taking next, and first-order propagation as a cross-check. Knows no filter: it works on functions
 * from unknowns to answers. Random numbers come only from here, always from a stated seed.
 */
package org.coldpleat.model.confidence;

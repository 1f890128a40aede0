/**
 * What dirt does: blocking laws of the medium, dust sizes, capture by size, the sump balance, a virtual multi-pass test,
 * cleanliness codes, and the dirt state of an element along the pleat leg. How loading meets cold starts and engine
 * duty is decided outside; every class here is a law or an immutable state that can be stepped.
 */
package org.coldpleat.model.loading;

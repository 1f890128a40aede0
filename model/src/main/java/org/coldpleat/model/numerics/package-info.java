/**
 * The searches and curves that all other rooms share: one bracketed Newton iteration, one class for roots between two ends,
 * one for extrema, one monotone curve through points, one rounded corner, the normal distribution. They know numbers only:
 * every place and value has the unit of the caller. The integrator of a start brings its own root search, which its events
 * are bound to.
 */
package org.coldpleat.model.numerics;

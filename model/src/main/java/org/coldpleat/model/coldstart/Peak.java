package org.coldpleat.model.coldstart;

/**
 * Greatest value of a quantity over a start.
 *
 * @param value in the unit of the quantity
 * @param time when [s]
 */
public record Peak(double value, double time) {
    /** This peak or a later value, whichever is greater. */
    Peak or(double other, double at) {
        return other > value ? new Peak(other, at) : this;
    }
}

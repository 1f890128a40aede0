package org.coldpleat.shared.quantity;

/** Shape of the distribution that stands for what is not known about a value. */
public enum Spread {
    /** No spread stated: the value counts as exact. */
    NONE,
    /** Normal distribution; the half-width is one standard uncertainty. */
    NORMAL,
    /** Any value between two limits equally likely (JCGM 100:2008 4.3.7); the half-width is half the interval. */
    RECTANGULAR,
    /** Normal distribution of the logarithm; the half-width is the standard uncertainty of the natural logarithm. */
    LOG_NORMAL
}

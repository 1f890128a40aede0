package org.coldpleat.model.oil;

/** What an oil without viscosity improver is made from, as its maker says. */
public enum OilBase {
    /** Refined from crude oil. */
    MINERAL,
    /** Made to shape, such as polyalphaolefin or ester. */
    SYNTHETIC
}

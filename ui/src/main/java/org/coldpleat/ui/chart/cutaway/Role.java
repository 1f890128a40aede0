package org.coldpleat.ui.chart.cutaway;

/** What a piece of the drawing stands for. */
public enum Role {
    /** Sheet metal of the can. */
    CAN,
    /** Base plate and neck. */
    PLATE,
    /** Gasket and anti-drain flap. */
    RUBBER,
    /** End caps of the element. */
    END_CAP,
    /** Filter medium. */
    MEDIUM,
    /** Medium buried in glue or caps. */
    GLUE,
    /** Center tube. */
    TUBE,
    /** Hole or louver of the center tube. */
    TUBE_OPENING,
    /** Lid and spring of the bypass valve. */
    VALVE,
    /** Oil that stands in a room of the filter; its tone is its pressure. */
    OIL,
    /** Oil on its way through the medium; its tone is its pressure. */
    FILTERED_STREAM,
    /** Oil on its way round the medium. */
    BYPASS_STREAM
}

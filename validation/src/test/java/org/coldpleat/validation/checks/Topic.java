package org.coldpleat.validation.checks;

/** What a check is about; the page has one table for each. */
public enum Topic {
    OIL("Oil: viscosity, density, heat"),
    MEDIUM("Filter medium: fibers, mats, air bench"),
    PLEATS("Pleats and their channels"),
    OPENINGS("Valve, holes and passages"),
    CIRCUIT("Engine circuit and warm-up"),
    START("First seconds of a start"),
    LOADING("Dust, capture and loading"),
    CONFIDENCE("Uncertainty, statistics and fits"),
    WHOLE("The whole program");

    private final String title;

    Topic(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }
}

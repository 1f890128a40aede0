package org.coldpleat.shared.casefile;

import java.util.List;

/** Names of the states that an engine has of which a case gives the kind and no states. */
public final class TypicalStates {
    public static final String CRANKING = "cranking";
    public static final String COLD_IDLE = "cold idle";
    public static final String FAST_IDLE = "fast idle";
    public static final String DRIVING = "driving";

    private static final List<String> ALL = List.of(CRANKING, COLD_IDLE, FAST_IDLE, DRIVING);

    private TypicalStates() {}

    /** Names of the states of an engine section: its own, or the typical ones. */
    public static List<String> of(Section engine) {
        return engine.has("kind") && !engine.has("states")
                ? ALL
                : engine.sections("states").stream()
                        .flatMap(state -> state.text("name").stream())
                        .toList();
    }
}

package org.coldpleat.validation.speed;

import java.util.List;

/** Which compilers of the virtual machine a benchmark runs with. */
enum Compilers {
    /** The first alone, as the launcher starts the program. */
    C1(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC")),
    /** Both, as a virtual machine that is told nothing has them. */
    C2(List.of("-XX:+UseSerialGC"));

    private final List<String> arguments;

    Compilers(List<String> arguments) {
        this.arguments = arguments;
    }

    /** For the virtual machine. */
    List<String> arguments() {
        return arguments;
    }
}

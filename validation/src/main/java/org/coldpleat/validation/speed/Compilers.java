package org.coldpleat.validation.speed;

import java.util.List;

/** Which compilers of the virtual machine a benchmark runs with. */
enum Compilers {
    /** The first alone, as the launcher starts the program. */
    C1,
    /** Both, as a virtual machine that is told nothing has them. */
    C2;

    /** For the virtual machine. */
    List<String> arguments() {
        return switch (this) {
            case C1 -> List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");
            case C2 -> List.of("-XX:+UseSerialGC");
        };
    }
}

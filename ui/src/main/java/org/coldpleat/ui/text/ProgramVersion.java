package org.coldpleat.ui.text;

import java.util.Optional;

/** The version the program was built as, from the manifest of its jar. */
public final class ProgramVersion {
    private ProgramVersion() {}

    public static String text() {
        return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
                .orElse("development");
    }
}

package org.coldpleat.ui.text;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version the program was built as, from the manifest of its jar. */
public final class ProgramVersion implements IVersionProvider {
    public static String text() {
        return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
                .orElse("development");
    }

    @Override
    public String[] getVersion() {
        return new String[] {
            Texts.get("program.version", text(), Runtime.version().toString())
        };
    }
}

package org.coldpleat.ui.commandline;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version the program was built as, from the manifest of its jar. */
final class ProgramVersion implements IVersionProvider {
    static String text() {
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

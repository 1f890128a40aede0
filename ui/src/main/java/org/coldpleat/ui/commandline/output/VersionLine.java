package org.coldpleat.ui.commandline.output;

import org.coldpleat.ui.text.ProgramVersion;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints. */
public final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {
            Texts.get(
                    "program.version", ProgramVersion.text(), Runtime.version().toString())
        };
    }
}

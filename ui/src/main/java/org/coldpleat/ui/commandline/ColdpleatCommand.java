package org.coldpleat.ui.commandline;

import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program itself: without a command there is nothing to do. */
@Command(
        name = "coldpleat",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        versionProvider = VersionLine.class,
        synopsisSubcommandLabel = "COMMAND")
final class ColdpleatCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), Texts.get("error.noCommand"));
    }
}

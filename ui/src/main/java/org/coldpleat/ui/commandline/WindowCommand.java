package org.coldpleat.ui.commandline;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code window}: the same model behind a window. */
@Command(name = "window", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
final class WindowCommand implements Callable<Integer> {
    private final Predicate<Optional<Path>> window;

    @Parameters(paramLabel = "CASE", descriptionKey = "case", arity = "0..1")
    private Path file;

    WindowCommand(Predicate<Optional<Path>> window) {
        this.window = window;
    }

    @Override
    public Integer call() {
        if (!window.test(Optional.ofNullable(file))) {
            throw new Stop(ExitCode.FAILURE, Texts.get("error.noDisplay"));
        }
        return ExitCode.DONE;
    }
}

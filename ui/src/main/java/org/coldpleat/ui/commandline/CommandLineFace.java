package org.coldpleat.ui.commandline;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Runs one command line from its words to its exit code. */
public final class CommandLineFace {
    private static final int HELP_WIDTH = 100;

    private CommandLineFace() {}

    /**
     * Runs a command. Never throws for anything the user wrote.
     *
     * @param words the command line, without the program name
     * @param service door to the model
     * @param out for results, flushed before returning
     * @param err for messages, flushed before returning
     * @return exit code: 0 done, 1 failure of ours, 2 usage, 3 bad input, 4 no converged answer, or no value that meets a target
     */
    public static int run(List<String> words, CaseService service, PrintWriter out, PrintWriter err) {
        return run(words, service, out, err, file -> false);
    }

    /**
     * Runs a command, with a window at hand.
     *
     * @param window opens the window and returns when it is closed; false if there is no display
     */
    public static int run(
            List<String> words,
            CaseService service,
            PrintWriter out,
            PrintWriter err,
            Predicate<Optional<Path>> window) {
        Console console = new Console(out, err);
        CommandLine commands = commands(reached(words), new Commands(service, console, window));
        Interruption interruption = Interruption.tell(console);
        int code;
        try {
            code = commands.execute(words.toArray(String[]::new));
        } finally {
            interruption.over();
        }
        out.flush();
        err.flush();
        return code == ExitCode.DONE && console.isBroken() ? ExitCode.FAILURE : code;
    }

    /** The program with all its commands. */
    static CommandLine commands(CaseService service, Console console, Predicate<Optional<Path>> window) {
        return commands(Commands.NAMES, new Commands(service, console, window));
    }

    /** Names of the commands that words can lead to: to set up all of them takes longer than to run one. */
    private static List<String> reached(List<String> words) {
        if (words.equals(List.of("--version"))) {
            return List.of();
        }
        return words.isEmpty() || !Commands.NAMES.contains(words.get(0)) ? Commands.NAMES : List.of(words.get(0));
    }

    private static CommandLine commands(List<String> names, Commands all) {
        Console console = all.console();
        CommandLine commands = new CommandLine(new ColdpleatCommand());
        for (String name : names) {
            commands.addSubcommand(name, all.command(name));
        }
        return commands.setResourceBundle(Texts.bundle())
                .setOut(console.out())
                .setErr(console.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpWidth(HELP_WIDTH)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExpandAtFiles(false)
                .setParameterExceptionHandler((e, args) -> usage(console, e))
                .setExecutionExceptionHandler((e, command, parsed) -> failure(console, e));
    }

    private static int usage(Console console, ParameterException e) {
        console.message(Texts.get("error.usage", e.getMessage()));
        UnmatchedArgumentException.printSuggestions(e, console.err());
        console.message(
                Texts.get("error.help", e.getCommandLine().getCommandSpec().qualifiedName()));
        return ExitCode.USAGE;
    }

    /** An error of ours is told in one line; whoever wants to mend it sets {@code COLDPLEAT_TRACE} to see where. */
    private static int failure(Console console, Exception e) {
        if (e instanceof Stop stop) {
            console.message(Texts.get("error.stop", stop.getMessage()));
            return stop.exitCode();
        }
        console.message(Texts.get("error.internal", e));
        if (System.getenv("COLDPLEAT_TRACE") != null) {
            e.printStackTrace(console.err());
        }
        return ExitCode.FAILURE;
    }
}

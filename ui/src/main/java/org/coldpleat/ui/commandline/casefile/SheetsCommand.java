package org.coldpleat.ui.commandline.casefile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.casefile.writing.CaseWriter;
import org.coldpleat.shared.casefile.writing.SheetCsv;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.commandline.output.VersionLine;
import org.coldpleat.ui.text.Texts;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code sheets}: bench sheets from a table into a case, and out of a case into a table. */
@Command(name = "sheets", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
public final class SheetsCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    /** The command with its parts. */
    public static CommandLine of(Console console) {
        return new CommandLine(new SheetsCommand())
                .addSubcommand("import", new Import(console))
                .addSubcommand("export", new Export(console))
                .addSubcommand("template", new Template(console));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), Texts.get("error.noCommand"));
    }

    private static String text(Path file) {
        try {
            if (Files.size(file) > CaseReader.LARGEST_FILE) {
                throw new Stop(ExitCode.BAD_INPUT, Texts.get("sheets.tooLarge", file, CaseReader.LARGEST_FILE));
            }
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new Stop(ExitCode.BAD_INPUT, Texts.get("sheets.notRead", file, e));
        }
    }

    /** Writes to a file, or to standard output where none is named. */
    private static void put(Path file, String text, Console console) {
        if (file == null) {
            console.result(text);
            return;
        }
        write(file, text);
        console.message(Texts.get("plots.written", file));
    }

    private static void write(Path file, String text) {
        try {
            CaseWriter.write(file, text);
        } catch (IOException e) {
            throw new Stop(ExitCode.FAILURE, Texts.get("sheets.notWritten", file, e));
        }
    }

    /** {@code sheets import}: puts the filters of a table into a case. */
    @Command(name = "import", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
    static final class Import implements Callable<Integer> {
        private final Console console;

        @Parameters(paramLabel = "FILE", descriptionKey = "sheets.table")
        private Path table;

        @Option(names = "--into", paramLabel = "CASE", descriptionKey = "sheets.into", required = true)
        private Path into;

        @Option(names = "--replace", descriptionKey = "sheets.replace")
        private boolean replace;

        Import(Console console) {
            this.console = console;
        }

        @Override
        public Integer call() {
            SheetCsv.Reading reading = SheetCsv.read(table.toString(), text(table));
            CaseDraft.Opened opened = CaseDraft.open(into.toString(), text(into));
            stopAt(opened.setAside(), into);
            stopAt(reading.problems(), table);
            CaseDraft draft = opened.draft();
            List<String> names = draft.names("candidates");
            for (SheetCsv.Row row : reading.rows()) {
                if (!replace && names.contains(row.name())) {
                    throw new Stop(
                            ExitCode.BAD_INPUT, Texts.get("sheets.isThere", table, row.line(), row.name(), into));
                }
            }
            CaseDraft filled = SheetCsv.into(draft, reading.rows());
            write(into, filled.text());
            for (SheetCsv.Row row : reading.rows()) {
                int values = row.values().size() - 1;
                console.message(Texts.get(
                        names.contains(row.name()) ? "sheets.changed" : "sheets.added", row.name(), values, into));
            }
            return ExitCode.DONE;
        }

        private void stopAt(List<CaseProblem> problems, Path file) {
            problems.forEach(problem -> console.message(problem.text()));
            if (!problems.isEmpty()) {
                throw new Stop(ExitCode.BAD_INPUT, Texts.get("error.badCase", file, problems.size()));
            }
        }
    }

    /** {@code sheets export}: writes the filters of a case as a table. */
    @Command(name = "export", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
    static final class Export implements Callable<Integer> {
        private final Console console;

        @Parameters(paramLabel = "CASE", descriptionKey = "case")
        private Path file;

        @Option(names = "--out", paramLabel = "FILE", descriptionKey = "sheets.out")
        private Path out;

        Export(Console console) {
            this.console = console;
        }

        @Override
        public Integer call() {
            CaseDraft.Opened opened = CaseDraft.open(file.toString(), text(file));
            opened.setAside().forEach(problem -> console.message(problem.text()));
            if (!opened.setAside().isEmpty()) {
                throw new Stop(
                        ExitCode.BAD_INPUT,
                        Texts.get("error.badCase", file, opened.setAside().size()));
            }
            put(out, SheetCsv.write(opened.draft()), console);
            return ExitCode.DONE;
        }
    }

    /** {@code sheets template}: writes a table to be filled in. */
    @Command(name = "template", mixinStandardHelpOptions = true, versionProvider = VersionLine.class)
    static final class Template implements Callable<Integer> {
        private final Console console;

        @Option(names = "--out", paramLabel = "FILE", descriptionKey = "sheets.out")
        private Path out;

        Template(Console console) {
            this.console = console;
        }

        @Override
        public Integer call() {
            put(out, SheetCsv.template(), console);
            return ExitCode.DONE;
        }
    }
}

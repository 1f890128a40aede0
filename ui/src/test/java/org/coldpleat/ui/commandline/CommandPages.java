package org.coldpleat.ui.commandline;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.coldpleat.ui.commandline.output.Console;
import org.coldpleat.ui.service.CaseService;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Writes what a shell and a reader of manuals want to know of the commands. Run by the profile {@code dist}. */
final class CommandPages {
    private CommandPages() {}

    /**
     * Writes {@code completion/coldpleat} for bash and zsh and a manual page of each command, as text for Asciidoctor,
     * into {@code manual}.
     *
     * @param words the folder, and the version of the program
     */
    public static void main(String[] words) throws IOException {
        Path folder = Path.of(words[0]);
        Path completion = Files.createDirectories(folder.resolve("completion")).resolve("coldpleat");
        Files.writeString(completion, completion(), StandardCharsets.UTF_8);
        manual(Files.createDirectories(folder.resolve("manual")), words[1]);
    }

    /** The script that completes a command line. */
    static String completion() {
        return AutoComplete.bash("coldpleat", commands());
    }

    /** Writes one page for the program and one for each command. */
    static void manual(Path folder, String version) throws IOException {
        List<CommandSpec> all = new ArrayList<>();
        collect(commands(), all);
        ManPageGenerator.generateManPage(folder.toFile(), null, new boolean[0], false, all.toArray(CommandSpec[]::new));
        for (CommandSpec one : all) {
            Path page = folder.resolve(one.qualifiedName("-") + ".adoc");
            Files.writeString(page, mended(Files.readString(page), version));
        }
    }

    /** The version built, not that of the builder; and a line of its own for what has one in the help text. */
    private static String mended(String page, String version) {
        return page.replaceAll("(?m)^:(revnumber|mansource): .*$", ":$1: Coldpleat " + version)
                .replaceAll("\n {2}(?=[a-z])", " +\n");
    }

    private static void collect(CommandLine command, List<CommandSpec> all) {
        all.add(command.getCommandSpec());
        command.getSubcommands().values().forEach(below -> collect(below, all));
    }

    private static CommandLine commands() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        return CommandLineFace.commands(CaseService.standard(), new Console(nowhere, nowhere), file -> false);
    }
}

package org.coldpleat.ui.commandline;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.coldpleat.ui.service.CaseService;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs every command that a page shows and compares what it prints with what the page says, so that no page rots. After a
 * wanted change {@code -Dcoldpleat.writeReference=true} writes the outputs anew. Files that a command makes stand in the
 * folder {@code made} on the page, in a temporary one here.
 */
class DocumentedCommandsTest {
    private static final Path ROOT = Path.of("..");
    private static final String MADE = "made";
    /** What the built program says of itself where one run from its classes has no version. */
    private static final String BUILT = "coldpleat 0.1.0-SNAPSHOT ";

    private static final Pattern FULL_LENGTH = Pattern.compile("\\d+\\.\\d{7,}(?:E-?\\d+)?");

    @Test
    void everyCommandPrintsWhatTheQuestionsSay(@TempDir Path made) throws IOException {
        compare("docs/questions.md", made);
    }

    @Test
    @Tag("nightly")
    void everyCommandPrintsWhatTheGuideSays(@TempDir Path made) throws IOException {
        compare("docs/guide.md", made);
    }

    private static void compare(String name, Path made) throws IOException {
        Path page = ROOT.resolve(name);
        List<ConsoleBlock> blocks = ConsoleBlock.of(Files.readString(page));
        assertTrue(blocks.size() > 5, "commands found: " + blocks.size());
        List<String> wanted = new ArrayList<>();
        for (ConsoleBlock block : blocks) {
            wanted.add(block.shown(run(block, made)));
        }
        if (Boolean.getBoolean("coldpleat.writeReference")) {
            Files.writeString(page, ConsoleBlock.rewritten(Files.readString(page), wanted));
            return;
        }
        assertAll(IntStream.range(0, blocks.size())
                .mapToObj(i -> () -> assertEquals(
                        sixDigits(wanted.get(i)),
                        sixDigits(blocks.get(i).output()),
                        name + " does not show what this prints: "
                                + blocks.get(i).command()
                                + "; read it, then write the page anew with mvn -pl ui -am test"
                                + " -Dtest=DocumentedCommandsTest -Dsurefire.failIfNoSpecifiedTests=false"
                                + " -DargLine=-Dcoldpleat.writeReference=true, and -Pnightly for the guide")));
    }

    @Test
    void caseTypedFromTheGuideIsItsFinishedCase() throws IOException {
        String typed = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(ROOT.resolve("docs/guide.md")))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.joining());
        assertEquals(Files.readString(ROOT.resolve("docs/guide/three-filters.yaml")), typed);
    }

    /** Numbers of full length to six digits: their last ones differ from machine to machine. */
    private static String sixDigits(String text) {
        return FULL_LENGTH
                .matcher(text)
                .replaceAll(found -> String.format(Locale.ROOT, "%.6g", Double.parseDouble(found.group())));
    }

    private static String run(ConsoleBlock block, Path made) {
        List<String> here = block.command().stream()
                .map(word -> word.startsWith("docs/") || word.startsWith("demo-cases/") ? "../" + word : word)
                .map(word ->
                        word.equals(MADE) || word.startsWith(MADE + "/") ? made + word.substring(MADE.length()) : word)
                .toList();
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = CommandLineFace.run(here, CaseService.standard(), new PrintWriter(out), new PrintWriter(err));
        assertEquals(block.exit(), exit, block.command() + "\n" + err);
        return (out.toString() + err)
                .replace("coldpleat development ", BUILT)
                .replace("../docs/", "docs/")
                .replace("../demo-cases/", "demo-cases/")
                .replace(made.toString(), MADE)
                .replace('\\', '/');
    }
}

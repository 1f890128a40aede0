package org.coldpleat.validation.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.openjdk.jmh.runner.RunnerException;

/** Measures what the template of the page asks for, and writes {@code docs/speed.md}. */
final class SpeedPage {
    /** How a name of a command begins. */
    static final String COMMAND = "./coldpleat ";

    private SpeedPage() {}

    /** Run from the folder of the checkout, with an {@link Effort} as the argument. */
    public static void main(String[] arguments) throws IOException, InterruptedException, RunnerException {
        Effort effort = Effort.valueOf(arguments[0].toUpperCase(Locale.ROOT));
        SpeedTemplate template = SpeedTemplate.ofPage();
        Set<String> names = template.names();
        Predicate<String> command = name -> name.startsWith(COMMAND);
        Map<String, Figure> figures = new HashMap<>(BenchmarkRun.of(only(names, command.negate()), effort));
        figures.putAll(CommandRun.of(only(names, command), effort));
        Files.writeString(effort.folder.resolve("speed.md"), template.filled(figures, machine(), effort.words()));
    }

    private static List<String> only(Set<String> names, Predicate<String> which) {
        return names.stream().filter(which).toList();
    }

    private static String machine() {
        return "%d cores, Java %s (%s)"
                .formatted(
                        Runtime.getRuntime().availableProcessors(),
                        Runtime.version().feature(),
                        System.getProperty("os.name"));
    }
}

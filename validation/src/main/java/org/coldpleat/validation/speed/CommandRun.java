package org.coldpleat.validation.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Runs commands of the program as a shell would, each in a virtual machine of its own. */
final class CommandRun {
    private static final String CASE = "demo-cases/ridge-hut-generator/case.yaml";

    private CommandRun() {}

    /**
     * Times of command lines by the lines themselves. In these, {@code CASE} is a demo case and {@code OUT} a folder that is
     * deleted afterwards.
     */
    static Map<String, Figure> of(Collection<String> lines, Effort effort) throws IOException, InterruptedException {
        Map<String, Figure> figures = new HashMap<>();
        Path out = Files.createTempDirectory("coldpleat-speed");
        try {
            for (String line : lines) {
                List<String> words = Arrays.stream(line.split(" ", -1))
                        .map(word -> word.replace("CASE", CASE).replace("OUT", out.toString()))
                        .toList();
                // the first finds files in memory, and builds the program if it is stale
                seconds(words);
                double[] seconds = new double[effort.runsOfCommand];
                for (int i = 0; i < seconds.length; i++) {
                    seconds[i] = seconds(words);
                }
                Arrays.sort(seconds);
                figures.put(line, Figure.ofTime(seconds[seconds.length / 2]));
            }
        } finally {
            delete(out);
        }
        return figures;
    }

    private static double seconds(List<String> words) throws IOException, InterruptedException {
        long start = System.nanoTime();
        int code = new ProcessBuilder(words)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        double seconds = (System.nanoTime() - start) * 1e-9;
        if (code != 0) {
            throw new IllegalStateException(String.join(" ", words) + " ended with " + code);
        }
        return seconds;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
    }
}

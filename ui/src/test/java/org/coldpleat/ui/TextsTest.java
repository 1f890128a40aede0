package org.coldpleat.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every text that the sources ask for exists, every text that exists is asked for, and none says what we never say. */
class TextsTest {
    private static final Path ROOT = root();
    private static final List<String> MODULES = List.of("shared", "model", "ui");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern CONSTANT = Pattern.compile("(?m)^\\s+([A-Z][A-Z_]+)(?=[,;(]|$)");
    private static final Pattern PREFIX = Pattern.compile("[a-z][A-Za-z]*\\.");

    /** Words that no text may hold, with the reason. */
    private static final List<Pattern> NEVER = List.of(
            // nothing can be promised on the strength of a model
            Pattern.compile("\\bsafe(ly|ty)?\\b", Pattern.CASE_INSENSITIVE),
            Pattern.compile("\\bguarantee", Pattern.CASE_INSENSITIVE),
            // one spelling in the whole program
            Pattern.compile("\\bby-pass", Pattern.CASE_INSENSITIVE),
            Pattern.compile("colour|fibre|behaviour|centre\\b|litre|metre\\b", Pattern.CASE_INSENSITIVE),
            // a text is a sentence for a reader
            Pattern.compile("\\b(TODO|FIXME|XXX)\\b"));

    private static Path root() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.exists(at.resolve("DEVELOPERS.md"))) {
            at = at.getParent();
        }
        return at;
    }

    private static List<Path> files(String under, String ending) {
        List<Path> found = new ArrayList<>();
        for (String module : MODULES) {
            Path folder = ROOT.resolve(module).resolve(under);
            if (Files.isDirectory(folder)) {
                try (Stream<Path> all = Files.walk(folder)) {
                    all.filter(file -> file.toString().endsWith(ending))
                            .sorted()
                            .forEach(found::add);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
        return found;
    }

    static List<Path> bundles() {
        return files("src/main/resources", ".properties");
    }

    private static Properties read(Path bundle) {
        Properties texts = new Properties();
        try (Reader in = Files.newBufferedReader(bundle)) {
            texts.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    /** All string literals and enum constants of the sources, where a key can come from. */
    private static Set<String> words() {
        Set<String> words = new TreeSet<>();
        for (Path file : files("src/main/java", ".java")) {
            try {
                String source = Files.readString(file);
                Matcher literal = LITERAL.matcher(source);
                while (literal.find()) {
                    words.add(literal.group(1));
                }
                Matcher constant = CONSTANT.matcher(source);
                while (constant.find()) {
                    words.add(constant.group(1));
                    words.add(constant.group(1).toLowerCase(Locale.ROOT));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        words.addAll(tableWords());
        return words;
    }

    /** Cells of the tables in the resources: names of constants and codes that the sources read from there. */
    private static Set<String> tableWords() {
        Set<String> words = new TreeSet<>();
        for (Path table : files("src/main/resources", ".csv")) {
            try {
                for (String cell : Files.readString(table).split("[,;\\s]+", -1)) {
                    words.add(cell);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return words;
    }

    private static final Set<String> TABLE_WORDS = tableWords();
    private static final Set<String> WORDS = words();

    /** Heads of keys that a face joins with a code of the model whose pieces are not in one place. */
    private static final List<String> JOINED = List.of("bench.correction.");

    /** A key is asked for if it is a literal, or can be put together from literals and names of constants. */
    private static boolean isAskedFor(String key) {
        boolean help = key.contains(".usage.");
        boolean joined =
                JOINED.stream().anyMatch(head -> key.startsWith(head) && WORDS.contains(key.substring(head.length())));
        return help || joined || isField(key) || WORDS.contains(key) || isMadeOfWords(key);
    }

    /** Words of fields have the end of a path of the catalog as their key; those of choices what is chosen. */
    private static boolean isField(String key) {
        return Stream.of(key.split("\\.", -1)).allMatch(step -> step.equals("choice") || CATALOG.contains(step));
    }

    private static Set<String> catalog() {
        Set<String> words = new TreeSet<>(Set.of("true", "false"));
        for (Path schema : files("src/main/resources", "case-v1.schema.json")) {
            try {
                Matcher literal = LITERAL.matcher(Files.readString(schema));
                while (literal.find()) {
                    words.add(literal.group(1));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return words;
    }

    private static final Set<String> CATALOG = catalog();

    private static boolean isMadeOfWords(String key) {
        boolean[] reached = new boolean[key.length() + 1];
        reached[0] = true;
        for (int end = 1; end <= key.length(); end++) {
            for (int start = 0; start < end && !reached[end]; start++) {
                boolean longEnough = end - start >= SHORTEST_PIECE || key.charAt(start) == '.';
                reached[end] = reached[start] && longEnough && WORDS.contains(key.substring(start, end));
            }
        }
        return reached[key.length()];
    }

    private static final int SHORTEST_PIECE = 4;

    @Test
    void sourcesAndBundlesAreFound() {
        assertTrue(WORDS.size() > 300, "literals: " + WORDS.size());
        assertTrue(bundles().size() >= 3, bundles().toString());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void noTextIsDead(Path bundle) {
        List<String> dead = read(bundle).stringPropertyNames().stream()
                .filter(key -> !isAskedFor(key))
                .sorted()
                .toList();
        assertEquals(List.of(), dead, "in " + bundle.getFileName());
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void noKeyStandsTwiceInABundle(Path bundle) throws IOException {
        Set<String> seen = new HashSet<>();
        List<String> twice = Files.readAllLines(bundle).stream()
                .filter(line -> line.matches("[\\w.#-]+ ?=.*"))
                .map(line -> line.replaceFirst(" ?=.*", ""))
                .filter(key -> !seen.add(key))
                .toList();
        assertEquals(List.of(), twice, "in " + bundle.getFileName());
    }

    @Test
    void everyCodeInTheSourcesHasAText() {
        Set<String> known = bundles().stream()
                .flatMap(bundle -> read(bundle).stringPropertyNames().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> families = bundles().stream()
                .filter(bundle -> !bundle.endsWith("fields.properties"))
                .flatMap(bundle -> read(bundle).stringPropertyNames().stream())
                .filter(key -> key.contains("."))
                .map(key -> key.substring(0, key.indexOf('.') + 1))
                .collect(Collectors.toSet());
        List<String> missing = WORDS.stream()
                .filter(word -> word.matches("[a-z][A-Za-z0-9]*(\\.[A-Za-z0-9]+)+"))
                .filter(word -> families.contains(word.substring(0, word.indexOf('.') + 1)))
                .filter(word -> !word.matches(".*\\.(csv|json|properties|yaml|svg|png|css|txt|html)"))
                .filter(word -> !known.contains(word))
                .filter(word -> known.stream().noneMatch(key -> key.startsWith(word)))
                .filter(word -> !isPathOfACase(word) && !TABLE_WORDS.contains(word))
                .toList();
        assertEquals(List.of(), missing);
    }

    /** Field paths of a case look like keys of texts. */
    private static boolean isPathOfACase(String word) {
        return PATHS.stream().anyMatch(word::startsWith);
    }

    private static final List<String> PATHS = List.of(
            "temperatures.",
            "oil.points",
            "bypass.position",
            "medium.family",
            "engine.crankshaft",
            "engine.cylinders",
            "engine.fuel",
            "engine.gallery",
            "engine.oilFill",
            "engine.reliefValves",
            "engine.pump",
            "start.thermal",
            "start.oilInCan",
            "start.domeFlush");

    @ParameterizedTest
    @MethodSource("bundles")
    void textsAreWhatWeSay(Path bundle) {
        read(bundle).forEach((key, value) -> {
            String text = value.toString();
            for (Pattern word : NEVER) {
                assertFalse(word.matcher(text).find(), bundle.getFileName() + " " + key + ": " + text);
            }
            assertFalse(text.isBlank(), key + " is blank");
            assertFalse(PREFIX.matcher(text).matches(), key + " is a key, not a text");
            assertEquals(
                    text.chars().filter(c -> c == '{').count(),
                    text.chars().filter(c -> c == '}').count(),
                    key + " has an open brace");
            assertFalse(text.toLowerCase(Locale.ROOT).contains("lorem"), key.toString());
        });
    }
}

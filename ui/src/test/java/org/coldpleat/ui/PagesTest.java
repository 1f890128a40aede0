package org.coldpleat.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Keeps what the pages of the documentation point at in existence: test classes, pages and pictures. */
class PagesTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern TEST_CLASS = Pattern.compile("`([A-Z]\\w+Test)\\b");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)\\)");

    @Test
    void everyTestThatAPageNamesExists() throws IOException {
        Set<String> missing = new TreeSet<>();
        Set<String> classes = testClasses();
        for (Path page : pages()) {
            found(TEST_CLASS, page).stream()
                    .filter(name -> !classes.contains(name))
                    .forEach(name -> missing.add(page + ": " + name));
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        Set<String> missing = new TreeSet<>();
        for (Path page : pages()) {
            found(LINK, page).stream()
                    .filter(target -> !Files.exists(page.resolveSibling(target)))
                    .forEach(target -> missing.add(page + ": " + target));
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyPictureIsShownOnAPage() throws IOException {
        Set<Path> shown = new TreeSet<>();
        for (Path page : pages()) {
            found(LINK, page)
                    .forEach(target -> shown.add(page.resolveSibling(target).normalize()));
        }
        Set<Path> missing = new TreeSet<>();
        try (Stream<Path> pictures = Files.walk(ROOT.resolve("docs/pictures"))) {
            pictures.filter(Files::isRegularFile)
                    .map(Path::normalize)
                    .filter(picture -> !shown.contains(picture))
                    .forEach(missing::add);
        }
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyPageStandsInTheTableOfContents() throws IOException {
        Path contents = ROOT.resolve("docs/README.md");
        Set<Path> listed = found(LINK, contents).stream()
                .map(target -> contents.resolveSibling(target).normalize())
                .collect(Collectors.toSet());
        Set<Path> missing = new TreeSet<>();
        for (Path page : pages()) {
            Path parent = page.normalize().getParent();
            if (page.startsWith(ROOT.resolve("docs"))
                    && !page.equals(contents)
                    && !listed.contains(page.normalize())
                    && !listed.contains(parent)) {
                missing.add(page);
            }
        }
        assertEquals(Set.of(), missing);
    }

    private static List<String> found(Pattern pattern, Path page) throws IOException {
        return pattern.matcher(Files.readString(page))
                .results()
                .map((MatchResult result) -> result.group(1))
                .distinct()
                .toList();
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"));
                Stream<Path> top = Files.list(ROOT)) {
            List<Path> pages = Stream.concat(docs, top)
                    .filter(path -> path.toString().endsWith(".md"))
                    .sorted()
                    .toList();
            assertTrue(pages.size() > 10, "pages found: " + pages.size());
            return pages;
        }
    }

    private static Set<String> testClasses() throws IOException {
        Set<String> names = new TreeSet<>();
        for (String module : List.of("shared", "model", "ui", "validation")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
                files.map(path -> path.getFileName().toString())
                        .filter(name -> name.endsWith("Test.java"))
                        .forEach(name -> names.add(name.replace(".java", "")));
            }
        }
        return names;
    }
}

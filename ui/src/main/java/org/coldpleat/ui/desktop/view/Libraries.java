package org.coldpleat.ui.desktop.view;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The libraries that the program was built with, by the license that each states; the build writes the list. */
final class Libraries {
    private static final String LIST = "libraries.txt";
    private static final Pattern LICENSE = Pattern.compile(" {4}(\\S.*):");
    private static final Pattern LIBRARY = Pattern.compile(" +\\* .*\\([^:()]+:([^: ]+):([^: ]+) - .*\\)");

    private Libraries() {}

    /** Names with their versions, by license, in alphabetical order. */
    static SortedMap<String, SortedSet<String>> byLicense() {
        return byLicense(lines());
    }

    /** One paragraph a license. */
    static String words() {
        return byLicense().entrySet().stream()
                .map(license -> license.getKey() + ": " + String.join(", ", license.getValue()))
                .collect(Collectors.joining("\n\n"));
    }

    private static SortedMap<String, SortedSet<String>> byLicense(List<String> lines) {
        SortedMap<String, SortedSet<String>> found = new TreeMap<>();
        String license = "";
        for (String line : lines) {
            Matcher heading = LICENSE.matcher(line);
            Matcher library = LIBRARY.matcher(line);
            if (heading.matches()) {
                license = heading.group(1);
            } else if (library.matches()) {
                found.computeIfAbsent(license, key -> new TreeSet<>()).add(library.group(1) + " " + library.group(2));
            }
        }
        return found;
    }

    private static List<String> lines() {
        try (InputStream in = Libraries.class.getResourceAsStream(LIST)) {
            if (in == null) {
                throw new IllegalStateException(LIST + " is missing; build with Maven, which writes it");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

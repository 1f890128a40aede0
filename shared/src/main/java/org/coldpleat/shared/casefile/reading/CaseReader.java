package org.coldpleat.shared.casefile.reading;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.FileProblems;
import org.coldpleat.shared.casefile.LoggedTemperature;
import org.coldpleat.shared.casefile.Place;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.Tree;
import org.coldpleat.shared.casefile.Tree.Keys;
import org.coldpleat.shared.casefile.Tree.Pair;
import org.coldpleat.shared.casefile.Tree.Scalar;
import org.coldpleat.shared.casefile.catalog.CaseSchema;
import org.coldpleat.shared.casefile.checks.CaseChecks;
import org.coldpleat.shared.casefile.text.FileText;
import org.coldpleat.shared.casefile.text.TreeBuilder;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/** Reads case files. Bad content never throws: all problems of a file come back together, in file order. */
public final class CaseReader {
    /** Largest file that is read [byte]. */
    public static final int LARGEST_FILE = 2_000_000;

    private static final String VERSION = "1";

    private CaseReader() {}

    /** Reads a file. */
    public static CaseReading read(Path path) {
        String file = path.toString();
        FileProblems problems = new FileProblems(file);
        try {
            if (Files.isDirectory(path)) {
                problems.add(0, 0, "file.isDirectory");
                return CaseReading.of(problems);
            }
            if (Files.size(path) > LARGEST_FILE) {
                problems.add(0, 0, "file.tooLarge", Files.size(path) + "", LARGEST_FILE + "");
                return CaseReading.of(problems);
            }
            Optional<String> text = FileText.decode(Files.readAllBytes(path), problems);
            return text.isPresent() ? read(file, text.get()) : CaseReading.of(problems);
        } catch (NoSuchFileException e) {
            problems.add(0, 0, "file.missing");
        } catch (AccessDeniedException e) {
            problems.add(0, 0, "file.notReadable", "");
        } catch (IOException e) {
            problems.add(0, 0, "file.notReadable", String.valueOf(e.getMessage()));
        }
        return CaseReading.of(problems);
    }

    /**
     * Reads a text.
     *
     * @param fileName name to use in messages
     * @param text the content of a case file
     */
    public static CaseReading read(String fileName, String text) {
        FileProblems problems = new FileProblems(fileName);
        String body = text.startsWith("\ufeff") ? text.substring(1) : text;
        if (body.length() > LARGEST_FILE) {
            problems.add(0, 0, "file.tooLarge", body.length() + "", LARGEST_FILE + "");
            return CaseReading.of(problems);
        }
        FileText.check(body, problems);
        if (!problems.isEmpty()) {
            return CaseReading.of(problems);
        }
        Optional<Tree> tree = TreeBuilder.build(body, problems);
        return problems.isEmpty() ? read(fileName, body, tree, Optional.empty()) : CaseReading.of(problems);
    }

    /**
     * Reads a draft, whose text was taken apart when it was written. What comes of it is what {@link #read(String,
     * String)} makes of its text.
     *
     * @param fileName name to use in messages
     * @param before the draft as it was read before its last change; empty for none
     */
    public static CaseReading read(String fileName, CaseDraft draft, Optional<CaseDocument> before) {
        return draft.body().length() > LARGEST_FILE
                ? read(fileName, draft.text())
                : read(fileName, draft.body(), draft.root(), before.map(CaseDocument::root));
    }

    private static CaseReading read(String fileName, String body, Optional<Tree> tree, Optional<Section> before) {
        FileProblems problems = new FileProblems(fileName);
        if (tree.isEmpty() || (tree.get() instanceof Scalar scalar && scalar.isBlank())) {
            problems.add(0, 0, "file.empty");
            return CaseReading.of(problems);
        }
        if (!(tree.get() instanceof Keys keys)) {
            problems.add(tree.get().line(), tree.get().column(), "file.noKeys");
            return CaseReading.of(problems);
        }
        if (!checkVersion(keys, problems)) {
            return CaseReading.of(problems);
        }
        Section root = new CaseWalker(problems).section(keys, CaseSchema.ROOT, Place.ROOT, Provenance.MEASURED, before);
        CaseChecks checks = new CaseChecks(problems);
        checks.check(root);
        List<LoggedTemperature> trace = startTrace(root, fileName, problems, checks);
        return problems.isEmpty()
                ? CaseReading.of(new CaseDocument(fileName, digest(body + inFile(root, trace)), root, trace))
                : CaseReading.of(problems);
    }

    /** The logged temperatures of a start; as far as they were understood. */
    private static List<LoggedTemperature> startTrace(
            Section root, String file, FileProblems problems, CaseChecks checks) {
        Optional<Section> trace = root.section("start").flatMap(start -> start.section("trace"));
        if (trace.isEmpty()) {
            return List.of();
        }
        if (trace.get().text("file").isPresent()) {
            return TraceFile.read(trace.get(), file, problems, checks);
        }
        List<LoggedTemperature> readings = new ArrayList<>();
        for (Section point : trace.get().sections("points")) {
            Optional<Measured> time = point.quantity("time");
            Optional<Measured> temperature = point.quantity("temperature");
            if (time.isPresent() && temperature.isPresent()) {
                readings.add(new LoggedTemperature(
                        time.get().value(), temperature.get().value()));
            }
        }
        return readings;
    }

    /** False if the file is of a version whose other fields cannot be judged. */
    private static boolean checkVersion(Keys keys, FileProblems problems) {
        for (Pair pair : keys.pairs()) {
            if (!pair.key().text().equals("formatVersion")) {
                continue;
            }
            Place place = Place.ROOT.key("formatVersion");
            String found = pair.value() instanceof Scalar scalar ? scalar.text().strip() : "";
            if (found.equals(VERSION)) {
                return true;
            }
            boolean newer = found.matches("[0-9]{1,9}") && Integer.parseInt(found) > 1;
            String code = newer ? "version.newer" : "version.unknown";
            problems.add(place, pair.value().line(), pair.value().column(), code, FileProblems.cut(found), VERSION);
            return !newer;
        }
        return true;
    }

    /** Readings that stand in a file of their own, so that the digest tells one log from another; else nothing. */
    private static String inFile(Section root, List<LoggedTemperature> trace) {
        boolean apart = root.section("start")
                .flatMap(start -> start.section("trace"))
                .flatMap(one -> one.text("file"))
                .isPresent();
        StringBuilder text = new StringBuilder();
        if (apart) {
            trace.forEach(
                    one -> text.append('\n').append(one.time()).append(' ').append(one.temperature()));
        }
        return text.toString();
    }

    private static String digest(String text) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

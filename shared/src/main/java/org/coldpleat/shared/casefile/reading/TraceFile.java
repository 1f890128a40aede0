package org.coldpleat.shared.casefile.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.casefile.FileProblems;
import org.coldpleat.shared.casefile.LoggedTemperature;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.checks.CaseChecks;
import org.coldpleat.shared.casefile.text.FileText;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.Units;

/** Reads a table of logged oil temperatures: a header with units, one row for each reading, remarks behind #. */
final class TraceFile {
    /** Most readings taken; a day at one reading each second. */
    private static final int MOST = 86_400;

    private static final int COLUMNS = 2;
    private static final Pattern HEADER = Pattern.compile("\\s*\"?([A-Za-z]+)[\\s_]*[\\[(]?([^\\])\"]+)[\\])]?\"?\\s*");

    private final FileProblems problems;
    private final int timeColumn;
    private final Unit time;
    private final Unit temperature;
    private final String separator;

    private TraceFile(FileProblems problems, int timeColumn, Unit time, Unit temperature, String separator) {
        this.problems = problems;
        this.timeColumn = timeColumn;
        this.time = time;
        this.temperature = temperature;
        this.separator = separator;
    }

    /** The readings of the file a trace names; none with a problem noted if they cannot be had. */
    static List<LoggedTemperature> read(Section trace, String caseFile, FileProblems problems, CaseChecks checks) {
        String name = trace.text("file").orElseThrow();
        Path path;
        try {
            Path beside = Path.of(caseFile).toAbsolutePath().getParent();
            path = beside == null ? Path.of(name) : beside.resolve(name);
        } catch (InvalidPathException e) {
            checks.atKey(trace, "file", "trace.fileMissing", name);
            return List.of();
        }
        if (!Files.isRegularFile(path)) {
            checks.atKey(trace, "file", "trace.fileMissing", name);
            return List.of();
        }
        FileProblems inside = new FileProblems(path.normalize().toString());
        List<LoggedTemperature> readings = List.of();
        try {
            if (Files.size(path) > CaseReader.LARGEST_FILE) {
                checks.atKey(trace, "file", "trace.tooLong", name, MOST + "");
            } else {
                Optional<String> text = FileText.decode(Files.readAllBytes(path), inside);
                readings = text.isPresent() ? rows(text.get(), inside) : List.of();
            }
        } catch (IOException e) {
            checks.atKey(trace, "file", "trace.fileMissing", name);
        }
        problems.addAll(inside);
        return readings;
    }

    private static List<LoggedTemperature> rows(String text, FileProblems problems) {
        String[] lines = text.replaceFirst("^\ufeff", "").split("\\R", -1);
        List<LoggedTemperature> readings = new ArrayList<>();
        Optional<TraceFile> table = Optional.empty();
        boolean headed = false;
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].isBlank() || lines[i].startsWith("#")) {
                continue;
            }
            if (!headed) {
                headed = true;
                table = header(lines[i], i + 1, problems);
            } else if (table.isPresent()) {
                table.get().row(lines[i], i + 1, readings);
            }
        }
        if (table.isPresent() && problems.isEmpty() && readings.size() < 2) {
            problems.add(0, 0, "trace.tooFew", readings.size() + "");
        } else if (!headed) {
            problems.add(0, 0, "trace.tooFew", "0");
        }
        if (readings.size() > MOST) {
            problems.add(0, 0, "trace.tooLong", readings.size() + "", MOST + "");
        }
        return readings;
    }

    private static Optional<TraceFile> header(String line, int at, FileProblems problems) {
        String separator = line.contains(";") ? ";" : ",";
        String[] names = line.split(separator, -1);
        int timeColumn = -1;
        Optional<Unit> time = Optional.empty();
        Optional<Unit> temperature = Optional.empty();
        for (int i = 0; i < names.length; i++) {
            Matcher matcher = HEADER.matcher(names[i]);
            if (matcher.matches() && matcher.group(1).equals("time")) {
                timeColumn = i;
                time = Units.find(Kind.DURATION, matcher.group(2));
            } else if (matcher.matches() && matcher.group(1).equals("temperature")) {
                temperature = Units.find(Kind.TEMPERATURE, matcher.group(2));
            }
        }
        if (names.length != COLUMNS || time.isEmpty() || temperature.isEmpty()) {
            problems.add(at, 0, "trace.header", FileProblems.cut(line));
            return Optional.empty();
        }
        return Optional.of(new TraceFile(problems, timeColumn, time.get(), temperature.get(), separator));
    }

    private void row(String line, int at, List<LoggedTemperature> readings) {
        String[] cells = line.split(separator, -1);
        try {
            if (cells.length != COLUMNS) {
                throw new NumberFormatException("columns");
            }
            double seconds = time.toSi(number(cells[timeColumn]));
            double kelvin = temperature.toSi(number(cells[1 - timeColumn]));
            if (!(seconds >= 0) || !(kelvin > 0)) {
                problems.add(at, 0, "trace.belowZero", FileProblems.cut(line));
            } else if (!readings.isEmpty()
                    && seconds <= readings.get(readings.size() - 1).time()) {
                problems.add(at, 0, "trace.timeFalls", FileProblems.cut(line));
            } else {
                readings.add(new LoggedTemperature(seconds, kelvin));
            }
        } catch (NumberFormatException e) {
            problems.add(at, 0, "trace.row", FileProblems.cut(line));
        }
    }

    private double number(String cell) {
        String text = cell.strip();
        double value = Double.parseDouble(separator.equals(";") ? text.replace(',', '.') : text);
        if (!Double.isFinite(value)) {
            throw new NumberFormatException(cell);
        }
        return value;
    }
}

package org.coldpleat.shared.casefile.writing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.FileProblems;
import org.coldpleat.shared.casefile.Place;
import org.coldpleat.shared.casefile.catalog.SheetColumns;
import org.coldpleat.shared.quantity.QuantityProblem;
import org.coldpleat.shared.quantity.QuantityReading;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.table.CsvReader;
import org.coldpleat.shared.table.CsvWriter;

/**
 * Bench sheets as a table: a row a filter, a column a field. A bare number gets the unit of its column; a blank cell is
 * unknown. An apostrophe in front of a cell means that the rest is meant as it stands: it keeps spreadsheets from taking
 * a text for a formula, and bare numbers bare.
 */
@Source("RFC 4180 (2005), section 2; the apostrophe is common practice, no source")
public final class SheetCsv {
    private static final Pattern BARE = Pattern.compile("[-+\u2212]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][-+]?\\d+)?");

    /**
     * A sheet that was read.
     *
     * @param line line in the file where it begins, from 1
     * @param name name of the filter
     * @param values what was typed by path below the candidate, such as {@code pleats.count}; blank cells are left out
     */
    public record Row(int line, String name, Map<String, String> values) {
        public Row {
            Objects.requireNonNull(name, "name");
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        }
    }

    /**
     * What came of reading a table.
     *
     * @param rows the sheets, also where there are problems
     * @param problems what was wrong, each with its line and the column of the table, counted from 1
     */
    public record Reading(List<Row> rows, List<CaseProblem> problems) {
        public Reading {
            rows = List.copyOf(rows);
            problems = List.copyOf(problems);
        }
    }

    private SheetCsv() {}

    /** A table without rows, to be filled in. */
    public static String template() {
        return header(SheetColumns.template()).finished();
    }

    /** All candidates of a draft as a table. */
    public static String write(CaseDraft draft) {
        List<Map<String, String>> rows = new ArrayList<>();
        Set<String> paths = new LinkedHashSet<>(List.of("name"));
        for (int i = 0; i < draft.count("candidates"); i++) {
            String head = "candidates[" + i + "].";
            Map<String, String> row = new LinkedHashMap<>();
            draft.values().forEach((path, typed) -> {
                String below =
                        path.startsWith(head) ? path.substring(head.length()).replaceFirst("\\.value$", "") : "";
                if (SheetColumns.ofPath(below).isPresent()) {
                    row.put(below, typed);
                }
            });
            rows.add(row);
            paths.addAll(row.keySet());
        }
        List<String> columns = SheetColumns.sorted(List.copyOf(paths));
        CsvWriter csv = header(columns);
        for (Map<String, String> row : rows) {
            for (String path : columns) {
                csv.cell(cell(
                        row.getOrDefault(path, ""), SheetColumns.ofPath(path).orElseThrow()));
            }
            csv.endRow();
        }
        return csv.finished();
    }

    private static CsvWriter header(List<String> paths) {
        CsvWriter csv = new CsvWriter();
        paths.forEach(
                path -> csv.cell(SheetColumns.name(SheetColumns.ofPath(path).orElseThrow())));
        return csv.endRow();
    }

    /** How a value stands in its column. */
    static String cell(String typed, SheetColumns.Column column) {
        String unit = " " + column.unit();
        if (!column.unit().isEmpty() && typed.endsWith(unit)) {
            String number = typed.substring(0, typed.length() - unit.length());
            // a minus sign in front is a number to a spreadsheet, and reads back as one
            if (BARE.matcher(number).matches() && !number.startsWith("+")) {
                return number;
            }
        }
        boolean bare = !column.unit().isEmpty() && BARE.matcher(typed).matches();
        boolean quoted = typed.startsWith("'") || CsvWriter.startsFormula(typed);
        return bare || quoted ? "'" + typed : typed;
    }

    /** What a cell of a column says. */
    static String typed(String cell, SheetColumns.Column column) {
        String text = cell.strip();
        if (text.startsWith("'")) {
            return text.substring(1);
        }
        boolean bare = !column.unit().isEmpty() && BARE.matcher(text).matches();
        return bare ? text + " " + column.unit() : text;
    }

    /**
     * Reads a table. The separator is the semicolon if the header has one outside quotes, else the tab if it has one,
     * else the comma.
     *
     * @param file name to use in messages
     */
    public static Reading read(String file, String text) {
        FileProblems problems = new FileProblems(file);
        CsvReader.Table table = CsvReader.read(text);
        table.openQuote().ifPresent(line -> problems.add(line, 0, "sheet.quoteOpen"));
        List<CsvReader.Line> lines = table.lines();
        if (lines.isEmpty()) {
            problems.add(0, 0, "sheet.empty");
            return new Reading(List.of(), problems.inFileOrder());
        }
        List<Optional<SheetColumns.Column>> columns = columns(lines.get(0), problems);
        List<Row> rows = new ArrayList<>();
        Map<String, Integer> names = new LinkedHashMap<>();
        for (CsvReader.Line line : lines.subList(1, lines.size())) {
            Row row = row(line, columns, problems);
            Integer before = row.name().isEmpty() ? null : names.putIfAbsent(row.name(), row.line());
            if (row.name().isEmpty()) {
                problems.add(line.number(), 0, "sheet.noName");
            } else if (before != null) {
                problems.add(line.number(), 0, "sheet.nameTwice", row.name(), before.toString());
            }
            rows.add(row);
        }
        if (rows.isEmpty() && problems.isEmpty()) {
            problems.add(0, 0, "sheet.empty");
        }
        return new Reading(rows, problems.inFileOrder());
    }

    private static List<Optional<SheetColumns.Column>> columns(CsvReader.Line header, FileProblems problems) {
        List<Optional<SheetColumns.Column>> columns = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        for (int i = 0; i < header.cells().size(); i++) {
            String name = header.cells().get(i).strip();
            Optional<SheetColumns.Column> column = SheetColumns.ofName(name);
            if (column.isEmpty() && !name.isEmpty()) {
                String near = SheetColumns.nearest(name).orElse("");
                String code = near.isEmpty() ? "sheet.column" : "sheet.column.near";
                problems.add(header.number(), i + 1, code, FileProblems.cut(name), (i + 1) + "", near);
            } else if (column.isPresent() && !seen.add(column.get().path())) {
                problems.add(header.number(), i + 1, "sheet.columnTwice", FileProblems.cut(name), (i + 1) + "");
            }
            columns.add(column);
        }
        if (!seen.contains("name")) {
            problems.add(header.number(), 0, "sheet.nameColumn");
        }
        return columns;
    }

    private static Row row(CsvReader.Line line, List<Optional<SheetColumns.Column>> columns, FileProblems problems) {
        Map<String, String> values = new LinkedHashMap<>();
        if (line.cells().size() > columns.size()) {
            problems.add(
                    line.number(),
                    columns.size() + 1,
                    "sheet.tooMany",
                    line.cells().size() + "",
                    columns.size() + "");
        }
        for (int i = 0; i < Math.min(line.cells().size(), columns.size()); i++) {
            String cell = line.cells().get(i);
            if (cell.isBlank()) {
                continue;
            }
            if (columns.get(i).isEmpty()) {
                if (problems.isEmpty()) {
                    problems.add(line.number(), i + 1, "sheet.cellWithoutColumn", FileProblems.cut(cell), (i + 1) + "");
                }
                continue;
            }
            SheetColumns.Column column = columns.get(i).get();
            String typed = typed(cell, column);
            if (!cell.strip().startsWith("'")) {
                check(typed, column, line.number(), i + 1, problems);
            }
            if (!typed.isEmpty()) {
                values.put(column.path(), typed);
            }
        }
        return new Row(line.number(), values.getOrDefault("name", ""), values);
    }

    private static void check(String typed, SheetColumns.Column column, int line, int at, FileProblems problems) {
        boolean quantity = column.field().kind().isPresent() && !column.part();
        boolean typical = typed.equalsIgnoreCase("typical") && column.field().typicalOffered();
        if (quantity && !typical) {
            QuantityReading reading =
                    QuantityText.parse(typed, column.field().kind().get(), Provenance.MEASURED);
            if (reading.problem().isPresent()) {
                QuantityProblem problem = reading.problem().get();
                String name = SheetColumns.name(column);
                Place place = new Place(column.path(), CaseProblem.columnWords(at, name));
                problems.add(
                        place,
                        line,
                        at,
                        problem.code(),
                        problem.values().stream().map(FileProblems::cut).toArray(String[]::new));
            }
        } else if (!quantity && !column.part() && !column.field().choices().isEmpty()) {
            boolean flag = column.field().choices().contains("true")
                    && List.of("yes", "no").contains(typed);
            if (!flag && !column.field().choices().contains(typed)) {
                Place place = new Place(column.path(), CaseProblem.columnWords(at, SheetColumns.name(column)));
                problems.add(
                        place,
                        line,
                        at,
                        "choice.unknown",
                        FileProblems.cut(typed),
                        String.join(", ", column.field().choices()));
            }
        }
    }

    /**
     * Puts sheets into a case: as new filters, or into those of the same name, whose other values stay.
     *
     * @return the draft with the sheets in it
     */
    public static CaseDraft into(CaseDraft draft, List<Row> rows) {
        CaseDraft now = draft;
        for (Row row : rows) {
            int number = now.names("candidates").indexOf(row.name());
            if (number < 0) {
                // written by itself first: a long case is then read once a sheet, not once a value
                Optional<CaseDraft> whole =
                        now.withCandidateOf(written(CaseDraft.blank().addCandidate(row.name()), 0, row));
                CaseDraft before = now;
                now = whole.orElseGet(() -> written(before.addCandidate(row.name()), before.count("candidates"), row));
            } else {
                now = written(now, number, row);
            }
        }
        return now;
    }

    /** Writes the values of a sheet into a candidate one by one. */
    private static CaseDraft written(CaseDraft draft, int number, Row row) {
        CaseDraft now = draft;
        String head = "candidates[" + number + "].";
        Map<String, Integer> entries = new LinkedHashMap<>();
        for (String path : ordered(row.values())) {
            now = now.set(head + filled(now, head, path, entries), row.values().get(path));
        }
        return now;
    }

    /** Values before what stands beside them, and entries of lists in their order. */
    private static List<String> ordered(Map<String, String> values) {
        return SheetColumns.sorted(List.copyOf(values.keySet()));
    }

    /** Entries that were left blank in between do not count. */
    private static String filled(CaseDraft draft, String head, String path, Map<String, Integer> entries) {
        int open = path.indexOf('[');
        if (open < 0) {
            return path;
        }
        int close = path.indexOf(']');
        int entry = Integer.parseInt(path.substring(open + 1, close));
        int number = entries.computeIfAbsent(
                path.substring(0, close), key -> Math.min(entry, draft.count(head + path.substring(0, open))));
        return path.substring(0, open) + "[" + number + path.substring(close);
    }
}

package org.coldpleat.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SettingsResult.Row;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Status;
import org.coldpleat.model.sizing.SizingResult.Variable;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.commandline.CommandLineFace;
import org.coldpleat.ui.service.CaseService;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.SizingQuestion;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes and settings of the demo cases, checked by writing the answer into the case and comparing anew. */
class SizingOnDemoCasesTest {
    private static final CaseService SERVICE = CaseService.standard();
    private static final double ICE = 273.15;

    private static String run(int expected, String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineFace.run(List.of(words), SERVICE, new PrintWriter(out), new PrintWriter(err));
        assertEquals(expected, code, err.toString());
        return out.toString();
    }

    private static List<Error> faults(String schema, String json) throws Exception {
        try (InputStream in = CommandLineFace.class.getResourceAsStream(schema)) {
            Schema known = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in, InputFormat.JSON);
            return known.validate(json, InputFormat.JSON);
        }
    }

    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#one")
    void settingsAgreeWithTheComparisonAndKeepToTheirSchema(Path file) throws Exception {
        OpenedCase opened = SERVICE.open(file).opened().orElseThrow();
        SettingsResult result = opened.settings(Optional.empty(), 40e3, 220e3).now();
        Comparison comparison = opened.compare().now();
        for (int c = 0; c < result.candidates().size(); c++) {
            CandidateResult compared = comparison.candidates().get(c);
            List<OpeningBand> openings = result.candidates().get(c).now().openings();
            for (int s = 0; s < openings.size(); s++) {
                double value = openings.get(s).value();
                compared.states()
                        .get(s)
                        .openingTemperature()
                        .ifPresent(band -> assertEquals(band.value(), value, 0.01));
            }
            List<Row> rows = result.candidates().get(c).rows();
            for (int i = 1; i < rows.size(); i++) {
                assertNoLaterOpeningInWarmerOil(rows.get(i - 1), rows.get(i));
            }
        }
        String json = run(0, "settings", file.toString(), "--format", "json");
        assertEquals(List.of(), faults("settings-v1.schema.json", json));
        String csv = run(0, "settings", file.toString(), "--format", "csv");
        int rows =
                result.candidates().stream().mapToInt(one -> one.rows().size()).sum();
        assertEquals(1 + rows * result.states().size(), csv.lines().count());
        assertTrue(run(0, "settings", file.toString()).contains("collapse rating"));
    }

    @ParameterizedTest
    @Tag("nightly")
    @MethodSource("org.coldpleat.ui.DemoCases#others")
    void settingsOfTheOtherCasesAgreeWithTheComparison(Path file) throws Exception {
        settingsAgreeWithTheComparisonAndKeepToTheirSchema(file);
    }

    private static void assertNoLaterOpeningInWarmerOil(Row lower, Row higher) {
        for (int s = 0; s < lower.openings().size(); s++) {
            assertTrue(
                    higher.openings().get(s).value() <= lower.openings().get(s).value());
        }
        lower.afterStart()
                .ifPresent(start ->
                        assertTrue(higher.afterStart().orElseThrow().openSeconds() <= start.openSeconds() + 0.5));
    }

    @ParameterizedTest
    @MethodSource("org.coldpleat.ui.DemoCases#all")
    void sizesKeepToTheirSchema(Path file) throws Exception {
        OpenedCase opened = SERVICE.open(file).opened().orElseThrow();
        String state = opened.states().get(opened.states().size() - 1);
        for (Variable variable : Variable.values()) {
            List<String> words = new ArrayList<>(List.of(
                    "size",
                    file.toString(),
                    "--candidate",
                    opened.candidates().get(0),
                    "--for",
                    variable.name().toLowerCase(Locale.ROOT),
                    "--target",
                    "element below 400 kPa at -10 °C in " + state,
                    "--draws",
                    "16",
                    "--format",
                    "json"));
            StringWriter out = new StringWriter();
            CommandLineFace.run(words, SERVICE, new PrintWriter(out), new PrintWriter(new StringWriter()));
            if (out.toString().isEmpty()) {
                continue;
            }
            assertEquals(List.of(), faults("size-v1.schema.json", out.toString()), file + " " + variable);
        }
    }

    private static Path halfTheArea() throws Exception {
        return DemoCases.one().get(0);
    }

    private static SizingResult size(OpenedCase opened, Variable variable, String target) {
        SizingQuestion question = new SizingQuestion(
                "Full",
                variable,
                target,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                16,
                1);
        return opened.size(question).now().result().orElseThrow();
    }

    private static double opening(String text, String state) {
        OpenedCase opened = SERVICE.openDraft(
                        "written.yaml", CaseDraft.open("written.yaml", text).draft(), Optional.empty())
                .opened()
                .orElseThrow();
        return opened.compare().now().candidates().get(0).states().stream()
                .filter(one -> one.state().equals(state))
                .findFirst()
                .orElseThrow()
                .openingTemperature()
                .orElseThrow()
                .value();
    }

    @ParameterizedTest
    @EnumSource(
            value = Variable.class,
            names = {"AREA", "OPENING", "RESISTANCE", "PLEATS"})
    void whatWasSizedMeetsTheTargetOnceWrittenIntoTheCase(Variable variable) throws Exception {
        Path file = halfTheArea();
        String text = Files.readString(file);
        OpenedCase opened = SERVICE.open(file).opened().orElseThrow();
        SizingResult result = size(opened, variable, "never open at 20 °C in stand at pump flow");
        Answer best = result.conditions().get(0).best();
        assertEquals(Status.FOUND, best.status());
        String written = written(text, variable, best.value(), result.present());
        double found = opening(written, "stand at pump flow");
        if (variable == Variable.PLEATS) {
            assertTrue(found <= ICE + 20, found + "");
            assertTrue(opening(written(text, variable, best.value() - 1, result.present()), "stand at pump flow")
                    > ICE + 20);
        } else {
            // values are written with six digits
            assertEquals(ICE + 20, found, 0.01);
        }
    }

    private static String written(String text, Variable variable, double value, double present) {
        return switch (variable) {
            // the gross area of a strip with its width; caps hide 2 mm at each end as before
            case AREA ->
                text.replaceFirst("height: 56 mm", number("height: %.6g mm", 56 * value / present))
                        .replaceFirst("width: 56 mm", number("width: %.6g mm", 56 * value / present));
            case OPENING ->
                text.replaceFirst("openingPressure: 100 kPa", number("openingPressure: %.6g kPa", value / 1e3));
            case RESISTANCE -> text.replaceFirst("airTest: \\{.*?}", number("resistance: %.6g 1/m", value));
            case PLEATS ->
                text.replaceFirst("count: 50", number("count: %.0f", value))
                        .replaceFirst("length: 1580 mm", number("length: %.6g mm", 1580 * value / present));
            case GRADE -> text;
        };
    }

    private static String number(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }

    @Test
    void gradeThatWasFoundMeetsTheTargetOnceWrittenIntoTheCase() throws Exception {
        Path file = halfTheArea();
        OpenedCase opened = SERVICE.open(file).opened().orElseThrow();
        Answer best = size(opened, Variable.GRADE, "never open at 8 °C in stand at pump flow")
                .conditions()
                .get(0)
                .best();
        String oil = "grade: \"" + best.label() + "\"\n\nflowStand";
        String written = Files.readString(file).replaceFirst("(?s)grade: 10W-30.*?flowStand", oil);
        assertEquals(best.opening(), opening(written, "stand at pump flow"), 0.01);
        assertTrue(best.opening() <= ICE + 8);
    }

    @Test
    void errorsSayWhatIsWrong() throws Exception {
        String file = halfTheArea().toString();
        String[] head = {"size", file, "--candidate", "Full", "--for", "area", "--target"};
        assertStops(3, "never open at", head, "keep shut");
        assertStops(3, "cold idle", head, "never open at -20 °C in cold idel");
        assertStops(3, "several states", head, "never open at -20 °C");
        assertStops(3, "outside the range", head, "never open at -60 °C in cold idle");
        assertStops(3, "share", head, "share below 500 % at -20 °C in cold idle");
    }

    private static void assertStops(int code, String said, String[] head, String target) {
        List<String> words = new ArrayList<>(List.of(head));
        words.add(target);
        StringWriter err = new StringWriter();
        assertEquals(
                code, CommandLineFace.run(words, SERVICE, new PrintWriter(new StringWriter()), new PrintWriter(err)));
        assertTrue(err.toString().contains(said), err.toString());
    }
}

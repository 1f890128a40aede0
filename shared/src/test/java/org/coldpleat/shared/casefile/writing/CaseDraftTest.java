package org.coldpleat.shared.casefile.writing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Editing a case in its own text. */
class CaseDraftTest {
    private static final String CASE = """
            # bench of March
            formatVersion: 1
            title: Test   # a title
            oil:
              grade: 15W-40
            candidates:
              # the old one
              - name: One
                outside: {diameter: 76 mm, length: 0,5 mm}  # outside
                medium:
                  thickness: [0.68, 0.71] mm
                  strip:
                    length: 1720 mm
                    allowances:
                      - {on: width, by: -4 mm, reason: glue}
                      # seam
                      - {on: length, by: -9 mm, reason: seam}

              # the new one
              - name: Two
                notes: >
                  Words over
                  two lines.

                bypass: {position: dome}
            """;

    private static CaseDraft draft(String text) {
        CaseDraft.Opened opened = CaseDraft.open("test.yaml", text);
        assertTrue(opened.setAside().isEmpty(), opened.setAside().toString());
        return opened.draft();
    }

    private static String changed(String path, String typed) {
        CaseDraft after = draft(CASE).set(path, typed);
        assertEquals(Optional.of(typed), after.value(path));
        return after.text();
    }

    @Test
    void aValueChangesAtItsPlaceOnly() {
        assertEquals(CASE.replace("76 mm", "3.1 in"), changed("candidates[0].outside.diameter", "3.1 in"));
        assertEquals(CASE.replace("1720 mm", "1730 mm"), changed("candidates[0].medium.strip.length", "1730 mm"));
        assertEquals(CASE.replace("title: Test ", "title: New one "), changed("title", "New one"));
        assertEquals(
                CASE.replace("by: -9 mm", "by: -8 mm"),
                changed("candidates[0].medium.strip.allowances[1].by", "-8 mm"));
    }

    @Test
    void whatYamlWouldTakeApartIsPutInQuotes() {
        assertEquals(
                CASE.replace("diameter: 76 mm", "diameter: '60,5 mm'"),
                changed("candidates[0].outside.diameter", "60,5 mm"));
        assertEquals(CASE.replace("title: Test ", "title: 'a # b' "), changed("title", "a # b"));
        assertEquals(CASE.replace("title: Test ", "title: 'x: [1] mm' "), changed("title", "x: [1] mm"));
        assertEquals(CASE.replace("title: Test ", "title: \"a\\nb\" "), changed("title", "a\nb"));
        assertEquals(CASE.replace("title: Test ", "title: 'null' "), changed("title", "null"));
    }

    @Test
    void aDecimalCommaInBracesIsOneValueAndIsMendedByTypingAnother() {
        assertEquals(Optional.of("0,5 mm"), draft(CASE).value("candidates[0].outside.length"));
        assertEquals(CASE.replace("0,5 mm", "88 mm"), changed("candidates[0].outside.length", "88 mm"));
    }

    @Test
    void readingsStayReadings() {
        assertEquals(
                CASE.replace("[0.68, 0.71] mm", "[0.7, 0.8, 0.9] mm"),
                changed("candidates[0].medium.thickness", "[0.7, 0.8, 0.9] mm"));
        assertEquals(
                CASE.replace("diameter: 76 mm", "diameter: [76, 77] mm"),
                changed("candidates[0].outside.diameter", "[76, 77] mm"));
    }

    @Test
    void aNewFieldGoesWhereTheCatalogHasIt() {
        assertEquals(
                CASE.replace("length: 0,5 mm}", "length: 0,5 mm, mass: 280 g}"),
                changed("candidates[0].outside.mass", "280 g"));
        assertEquals(
                CASE.replace("    bypass: {position", "    pleats:\n          count: 53\n        bypass: {position")
                        .replace("    pleats:", "    pleats:"),
                CASE.replace("    bypass: {position", "    pleats:\n          count: 53\n        bypass: {position"));
        assertEquals(
                CASE.replace("{position: dome}", "{position: dome}\n    pleats:\n      count: 53"),
                changed("candidates[1].pleats.count", "53"));
        assertEquals(
                CASE.replace("    medium:\n", "    medium:\n      family: glass\n")
                        .replace("medium:\n      family: glass\n      thickness", "medium:\n      thickness")
                        .replace("[0.68, 0.71] mm\n", "[0.68, 0.71] mm\n      family: glass\n"),
                changed("candidates[0].medium.family", "glass"));
        assertEquals(
                CASE.replace("grade: 15W-40\n", "grade: 15W-40\n  points:\n    - {temperature: 40 °C}\n"),
                changed("oil.points[0].temperature", "40 °C"));
    }

    @Test
    void partsOfAQuantityAreSpelledOut() {
        CaseDraft after = draft(CASE)
                .set("candidates[0].outside.diameter.note", "three places, caliper")
                .set("candidates[0].outside.diameter.provenance", "printed")
                .set("candidates[0].medium.thickness.plusMinus", "0,02 mm");
        assertEquals(
                CASE.replace(
                                "diameter: 76 mm",
                                "diameter: {value: 76 mm, provenance: printed, note: 'three places, caliper'}")
                        .replace("[0.68, 0.71] mm", "{value: [0.68, 0.71] mm, plusMinus: '0,02 mm'}"),
                after.text());
        assertEquals(Optional.of("76 mm"), after.value("candidates[0].outside.diameter"));
        assertEquals(
                CASE.replace(
                                "diameter: 76 mm",
                                "diameter: {value: 77 mm, provenance: printed, note: 'three places, caliper'}")
                        .replace("[0.68, 0.71] mm", "{value: [0.68, 0.71] mm, plusMinus: '0,02 mm'}"),
                after.set("candidates[0].outside.diameter", "77 mm").text());
    }

    @Test
    void aClearedFieldIsGoneAndAnEmptyOneStays() {
        CaseDraft draft = draft(CASE);
        assertEquals(
                CASE.replace("      thickness: [0.68, 0.71] mm\n", ""),
                draft.clear("candidates[0].medium.thickness").text());
        assertEquals(
                CASE.replace("thickness: [0.68, 0.71] mm", "thickness:"),
                draft.set("candidates[0].medium.thickness", "").text());
        assertEquals(
                CASE.replace("    bypass: {position: dome}\n", ""),
                draft.clear("candidates[1].bypass.position").text());
        assertEquals(
                CASE.replace("title: Test ", "title: "), draft.clear("title").text());
        assertEquals(
                CASE.replace("diameter: 76 mm, ", ""),
                draft.clear("candidates[0].outside.diameter").text());
        assertEquals(
                CASE.replace(", length: 0,5 mm", ""),
                draft.clear("candidates[0].outside.length").text());
        assertEquals(CASE, draft.clear("candidates[0].gasket.thickness").text());
        CaseDraft emptied =
                draft.set("candidates[0].medium.thickness", "").set("candidates[0].medium.thickness", "1 mm");
        assertEquals(CASE.replace("[0.68, 0.71] mm", "1 mm"), emptied.text());
    }

    @Test
    void candidatesComeAndGo() {
        CaseDraft draft = draft(CASE);
        assertEquals(CASE + "\n  - name: Three\n", draft.addCandidate("Three").text() + "");
        assertEquals(
                CASE + "\n  - name: Three\n    bypass:\n      position: none\n",
                draft.addCandidate("Three")
                        .set("candidates[2].bypass.position", "none")
                        .text());
        CaseDraft copied = draft.copy("candidates", 1, "Two again");
        assertEquals(
                CASE
                        + "\n  - name: Two again\n    notes: >\n      Words over\n      two lines.\n\n    bypass: {position: dome}\n",
                copied.text());
        assertEquals(
                CASE.substring(0, CASE.indexOf("  - name: Two")).stripTrailing() + "\n",
                draft.remove("candidates", 1).text());
        String without = draft.remove("candidates", 0).text();
        assertTrue(without.contains("candidates:\n  # the old one\n"), without);
        assertFalse(without.contains("One"), without);
        String moved = draft.move("candidates", 0, 1).text();
        assertTrue(moved.indexOf("name: Two") < moved.indexOf("name: One"), moved);
        assertEquals(
                draft.text(),
                draft.move("candidates", 0, 1).move("candidates", 1, 0).text());
    }

    @Test
    void entriesOfListsComeAndGo() {
        CaseDraft draft = draft(CASE);
        String list = "candidates[0].medium.strip.allowances";
        assertEquals(
                CASE.replace("reason: seam}\n", "reason: seam}\n          - {}\n"),
                draft.add(list).text());
        assertEquals(
                CASE.replace("reason: seam}\n", "reason: seam}\n          - {by: 1 mm}\n"),
                draft.add(list).set(list + "[2].by", "1 mm").text());
        assertEquals(
                CASE.replace("          - {on: width, by: -4 mm, reason: glue}\n", ""),
                draft.remove(list, 0).text());
        CaseDraft gone = draft.remove(list, 1).remove(list, 0);
        assertEquals(0, gone.count(list));
        assertEquals(1, draft.add("oil.points").count("oil.points"));
    }

    @Test
    void aCaseCanBeWrittenFromNothing() {
        CaseDraft draft = CaseDraft.blank()
                .set("title", "New")
                .set("oil.grade", "5W-30")
                .set("flowStand.states[0].name", "one")
                .set("flowStand.states[0].flow", "9,5 L/min")
                .addCandidate("First: one")
                .set("candidates[0].outside.diameter", "76 mm")
                .set("candidates[0].medium.strip.allowances[0].by", "-5 mm");
        assertEquals("""
                formatVersion: 1
                title: New
                oil:
                  grade: 5W-30
                flowStand:
                  states:
                    - {name: one, flow: '9,5 L/min'}
                candidates:
                  - name: 'First: one'
                    outside:
                      diameter: 76 mm
                    medium:
                      strip:
                        allowances:
                          - {by: -5 mm}
                """, draft.text());
    }

    @Test
    void whatStandsInPlaceOfASectionStaysAsARemark() {
        CaseDraft draft = draft("formatVersion: 1\ncandidates:\n  - name: A\n    medium: paper\n");
        assertEquals(
                "formatVersion: 1\ncandidates:\n  - name: A\n    medium: # paper\n      thickness: 1 mm\n",
                draft.set("candidates[0].medium.thickness", "1 mm").text());
    }

    @Test
    void unknownFieldsAreWrongUse() {
        assertThrows(IllegalArgumentException.class, () -> draft(CASE).set("oil.smell", "1"));
        assertThrows(IllegalArgumentException.class, () -> draft(CASE).set("oil", "1"));
        assertThrows(IllegalArgumentException.class, () -> draft(CASE).add("oil"));
        assertThrows(IndexOutOfBoundsException.class, () -> draft(CASE).remove("candidates", 2));
    }

    @Test
    void lineEndsAndTheMarkOfTheTextStay() {
        String windows = "\ufeff" + CASE.replace("\n", "\r\n");
        CaseDraft after =
                draft(windows).set("candidates[0].gasket.thickness", "5 mm").addCandidate("Three");
        assertFalse(after.text().replace("\r\n", "").contains("\n"));
        assertTrue(after.text().startsWith("\ufeff"));
        assertEquals(
                windows, draft(windows).set("title", "x").set("title", "Test").text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "formatVersion: 1\ntitle: x\noil: {grade: 5W-30\ncandidates:\n  - name: A\n",
                "formatVersion: 1\ntitle: \"x\noil:\n  grade: 5W-30\ncandidates:\n  - name: A\n",
                "formatVersion: 1\ntitle: x\n\toil: y\ncandidates:\n  - name: A\n",
                "formatVersion: 1\ntitle: a: b: c\ncandidates:\n  - name: A\n",
                "formatVersion: 1\ntitle: x\n*bad\ncandidates:\n  - name: A\n",
                "formatVersion: 1\ntitle: &a x\ncandidates:\n  - name: A\n",
                "formatVersion: 1\ntitle: x\u0001y\ncandidates:\n  - name: A\n",
                "formatVersion: 1\n---\ncandidates:\n  - name: A\n",
            })
    void aFileBrokenByHandOpensWithTheBadLinesAsRemarks(String text) {
        CaseDraft.Opened opened = CaseDraft.open("broken.yaml", text);
        assertFalse(opened.setAside().isEmpty());
        assertEquals(java.util.List.of("A"), opened.draft().names("candidates"));
        String[] lines = opened.draft().text().split("\n", -1);
        assertEquals(text.split("\n", -1).length, lines.length);
        assertEquals("one", opened.draft().set("title", "one").value("title").orElseThrow());
    }

    @Test
    void everyBadCaseOpensAndCanBeWrittenIn() throws IOException {
        try (var files = Files.list(Path.of("src/test/resources/bad-cases"))) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".yaml")).toList()) {
                String text = new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.UTF_8);
                CaseDraft draft = CaseDraft.open(file.toString(), text).draft();
                assertEquals("x", draft.set("title", "x").value("title").orElseThrow(), file.toString());
            }
        }
    }
}

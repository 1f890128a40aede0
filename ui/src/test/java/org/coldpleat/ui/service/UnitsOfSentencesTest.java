package org.coldpleat.ui.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.notice.Wording;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** The units that are asked for reach every sentence. */
class UnitsOfSentencesTest {
    private static final Pattern NOT_US = Pattern.compile(
            "(?<![\\w.])-?\\d[\\d.]* ?(°C|kPa|MPa|cm²|m²|mm²/s|mm|L/min|mL|L|g|K|mPa s|kg/m³|N/mm)(?![\\w/²])");
    private static final Pattern NOT_SI =
            Pattern.compile("(?<![\\w.])-?\\d[\\d.]* ?(°C|°F|psi|in²|qt|gpm|cSt|cP|ksi)(?![\\w/²])");
    /** Sentences on what a user wrote, whose examples name units of all families. */
    private static final Pattern OF_INPUT = Pattern.compile("(target|oil\\.fault)\\..*");

    /** Amounts for all placeholders; the candidates of a verdict come before them. */
    private static final List<Shown> VALUES = Collections.nCopies(10, Amount.difference(18));

    private static void check(String code, UnitSystem units, String text, List<String> wrong) {
        Pattern foreign = units == UnitSystem.US ? NOT_US : NOT_SI;
        if ((units != UnitSystem.METRIC && foreign.matcher(text).find()) || text.matches(".*\\[[-0-9].*")) {
            wrong.add(code + " " + units + ": " + text);
        }
    }

    @Test
    void everyNoticeAndVerdictInThreeFamilies() {
        List<String> wrong = new ArrayList<>();
        for (UnitSystem units : UnitSystem.values()) {
            for (String code : NoticeText.codes()) {
                if (!OF_INPUT.matcher(code).matches()) {
                    Notice notice = new Notice(code, Severity.INFO, "", VALUES);
                    check(code, units, Sentences.of(notice, units), wrong);
                }
            }
            for (String code :
                    new TreeSet<>(Wording.beside(Verdict.class, "verdicts").codes())) {
                Verdict verdict = new Verdict(code, "", "cold idle", List.of("Moss"), VALUES);
                check(code, units, Sentences.of(verdict, units), wrong);
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void sentencesOfADemoCaseHaveNoForeignUnits() {
        CaseService service = CaseService.standard();
        OpenedCase opened = service.open(Path.of("../demo-cases/ridge-hut-generator/case.yaml"))
                .opened()
                .orElseThrow();
        List<String> wrong = new ArrayList<>();
        var comparison = opened.compare().now();
        for (UnitSystem units : UnitSystem.values()) {
            comparison.verdicts().forEach(one -> check(one.code(), units, Sentences.of(one, units), wrong));
            comparison.notices().forEach(one -> check(one.code(), units, Sentences.of(one, units), wrong));
        }
        assertEquals(List.of(), wrong);
        assertTrue(comparison.verdicts().stream()
                .anyMatch(one -> Sentences.of(one, UnitSystem.US).contains("°F")));
    }
}

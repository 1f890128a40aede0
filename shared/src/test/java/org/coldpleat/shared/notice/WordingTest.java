package org.coldpleat.shared.notice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.shared.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class WordingTest {
    @Test
    void putsThePlaceAndTheValuesIn() {
        Notice notice = Notice.of("oil.typicalDensity", Severity.INFO, "oil", "870 kg/m3", "15W-40");
        String text = NoticeText.sentence(notice, UnitSystem.METRIC);
        assertTrue(text.contains("870 kg/m3") && text.contains("15W-40"), text);
        assertFalse(text.contains("{"), text);
    }

    @Test
    void missingTextIsHarmlessAtRunTime() {
        Notice notice = Notice.of("no.suchCode", Severity.INFO, "oil", "5 mm");
        assertEquals("no.suchCode [5 mm]", NoticeText.sentence(notice, UnitSystem.METRIC));
        assertFalse(NoticeText.has("no.suchCode"));
    }

    @Test
    void patternsHaveNoPlainApostrophe() {
        for (String bundle : List.of("notices")) {
            Wording wording = Wording.beside(NoticeText.class, bundle);
            for (String code : wording.codes()) {
                String left = wording.pattern(code).replace("''", "");
                assertFalse(left.contains("'"), code + " would swallow text between apostrophes");
            }
        }
    }
}

package org.coldpleat.model.resolve.candidate;

import java.util.Optional;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;

/**
 * Where the bypass valve of a filter sits. A sheet that does not tell gets the usual valve in the dome end, but where the
 * engine has one in its block and the sheet speaks of none, that one stands alone.
 *
 * @param location in the filter; {@code NONE} if there is none in it
 * @param finding code of what was taken for granted, if anything was
 */
record BypassPlace(BypassLocation location, Optional<String> finding) {
    static BypassPlace of(Section sheet, boolean blockValve) {
        Optional<Section> bypass = sheet.section("bypass");
        Optional<String> position = bypass.flatMap(section -> section.choice("position"));
        if (position.isPresent()) {
            return new BypassPlace(
                    switch (position.get()) {
                        case "base" -> BypassLocation.BASE;
                        case "dome" -> BypassLocation.DOME;
                        default -> BypassLocation.NONE;
                    },
                    Optional.empty());
        }
        return blockValve && bypass.isEmpty()
                ? new BypassPlace(BypassLocation.NONE, Optional.of("filter.valveOfBlockAlone"))
                : new BypassPlace(BypassLocation.DOME, Optional.of("filter.valveUsual"));
    }

    Optional<Notice> notice(String name) {
        return finding.map(code -> Notice.of(code, Severity.WARNING, name));
    }
}

package org.coldpleat.ui.desktop.viewmodel;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.change.AreaBy;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Present;
import org.coldpleat.ui.service.SheetTests;

/**
 * Writes a change of a candidate into the fields of a sheet. Tests of the filter as it was say what its valve and its
 * medium are; with another opening pressure, area or thickness they would be tests of another filter. So what came of them
 * is written down in their place: the opening pressure that is set, and the resistance of the medium. Immutable.
 */
final class KeptSheet {
    /** No sheet. */
    static final KeptSheet NONE =
            new KeptSheet("", Map.of(), Optional.empty(), new Present(Optional.empty(), 1, 1, 0, 1));

    /** More digits than anyone sets on a slider. */
    private static final MathContext DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);

    private static final List<String> WEIGHTS = List.of(".medium.basisWeight", ".medium.sample.mass");

    private final String path;
    private final Map<String, Measured> known;
    private final Optional<Section> written;
    private final Present present;

    private KeptSheet(String path, Map<String, Measured> known, Optional<Section> written, Present present) {
        this.path = path;
        this.known = known;
        this.written = written;
        this.present = present;
    }

    /** The sheet of a candidate as it is written, and what the candidate is as it stands. */
    static KeptSheet of(OpenedCase opened, int number, Present present) {
        return new KeptSheet(
                path(number),
                opened.understood(),
                Optional.of(opened.sheet(opened.candidates().get(number))),
                present);
    }

    private static String path(int number) {
        return "candidates[" + number + "]";
    }

    /** Path of the candidate, such as {@code candidates[1]}. */
    String path() {
        return path;
    }

    /**
     * A case with the change in a sheet that so far is a copy of this one.
     *
     * @throws IllegalArgumentException if the area is won otherwise than by taller pleats
     */
    CaseDraft changed(CaseDraft draft, int number, CandidateChange change) {
        if (change.area() != 1 && change.areaBy() != AreaBy.TALLER_PLEATS) {
            throw new IllegalArgumentException("areaBy must be TALLER_PLEATS to be written, was " + change.areaBy());
        }
        Target to = new Target(draft, path(number));
        if (change.opening() != 1) {
            reset(to, present.valve().orElseThrow(), change.opening());
        }
        if (change.area() != 1 || change.thickness() != 1) {
            to.clear(SheetTests.OF_MEDIUM);
            to.set(".medium.resistance", Kind.MEDIUM_RESISTANCE, present.mediumResistance() * change.thickness());
        }
        if (change.thickness() != 1) {
            to.scale(".medium.thickness", change.thickness());
            WEIGHTS.forEach(weight -> to.scale(weight, change.thickness()));
        }
        double gross = change.area() == 1 ? 1 : longer(to, change);
        if (gross * change.thickness() != 1) {
            to.scale(".medium.mass", gross * change.thickness());
        }
        return to.draft;
    }

    /** The spring stays, and the ratio of closing to opening pressure, also where a test told them. */
    private void reset(Target to, Present.Valve valve, double factor) {
        if (to.clear(SheetTests.OF_VALVE)) {
            to.set(".bypass.springRate", Kind.SPRING_RATE, valve.springRate());
        }
        to.set(".bypass.openingPressure", Kind.PRESSURE_DIFFERENCE, valve.openingPressure() * factor);
        if (valve.closingPressure() < valve.openingPressure()) {
            to.set(".bypass.closingPressure", Kind.PRESSURE_DIFFERENCE, valve.closingPressure() * factor);
        }
    }

    /**
     * Element, cans and passages of a sheet are measured, and taller pleats would not fit into them. So the area is written
     * as a longer strip between the same diameters, long enough that beside its folds as much medium is passed by the oil.
     * Gives times the unfolded medium [1].
     */
    private double longer(Target to, CandidateChange change) {
        double folds = present.foldShare() * change.thickness();
        double times = change.area() * (1 - folds) + folds;
        to.scale(".medium.statedArea", times);
        to.scale(".pleats.depth", times);
        double allowance = lengthAllowances();
        value(".medium.strip.length")
                .ifPresent(length ->
                        to.set(".medium.strip.length", Kind.LENGTH, (length + allowance) * times - allowance));
        return times;
    }

    /** What is added to the length of the strip, below 0 if taken off [m]. */
    private double lengthAllowances() {
        return written.flatMap(sheet -> sheet.section("medium")).stream()
                .flatMap(medium -> medium.section("strip").stream())
                .flatMap(strip -> strip.sections("allowances").stream())
                .filter(one -> one.choice("on").orElse("").equals("length"))
                .mapToDouble(one -> one.quantity("by").map(Measured::value).orElse(0.0))
                .sum();
    }

    private OptionalDouble value(String field) {
        Measured there = known.get(path + field);
        return there == null ? OptionalDouble.empty() : OptionalDouble.of(there.value());
    }

    /** The sheet that is being written. */
    private final class Target {
        private final String at;
        private CaseDraft draft;

        private Target(CaseDraft draft, String at) {
            this.draft = draft;
            this.at = at;
        }

        /** True if one of the tests stood on the sheet. */
        private boolean clear(List<String> tests) {
            List<String> there =
                    written.map(sheet -> SheetTests.on(sheet, tests)).orElse(List.of());
            for (String test : there) {
                draft = draft.clear(at + test.substring(path.length()));
            }
            return !there.isEmpty();
        }

        private void scale(String field, double factor) {
            Measured there = known.get(path + field);
            if (there != null) {
                set(field, there.kind(), there.value() * factor);
            }
        }

        private void set(String field, Kind kind, double value) {
            Unit unit = UnitSystem.METRIC.unit(kind, value);
            BigDecimal number = new BigDecimal(unit.fromSi(value)).round(DIGITS).stripTrailingZeros();
            draft = draft.set(at + field, number.toPlainString() + " " + unit.symbol());
        }
    }
}

package org.coldpleat.shared.casefile.checks;

import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/** Checks that tie the readings of home and bench tests together. */
final class TestChecks {
    private final CaseChecks checks;

    TestChecks(CaseChecks checks) {
        this.checks = checks;
    }

    void check(Section candidate) {
        Optional<Section> tests = candidate.section("tests");
        if (tests.isEmpty()) {
            return;
        }
        tests.get().section("oil").ifPresent(checks::oil);
        tests.get().section("flowBench").ifPresent(this::flowBench);
        tests.get().section("drainTest").ifPresent(this::drainTest);
        tests.get().section("airTest").ifPresent(this::airTest);
        tests.get().section("scaleTest").ifPresent(test -> scaleTest(test, candidate));
        tests.get().section("bubblePoint").ifPresent(this::bubblePoint);
        tests.get().section("fiberSizing").ifPresent(this::fiberSizing);
    }

    private void flowBench(Section test) {
        int tare = test.sections("tare").size();
        if (tare == 1 || tare == 2) {
            checks.atKey(test, "tare", "case.tareTooShort", Integer.toString(tare));
        }
        if (tare > 0 && test.has("tareShare")) {
            checks.atKey(test, "tareShare", "case.tareTwice");
        }
    }

    private void drainTest(Section test) {
        boolean falling = test.has("fallingHead");
        if (falling == test.has("constantHead")) {
            checks.at(test, falling ? "case.drainTwice" : "case.drainWithoutReadings");
            return;
        }
        if (falling && test.has("vesselDiameter") == test.has("vesselArea")) {
            checks.at(test, "case.vesselUnknown");
        }
        if (test.has("hoseBore") != test.has("hoseLength")) {
            checks.at(test, "case.halfAHose");
        }
        List<Section> rows = test.sections("fallingHead");
        for (int i = 1; i < rows.size(); i++) {
            Optional<Measured> before = rows.get(i - 1).quantity("time");
            Optional<Measured> after = rows.get(i).quantity("time");
            if (before.isPresent()
                    && after.isPresent()
                    && after.get().value() <= before.get().value()) {
                checks.atKey(
                        rows.get(i),
                        "time",
                        "case.timeBackward",
                        after.get().written(),
                        before.get().written());
            }
        }
        if (rows.size() > 1) {
            Optional<Measured> first = rows.get(0).quantity("head");
            Optional<Measured> last = rows.get(rows.size() - 1).quantity("head");
            if (first.isPresent()
                    && last.isPresent()
                    && last.get().value() >= first.get().value()) {
                checks.atKey(
                        rows.get(rows.size() - 1),
                        "head",
                        "case.headDoesNotFall",
                        last.get().written(),
                        first.get().written());
            }
        }
    }

    private void airTest(Section test) {
        boolean disk = test.choice("piece").orElse("").equals("disk");
        if (disk && !test.has("diskDiameter")) {
            checks.at(test, "case.diskUnknown");
        }
    }

    private void scaleTest(Section test, Section candidate) {
        boolean seat = test.has("seatDiameter")
                || candidate
                        .section("bypass")
                        .map(valve -> valve.has("seatDiameter"))
                        .orElse(false);
        if (!seat) {
            checks.at(test, "case.seatUnknown");
        }
        if (test.has("secondLift") != test.has("lift")) {
            checks.at(test, "case.halfALift");
        }
        String position = candidate
                .section("bypass")
                .flatMap(valve -> valve.choice("position"))
                .orElse("dome");
        if (!position.equals("dome") && !position.equals("base")) {
            checks.at(test, "case.scaleWithoutValve");
        }
    }

    private void bubblePoint(Section test) {
        boolean other = test.choice("liquid").orElse("").equals("other");
        if (other && !(test.has("surfaceTension") && test.has("density"))) {
            checks.at(test, "case.liquidUnknown");
        }
    }

    private void fiberSizing(Section test) {
        boolean bar = test.has("scaleBar") && test.has("scaleBarPixels");
        boolean field = test.has("fieldWidth") && test.has("fieldPixels");
        if (!bar && !field) {
            if (test.has("magnification")) {
                checks.atKey(
                        test,
                        "magnification",
                        "case.magnificationOnly",
                        test.text("magnification").orElse(""));
            } else {
                checks.at(test, "case.noScale");
            }
        }
    }
}

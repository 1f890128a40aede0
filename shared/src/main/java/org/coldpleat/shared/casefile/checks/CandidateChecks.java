package org.coldpleat.shared.casefile.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/** Checks that tie several fields of one filter together. */
final class CandidateChecks {
    private final CaseChecks checks;

    CandidateChecks(CaseChecks checks) {
        this.checks = checks;
    }

    void check(Section candidate, boolean blockValve) {
        Optional<Section> outside = candidate.section("outside");
        Optional<Section> element = candidate.section("element");
        outside.ifPresent(can -> smaller(can, "insideDiameter", can, "diameter"));
        element.ifPresent(e -> smaller(e, "insideDiameter", e, "outsideDiameter"));
        candidate.section("gasket").ifPresent(gasket -> smaller(gasket, "insideDiameter", gasket, "outsideDiameter"));
        if (element.isPresent()) {
            Section pack = element.get();
            outside.ifPresent(can -> {
                boolean insideKnown = can.has("insideDiameter");
                fits(pack, "outsideDiameter", can, insideKnown ? "insideDiameter" : "diameter");
                fits(pack, "length", can, "length");
            });
            candidate.section("centerTube").ifPresent(tube -> smaller(tube, "insideDiameter", pack, "outsideDiameter"));
        }
        candidate
                .section("pleats")
                .ifPresent(pleats -> element.ifPresent(pack -> fits(pleats, "height", pack, "length")));
        candidate.section("bypass").ifPresent(valve -> bypass(valve, blockValve));
        new TestChecks(checks).check(candidate);
        candidate.section("medium").ifPresent(this::medium);
    }

    private void smaller(Section inner, String innerKey, Section outer, String outerKey) {
        compare(inner, innerKey, outer, outerKey, "case.insideNotSmaller", false);
    }

    /** A part fits where it just fills the room: pleats may be as high as the element is long. */
    private void fits(Section part, String partKey, Section room, String roomKey) {
        compare(part, partKey, room, roomKey, "case.doesNotFit", true);
    }

    private void compare(
            Section small, String smallKey, Section large, String largeKey, String code, boolean mayBeEqual) {
        Optional<Measured> low = small.quantity(smallKey);
        Optional<Measured> high = large.quantity(largeKey);
        if (low.isEmpty() || high.isEmpty()) {
            return;
        }
        double over = low.get().value() - high.get().value();
        if (over > 0 || (over == 0 && !mayBeEqual)) {
            checks.atKey(
                    small,
                    smallKey,
                    code,
                    low.get().written(),
                    large.pathOf(largeKey),
                    high.get().written(),
                    Integer.toString(large.lineOf(largeKey)));
        }
    }

    private void bypass(Section valve, boolean blockValve) {
        String position = valve.choice("position").orElse("");
        if (position.equals("none") || position.equals("block")) {
            List<String> given = new ArrayList<>(valve.keys());
            given.remove("position");
            given.remove("notes");
            if (!given.isEmpty()) {
                checks.atKey(valve, given.get(0), "case.valveDataWithoutValve", String.join(", ", given), position);
            }
        }
        if (position.equals("block") && !blockValve) {
            checks.atKey(valve, "position", "case.blockValveMissing");
        }
        checks.closesBelowOpening(valve);
    }

    private void medium(Section medium) {
        medium.section("capacity").ifPresent(this::capacity);
        medium.section("strip").ifPresent(this::strip);
        medium.section("airTest").ifPresent(test -> {
            boolean flowAndArea = test.has("flow") && test.has("area");
            if (!test.has("velocity") && !flowAndArea) {
                checks.at(test, "case.airTestWithoutFlow");
            } else if (test.has("velocity") && test.has("flow")) {
                checks.atKey(test, "flow", "case.airTestTwice");
            }
        });
        for (Section rating : medium.sections("ratings")) {
            boolean efficiency = rating.has("efficiency");
            boolean beta = rating.has("beta");
            if (efficiency && beta) {
                checks.atKey(rating, "beta", "case.ratingTwice");
            } else if (!efficiency && !beta) {
                checks.at(rating, "case.ratingWithoutValue");
            }
        }
    }

    private void capacity(Section capacity) {
        if (capacity.has("mass") && capacity.has("perArea")) {
            checks.atKey(capacity, "perArea", "duty.capacityTwice");
        } else if (!capacity.has("mass") && !capacity.has("perArea")) {
            checks.at(capacity, "duty.capacityEmpty");
        } else if (capacity.has("mass")
                && !(capacity.has("terminalPressureDrop") && capacity.has("atFlow") && capacity.has("viscosity"))) {
            checks.atKey(capacity, "mass", "duty.capacityIncomplete");
        }
    }

    private void strip(Section strip) {
        Set<String> seen = new HashSet<>();
        for (String side : List.of("length", "width")) {
            double sum = 0;
            int last = strip.lineOf(side);
            for (Section allowance : strip.sections("allowances")) {
                if (!allowance.choice("on").orElse("").equals(side)) {
                    continue;
                }
                String reason = allowance.text("reason").orElse("");
                if (!reason.isEmpty() && !seen.add(side + "\n" + reason)) {
                    checks.atKey(allowance, "reason", "case.allowanceTwice", side, reason);
                }
                sum += allowance.quantity("by").map(Measured::value).orElse(0.0);
                last = allowance.line();
            }
            Optional<Measured> whole = strip.quantity(side);
            if (whole.isPresent() && whole.get().value() + sum <= 0) {
                checks.atKey(
                        strip,
                        "allowances",
                        "case.allowancesTooLarge",
                        side,
                        whole.get().written(),
                        last + "");
            }
        }
    }
}

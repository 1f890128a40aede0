package org.coldpleat.shared.casefile.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.Months;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.casefile.TypicalStates;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.NearestWord;

/** Checks of the service life of a case against itself and against the engine. */
final class DutyChecks {

    private final CaseChecks checks;

    DutyChecks(CaseChecks checks) {
        this.checks = checks;
    }

    void check(Section duty, Section root) {
        Optional<Section> running = duty.section("running");
        running.ifPresent(one -> state(one, root, root.has("engine") ? "engine" : "flowStand"));
        duty.section("starts").ifPresent(starts -> {
            if (!root.has("engine")) {
                checks.at(starts, "duty.startsNeedEngine");
            }
            state(starts, root, "engine");
            for (String table : List.of("months", "seasons")) {
                starts.sections(table)
                        .forEach(row -> running.ifPresent(one -> {
                            colderThan(row, "temperature", one);
                            timeLeft(row, starts, one);
                        }));
            }
            table(starts);
            warmUp(starts, root.section("start"));
            running.ifPresent(one -> timeLeft(starts, starts, one));
        });
        running.ifPresent(one -> colderThan(duty, "winterStart", one));
        duty.section("dirt").ifPresent(this::dirt);
    }

    private void state(Section section, Section root, String setting) {
        List<String> known = new ArrayList<>();
        root.section(setting)
                .ifPresent(one -> known.addAll(
                        setting.equals("engine")
                                ? TypicalStates.of(one)
                                : one.sections("states").stream()
                                        .flatMap(state -> state.text("name").stream())
                                        .toList()));
        section.text("state").filter(name -> !known.contains(name)).ifPresent(name -> {
            Optional<String> near = NearestWord.to(name, known);
            String all = String.join(", ", known);
            if (near.isPresent()) {
                checks.atKey(section, "state", "duty.unknownState.near", name, all, near.get());
            } else {
                checks.atKey(section, "state", "duty.unknownState", name, all);
            }
        });
    }

    /** How the oil warms up: by the heat balance of the start section, or as stated. */
    private void warmUp(Section starts, Optional<Section> start) {
        if (start.isPresent() && !start.get().has("trace")) {
            for (String key : List.of("warmUp", "galleryVolume")) {
                if (starts.has(key)) {
                    checks.atKey(starts, key, "duty.startSectionWarms", key);
                }
            }
            List<String> known = start.get().sections("schedules").stream()
                    .flatMap(one -> one.text("name").stream())
                    .toList();
            starts.text("schedule")
                    .filter(name -> !known.contains(name))
                    .ifPresent(name ->
                            checks.atKey(starts, "schedule", "duty.unknownSchedule", name, String.join(", ", known)));
            return;
        }
        if (!starts.has("warmUp")) {
            checks.at(starts, start.isPresent() ? "duty.warmUpBesideTrace" : "duty.noWarmUp");
        }
        if (starts.has("schedule")) {
            checks.atKey(starts, "schedule", "duty.scheduleNeedsStart");
        }
    }

    private void table(Section starts) {
        if (starts.has("months") == starts.has("seasons")) {
            checks.at(starts, starts.has("months") ? "duty.monthsAndSeasons" : "duty.noMonths");
        } else if (starts.has("months")) {
            months(starts);
        } else {
            seasons(starts);
        }
    }

    private void months(Section starts) {
        int[] line = new int[Months.NAMES.size()];
        for (Section row : starts.sections("months")) {
            int month = row.choice("month").map(Months.NAMES::indexOf).orElse(-1);
            if (month < 0) {
                return;
            }
            if (line[month] > 0) {
                checks.atKey(row, "month", "duty.rowTwice", Months.NAMES.get(month), Integer.toString(line[month]));
                return;
            }
            line[month] = row.line();
        }
    }

    private void colderThan(Section section, String key, Section running) {
        Optional<Measured> start = section.quantity(key);
        Optional<Measured> hot = running.quantity("oilTemperature");
        if (start.isPresent()
                && hot.isPresent()
                && start.get().value() >= hot.get().value()) {
            checks.atKey(
                    section,
                    key,
                    "duty.startHotterThanRunning",
                    start.get().written(),
                    hot.get().written());
        }
    }

    /** Every month once. */
    private void seasons(Section starts) {
        int[] line = new int[Months.NAMES.size()];
        for (Section season : starts.sections("seasons")) {
            int from = season.choice("from").map(Months.NAMES::indexOf).orElse(-1);
            int to = season.choice("to").map(Months.NAMES::indexOf).orElse(-1);
            if (from < 0 || to < 0) {
                return;
            }
            int count = Math.floorMod(to - from, Months.NAMES.size()) + 1;
            for (int i = 0; i < count; i++) {
                int month = (from + i) % Months.NAMES.size();
                if (line[month] > 0) {
                    checks.atKey(
                            season, "from", "duty.monthTwice", Months.NAMES.get(month), Integer.toString(line[month]));
                    return;
                }
                line[month] = season.line();
            }
        }
        List<String> missing = new ArrayList<>();
        for (int month = 0; month < line.length; month++) {
            if (line[month] == 0) {
                missing.add(Months.NAMES.get(month));
            }
        }
        if (!missing.isEmpty() && starts.has("seasons")) {
            checks.atKey(starts, "seasons", "duty.monthsMissing", String.join(", ", missing));
        }
    }

    /** Starts and warm running must fit into a week; a row of the table may have a number of starts of its own. */
    private void timeLeft(Section row, Section starts, Section running) {
        Optional<Measured> count = row.quantity("perWeek");
        Optional<Measured> warmUp = starts.quantity("warmUp");
        Optional<Measured> hours = running.quantity("hoursPerWeek");
        double week = 7 * 24 * 3600.0;
        if (count.isPresent()
                && warmUp.isPresent()
                && hours.isPresent()
                && count.get().value() * warmUp.get().value() + hours.get().value() > week) {
            checks.atKey(
                    row,
                    "perWeek",
                    "duty.weekTooShort",
                    count.get().written(),
                    warmUp.get().written(),
                    hours.get().written());
        }
    }

    private void dirt(Section dirt) {
        if (!dirt.has("ingestion") && !dirt.has("generation")) {
            checks.at(dirt, "duty.noDirt");
        }
        if (dirt.has("dust") == dirt.has("sizes")) {
            checks.at(dirt, dirt.has("dust") ? "duty.sizesTwice" : "duty.noSizes");
        }
        List<Section> sizes = dirt.sections("sizes");
        for (int i = 0; i < sizes.size(); i++) {
            Optional<Measured> size = sizes.get(i).quantity("size");
            Optional<Measured> finer = sizes.get(i).quantity("finer");
            if (size.isEmpty() || finer.isEmpty()) {
                return;
            }
            if (i > 0) {
                Optional<Measured> smaller = sizes.get(i - 1).quantity("size");
                Optional<Measured> less = sizes.get(i - 1).quantity("finer");
                if (smaller.isPresent()
                        && less.isPresent()
                        && (size.get().value() <= smaller.get().value()
                                || finer.get().value() < less.get().value())) {
                    checks.at(sizes.get(i), "duty.sizesFall");
                }
            }
            double wanted = i == 0 ? 0 : i == sizes.size() - 1 ? 1 : finer.get().value();
            if (finer.get().value() != wanted) {
                checks.atKey(
                        sizes.get(i), "finer", "duty.sizesEnds", finer.get().written());
            }
        }
    }
}

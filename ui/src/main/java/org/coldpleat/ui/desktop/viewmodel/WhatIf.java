package org.coldpleat.ui.desktop.viewmodel;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Present;

/**
 * A candidate of a case with some of its values tried out. What is tried is written into a copy of the case, so that
 * every result comes from the model in the usual way. Immutable.
 */
public final class WhatIf {
    /** Key of the time in service, which no field of a sheet carries. */
    public static final String HOURS = "hours";

    private final String sheet;
    private final Map<String, Knob> knobs;
    private final Map<String, Double> turned;

    private WhatIf(String sheet, Map<String, Knob> knobs, Map<String, Double> turned) {
        this.sheet = sheet;
        this.knobs = knobs;
        this.turned = turned;
    }

    /** Nothing to try. */
    public static WhatIf none() {
        return new WhatIf("", Map.of(), Map.of());
    }

    /**
     * Everything that can be tried on a candidate, nothing of it moved yet.
     *
     * @param number of the candidate, from 0
     * @param present what it is as it stands
     * @param state name of the state that is looked at
     */
    public static WhatIf of(OpenedCase opened, int number, Present present, String state) {
        String sheet = sheet(number);
        return new WhatIf(sheet, Knobs.of(opened, sheet, present, state), Map.of());
    }

    private static String sheet(int number) {
        return "candidates[" + number + "]";
    }

    /** What can be tried. */
    public Collection<Knob> knobs() {
        return knobs.values();
    }

    /** The value of a knob as it stands [SI]. */
    public double value(Knob knob) {
        return turned.getOrDefault(knob.key(), knob.base());
    }

    /** The same with a knob turned; what lies beyond the ends of its slider counts as the end. */
    public WhatIf turn(String key, double value) {
        Knob knob = knobs.get(key);
        if (knob == null) {
            throw new IllegalArgumentException("key must be one of " + knobs.keySet() + ", was " + key);
        }
        Map<String, Double> next = new LinkedHashMap<>(turned);
        if (value == knob.base()) {
            next.remove(key);
        } else {
            next.put(key, Math.min(knob.high(), Math.max(knob.low(), value)));
        }
        return new WhatIf(sheet, knobs, next);
    }

    /** The same with nothing moved. */
    public WhatIf reset() {
        return new WhatIf(sheet, knobs, Map.of());
    }

    /** What was moved here, moved as far on the same candidate of a case that has changed. */
    public WhatIf onto(WhatIf fresh) {
        WhatIf next = fresh;
        if (sheet.equals(fresh.sheet)) {
            for (Map.Entry<String, Double> one : turned.entrySet()) {
                next = fresh.knobs.containsKey(one.getKey()) ? next.turn(one.getKey(), one.getValue()) : next;
            }
        }
        return next;
    }

    /** The knobs that were moved. */
    public List<Knob> moved() {
        return knobs().stream().filter(knob -> turned.containsKey(knob.key())).toList();
    }

    /** True if something was moved that a candidate can take along. */
    public boolean canKeep() {
        return moved().stream().anyMatch(Knob::kept);
    }

    /** Running time behind the candidate [s]. */
    public double inService() {
        return turned.getOrDefault(HOURS, 0.0);
    }

    /** The case with everything that was moved; empty if that leaves the case itself as it is. */
    public Optional<CaseDraft> applied(CaseDraft draft) {
        CaseDraft next = draft;
        for (Knob knob : moved()) {
            next = write(next, knob, sheet);
        }
        return Optional.of(next).filter(one -> !one.equals(draft));
    }

    /** A case with what was moved of the candidate itself, written into the sheet of another candidate. */
    CaseDraft kept(CaseDraft draft, int number) {
        CaseDraft next = draft;
        for (Knob knob : moved()) {
            next = knob.kept() ? write(next, knob, sheet(number)) : next;
        }
        return next;
    }

    private CaseDraft write(CaseDraft draft, Knob knob, String to) {
        CaseDraft next = draft;
        for (String path : knob.voided()) {
            next = next.clear(moved(path, to));
        }
        for (Knob.Field field : knob.fields()) {
            next = next.set(moved(field.path(), to), field.typed(value(knob) / knob.base()));
        }
        return next;
    }

    private String moved(String path, String to) {
        return path.startsWith(sheet + ".") ? to + path.substring(sheet.length()) : path;
    }
}

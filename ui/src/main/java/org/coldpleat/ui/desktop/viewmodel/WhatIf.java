package org.coldpleat.ui.desktop.viewmodel;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.service.Present;

/**
 * A candidate of a case with some of its values tried out: a change on the candidate as it was understood. Only what is
 * kept is written down. Immutable.
 */
public final class WhatIf {
    /** Key of the time in service, which no field of a sheet carries. */
    public static final String HOURS = "hours";

    private final KeptSheet asWritten;
    private final Map<String, Knob> knobs;
    private final Map<String, Double> turned;

    private WhatIf(KeptSheet asWritten, Map<String, Knob> knobs, Map<String, Double> turned) {
        this.asWritten = asWritten;
        this.knobs = knobs;
        this.turned = turned;
    }

    /** Nothing to try. */
    public static WhatIf none() {
        return new WhatIf(KeptSheet.NONE, Map.of(), Map.of());
    }

    /**
     * Everything that can be tried on a candidate, nothing of it moved yet.
     *
     * @param number of the candidate, from 0
     * @param present what it is as it stands
     * @param state name of the state that is looked at
     */
    public static WhatIf of(OpenedCase opened, int number, Present present, String state) {
        KeptSheet written = KeptSheet.of(opened, number, present);
        return new WhatIf(written, Knobs.of(opened, written.path(), present, state), Map.of());
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
        return new WhatIf(asWritten, knobs, next);
    }

    /** The same with nothing moved. */
    public WhatIf reset() {
        return new WhatIf(asWritten, knobs, Map.of());
    }

    /** What was moved here, moved as far on the same candidate of a case that has changed. */
    public WhatIf onto(WhatIf fresh) {
        WhatIf next = fresh;
        if (asWritten.path().equals(fresh.asWritten.path())) {
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

    /** Everything that was moved, but for the time in service. */
    public CandidateChange change() {
        return change(moved());
    }

    private CandidateChange change(List<Knob> knobs) {
        CandidateChange next = CandidateChange.NONE;
        for (Knob knob : knobs) {
            next = knob.change(next, value(knob));
        }
        return next;
    }

    /** A case with what was moved of the candidate itself, written into a copy of its sheet. */
    CaseDraft kept(CaseDraft draft, int number) {
        return asWritten.changed(
                draft, number, change(moved().stream().filter(Knob::kept).toList()));
    }
}

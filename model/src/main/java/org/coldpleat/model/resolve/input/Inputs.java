package org.coldpleat.model.resolve.input;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.typical.DefaultSpreads;
import org.coldpleat.model.typical.ModelConstant;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;

/**
 * Reads the numbers of one build of the model: as written with default spreads added, or with one of them moved. Keeps a
 * ledger of what was uncertain and what was assumed. Work object of one build.
 */
public final class Inputs {
    private static final String STATED = "assumption.stated";

    private final Map<String, Double> moved;
    private final int candidate;
    private final Map<String, Measured> before;
    private final boolean keepsLedger;
    private final Map<String, Measured> completed = new HashMap<>();
    private final Map<String, Unknown> unknowns = new LinkedHashMap<>();
    private final List<Assumption> assumptions = new ArrayList<>();

    private Inputs(Map<String, Double> moved, int candidate, Map<String, Measured> before, boolean keepsLedger) {
        this.moved = moved;
        this.candidate = candidate;
        this.before = before;
        this.keepsLedger = keepsLedger;
    }

    /** Reads shared sections as written. */
    public static Inputs shared() {
        return new Inputs(Map.of(), -1, Map.of(), true);
    }

    /** Reads the sheet of a candidate as written. */
    public static Inputs ofCandidate(int position) {
        return new Inputs(Map.of(), position, Map.of(), true);
    }

    /**
     * The same reading with some unknowns moved.
     *
     * @param values path to moved value [SI]; must not change while the reading is used
     */
    public Inputs moving(Map<String, Double> values) {
        return new Inputs(values, candidate, Map.of(), true);
    }

    /**
     * The same reading with some unknowns moved, for sections whose ledger was kept before.
     *
     * @param values path to moved value [SI]; must not change while the reading is used
     * @param known values of the earlier reading, completed with their default spreads
     */
    public Inputs movingAgain(Map<String, Double> values, Map<String, Measured> known) {
        return new Inputs(values, candidate, known, false);
    }

    /** Whether this build moves the value of a path. */
    public boolean moves(String path) {
        return moved.containsKey(path);
    }

    /** All values read so far, completed with their default spreads, by path. */
    public Map<String, Measured> completed() {
        return Collections.unmodifiableMap(new HashMap<>(completed));
    }

    private Measured complete(String path, Measured written) {
        Measured known = before.get(path);
        Measured complete = known == null ? DefaultSpreads.complete(path, written) : known;
        if (keepsLedger) {
            completed.put(path, complete);
        }
        return complete;
    }

    /** The quantity of a key with its default spread; its value moved if this build moves it. */
    public Optional<Measured> measured(Section section, String key) {
        Optional<Measured> written = section.quantity(key);
        return written.map(value -> take(section.pathOf(key), value, ""));
    }

    /** The quantity of a key with its default spread, whose spread enters the result through another unknown. */
    public Optional<Measured> folded(Section section, String key) {
        String path = section.pathOf(key);
        Optional<Measured> complete = section.quantity(key).map(value -> complete(path, value));
        complete.filter(value -> value.provenance().isAssumption())
                .ifPresent(value -> noteAssumption(path, value, STATED));
        return complete;
    }

    /** The value of a key [SI]. */
    public OptionalDouble value(Section section, String key) {
        return number(measured(section, key));
    }

    /** The value of a reading [SI], if there is one. */
    public static OptionalDouble number(Optional<Measured> measured) {
        return measured.isPresent() ? OptionalDouble.of(measured.get().value()) : OptionalDouble.empty();
    }

    /** The value of a key [SI], or a fallback without spread where the key was left out. */
    public double valueOr(Section section, String key, double fallback) {
        return value(section, key).orElse(fallback);
    }

    /** A value that is not in the file but stands in for one, noted among the assumptions. */
    public Measured assumed(String path, Measured value, String code) {
        return take(path, value, code);
    }

    /**
     * A value that is not in the file but stands in for one and may follow other values of the build: what moves is the
     * factor on it.
     */
    public double following(String path, Measured value, String code) {
        Measured known = complete(path, value);
        note(path, candidate, known, false);
        noteAssumption(path, known, code);
        Double to = moved.get(path);
        return to == null ? value.value() : value.value() * to / known.value();
    }

    /** Notes a stand-in value whose spread enters the result through another unknown. */
    public void noteAssumption(String path, Measured value, String code) {
        if (keepsLedger) {
            assumptions.add(new Assumption(path, candidate, value, code));
        }
    }

    /** A value computed from readings, which enters the result as one unknown of its own. */
    public double derived(String path, Measured value) {
        note(path, candidate, value, false);
        return moved.getOrDefault(path, value.value());
    }

    /** A constant of the model [1]. */
    public double constant(String name) {
        ModelConstant constant = ModelConstant.of(name);
        String path = constant.own() ? "candidates[" + candidate + "]." + name : name;
        note(path, constant.own() ? candidate : -1, constant.value(), constant.upwardOnly());
        return moved.getOrDefault(path, constant.value().value());
    }

    private Measured take(String path, Measured written, String code) {
        Measured complete = complete(path, written);
        note(path, candidate, complete, false);
        if (complete.provenance().isAssumption() || !code.isEmpty()) {
            noteAssumption(path, complete, code.isEmpty() ? STATED : code);
        }
        Double value = moved.get(path);
        if (value == null) {
            return complete;
        }
        return new Measured(
                complete.kind(),
                value,
                complete.halfWidth(),
                complete.spread(),
                complete.provenance(),
                complete.repeats(),
                complete.written());
    }

    private void note(String path, int owner, Measured value, boolean upwardOnly) {
        if (keepsLedger && value.spread() != Spread.NONE && value.halfWidth() > 0) {
            unknowns.put(path, new Unknown(path, owner, value, upwardOnly));
        }
    }

    /** What was uncertain in this build, by path, in the order it was asked for. */
    public Map<String, Unknown> unknowns() {
        return Collections.unmodifiableMap(unknowns);
    }

    /** Typical, guessed and stand-in values this build took. */
    public List<Assumption> assumptions() {
        return List.copyOf(assumptions);
    }
}

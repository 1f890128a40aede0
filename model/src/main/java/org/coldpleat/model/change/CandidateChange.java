package org.coldpleat.model.change;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.shared.quantity.Require;

/**
 * What is changed on a candidate, in thought: the one way in which every question asks for another area, pleat count,
 * setting, medium or oil. Factors are over the candidate as measured. Immutable.
 *
 * @param areaBy how the area is won
 * @param area times the area that the oil passes, folds and hidden edges taken off [1], above 0
 * @param pleatCount another pleat count [1], at least 3; empty for the present one
 * @param opening times the opening pressure [1], above 0; of the filter's own valve, else of the valve in the block
 * @param thickness times the thickness of the medium, its permeability kept [1], above 0
 * @param mediumResistance times the resistance of the medium at its thickness [1], above 0
 * @param shell what holds the pack instead: the housing, passages and valves of another filter, its own valve set as this
 *     filter's is where both have one; empty for the present one
 * @param valvePlace where the filter's own valve sits instead; empty for where it is
 * @param oil another oil, as far off its curve as that of the case; empty for that of the case
 * @param drives times the speed or flow, by the name of a state [1], above 0
 * @param pack times the resistance of the pack with its dirt, whatever brings it about [1], above 0
 * @param load dirt in the medium, the same mass whatever the area; empty if clean
 */
public record CandidateChange(
        AreaBy areaBy,
        double area,
        OptionalInt pleatCount,
        double opening,
        double thickness,
        double mediumResistance,
        Optional<FilterAssembly> shell,
        Optional<BypassLocation> valvePlace,
        Optional<Oil> oil,
        Map<String, Double> drives,
        double pack,
        Optional<DirtLoad> load) {
    /** The candidate as measured. */
    public static final CandidateChange NONE = new CandidateChange(
            AreaBy.TALLER_PLEATS,
            1,
            OptionalInt.empty(),
            1,
            1,
            1,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of(),
            1,
            Optional.empty());

    public CandidateChange {
        Objects.requireNonNull(areaBy, "areaBy");
        Require.positive("area", area, "1");
        Require.positive("opening", opening, "1");
        Require.positive("thickness", thickness, "1");
        Require.positive("mediumResistance", mediumResistance, "1");
        Require.positive("pack", pack, "1");
        drives = Map.copyOf(drives);
        drives.forEach((state, factor) -> Require.positive("drive of " + state, factor, "1"));
        if (valvePlace.isPresent()
                && valvePlace.get() != BypassLocation.BASE
                && valvePlace.get() != BypassLocation.DOME) {
            throw new IllegalArgumentException("valvePlace must be BASE or DOME, was " + valvePlace.get());
        }
    }

    /** The same with so many times its area [1], above 0, won in this way. */
    public CandidateChange timesArea(AreaBy by, double factor) {
        return with(next -> {
            next.areaBy = by;
            next.area *= factor;
        });
    }

    /** The same with another pleat count [1], at least 3. */
    public CandidateChange withPleats(int count) {
        return with(next -> next.pleatCount = OptionalInt.of(count));
    }

    /** The same with so many times its opening pressure [1], above 0. */
    public CandidateChange timesOpening(double factor) {
        return with(next -> next.opening *= factor);
    }

    /** The same with so many times its thickness [1], above 0. */
    public CandidateChange timesThickness(double factor) {
        return with(next -> next.thickness *= factor);
    }

    /** The same with so many times its medium resistance [1], above 0. */
    public CandidateChange timesMediumResistance(double factor) {
        return with(next -> next.mediumResistance *= factor);
    }

    /** The same pack in the shell of another filter. */
    public CandidateChange withShell(FilterAssembly other) {
        return with(next -> next.shell = Optional.of(other));
    }

    /** The same with the filter's own valve in another place. */
    public CandidateChange withValveAt(BypassLocation place) {
        return with(next -> next.valvePlace = Optional.of(place));
    }

    /** The same with another oil; the engine stays as the oil of the case showed it to be. */
    public CandidateChange withOil(Oil other) {
        return with(next -> next.oil = Optional.of(other));
    }

    /** The same with so many times the speed or flow of a state as it is in the case [1], above 0. */
    public CandidateChange withDrive(String state, double factor) {
        return with(next -> {
            Map<String, Double> all = new HashMap<>(next.drives);
            all.put(state, factor);
            next.drives = all;
        });
    }

    /** The same with so many times the resistance of its pack [1], above 0. */
    public CandidateChange timesPack(double factor) {
        return with(next -> next.pack *= factor);
    }

    /** The same with dirt in its medium. */
    public CandidateChange withLoad(DirtLoad dirt) {
        return with(next -> next.load = Optional.of(dirt));
    }

    private CandidateChange with(Consumer<Parts> difference) {
        Parts next = new Parts(this);
        difference.accept(next);
        return next.put();
    }

    /**
     * A candidate with this change.
     *
     * @param position of the candidate in the case
     * @throws IllegalArgumentException if no filter can be changed so
     */
    public Design applyTo(ResolvedCase resolved, int position) {
        return Design.of(resolved, position).changed(before -> this);
    }

    /** The parts of a change laid out, so that one of them can be another. Work object of one step. */
    private static final class Parts {
        private AreaBy areaBy;
        private double area;
        private OptionalInt pleatCount;
        private double opening;
        private double thickness;
        private double mediumResistance;
        private Optional<FilterAssembly> shell;
        private Optional<BypassLocation> valvePlace;
        private Optional<Oil> oil;
        private Map<String, Double> drives;
        private double pack;
        private Optional<DirtLoad> load;

        private Parts(CandidateChange of) {
            areaBy = of.areaBy;
            area = of.area;
            pleatCount = of.pleatCount;
            opening = of.opening;
            thickness = of.thickness;
            mediumResistance = of.mediumResistance;
            shell = of.shell;
            valvePlace = of.valvePlace;
            oil = of.oil;
            drives = of.drives;
            pack = of.pack;
            load = of.load;
        }

        private CandidateChange put() {
            return new CandidateChange(
                    areaBy,
                    area,
                    pleatCount,
                    opening,
                    thickness,
                    mediumResistance,
                    shell,
                    valvePlace,
                    oil,
                    drives,
                    pack,
                    load);
        }
    }
}

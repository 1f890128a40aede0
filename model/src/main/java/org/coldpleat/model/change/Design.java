package org.coldpleat.model.change;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.pleat.FlatPack;
import org.coldpleat.model.pleat.PackModel;
import org.coldpleat.model.pleat.PleatPack;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.resolve.engine.EngineModel;
import org.coldpleat.model.resolve.engine.OilLubricant;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.typical.ModelConstant;
import org.coldpleat.model.valve.SpringValve;

/**
 * A candidate that can be redesigned: another area, pleat count, medium, valve setting or oil, clean or with dirt. Area
 * comes as taller pleats, so that the channels stay as they are; all else of the filter stays too. Tests and evidence of
 * the filter as it is say what its medium is, and the redesigned filter has that medium. Immutable.
 */
public final class Design {
    private static final String OIL_SHIFT = "oil.coldCurve";

    private final SharedModel shared;
    private final BuiltCandidate candidate;
    private final PackModel pack;
    private final double mediumResistance;
    private final FilterAssembly filter;
    private final double oilShift;
    private final Optional<DirtLoad> load;
    private final double packFactor;

    private Design(
            SharedModel shared,
            BuiltCandidate candidate,
            PackModel pack,
            double mediumResistance,
            FilterAssembly filter,
            double oilShift,
            Optional<DirtLoad> load,
            double packFactor) {
        this.packFactor = packFactor;
        this.shared = shared;
        this.candidate = candidate;
        this.pack = pack;
        this.mediumResistance = mediumResistance;
        this.filter = filter;
        this.oilShift = oilShift;
        this.load = load;
    }

    /** A candidate as measured, clean. */
    public static Design of(ResolvedCase resolved, int position) {
        return of(resolved.shared(), resolved.candidates().get(position), Map.of());
    }

    /**
     * A candidate with unknowns moved, clean.
     *
     * @param moved path to value [SI]
     * @throws IllegalArgumentException if no filter can have these values together
     */
    public static Design of(ResolvedCase resolved, int position, Map<String, Double> moved) {
        return of(resolved.sharedMoving(moved), resolved.candidateMoving(position, moved), moved);
    }

    private static Design of(SharedModel shared, BuiltCandidate built, Map<String, Double> moved) {
        double shift = moved.getOrDefault(
                OIL_SHIFT, ModelConstant.of(OIL_SHIFT).value().value());
        return new Design(
                shared, built, built.packModel(), built.mediumResistance(), built.filter(), shift, Optional.empty(), 1);
    }

    /** So many times the area that the oil passes [1], above 0; what caps and glue beads hide stays. */
    public Design withArea(double factor) {
        PackModel larger = pack instanceof PleatPack pleats
                ? pleats.taller(factor)
                : new FlatPack(pack.solve(mediumResistance).effectiveArea() * factor);
        return with(shared, larger, mediumResistance, filter);
    }

    /** So many times the medium resistance [1], above 0. */
    public Design withMediumResistance(double factor) {
        return with(shared, pack, mediumResistance * factor, filter);
    }

    /**
     * Another pleat count [1], at least 3.
     *
     * @throws IllegalArgumentException if the sheet does not give the channels of the pleats
     */
    public Design withPleats(int count) {
        if (!(pack instanceof PleatPack pleats)) {
            throw new IllegalArgumentException("the sheet must give the channels of the pleats, does not");
        }
        return with(shared, pleats.withPleatCount(count), mediumResistance, filter);
    }

    /** So many times the opening pressure [1], above 0; of the filter's own valve, else of the valve in the block. */
    public Design withOpening(double factor) {
        if (filter.elementValve().isPresent()) {
            SpringValve valve = filter.elementValve().get();
            FilterAssembly other = filter.withBypass(filter.elementValveLocation(), set(valve, factor));
            return with(shared, pack, mediumResistance, other);
        }
        EngineModel engine = shared.engine().orElseThrow();
        EngineModel other = new EngineModel(
                engine.pump(),
                engine.reliefs(),
                engine.gallery(),
                engine.blockValve().map(valve -> set(valve, factor)),
                engine.pumpTurns(),
                engine.laminarShare());
        return with(new SharedModel(shared.oil(), Optional.of(other)), pack, mediumResistance, filter);
    }

    private static SpringValve set(SpringValve valve, double factor) {
        return valve.withOpeningPressure(valve.openingPressure() * factor);
    }

    /** The typical oil of a grade, on its curve. */
    public static Oil typicalOil(SaeGrade grade) {
        return OilResolver.resolve(OilSpec.ofGrade(grade.label(), grade)).orThrow();
    }

    /** Another oil, as far off its curve as that of the case; the engine stays as the oil of the case showed it to be. */
    public Design withOil(Oil oil) {
        OilLubricant other = new OilLubricant(oil.shifted(oilShift));
        return with(new SharedModel(other, shared.engine()), pack, mediumResistance, filter);
    }

    /** So many times the resistance of the pack with its dirt [1], above 0, whatever brings it about. */
    public Design withPackResistance(double factor) {
        return new Design(shared, candidate, pack, mediumResistance, filter, oilShift, load, packFactor * factor);
    }

    /** With dirt in the medium, the same mass whatever the area. */
    public Design withLoad(DirtLoad dirt) {
        return new Design(shared, candidate, pack, mediumResistance, filter, oilShift, Optional.of(dirt), packFactor);
    }

    private Design with(SharedModel otherShared, PackModel otherPack, double resistance, FilterAssembly otherFilter) {
        return new Design(otherShared, candidate, otherPack, resistance, otherFilter, oilShift, load, packFactor);
    }

    /** True if the channels of the pleats are known, so that the pleat count can be changed. */
    public boolean hasPleats() {
        return pack instanceof PleatPack pleats
                && pleats.geometry().inletPitch() > pleats.geometry().outletPitch();
    }

    /** Number of pleats [1], if their channels are known. */
    public OptionalDouble pleats() {
        return pack instanceof PleatPack pleats ? OptionalDouble.of(pleats.pleatCount()) : OptionalDouble.empty();
    }

    /** Unfolded medium, one side, of the filter as measured [m2]. */
    public double grossArea() {
        return candidate.grossArea();
    }

    /** Share of the unfolded medium of the filter as measured that no cap or glue bead hides [1]. */
    public double freeShare() {
        return candidate.freeShare();
    }

    /** Medium that the oil passes [m2]. */
    public double effectiveArea() {
        return pack.solve(mediumResistance).effectiveArea();
    }

    /** Resistance of the clean medium [1/m]. */
    public double mediumResistance() {
        return mediumResistance;
    }

    /** Share of the pleat depth over which the legs fill the pitch [1]. */
    public double crowdedShare() {
        return pack.solve(mediumResistance).crowdedShare();
    }

    /** Opening pressure of the filter's own valve, else of the valve in the block [Pa], if there is one. */
    public OptionalDouble openingPressure() {
        Optional<SpringValve> valve =
                filter.elementValve().or(() -> shared.engine().flatMap(EngineModel::blockValve));
        return valve.isPresent() ? OptionalDouble.of(valve.get().openingPressure()) : OptionalDouble.empty();
    }

    /** True if the opening pressure is that of a valve in the engine block. */
    public boolean opensInBlock() {
        return filter.elementValve().isEmpty()
                && shared.engine().flatMap(EngineModel::blockValve).isPresent();
    }

    /** How many times its clean resistance the medium has with its dirt [1]; infinite if plugged. */
    public double loadRatio() {
        return load.map(dirt -> dirt.ratio(effectiveArea())).orElse(1.0);
    }

    /** Resistance of the pack with its dirt [1/m3]; infinite if plugged. */
    public double packResistance() {
        double ratio = loadRatio();
        return Double.isInfinite(ratio) ? ratio : packFactor * pack.resistance(mediumResistance * ratio);
    }

    /** Viscosity of the oil at a temperature [Pa s]. */
    public double viscosity(double temperature) {
        return shared.oil().at(temperature).dynamicViscosity();
    }

    /** The filter of this design, clean, with the element of the filter as measured. */
    public FilterAssembly filter() {
        return filter;
    }

    /** The candidate with the valve and the dirt of this design. */
    public BuiltCandidate built() {
        return candidate.withFilter(filter.withElementResistance(packResistance()));
    }

    public SharedModel shared() {
        return shared;
    }
}

package org.coldpleat.model.change;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
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
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.typical.ModelConstant;
import org.coldpleat.model.valve.SpringValve;

/**
 * A candidate with a {@link CandidateChange} applied to it. Tests and evidence of the filter as it is say what its medium
 * is, and the changed filter has that medium. Immutable.
 */
public final class Design {
    private static final String OIL_SHIFT = "oil.coldCurve";

    private final SharedModel sharedAsIs;
    private final BuiltCandidate candidate;
    private final double oilShift;
    private final CandidateChange change;
    private final SharedModel shared;
    private final PackModel pack;
    private final double mediumResistance;
    private final FilterAssembly filter;

    private Design(SharedModel sharedAsIs, BuiltCandidate candidate, double oilShift, CandidateChange change) {
        this.sharedAsIs = sharedAsIs;
        this.candidate = candidate;
        this.oilShift = oilShift;
        this.change = change;
        mediumResistance = candidate.mediumResistance() * change.mediumResistance() * change.thickness();
        pack = pack();
        FilterAssembly held = change.shell().map(this::heldBy).orElse(candidate.filter());
        Optional<SpringValve> own = held.elementValve();
        filter = own.isPresent() ? valved(held, own.get()) : held;
        if (own.isEmpty() && change.valvePlace().isPresent()) {
            throw new IllegalArgumentException("valvePlace needs a valve in the filter, there is none");
        }
        shared = shared(own.isEmpty() && change.opening() != 1);
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
        return new Design(shared, built, shift, CandidateChange.NONE);
    }

    /**
     * The candidate with another change, made from the present one.
     *
     * @throws IllegalArgumentException if no filter can be changed so
     */
    public Design changed(UnaryOperator<CandidateChange> next) {
        return new Design(sharedAsIs, candidate, oilShift, next.apply(change));
    }

    private PackModel pack() {
        if (!(candidate.packModel() instanceof PleatPack pleats)) {
            if (change.pleatCount().isPresent()) {
                throw new IllegalArgumentException("the sheet must give the channels of the pleats, does not");
            }
            return change.area() == 1
                    ? candidate.packModel()
                    : new FlatPack(candidate
                                    .packModel()
                                    .solve(candidate.mediumResistance())
                                    .effectiveArea()
                            * change.area());
        }
        PleatPack next = pleats;
        if (change.pleatCount().isPresent()) {
            next = next.withPleatCount(change.pleatCount().getAsInt());
        }
        if (change.thickness() != 1) {
            next = next.thicker(change.thickness(), thickFolds());
        }
        return change.area() == 1
                ? next
                : switch (change.areaBy()) {
                    case TALLER_PLEATS -> next.taller(change.area());
                    case DEEPER_PLEATS -> next.deeper(change.area());
                    case MORE_PLEATS -> next.withPleatCount((int) Math.round(next.pleatCount() * change.area()));
                };
    }

    /** Area left beside the folds of a strip of another thickness, over that of the present one [1]. */
    private double thickFolds() {
        return (1 - candidate.foldShare() * change.thickness()) / (1 - candidate.foldShare());
    }

    /** The pack in another shell; where both filters have a valve of their own, set as in this one. */
    private FilterAssembly heldBy(FilterAssembly shell) {
        FilterAssembly held = shell.withElementResistance(candidate.filter().elementResistance());
        return held.elementValve()
                .flatMap(valve -> candidate
                        .filter()
                        .elementValve()
                        .map(own -> held.withBypass(
                                held.elementValveLocation(), valve.withOpeningPressure(own.openingPressure()))))
                .orElse(held);
    }

    private FilterAssembly valved(FilterAssembly as, SpringValve own) {
        return change.opening() == 1 && change.valvePlace().isEmpty()
                ? as
                : as.withBypass(change.valvePlace().orElse(as.elementValveLocation()), set(own, change.opening()));
    }

    private SharedModel shared(boolean blockSet) {
        if (!blockSet && change.oil().isEmpty()) {
            return sharedAsIs;
        }
        Optional<EngineModel> engine = blockSet
                ? Optional.of(withBlockValve(sharedAsIs.engine().orElseThrow(), change.opening()))
                : sharedAsIs.engine();
        return change.oil().isPresent()
                ? new SharedModel(new OilLubricant(change.oil().get().shifted(oilShift)), engine)
                : new SharedModel(sharedAsIs.oil(), engine);
    }

    private static EngineModel withBlockValve(EngineModel engine, double factor) {
        return engine.withBlockValve(engine.blockValve().map(valve -> set(valve, factor)));
    }

    private static SpringValve set(SpringValve valve, double factor) {
        return factor == 1 ? valve : valve.withOpeningPressure(valve.openingPressure() * factor);
    }

    /** The typical oil of a grade, on its curve. */
    public static Oil typicalOil(SaeGrade grade) {
        return OilResolver.resolve(OilSpec.ofGrade(grade.label(), grade)).orThrow();
    }

    /** What is changed. */
    public CandidateChange change() {
        return change;
    }

    /** A state of the case with the speed or flow that this design has there. */
    public OperatingState operatingState(OperatingState as) {
        Double factor = change.drives().get(as.name());
        return factor == null ? as : as.withDrive(as.drive() * factor);
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

    /** Unfolded medium, one side [m2]; by taller pleats what caps hide stays, by deeper ones what folds take. */
    public double grossArea() {
        double pleats = change.pleatCount().isPresent() && candidate.packModel() instanceof PleatPack as
                ? change.pleatCount().getAsInt() / as.geometry().pleatCount()
                : 1;
        return candidate.grossArea() * pleats * (1 + growingShare() * (change.area() - 1));
    }

    /** Share of the unfolded medium that grows with the area the oil passes [1]. */
    private double growingShare() {
        return switch (change.areaBy()) {
            case TALLER_PLEATS -> candidate.freeShare();
            case DEEPER_PLEATS -> 1 - candidate.foldShare();
            case MORE_PLEATS -> 1;
        };
    }

    /** Share of the unfolded medium of the filter as measured that no cap or glue bead hides [1]. */
    public double freeShare() {
        return candidate.freeShare();
    }

    /** Share of the strip of the filter as measured that its folds take [1]; 0 if the strip was not measured. */
    public double foldShare() {
        return candidate.foldShare();
    }

    /** Medium that the oil passes [m2]. */
    public double effectiveArea() {
        return pack.effectiveArea();
    }

    /** Resistance of the clean medium [1/m]. */
    public double mediumResistance() {
        return mediumResistance;
    }

    /** Share of the pleat depth over which the legs fill the pitch [1]. */
    public double crowdedShare() {
        return pack.summary(mediumResistance).crowdedShare();
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
        return change.load().map(dirt -> dirt.ratio(effectiveArea())).orElse(1.0);
    }

    /** Resistance of the pack with its dirt [1/m3]; infinite if plugged. */
    public double packResistance() {
        double ratio = loadRatio();
        return Double.isInfinite(ratio) ? ratio : change.pack() * pack.resistance(mediumResistance * ratio);
    }

    /** Viscosity of the oil at a temperature [Pa s]. */
    public double viscosity(double temperature) {
        return shared.oil().at(temperature).dynamicViscosity();
    }

    /** The filter of this design, clean, with the element of the filter as measured. */
    public FilterAssembly filter() {
        return filter;
    }

    /** The changed candidate, with its dirt in the way. */
    public BuiltCandidate built() {
        return change.equals(CandidateChange.NONE)
                ? candidate
                : candidate.changed(
                        filter.withElementResistance(packResistance()),
                        pack,
                        mediumResistance,
                        grossArea(),
                        change.thickness());
    }

    public SharedModel shared() {
        return shared;
    }

    /** The case with this design in the place of the candidate: every question can be put to it. */
    public ResolvedCase in(ResolvedCase resolved, int position) {
        return resolved.changed(position, new ResolvedCase.Changed() {
            @Override
            public SharedModel shared(SharedModel as, Map<String, Double> moved) {
                return again(as, candidate, moved).shared();
            }

            @Override
            public BuiltCandidate candidate(BuiltCandidate as) {
                return again(sharedAsIs, as, Map.of()).built();
            }

            @Override
            public OperatingState operatingState(OperatingState as) {
                return Design.this.operatingState(as);
            }
        });
    }

    private Design again(SharedModel as, BuiltCandidate built, Map<String, Double> moved) {
        return of(as, built, moved).changed(none -> change);
    }
}

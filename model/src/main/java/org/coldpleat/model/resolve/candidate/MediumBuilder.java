package org.coldpleat.model.resolve.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.evidence.AirTestEvidence;
import org.coldpleat.model.evidence.EvidenceCombination;
import org.coldpleat.model.evidence.EvidenceKind;
import org.coldpleat.model.evidence.Ingredient;
import org.coldpleat.model.evidence.PoreEvidence;
import org.coldpleat.model.evidence.ResistanceEvidence;
import org.coldpleat.model.evidence.StructureEvidence;
import org.coldpleat.model.medium.BasisWeight;
import org.coldpleat.model.medium.FiberFamily;
import org.coldpleat.model.medium.Solidity;
import org.coldpleat.model.pleat.PackCurve;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Gathers what a sheet says about the medium: thickness, basis weight, solidity, and all evidence for its resistance. */
final class MediumBuilder {
    /** Temperature of the air if a test does not say [K]. */
    @Source("ISO 139:2005, standard atmosphere 20 degrees C (from memory)")
    private static final double ROOM = 293.15;

    private final Section medium;
    private final Inputs inputs;
    private final Optional<FiberFamily> family;
    private final BenchEvidence bench;

    MediumBuilder(Section medium, Inputs inputs, BenchEvidence bench) {
        this.medium = medium;
        this.bench = bench;
        this.inputs = inputs;
        family = medium.choice("family").map(FamilyWord::family);
    }

    /** Thickness [m]: read, or the typical one of the family where asked for, or where the pleats need one. */
    Optional<Measured> thickness() {
        Optional<Measured> read = inputs.measured(medium, "thickness");
        return read.isPresent()
                ? read
                : typical("thickness", family.map(one -> one.typical().thickness()));
    }

    /** Basis weight [kg/m2]: read, from a dried piece, from the whole dried medium, or typical where asked for. */
    Optional<Measured> basisWeight(OptionalDouble grossArea) {
        Optional<Measured> read = inputs.folded(medium, "basisWeight");
        if (read.isPresent()) {
            return read;
        }
        Optional<Section> sample = medium.section("sample");
        if (sample.isPresent() && has(sample.get(), "mass", "length", "width")) {
            Measured mass = inputs.folded(sample.get(), "mass").orElseThrow();
            Measured length = inputs.folded(sample.get(), "length").orElseThrow();
            Measured width = inputs.folded(sample.get(), "width").orElseThrow();
            return Optional.of(product(
                    Kind.BASIS_WEIGHT,
                    BasisWeight.of(mass.value(), length.value(), width.value()),
                    mass,
                    length,
                    width));
        }
        Optional<Measured> whole = inputs.folded(medium, "mass");
        if (whole.isPresent() && grossArea.isPresent()) {
            return Optional.of(product(Kind.BASIS_WEIGHT, whole.get().value() / grossArea.getAsDouble(), whole.get()));
        }
        return typicalIfAsked("basisWeight", family.map(one -> one.typical().basisWeight()));
    }

    /** Density of fiber and binder together [kg/m3]: read, or what is typical of the family. */
    Optional<Measured> fiberDensity() {
        Optional<Measured> read = inputs.folded(medium, "fiberDensity");
        return read.isPresent() ? read : family.map(one -> one.typical().fiberDensity());
    }

    /** Share of fibers in the volume of the sheet [1], if it can be known. */
    Optional<Measured> solidity(Optional<Measured> basisWeight, Optional<Measured> thickness) {
        Optional<Measured> density = fiberDensity();
        if (basisWeight.isEmpty() || thickness.isEmpty() || density.isEmpty()) {
            return Optional.empty();
        }
        double share = basisWeight.get().value()
                / (density.get().value() * thickness.get().value());
        if (!(share > 0 && share < 1)) {
            return Optional.empty();
        }
        return Optional.of(product(
                Kind.FRACTION,
                Solidity.of(
                        basisWeight.get().value(),
                        density.get().value(),
                        thickness.get().value()),
                basisWeight.get(),
                density.get(),
                thickness.get()));
    }

    /**
     * Evidence from rigs, carried from the pack to the medium by the geometry of this build.
     *
     * @param evidence one for each rig
     * @param ownLnSigma standard uncertainty of ln R of each without what the geometry adds [1]
     */
    private record Rigs(List<ResistanceEvidence> evidence, List<Double> ownLnSigma) {}

    private Rigs rigs(PackCurve pack, Optional<Double> near) {
        List<ResistanceEvidence> evidence = new ArrayList<>();
        List<Double> own = new ArrayList<>();
        for (BenchEvidence.Rig rig : bench.rigs()) {
            PackInverse.Medium found = PackInverse.of(
                    pack, rig.packResistance(), near.orElse(rig.packResistance() * pack.effectiveArea()));
            double ownLnSigma = Math.max(ResistanceEvidence.LEAST_LN_SIGMA, rig.lnSigma() / found.slope());
            double whole = Math.hypot(ownLnSigma, rig.geometryLnSigma() / found.slope());
            evidence.add(new ResistanceEvidence(
                    rig.kind(),
                    rig.label(),
                    found.mediumResistance(),
                    whole,
                    List.of(
                            new Ingredient("packResistance", Kind.LAMINAR_RESISTANCE, rig.packResistance()),
                            new Ingredient("channelSlope", Kind.RATIO, found.slope()))));
            own.add(ownLnSigma);
        }
        return new Rigs(evidence, own);
    }

    /**
     * Knowledge of the medium resistance.
     *
     * @param combination all evidence put together
     * @param ownLnSigma standard uncertainty of ln R [1] without the part that area and channels bring through tests of
     *     the whole filter: that part follows the geometry and cancels in the pack
     * @param sheet evidence for the sheet alone, where there are tests of the whole filter beside it
     */
    record Resistance(EvidenceCombination combination, double ownLnSigma, Optional<EvidenceCombination> sheet) {}

    /**
     * All evidence put together; empty if the sheet has none and names no family. Where rigs stand beside evidence for the
     * sheet, the pack is drawn to what they read, and what that says of the medium need not be found again for each build.
     *
     * @param weighed what was put together with nothing moved, for a build that moves something
     */
    Optional<Resistance> resistance(
            Optional<Measured> basisWeight,
            Optional<Measured> thickness,
            PackCurve pack,
            Optional<EvidenceCombination> weighed) {
        List<ResistanceEvidence> alone = alone(basisWeight, thickness);
        if (weighed.isPresent() && !alone.isEmpty() && !bench.rigs().isEmpty()) {
            return Optional.of(new Resistance(
                    weighed.get(), weighed.get().lnSigma(), Optional.of(EvidenceCombination.combine(alone))));
        }
        Rigs rigs = rigs(pack, weighed.map(EvidenceCombination::median));
        List<ResistanceEvidence> evidence = new ArrayList<>(rigs.evidence());
        evidence.addAll(alone);
        if (evidence.isEmpty()) {
            family.ifPresent(one -> {
                ResistanceEvidence typical = ResistanceEvidence.ofFamily(one);
                inputs.noteAssumption(
                        medium.pathOf("resistance"),
                        Measured.factor(
                                Kind.MEDIUM_RESISTANCE, typical.median(), typical.lnSigma(), Provenance.TYPICAL),
                        "assumption.familyResistance");
                evidence.add(typical);
            });
        }
        if (evidence.isEmpty()) {
            return Optional.empty();
        }
        EvidenceCombination combination = EvidenceCombination.combine(evidence);
        return Optional.of(new Resistance(
                combination,
                own(combination, rigs),
                rigs.evidence().isEmpty() || alone.isEmpty()
                        ? Optional.empty()
                        : Optional.of(EvidenceCombination.combine(alone))));
    }

    /** Evidence for the sheet without the whole filter. */
    private List<ResistanceEvidence> alone(Optional<Measured> basisWeight, Optional<Measured> thickness) {
        List<ResistanceEvidence> evidence = new ArrayList<>(bench.sheets());
        bubbles(basisWeight, thickness).ifPresent(evidence::add);
        inputs.folded(medium, "resistance")
                .ifPresent(value -> evidence.add(ResistanceEvidence.of(EvidenceKind.STATED, "", value)));
        medium.section("flowBench")
                .flatMap(section -> inputs.folded(section, "resistance"))
                .ifPresent(value -> evidence.add(ResistanceEvidence.of(EvidenceKind.FLOW_BENCH, "", value)));
        Optional<Measured> permeability = inputs.folded(medium, "permeability");
        if (permeability.isPresent() && thickness.isPresent()) {
            evidence.add(ResistanceEvidence.ofPermeability("", permeability.get(), thickness.get()));
        }
        layers().ifPresent(value -> evidence.add(ResistanceEvidence.of(EvidenceKind.STATED, "layers", value)));
        airTest(thickness).ifPresent(evidence::add);
        structure(basisWeight, thickness).ifPresent(evidence::add);
        return evidence;
    }

    private static double own(EvidenceCombination combination, Rigs rigs) {
        double whole = 0;
        double own = 0;
        for (int i = 0; i < combination.members().size(); i++) {
            ResistanceEvidence member = combination.members().get(i);
            double weight = combination.weights().get(i);
            int rig = rigs.evidence().indexOf(member);
            double sigma = rig < 0 ? member.lnSigma() : rigs.ownLnSigma().get(rig);
            whole += weight * weight * member.lnSigma() * member.lnSigma();
            own += weight * weight * sigma * sigma;
        }
        return combination.lnSigma() * Math.sqrt(own / whole);
    }

    private Optional<ResistanceEvidence> bubbles(Optional<Measured> basisWeight, Optional<Measured> thickness) {
        Optional<Measured> share = solidity(basisWeight, thickness);
        if (bench.largestHole().isEmpty() || share.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                PoreEvidence.ofBubblePoint("", bench.largestHole().get(), share.get(), thickness.orElseThrow()));
    }

    private Optional<Measured> layers() {
        double sum = 0;
        double square = 0;
        Provenance weakest = Provenance.MEASURED;
        for (Section layer : medium.sections("layers")) {
            Measured one = inputs.folded(layer, "resistance").orElseThrow();
            sum += one.value();
            square += one.standardUncertainty() * one.standardUncertainty();
            weakest = one.provenance().compareTo(weakest) > 0 ? one.provenance() : weakest;
        }
        return sum > 0
                ? Optional.of(Measured.factor(Kind.MEDIUM_RESISTANCE, sum, Math.sqrt(square) / sum, weakest))
                : Optional.empty();
    }

    private Optional<ResistanceEvidence> airTest(Optional<Measured> thickness) {
        Optional<Section> test = medium.section("airTest");
        if (test.isEmpty() || !test.get().has("pressure")) {
            return Optional.empty();
        }
        Optional<Measured> velocity = inputs.folded(test.get(), "velocity");
        if (velocity.isEmpty() && has(test.get(), "flow", "area")) {
            Measured flow = inputs.folded(test.get(), "flow").orElseThrow();
            Measured area = inputs.folded(test.get(), "area").orElseThrow();
            velocity = Optional.of(product(Kind.FACE_VELOCITY, flow.value() / area.value(), flow, area));
        }
        Measured pressure = inputs.folded(test.get(), "pressure").orElseThrow();
        double temperature =
                inputs.folded(test.get(), "temperature").map(Measured::value).orElse(ROOM);
        return velocity.map(value -> AirTestEvidence.of(
                "",
                pressure,
                value,
                temperature,
                OptionalDouble.empty(),
                thickness.isPresent() ? OptionalDouble.of(thickness.get().value()) : OptionalDouble.empty()));
    }

    private Optional<ResistanceEvidence> structure(Optional<Measured> basisWeight, Optional<Measured> thickness) {
        Optional<Measured> diameter = inputs.folded(medium, "fiberDiameter").or(bench::fiberDiameter);
        if (diameter.isEmpty()) {
            diameter = typicalIfAsked(
                    "fiberDiameter", family.map(one -> one.typical().effectiveFiberDiameter()));
        }
        if (diameter.isEmpty() || solidity(basisWeight, thickness).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(StructureEvidence.ofSheet(
                "", basisWeight.orElseThrow(), fiberDensity().orElseThrow(), diameter.get(), thickness.orElseThrow()));
    }

    /** The typical value where the sheet asks for it by name or leaves the thickness out. */
    private Optional<Measured> typical(String key, Optional<Measured> value) {
        return value.map(one -> inputs.assumed(
                medium.pathOf(key),
                one,
                medium.typicalAsked(key) ? "assumption.typicalAsked" : "assumption.typicalNeeded"));
    }

    private Optional<Measured> typicalIfAsked(String key, Optional<Measured> value) {
        if (!medium.typicalAsked(key) || value.isEmpty()) {
            return Optional.empty();
        }
        inputs.noteAssumption(medium.pathOf(key), value.get(), "assumption.typicalAsked");
        return value;
    }

    private static boolean has(Section section, String... keys) {
        for (String key : keys) {
            if (!section.has(key)) {
                return false;
            }
        }
        return true;
    }

    /** A value made of factors that are known independently of each other. */
    private static Measured product(Kind kind, double value, Measured... factors) {
        double square = 0;
        Provenance weakest = Provenance.MEASURED;
        for (Measured factor : factors) {
            double relative = factor.standardUncertainty() / factor.value();
            square += relative * relative;
            weakest = factor.provenance().compareTo(weakest) > 0 ? factor.provenance() : weakest;
        }
        return Measured.exact(kind, value, weakest).withSpread(value * Math.sqrt(square), Spread.NORMAL);
    }
}

package org.coldpleat.model.resolve.candidate;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.ScaleTest;
import org.coldpleat.model.evidence.EvidenceKind;
import org.coldpleat.model.evidence.ResistanceEvidence;
import org.coldpleat.shared.quantity.Measured;

/**
 * What the tests of a candidate give, evaluated once.
 *
 * @param rigs tests of the whole filter or element, which know the pack and leave the medium to the geometry
 * @param sheets tests of a piece of the sheet
 * @param largestHole [m], if bubbles were watched
 * @param fiberDiameter [m], if fibers were marked
 * @param scale opening pressure and spring rate, if the valve was pushed
 * @param reports all tests, in the order of the catalog
 */
public record BenchEvidence(
        List<Rig> rigs,
        List<ResistanceEvidence> sheets,
        Optional<Measured> largestHole,
        Optional<Measured> fiberDiameter,
        Optional<ScaleTest.Result> scale,
        List<TestReport> reports) {
    public static final BenchEvidence NONE =
            new BenchEvidence(List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    public BenchEvidence {
        rigs = List.copyOf(rigs);
        sheets = List.copyOf(sheets);
        reports = List.copyOf(reports);
    }

    /**
     * A pack resistance read on a rig.
     *
     * @param kind of evidence
     * @param label which one; empty if there is only one of its kind
     * @param packResistance pressure drop over viscosity and flow of the pack alone [1/m3]
     * @param lnSigma relative standard uncertainty of it [1]
     * @param geometryLnSigma what area and channels add on the way to the medium [1]; it returns with the opposite sign on
     *     the way back, so it must not count twice
     */
    public record Rig(EvidenceKind kind, String label, double packResistance, double lnSigma, double geometryLnSigma) {}
}

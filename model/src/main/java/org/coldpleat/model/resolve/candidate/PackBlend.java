package org.coldpleat.model.resolve.candidate;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.evidence.EvidenceCombination;
import org.coldpleat.model.evidence.ValueCombination;
import org.coldpleat.model.pleat.PackCurve;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Puts what rigs read of the pack itself together with what area, channels and the evidence for the sheet make of it. A
 * rig knows the pack whatever its channels are, so it narrows the pack even where it says little of the medium. Every
 * build, moved or not, is drawn toward the reading by the same share; with the error of the reading as an unknown of its
 * own the builds then have the spread that they must have.
 *
 * @param share of the way from the computed to the read pack resistance, in logarithms [1]
 * @param reading combined reading of the rigs [1/m3], its error widened if it contradicts the sheet
 */
@Source("conditioning by kriging of a Gaussian: Matheron; gain of R. E. Kalman 1960, J. Basic Eng. 82:35 (from memory)")
@Validity("logarithms nearly linear in the unknowns and nearly normal")
record PackBlend(double share, Measured reading) {
    /** Path below a candidate under which the error of the reading is known as an unknown. */
    static final String READING = "tests.packReading";

    /** The blend for rigs and the evidence for the sheet alone. */
    static PackBlend of(List<BenchEvidence.Rig> rigs, EvidenceCombination sheet, PackCurve pack) {
        List<ValueCombination.Member> members = new ArrayList<>();
        double geometry = 0;
        for (BenchEvidence.Rig rig : rigs) {
            members.add(new ValueCombination.Member(
                    rig.kind().name() + rig.label(),
                    Measured.factor(
                            Kind.LAMINAR_RESISTANCE, rig.packResistance(), rig.lnSigma(), Provenance.MEASURED)));
            geometry = Math.max(geometry, rig.geometryLnSigma());
        }
        Measured read =
                ValueCombination.combine(Kind.LAMINAR_RESISTANCE, members).value();
        PackCurve.Point computed = pack.at(sheet.median());
        double ahead = Math.pow(computed.slope() * sheet.lnSigma(), 2) + geometry * geometry;
        double error = read.halfWidth() * read.halfWidth();
        double share = ahead / (ahead + error);
        double gap = Math.abs(Math.log(read.value() / computed.resistance()));
        double widened = read.halfWidth();
        if (gap > COVERAGE_95 * Math.sqrt(ahead + error)) {
            // conflict: the 95 % band reaches one standard uncertainty beyond both, so that neither is averaged away
            double reach = Math.max(share * gap + Math.sqrt(ahead), (1 - share) * gap + read.halfWidth());
            double wanted = Math.pow(reach / COVERAGE_95, 2) - Math.pow(1 - share, 2) * ahead;
            widened = Math.max(widened, Math.sqrt(Math.max(0, wanted)) / share);
        }
        return new PackBlend(
                share, Measured.factor(Kind.LAMINAR_RESISTANCE, read.value(), widened, Provenance.MEASURED));
    }

    /**
     * Pack resistance of a build [1/m3].
     *
     * @param computed what area, channels and medium make of it [1/m3]
     * @param read what the rigs read, moved by its error [1/m3]
     */
    double resistance(double computed, double read) {
        return Math.exp((1 - share) * Math.log(computed) + share * Math.log(read));
    }
}

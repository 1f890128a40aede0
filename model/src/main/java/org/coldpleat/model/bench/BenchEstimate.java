package org.coldpleat.model.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/**
 * What a bench test says.
 *
 * @param status whether the value may be used
 * @param value the estimate; empty if refused
 * @param corrections named steps, in the order taken
 * @param conflicts numbers of the readings, from 0, that disagree with the rest
 * @param notices findings
 */
public record BenchEstimate(
        Status status,
        Optional<Measured> value,
        List<Correction> corrections,
        List<Integer> conflicts,
        List<Notice> notices) {
    public BenchEstimate {
        Objects.requireNonNull(status, "status");
        Objects.requireNonNull(value, "value");
        if (value.isEmpty() != (status == Status.REFUSED)) {
            throw new IllegalArgumentException("a refused test has no value, any other has one; was " + status);
        }
        corrections = List.copyOf(corrections);
        conflicts = List.copyOf(conflicts);
        notices = List.copyOf(notices);
    }

    /** Whether and how far an estimate may be used. */
    public enum Status {
        /** The readings carry the estimate. */
        USABLE,
        /** Something that should have been read was allowed for instead; the uncertainty is wider for it. */
        WIDENED,
        /** The readings do not give an estimate. */
        REFUSED
    }

    /** A test without a result. */
    static BenchEstimate refused(List<Notice> notices) {
        return new BenchEstimate(Status.REFUSED, Optional.empty(), List.of(), List.of(), notices);
    }

    /** An estimate known within a factor, its uncertainty the root sum of squares of its corrections. */
    static BenchEstimate ofFactor(
            Status status,
            Kind kind,
            double value,
            int repeats,
            List<Correction> corrections,
            List<Integer> conflicts,
            List<Notice> notices) {
        double squares =
                corrections.stream().mapToDouble(c -> c.lnSigma() * c.lnSigma()).sum();
        Measured measured = Measured.factor(kind, value, Math.sqrt(squares), Provenance.MEASURED);
        Measured counted =
                new Measured(kind, value, measured.halfWidth(), measured.spread(), Provenance.MEASURED, repeats, "");
        return new BenchEstimate(status, Optional.of(counted), corrections, conflicts, notices);
    }

    /** Size of a named correction [1]; empty if it was not made. */
    public Optional<Correction> correction(String name) {
        return corrections.stream().filter(c -> c.name().equals(name)).findFirst();
    }
}

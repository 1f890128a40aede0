package org.coldpleat.ui.service;

import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.change.CandidateChange;
import org.coldpleat.model.loading.service.Loading;
import org.coldpleat.model.steady.Trial;

/**
 * Tries values out on candidates, quickly enough to follow a slider: what does not change from one move to the next is
 * kept, such as the candidate as it stands, the case with what was moved, and how its element loads. For one thread at a
 * time.
 */
public final class Trials {
    private Optional<Stands> stands = Optional.empty();
    private Optional<Moved> moved = Optional.empty();
    private Optional<Loaded> loaded = Optional.empty();

    /** A candidate as it stands in its case. */
    private record Stands(OpenedCase opened, Trial.Request request, Trial trial) {}

    /** A case with something moved; empty if there is no such filter. */
    private record Moved(OpenedCase before, String candidate, CandidateChange change, Optional<OpenedCase> after) {}

    /** How a candidate loads. */
    private record Loaded(OpenedCase opened, String candidate, double horizon, Optional<Loading> loading) {}

    /**
     * One candidate in one state without bands, as it stands and with something moved, clean or after a time in service.
     *
     * @param change what was moved on the candidate
     * @param candidate name of a candidate of the case, which keeps its name
     * @param state name of a state of the case
     * @param temperature oil temperature [K]
     * @param inService running time behind the moved candidate [s], at least 0
     */
    public TriedOut out(
            OpenedCase opened,
            CandidateChange change,
            String candidate,
            String state,
            double temperature,
            double inService) {
        Trial before = asItStands(opened, new Trial.Request(candidate, state, temperature, 1));
        Optional<OpenedCase> changed =
                change.equals(CandidateChange.NONE) ? Optional.of(opened) : moved(opened, candidate, change);
        Optional<Trial> after = changed.flatMap(one -> {
            OptionalDouble ratio = inService == 0 ? OptionalDouble.of(1) : packRatio(one, candidate, inService);
            return ratio.isEmpty()
                    ? Optional.empty()
                    : Optional.of(one.trial(
                                    new Trial.Request(candidate, state, temperature, Math.max(1, ratio.getAsDouble())))
                            .now());
        });
        return new TriedOut(before, after, changed.isPresent());
    }

    private Trial asItStands(OpenedCase opened, Trial.Request request) {
        Optional<Stands> known =
                stands.filter(one -> one.opened() == opened && one.request().equals(request));
        if (known.isEmpty()) {
            stands = Optional.of(
                    new Stands(opened, request, opened.trial(request).now()));
        }
        return stands.orElseThrow().trial();
    }

    private Optional<OpenedCase> moved(OpenedCase before, String candidate, CandidateChange change) {
        Optional<Moved> known = moved.filter(one -> one.before() == before
                && one.candidate().equals(candidate)
                && one.change().equals(change));
        if (known.isEmpty()) {
            moved = Optional.of(new Moved(before, candidate, change, before.changed(candidate, change)));
        }
        return moved.orElseThrow().after();
    }

    private OptionalDouble packRatio(OpenedCase opened, String candidate, double inService) {
        Optional<Loaded> known = loaded.filter(
                one -> one.opened() == opened && one.candidate().equals(candidate) && one.horizon() >= inService);
        if (known.isEmpty()) {
            double horizon = loaded.filter(one -> one.opened() == opened)
                    .map(one -> Math.max(inService, 2 * one.horizon()))
                    .orElse(inService);
            loaded = Optional.of(new Loaded(opened, candidate, horizon, opened.loading(candidate, horizon)));
        }
        Optional<Loading> loading = loaded.orElseThrow().loading();
        return loading.isEmpty() ? OptionalDouble.empty() : loading.get().packRatioAfter(inService);
    }
}

package org.coldpleat.model.oil;

import java.util.List;
import java.util.Objects;
import org.coldpleat.shared.notice.Notice;

/** Outcome of {@link OilResolver#resolve}: an oil with its findings, or the reason why there is none. */
public sealed interface OilResult {
    /**
     * An oil to compute with.
     *
     * @param oil the oil
     * @param notices findings that go with it at any temperature
     */
    record Resolved(Oil oil, List<Notice> notices) implements OilResult {
        public Resolved {
            Objects.requireNonNull(oil, "oil");
            notices = List.copyOf(notices);
        }
    }

    /**
     * No oil.
     *
     * @param fault why
     * @param anchors positions in {@link OilSpec#anchors} of the points at fault; empty if it is none of them
     * @param values values for the placeholders of the text of the fault, with their units
     */
    record Refused(OilFault fault, List<Integer> anchors, List<String> values) implements OilResult {
        public Refused {
            Objects.requireNonNull(fault, "fault");
            anchors = List.copyOf(anchors);
            values = List.copyOf(values);
        }
    }

    /** The oil, for callers that know the points to be sound, such as tests and demonstrations. */
    default Oil orThrow() {
        if (this instanceof Resolved resolved) {
            return resolved.oil();
        }
        Refused refused = (Refused) this;
        throw new IllegalArgumentException("no oil: " + refused.fault().code() + " " + refused.values());
    }
}

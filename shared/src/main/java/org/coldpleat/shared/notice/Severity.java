package org.coldpleat.shared.notice;

/** How much a finding matters to the reader of a result. */
public enum Severity {
    /** Worth knowing; changes nothing. */
    INFO,
    /** The result stands, but rests on something the reader should look at. */
    WARNING,
    /** Someone could get hurt or an engine damaged if the result were acted on as it stands. */
    CAUTION
}

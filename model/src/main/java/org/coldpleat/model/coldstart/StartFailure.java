package org.coldpleat.model.coldstart;

/** Circuit or filter has no operating point where the integration wants one. */
final class StartFailure extends RuntimeException {
    private static final long serialVersionUID = 1;

    StartFailure(String status) {
        super(status, null, false, false);
    }
}

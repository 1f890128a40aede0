package org.coldpleat.validation.checks;

/**
 * One comparison as it ran.
 *
 * @param topic what it is about
 * @param quantity what is compared
 * @param source where the expected value comes from
 * @param test simple name of the test class
 * @param at which case of several, or empty
 * @param expected as printed
 * @param computed as printed
 * @param deviation as printed, or empty
 * @param tolerance as printed
 * @param reason why this tolerance
 * @param status holds, known miss, ...
 * @param severity deviation over tolerance; the largest of a set is shown
 */
record CheckRow(
        Topic topic,
        String quantity,
        String source,
        String test,
        String at,
        String expected,
        String computed,
        String deviation,
        String tolerance,
        String reason,
        Status status,
        double severity) {

    /** How a comparison ended. */
    enum Status {
        HOLDS("holds"),
        HOLDS_SET_AFTERWARDS("holds, tolerance set afterwards"),
        KNOWN_MISS("known miss"),
        FAILS("FAILS");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }
}

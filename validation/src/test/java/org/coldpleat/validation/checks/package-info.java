/** Checks against the outside world that keep a record of themselves, and the page written from the records. */
package org.coldpleat.validation.checks;

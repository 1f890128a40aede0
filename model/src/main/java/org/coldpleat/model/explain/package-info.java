/** The chain behind a number: what it was computed from, down to the bench sheet. */
package org.coldpleat.model.explain;

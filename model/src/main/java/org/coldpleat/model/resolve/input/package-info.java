/** How one build reads its numbers, with a ledger of what was uncertain and what was assumed. */
package org.coldpleat.model.resolve.input;

/** How sure an answer is: bands, chances, and what to measure next. */
package org.coldpleat.model.certainty;

/** The answer of a cold start and its reasons. */
package org.coldpleat.model.verdict.start;

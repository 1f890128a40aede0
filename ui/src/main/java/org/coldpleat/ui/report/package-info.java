/**
 * The report of a case: pure functions from results to one self-contained HTML document, and from that to PDF. Every
 * number carries its band and its origin; text of the case is data, never markup.
 */
package org.coldpleat.ui.report;

/** The sections of a report and the pieces they are made of. */
package org.coldpleat.ui.report.section;

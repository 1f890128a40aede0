/** Words and pages that the command line and the window share: units, digits, tables, the page of a comparison, chains of values. */
package org.coldpleat.ui.text;

/**
 * The command line: results on standard output, messages on standard error. This package and what it reaches never load
 * the window, and load the chart classes only when pictures are asked for.
 */
package org.coldpleat.ui.commandline;

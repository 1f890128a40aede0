/** The command that compares the candidates of a case. */
package org.coldpleat.ui.commandline.compare;

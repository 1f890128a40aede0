/** The commands about the case file itself: check it, take bench sheets in and out. */
package org.coldpleat.ui.commandline.casefile;

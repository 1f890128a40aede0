/** The command that works out chances and what to measure next. */
package org.coldpleat.ui.commandline.confidence;

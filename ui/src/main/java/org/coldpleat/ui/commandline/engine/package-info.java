/** The command {@code engine}: what stands in for an engine of which kind and size are known. */
package org.coldpleat.ui.commandline.engine;

/** Opening, keeping and bringing back files. */
package org.coldpleat.ui.desktop.view.file;

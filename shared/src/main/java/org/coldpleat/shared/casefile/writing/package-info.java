/** A case file that is being written: changes in its text, tables of bench sheets, and whole files on disk. */
package org.coldpleat.shared.casefile.writing;

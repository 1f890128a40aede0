/** The case file: its catalog of fields, the reader with its problems, and the document it gives. */
package org.coldpleat.shared.casefile;

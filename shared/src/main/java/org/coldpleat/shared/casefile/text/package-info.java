/** The text of a file taken apart: characters, YAML to a tree, cells of a table. */
package org.coldpleat.shared.casefile.text;

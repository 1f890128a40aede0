/** The catalog of fields, read from the JSON Schema, and the words of each field. */
package org.coldpleat.shared.casefile.catalog;

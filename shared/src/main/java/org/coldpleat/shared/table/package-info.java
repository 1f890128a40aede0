/** Comma-separated tables: read, written, and shipped as small resources beside a class. */
package org.coldpleat.shared.table;

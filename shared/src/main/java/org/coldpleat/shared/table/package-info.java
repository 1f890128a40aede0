/** Small tables of numbers shipped as comma-separated resources. */
package org.coldpleat.shared.table;

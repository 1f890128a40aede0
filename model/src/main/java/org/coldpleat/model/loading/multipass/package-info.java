/** The virtual multi-pass test. */
package org.coldpleat.model.loading.multipass;

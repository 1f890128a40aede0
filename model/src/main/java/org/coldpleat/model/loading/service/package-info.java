/** How an element loads in service. */
package org.coldpleat.model.loading.service;

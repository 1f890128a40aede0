/** What the tests of a sheet say, and what a further one would be worth. */
package org.coldpleat.model.certainty.measurement;

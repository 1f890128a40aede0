/**
 * Makes and tries the application image, in the profile {@code dist}: program, Java runtime, documents, demo cases,
 * manual pages and shell completion in one folder, and an archive of it with its checksum.
 */
package org.coldpleat.ui.dist;

package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LibrariesTest {
    /** The list is written by the build; it must not be that of an earlier one. */
    @Test
    void everyNamedLibraryIsOnTheClassPathInThatVersion() {
        String classPath = System.getProperty("java.class.path");
        List<String> named =
                Libraries.byLicense().values().stream().flatMap(Set::stream).toList();
        assertTrue(named.size() > 40, "named " + named.size());
        for (String library : named) {
            assertTrue(classPath.contains("/" + library.replace(' ', '-')), library);
        }
    }
}

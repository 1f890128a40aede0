package org.coldpleat.ui.desktop.viewmodel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window remembers. */
class WindowMemoryTest {
    @TempDir
    private Path folder;

    @Test
    void remembersFromOneStartToTheNext() throws IOException {
        WindowMemory memory = new WindowMemory(folder.resolve("state"));
        assertEquals("system", memory.word("look", "system"));
        memory.put("look", "dark");
        memory.put("width", 1440.5);
        memory.keep();
        WindowMemory next = new WindowMemory(folder.resolve("state"));
        assertEquals("dark", next.word("look", "system"));
        assertEquals(OptionalDouble.of(1440.5), next.number("width"));
    }

    @Test
    void whatIsBrokenIsForgotten() throws IOException {
        Files.write(folder.resolve("window"), new byte[] {'x', '=', (byte) 0xff, '\\', 'u', '1'});
        assertEquals("light", new WindowMemory(folder).word("x", "light"));
        Files.writeString(folder.resolve("window"), "width=NaN\nheight=tall\n");
        WindowMemory memory = new WindowMemory(folder);
        assertTrue(memory.number("width").isEmpty());
        assertTrue(memory.number("height").isEmpty());
    }

    @Test
    void systemsSayInTheirOwnWordsThatTheyAreDark() {
        assertTrue(SystemLook.saysDark("Linux", "'prefer-dark'\n"));
        assertFalse(SystemLook.saysDark("Linux", "'default'\n"));
        assertTrue(SystemLook.saysDark("Mac OS X", "Dark\n"));
        assertFalse(SystemLook.saysDark("Mac OS X", ""));
        assertTrue(SystemLook.saysDark("Windows 11", "    AppsUseLightTheme    REG_DWORD    0x0\r\n"));
        assertFalse(SystemLook.saysDark("Windows 11", "    AppsUseLightTheme    REG_DWORD    0x1\r\n"));
        assertEquals("gsettings", SystemLook.question("Linux").get(0));
    }
}

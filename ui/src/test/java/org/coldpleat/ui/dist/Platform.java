package org.coldpleat.ui.dist;

import java.util.Locale;

/**
 * The system that an image is made on and for.
 *
 * @param system {@code linux}, {@code macos} or {@code windows}
 * @param processor {@code x64}, {@code aarch64} or as Java names it
 */
record Platform(String system, String processor) {
    /** This machine. */
    static Platform here() {
        String name = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        String system = name.contains("windows") ? "windows" : name.contains("mac") ? "macos" : "linux";
        String processor = System.getProperty("os.arch", "");
        return new Platform(system, processor.equals("amd64") || processor.equals("x86_64") ? "x64" : processor);
    }

    boolean isWindows() {
        return system.equals("windows");
    }

    boolean isMac() {
        return system.equals("macos");
    }

    /** Name of the folder and the archive of an image. */
    String imageName(String version) {
        return "coldpleat-" + version + "-" + system + "-" + processor;
    }

    /** The launcher of that name inside the unpacked folder of an image. */
    String launcher(String name) {
        return isWindows() ? name + ".exe" : isMac() ? "coldpleat.app/Contents/MacOS/" + name : "bin/" + name;
    }
}

package org.coldpleat.ui.desktop.viewmodel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Asks the system whether it looks dark. */
public final class SystemLook {
    private static final long PATIENCE_SECONDS = 2;

    private SystemLook() {}

    /** True if the system says that it looks dark; false if it does not say. Takes a moment. */
    public static boolean isDark() {
        String system = System.getProperty("os.name", "");
        return saysDark(system, answer(question(system)));
    }

    /** The command that asks a system by its name. */
    static List<String> question(String system) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.contains("mac")) {
            return List.of("defaults", "read", "-g", "AppleInterfaceStyle");
        }
        return name.startsWith("windows")
                ? List.of(
                        "reg",
                        "query",
                        "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
                        "/v",
                        "AppsUseLightTheme")
                : List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme");
    }

    /** True if the answer of a system means dark. */
    static boolean saysDark(String system, String answer) {
        boolean windows = system.startsWith("Windows");
        return windows
                ? answer.strip().endsWith("0x0")
                : answer.toLowerCase(Locale.ROOT).contains("dark");
    }

    private static String answer(List<String> question) {
        try {
            Process process = new ProcessBuilder(question)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.getOutputStream().close();
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                process.destroy();
                return "";
            }
            return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}

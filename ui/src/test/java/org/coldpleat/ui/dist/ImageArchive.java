package org.coldpleat.ui.dist;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** The folder of an image as one file with a checksum beside it. */
final class ImageArchive {
    private ImageArchive() {}

    /**
     * Packs a folder with the {@code tar} that every system has: {@code .zip} for Windows, {@code .tar.gz} elsewhere.
     *
     * @param made the time that all files in it bear, where {@code tar} can set it
     */
    static Path pack(Path folder, Platform platform, String made) throws IOException, InterruptedException {
        String name = folder.getFileName().toString();
        Path archive = folder.resolveSibling(name + (platform.isWindows() ? ".zip" : ".tar.gz"));
        List<String> words = new ArrayList<>(List.of("tar"));
        if (platform.system().equals("linux")) {
            words.addAll(List.of(
                    "--sort=name", "--owner=0", "--group=0", "--numeric-owner", "--mtime=" + made, "--format=gnu"));
        }
        words.addAll(List.of(
                "-a", "-c", "-f", archive.toString(), "-C", folder.getParent().toString(), name));
        if (new ProcessBuilder(words).inheritIO().start().waitFor() != 0) {
            throw new IOException(archive + " could not be packed");
        }
        return archive;
    }

    /** Writes the SHA-256 sum of a file beside it, as {@code sha256sum -c} reads it. */
    static Path checksum(Path file) throws IOException {
        String line = sha256(file) + "  " + file.getFileName() + "\n";
        return Files.writeString(file.resolveSibling(file.getFileName() + ".sha256"), line);
    }

    /** The SHA-256 sum of a file in hexadecimal digits. */
    static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

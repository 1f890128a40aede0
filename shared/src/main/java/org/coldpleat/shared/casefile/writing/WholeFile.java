package org.coldpleat.shared.casefile.writing;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/** Writes files that are whole at every moment: the old one until the new one is complete on the disk. */
public final class WholeFile {
    private WholeFile() {}

    /** Writes what is to be in a file. */
    public interface Content {
        /**
         * Writes it.
         *
         * @param part an empty file
         * @throws IOException if it could not be written
         */
        void writeTo(Path part) throws IOException;
    }

    /**
     * Writes something in place of a file.
     *
     * @param file where to; its folder is made if there is none. Behind a link the file it names is written
     * @throws IOException if it could not be written; the old file is untouched then
     */
    public static void write(Path file, Content content) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new AccessDeniedException(target.toString());
        }
        if (!Files.isDirectory(target.getParent())) {
            Files.createDirectories(target.getParent());
        }
        Path part = Files.createTempFile(target.getParent(), "." + target.getFileName(), ".part");
        // also when the program is stopped while it writes
        part.toFile().deleteOnExit();
        try {
            content.writeTo(part);
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            sameRights(target, part);
            try {
                Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** A temporary file may be read by its owner only; the file it replaces may have been open to more. */
    private static void sameRights(Path old, Path part) throws IOException {
        PosixFileAttributeView now = Files.getFileAttributeView(part, PosixFileAttributeView.class);
        if (now == null) {
            return;
        }
        if (Files.exists(old)) {
            now.setPermissions(Files.getPosixFilePermissions(old));
        } else {
            now.setPermissions(PosixFilePermissions.fromString("rw-r--r--"));
        }
    }
}

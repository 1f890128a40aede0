package org.coldpleat.ui.dist;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Brings the class files of the command line's library to the format of Java 8, code unchanged. They are in that of Java
 * 5, which a class archive does not take: the classes would be read from the jar, verified and checked at each start.
 */
final class NewerClassFiles {
    private static final String LIBRARY = "picocli-";
    private static final String CLASSES = "picocli/";
    private static final Attributes.Name MARK = new Attributes.Name("Class-Files-Changed");
    private static final String CHANGE = "by Coldpleat: format of Java 8 with stack maps; code as it was";

    private NewerClassFiles() {}

    /**
     * Rewrites the jar of the library, unless it is rewritten already.
     *
     * @param words folder of the program
     */
    public static void main(String[] words) throws IOException {
        List<Path> jars;
        try (Stream<Path> files = Files.list(Path.of(words[0]))) {
            jars = files.filter(file -> file.getFileName().toString().startsWith(LIBRARY))
                    .toList();
        }
        for (Path jar : jars) {
            Path made = jar.resolveSibling(jar.getFileName() + ".part");
            if (rewrite(jar, made)) {
                Files.move(made, jar, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    /** Writes a changed copy of a jar; false, and nothing written, if it is one already. */
    static boolean rewrite(Path jar, Path copy) throws IOException {
        try (JarFile in = new JarFile(jar.toFile());
                URLClassLoader loader =
                        new URLClassLoader(new URL[] {jar.toUri().toURL()})) {
            var manifest = in.getManifest();
            if (manifest.getMainAttributes().putIfAbsent(MARK, CHANGE) != null) {
                return false;
            }
            try (OutputStream file = Files.newOutputStream(copy);
                    JarOutputStream out = new JarOutputStream(file, manifest)) {
                for (JarEntry entry : in.stream().toList()) {
                    if (!entry.getName().equals(JarFile.MANIFEST_NAME)) {
                        put(in, entry, out, loader);
                    }
                }
            }
            return true;
        }
    }

    private static void put(JarFile in, JarEntry entry, JarOutputStream out, ClassLoader loader) throws IOException {
        JarEntry copied = new JarEntry(entry.getName());
        copied.setTime(entry.getTime());
        out.putNextEntry(copied);
        try (InputStream content = in.getInputStream(entry)) {
            byte[] bytes = content.readAllBytes();
            boolean ours =
                    entry.getName().startsWith(CLASSES) && entry.getName().endsWith(".class");
            out.write(ours ? newer(bytes, loader) : bytes);
        }
        out.closeEntry();
    }

    private static byte[] newer(byte[] bytes, ClassLoader loader) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES) {
            @Override
            protected ClassLoader getClassLoader() {
                return loader;
            }
        };
        ClassVisitor raised = new ClassVisitor(Opcodes.ASM9, writer) {
            @Override
            public void visit(int version, int access, String name, String sign, String above, String[] faces) {
                super.visit(Opcodes.V1_8, access, name, sign, above, faces);
            }
        };
        new ClassReader(bytes).accept(raised, 0);
        return writer.toByteArray();
    }
}

package org.coldpleat.ui.dist;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.coldpleat.shared.source.Source;

/** The icon as each system wants it: the same PNG of 256 by 256 pixels, alone or in a wrapping. */
final class IconFile {
    private static final int HEAD = 22;

    private IconFile() {}

    /** An icon file of Windows with one picture in it. */
    @Source("Microsoft, The evolution of the ICO file format, part 4: PNG images (2010); from memory")
    static byte[] ico(byte[] png) {
        ByteBuffer file = ByteBuffer.allocate(HEAD + png.length).order(ByteOrder.LITTLE_ENDIAN);
        file.putShort((short) 0).putShort((short) 1).putShort((short) 1);
        // a width and height of 0 stand for 256; no palette; one plane of 32 bits
        file.put((byte) 0)
                .put((byte) 0)
                .put((byte) 0)
                .put((byte) 0)
                .putShort((short) 1)
                .putShort((short) 32);
        return file.putInt(png.length).putInt(HEAD).put(png).array();
    }

    /** An icon file of macOS with one picture in it. */
    @Source("Apple icon image format: a length after each mark, ic08 for 256 by 256 pixels; from memory")
    static byte[] icns(byte[] png) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(file)) {
            out.write("icns".getBytes(StandardCharsets.US_ASCII));
            out.writeInt(16 + png.length);
            out.write("ic08".getBytes(StandardCharsets.US_ASCII));
            out.writeInt(8 + png.length);
            out.write(png);
        }
        return file.toByteArray();
    }
}

package org.coldpleat.shared.casefile;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Turns the bytes of a file into text, and refuses what no text editor would have written. */
final class FileText {
    private FileText() {}

    /** The text of UTF-8 bytes; empty with a problem noted if they are anything else. */
    static Optional<String> decode(byte[] bytes, FileProblems problems) {
        if (bytes.length >= 2 && ((bytes[0] == -1 && bytes[1] == -2) || (bytes[0] == -2 && bytes[1] == -1))) {
            problems.add(1, 0, "file.utf16");
            return Optional.empty();
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            int offset = in.position();
            int line = 1;
            for (int i = 0; i < offset; i++) {
                line += bytes[i] == '\n' ? 1 : 0;
            }
            String found = String.format("0x%02X", bytes[offset]);
            problems.add(line, 0, "file.notUtf8", offset + "", found);
            return Optional.empty();
        }
        return Optional.of(out.flip().toString());
    }

    /** Notes control characters and tabs in indentation. */
    static void check(String text, FileProblems problems) {
        int line = 1;
        int column = 1;
        boolean indent = true;
        boolean tabNamed = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean end = c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
            if (end) {
                line++;
                column = 1;
                indent = true;
                tabNamed = false;
                continue;
            }
            if (c == '\t' && indent && !tabNamed) {
                problems.add(line, column, "yaml.tab");
                tabNamed = true;
            } else if (isControl(c)) {
                problems.add(line, column, "file.controlCharacter", String.format("U+%04X", (int) c));
                return;
            }
            indent &= c == ' ' || c == '\t';
            column++;
        }
    }

    /** True if a text holds a character that no text editor would have written. */
    static boolean hasControl(String text) {
        return text.chars().anyMatch(c -> isControl((char) c));
    }

    private static boolean isControl(char c) {
        boolean usual = c == '\t' || c == '\n' || c == '\r' || c == '\u0085';
        return (Character.isISOControl(c) && !usual) || c == '\ufffe' || c == '\uffff';
    }
}

package org.coldpleat.validation.checks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/** Notes which test classes ran, and leaves what they recorded in {@code target/external-checks.md} at the end. */
public final class CheckBookKeeper implements BeforeAllCallback {
    private static final Path RECORDS = Path.of("target", "external-checks.md");

    @Override
    public void beforeAll(ExtensionContext context) {
        CheckBook.ran(context.getRequiredTestClass().getName());
        context.getRoot().getStore(Namespace.create(CheckBookKeeper.class)).computeIfAbsent("end of the run", key ->
                (AutoCloseable) CheckBookKeeper::leave);
    }

    private static void leave() throws IOException {
        Files.createDirectories(RECORDS.getParent());
        Files.writeString(RECORDS, ValidationPage.of(CheckBook.rows()));
    }
}

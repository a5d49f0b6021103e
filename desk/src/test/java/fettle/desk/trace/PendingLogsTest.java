package fettle.desk.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fettle.engine.units.InputException;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class PendingLogsTest {
    private static InputStream bytes(int many) {
        return new ByteArrayInputStream(new byte[many]);
    }

    @Test
    void refusesALogThatIsTooLarge() {
        PendingLogs pending = new PendingLogs(10);

        assertThat(pending.find(pending.take("ten.csv", bytes(10)))).hasSize(10);
        assertThatThrownBy(() -> pending.take("eleven.csv", bytes(11)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("larger than 10 bytes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../climbed.csv", "/etc/passwd", "..", "", "a\u0000b", "\u202egpj.csv", "مرحبا.csv"})
    void keepsALogInAFolderOfItsOwnWhateverItsName(String name) {
        PendingLogs pending = new PendingLogs(10);
        Path file = pending.find(pending.take(name, bytes(1)));

        assertThat(file.normalize()).isEqualTo(file).isRegularFile();
        assertThat(file.getParent().getFileName().toString()).startsWith("fettle-log");
    }

    @Test
    void takesALongNameByItsEnd() {
        PendingLogs pending = new PendingLogs(10);

        assertThat(pending.find(pending.take("é".repeat(5_000) + ".csv", bytes(1))))
                .isRegularFile();
    }

    @Test
    void aSlowSenderKeepsNobodyWaiting() throws Exception {
        PendingLogs pending = new PendingLogs(1_000);
        PipedOutputStream sender = new PipedOutputStream();
        PipedInputStream slow = new PipedInputStream(sender);
        Thread taking = new Thread(() -> pending.take("slow.csv", slow));
        taking.start();
        sender.write(1);
        assertThat(pending.find(pending.take("quick.csv", bytes(1)))).isRegularFile();
        sender.close();
        taking.join();
    }
}

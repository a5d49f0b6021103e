package fettle.book.intake;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** A log of any length that is made while it is read: time, volts and current, two samples a second. */
record GeneratedLog(long rows) implements LogFile {
    private static final byte[] HEADING = "time_s,volts,amps\n".getBytes(StandardCharsets.US_ASCII);
    private static final int USUAL_ROW_BYTES = 20;

    @Override
    public String name() {
        return "long.csv";
    }

    @Override
    public long bytes() {
        return USUAL_ROW_BYTES * rows;
    }

    @Override
    public InputStream open() {
        return new Rows(rows);
    }

    private static final class Rows extends InputStream {
        private final long rows;
        private byte[] line = HEADING;
        private int at;
        private long row;

        Rows(long rows) {
            this.rows = rows;
        }

        @Override
        public int read() {
            byte[] single = new byte[1];
            return read(single, 0, 1) < 0 ? -1 : single[0];
        }

        @Override
        public int read(byte[] into, int from, int length) {
            int done = 0;
            while (done < length && (at < line.length || next())) {
                int count = Math.min(length - done, line.length - at);
                System.arraycopy(line, at, into, from + done, count);
                at += count;
                done += count;
            }
            return done == 0 && length > 0 ? -1 : done;
        }

        private boolean next() {
            if (row == rows) {
                return false;
            }
            long amps = row / 10 % 10;
            line = (row / 2 + (row % 2 == 0 ? "" : ".5") + "," + (160 - amps) / 10 + "." + (160 - amps) % 10 + ","
                            + amps + "\n")
                    .getBytes(StandardCharsets.US_ASCII);
            at = 0;
            row++;
            return true;
        }
    }
}

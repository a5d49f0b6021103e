package fettle.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Lets a serving word tidy up when the process is told to end (Ctrl-C): the process waits for it a few seconds. */
final class Stopping {
    private static final int TIDY_SECONDS = 5;

    private final CountDownLatch asked = new CountDownLatch(1);
    private final CountDownLatch tidied = new CountDownLatch(1);

    /** Returns when the process is told to end. */
    void await() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::askAndWait, "stopping"));
        try {
            asked.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Says that everything is tidied up. */
    void release() {
        tidied.countDown();
    }

    private void askAndWait() {
        asked.countDown();
        try {
            // limited: better to end untidily than never
            for (int second = 0; second < TIDY_SECONDS && !tidied.await(1, TimeUnit.SECONDS); second++) {}
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}

package fettle.desk;

/** The desk's port is in use or not allowed; the message is one sentence with the mend. */
public final class PortTakenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    PortTakenException(String host, int port, Throwable cause) {
        super(
                "the desk cannot listen on " + host + " port " + port
                        + ": another program has it, or it is not allowed. Close that program or choose another port.",
                cause);
    }
}

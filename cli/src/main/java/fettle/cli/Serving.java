package fettle.cli;

import fettle.desk.Desk;
import fettle.desk.DeskOptions;
import fettle.desk.json.Shapes;
import fettle.workshop.Workshop;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Serves the desk until the user ends it. A mixin, for {@code open} and {@code demo}. */
final class Serving {
    private static final int LARGEST_PORT = 65_535;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "4150",
            description = "Port to listen on, 0 for any free one. Default: ${DEFAULT-VALUE}.")
    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = DeskOptions.LOOPBACK,
            description = "Address to listen on. Default: ${DEFAULT-VALUE}, this machine only.")
    private String host = DeskOptions.LOOPBACK;

    /**
     * Where the desk is, for a program that waits for it.
     *
     * @param url its address
     */
    record Served(String url) {}

    private void refuseUnlessOfThisMachine() {
        try {
            InetAddress address = InetAddress.getByName(host);
            if (address.isAnyLocalAddress() || NetworkInterface.getByInetAddress(address) != null) {
                return;
            }
        } catch (UnknownHostException | SocketException unknown) {
            // refused like an address of another machine
        }
        throw new RefusedException(
                host + " is no address of this machine. Leave --host out to serve this machine only, or give one of its"
                        + " addresses.");
    }

    /** Serves until the user ends it; {@code notice} is shown on every page. */
    void serve(Session session, Workshop workshop, @Nullable String notice) {
        if (port < 0 || port > LARGEST_PORT) {
            throw new RefusedException(
                    "port is " + port + "; expected 0 to " + LARGEST_PORT + ". Leave --port out for the usual one.");
        }
        refuseUnlessOfThisMachine();
        var surroundings = session.surroundings();
        try (Desk desk = Desk.start(workshop, new DeskOptions(host, port, surroundings.clock(), notice))) {
            if (!host.equals(DeskOptions.LOOPBACK)) {
                session.progress("caution: whoever reaches " + host + " can read and change this book.");
            }
            if (session.json()) {
                session.line(Shapes.write(new Served(desk.url())));
            }
            session.progress("the desk is at " + desk.url() + " (end it with Ctrl-C)");
            surroundings.untilStopped().run();
        }
    }
}

package patinary.durable;

import java.util.List;
import org.springframework.stereotype.Component;

/** What the shop's store promises of what it has answered as stored; for the page of the settings. */
@Component("onDisk")
public class OnDisk {

    private final EmbeddedDisk disk;
    private final ServerPromise server;

    OnDisk(EmbeddedDisk disk, ServerPromise server) {
        this.disk = disk;
        this.server = server;
    }

    /** Whether the program itself forces each change to the disk before it answers. */
    public boolean isForcedHere() {
        return disk.isUnderTheStore();
    }

    /** How often it has, since it was started. */
    public long forcings() {
        return disk.forcings();
    }

    /** The settings of a database server that are off and must be on; with none, the server forces each change. */
    public List<String> missing() {
        return server.off();
    }
}

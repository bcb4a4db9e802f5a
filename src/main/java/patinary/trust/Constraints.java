package patinary.trust;

import java.net.InetAddress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.NameConstraints;

/**
 * What an authority may vouch for (RFC 5280, 4.2.1.10). A kind of name that is not mentioned there would be free, so hosts,
 * addresses and mail addresses are always mentioned: where the shop has none, by one that cannot exist.
 */
final class Constraints {

    /** Reserved: no host can be called so (RFC 2606). */
    private static final String NOBODY = "invalid";

    /** A single address out of the range kept for documentation (RFC 5737). */
    private static final byte[] NOWHERE = {(byte) 192, 0, 2, 0};

    private static final int IPV4 = 4;
    private static final int IPV6 = 16;

    private Constraints() {}

    static NameConstraints only(Names names) {
        List<GeneralSubtree> permitted = new ArrayList<>();
        List<String> hosts = names.hosts().isEmpty() ? List.of(NOBODY) : names.hosts();
        hosts.forEach(host -> permitted.add(subtree(new GeneralName(GeneralName.dNSName, host))));
        if (names.addresses().isEmpty()) {
            permitted.add(subtree(address(NOWHERE)));
        }
        for (InetAddress address : names.addresses()) {
            permitted.add(subtree(address(address.getAddress())));
        }
        permitted.add(subtree(new GeneralName(GeneralName.rfc822Name, NOBODY)));
        return new NameConstraints(permitted.toArray(GeneralSubtree[]::new), null);
    }

    private static GeneralSubtree subtree(GeneralName name) {
        return new GeneralSubtree(name);
    }

    /** The address followed by a mask of the same length that leaves no other. */
    private static GeneralName address(byte[] octets) {
        if (octets.length != IPV4 && octets.length != IPV6) {
            throw new IllegalArgumentException("An address has 4 or 16 octets, not " + octets.length);
        }
        byte[] withMask = Arrays.copyOf(octets, octets.length * 2);
        Arrays.fill(withMask, octets.length, withMask.length, (byte) 0xff);
        return new GeneralName(GeneralName.iPAddress, new DEROctetString(withMask));
    }
}

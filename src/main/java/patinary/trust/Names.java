package patinary.trust;

import java.net.IDN;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.security.cert.CertificateParsingException;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * What the shop is called on its network.
 *
 * @param hosts host names in ASCII and lower case, as typed otherwise
 * @param addresses IP addresses, version 4 or 6
 */
record Names(List<String> hosts, List<InetAddress> addresses) {

    private static final int HOST = 2;
    private static final int ADDRESS = 7;
    private static final int LONGEST = 253;
    private static final Pattern LABEL = Pattern.compile("[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?");
    private static final Pattern FOUR = Pattern.compile("[0-9]{1,3}(\\.[0-9]{1,3}){3}");
    private static final Pattern SIX = Pattern.compile("[0-9a-f.]*:[0-9a-f:.]*");

    Names {
        hosts = List.copyOf(hosts);
        addresses = List.copyOf(addresses);
    }

    /**
     * Reads names and addresses with commas between them.
     *
     * @throws IllegalArgumentException where there is none, or one cannot be a name of this machine; the message says why
     */
    static Names parse(String text) {
        List<String> hosts = new ArrayList<>();
        List<InetAddress> addresses = new ArrayList<>();
        for (String part : text.split(",")) {
            String name = part.strip().toLowerCase(Locale.ROOT);
            if (FOUR.matcher(name).matches() || SIX.matcher(name).matches()) {
                add(addresses, address(name));
            } else if (!name.isEmpty()) {
                add(hosts, host(name));
            }
        }
        if (hosts.isEmpty() && addresses.isEmpty()) {
            throw new IllegalArgumentException("No name was given, as in workroom.local,192.0.2.10");
        }
        return new Names(hosts, addresses);
    }

    /** The names that a certificate stands for. */
    static Names of(X509Certificate certificate) {
        List<String> hosts = new ArrayList<>();
        List<InetAddress> addresses = new ArrayList<>();
        for (List<?> name : alternatives(certificate)) {
            if (Objects.equals(name.get(0), HOST)) {
                hosts.add((String) name.get(1));
            } else if (Objects.equals(name.get(0), ADDRESS)) {
                addresses.add(address((String) name.get(1)));
            }
        }
        return new Names(hosts, addresses);
    }

    /** All of them as they stand in an address line; an IPv6 address in its brackets. */
    List<String> written() {
        List<String> all = new ArrayList<>(hosts);
        for (InetAddress address : addresses) {
            String plain = address.getHostAddress();
            all.add(plain.contains(":") ? "[" + plain + "]" : plain);
        }
        return all;
    }

    private static Collection<List<?>> alternatives(X509Certificate certificate) {
        try {
            Collection<List<?>> names = certificate.getSubjectAlternativeNames();
            return names == null ? List.of() : names;
        } catch (CertificateParsingException unreadable) {
            return List.of();
        }
    }

    private static InetAddress address(String literal) {
        try {
            // A literal is never looked up on the network.
            return InetAddress.getByName(literal);
        } catch (UnknownHostException wrong) {
            throw new IllegalArgumentException("This is no address: " + literal, wrong);
        }
    }

    private static String host(String name) {
        String ascii;
        try {
            ascii = IDN.toASCII(name, IDN.USE_STD3_ASCII_RULES);
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException("This is no name of a machine: " + name, wrong);
        }
        boolean wellFormed = ascii.length() <= LONGEST
                && List.of(ascii.split("\\.", -1)).stream()
                        .allMatch(label -> LABEL.matcher(label).matches());
        if (!wellFormed) {
            throw new IllegalArgumentException("This is no name of a machine: " + name);
        }
        return ascii;
    }

    private static <T> void add(List<T> list, T one) {
        if (!list.contains(one)) {
            list.add(one);
        }
    }
}

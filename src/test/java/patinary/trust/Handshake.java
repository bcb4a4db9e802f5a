package patinary.trust;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.util.concurrent.CompletableFuture;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLServerSocket;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;

/** A real TLS handshake on this machine: a server with given keys, a client that trusts one authority and nobody else. */
final class Handshake {

    private static final char[] PASSWORD = "test".toCharArray();

    private Handshake() {}

    /** What the client says to the server when it looks for a host of this name. Throws where it refuses the server. */
    static void with(KeyStore server, X509Certificate authority, String host)
            throws IOException, GeneralSecurityException {
        SSLContext serving = SSLContext.getInstance("TLS");
        KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
        keys.init(server, PASSWORD);
        serving.init(keys.getKeyManagers(), null, null);
        InetAddress here = InetAddress.getLoopbackAddress();
        try (SSLServerSocket door =
                (SSLServerSocket) serving.getServerSocketFactory().createServerSocket(0, 1, here)) {
            CompletableFuture<Void> served = CompletableFuture.runAsync(() -> serve(door));
            try (Socket way = new Socket(here, door.getLocalPort());
                    SSLSocket client = (SSLSocket)
                            trusting(authority).getSocketFactory().createSocket(way, host, door.getLocalPort(), true)) {
                SSLParameters rules = client.getSSLParameters();
                rules.setEndpointIdentificationAlgorithm("HTTPS");
                client.setSSLParameters(rules);
                client.startHandshake();
            } finally {
                served.join();
            }
        }
    }

    static SSLContext trusting(X509Certificate authority) throws GeneralSecurityException, IOException {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("authority", authority);
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }

    static char[] password() {
        return PASSWORD.clone();
    }

    private static void serve(SSLServerSocket door) {
        try (SSLSocket guest = (SSLSocket) door.accept()) {
            guest.startHandshake();
        } catch (IOException refusedByTheClient) {
            // The client's own answer is what the test looks at.
        }
    }
}

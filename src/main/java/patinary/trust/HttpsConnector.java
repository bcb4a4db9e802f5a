package patinary.trust;

import java.io.IOException;
import java.net.InetAddress;
import java.security.GeneralSecurityException;
import java.util.UUID;
import org.apache.catalina.connector.Connector;
import org.apache.coyote.http11.AbstractHttp11Protocol;
import org.apache.coyote.http11.Http11NioProtocol;
import org.apache.tomcat.util.net.SSLHostConfig;
import org.apache.tomcat.util.net.SSLHostConfigCertificate;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.tomcat.CompressionConnectorCustomizer;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.Compression;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.core.Ordered;

/** A second way into the program, encrypted, beside the plain one and with the same limits and compression. */
final class HttpsConnector implements WebServerFactoryCustomizer<TomcatServletWebServerFactory>, Ordered {

    private final OwnRoad road;
    private final int port;
    private @Nullable Connector connector;

    HttpsConnector(OwnRoad road, int port) {
        this.road = road;
        this.port = port;
    }

    @Override
    public int getOrder() {
        return LOWEST_PRECEDENCE;
    }

    @Override
    public void customize(TomcatServletWebServerFactory factory) {
        Connector made = new Connector(Http11NioProtocol.class.getName());
        Http11NioProtocol protocol = (Http11NioProtocol) made.getProtocolHandler();
        made.setPort(port);
        made.setScheme("https");
        made.setSecure(true);
        protocol.setSSLEnabled(true);
        protocol.addSslHostConfig(certificate(), true);
        // No HTTP/2: there, a compressed answer that the phone no longer wants ends the whole connection in this server
        // (11.0.27), and with it every other answer on its way. HttpsIT shows it; put it back once that test lets you.
        InetAddress address = factory.getAddress();
        if (address != null) {
            protocol.setAddress(address);
        }
        // Boot gives these to its own way in only.
        factory.getConnectorCustomizers().forEach(customizer -> customizer.customize(made));
        Compression compression = factory.getCompression();
        if (compression != null && compression.getEnabled()) {
            new CompressionConnectorCustomizer(compression).customize(made);
        }
        factory.addAdditionalConnectors(made);
        connector = made;
    }

    /** The port it listens on; the one asked for while it does not listen yet. */
    int port() {
        Connector made = connector;
        return made != null && made.getLocalPort() > 0 ? made.getLocalPort() : port;
    }

    /** Shows the road's present certificate to everybody who comes from now on. */
    void reload() {
        Connector made = connector;
        if (made != null && made.getProtocolHandler() instanceof AbstractHttp11Protocol<?> protocol) {
            protocol.addSslHostConfig(certificate(), true);
        }
    }

    private SSLHostConfig certificate() {
        SSLHostConfig config = new SSLHostConfig();
        config.setProtocols("TLSv1.2+TLSv1.3");
        SSLHostConfigCertificate shown = new SSLHostConfigCertificate(config, SSLHostConfigCertificate.Type.UNDEFINED);
        String password = UUID.randomUUID().toString();
        shown.setCertificateKeystorePassword(password);
        shown.setCertificateKeyAlias(OwnRoad.ALIAS);
        try {
            shown.setCertificateKeystore(road.keys(password.toCharArray()));
        } catch (GeneralSecurityException | IOException failed) {
            throw new IllegalStateException(failed);
        }
        config.addCertificate(shown);
        return config;
    }
}

package patinary.trust;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.StringWriter;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.env.Environment;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import patinary.web.Host;
import patinary.web.NotFound;

/** Leads a phone or a laptop to trust the shop's own authority. Open to everybody: what it shows is public anyway. */
@Controller
@RequestMapping("/trust")
class TrustController {

    private static final MediaType AUTHORITY = MediaType.parseMediaType("application/x-x509-ca-cert");
    private static final MediaType PICTURE = MediaType.parseMediaType("image/svg+xml");

    private final ObjectProvider<OwnRoad> road;
    private final ObjectProvider<HttpsConnector> connector;
    private final Environment environment;

    TrustController(ObjectProvider<OwnRoad> road, ObjectProvider<HttpsConnector> connector, Environment environment) {
        this.road = road;
        this.connector = connector;
        this.environment = environment;
    }

    @GetMapping
    String show(HttpServletRequest request, Model model) {
        model.addAttribute("secure", request.isSecure());
        model.addAttribute("here", Host.isThisMachine(request.getServerName()));
        model.addAttribute("own", road.getIfAvailable() != null);
        road.ifAvailable(open -> {
            X509Certificate authority = open.authority().certificate();
            model.addAttribute("fingerprint", List.of(Fingerprint.of(authority).split("(?<=\\G.{24})")));
            model.addAttribute(
                    "until", LocalDate.ofInstant(authority.getNotAfter().toInstant(), ZoneOffset.UTC));
            model.addAttribute("names", open.names().written());
            model.addAttribute(
                    "addresses",
                    open.names().written().stream().map(this::secureAddress).toList());
            model.addAttribute("page", plainAddress(open));
        });
        return "trust/trust";
    }

    /** As phones take it: opened, not saved, so that the phone itself asks what to do with it. */
    @GetMapping("/authority.crt")
    ResponseEntity<byte[]> certificate() throws CertificateEncodingException {
        byte[] encoded = open().authority().certificate().getEncoded();
        return ResponseEntity.ok().contentType(AUTHORITY).body(encoded);
    }

    /** The same as text, for laptops and servers. */
    @GetMapping("/authority.pem")
    ResponseEntity<String> text() throws IOException {
        StringWriter text = new StringWriter();
        try (JcaPEMWriter pem = new JcaPEMWriter(text)) {
            pem.writeObject(open().authority().certificate());
        }
        ContentDisposition saved = ContentDisposition.attachment()
                .filename("patinary-authority.pem")
                .build();
        return ResponseEntity.ok()
                .contentType(AUTHORITY)
                .header(HttpHeaders.CONTENT_DISPOSITION, saved.toString())
                .body(text.toString());
    }

    /** The way to this page, which a phone can read before it trusts anything. */
    @GetMapping("/page.svg")
    ResponseEntity<String> pagePicture() {
        return ResponseEntity.ok().contentType(PICTURE).body(QrCode.svg(plainAddress(open())));
    }

    /** The way to the shop itself. */
    @GetMapping("/shop.svg")
    ResponseEntity<String> shopPicture() {
        String first = secureAddress(open().names().written().get(0));
        return ResponseEntity.ok().contentType(PICTURE).body(QrCode.svg(first));
    }

    private OwnRoad open() {
        OwnRoad open = road.getIfAvailable();
        if (open == null) {
            throw new NotFound("an authority of the shop's own");
        }
        return open;
    }

    private String secureAddress(String name) {
        int port = connector.getObject().port();
        return "https://" + name + (port == 443 ? "" : ":" + port) + "/";
    }

    private String plainAddress(OwnRoad open) {
        String port = environment.getProperty("local.server.port", "8080");
        return "http://" + open.names().written().get(0) + (port.equals("80") ? "" : ":" + port) + "/trust";
    }
}

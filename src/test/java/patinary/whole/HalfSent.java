package patinary.whole;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import patinary.testing.Visitor;

/** A form of which the program has begun to read the half that was sent. */
final class HalfSent implements AutoCloseable {

    private final Socket socket;
    private final OutputStream out;
    private final BufferedReader in;
    private final byte[] rest;

    /** Sends half of it and waits until the program asks for it, as RFC 9110, 10.1.1 lets a sender do. */
    HalfSent(int port, Visitor visitor, String path, Map<String, String> answers) throws IOException {
        byte[] body = Visitor.joined(answers).getBytes(StandardCharsets.US_ASCII);
        socket = new Socket("localhost", port);
        socket.setSoTimeout(30_000);
        out = socket.getOutputStream();
        in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
        String head = "POST " + path + " HTTP/1.1\r\nHost: localhost:" + port + "\r\nCookie: " + visitor.cookies()
                + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length
                + "\r\nExpect: 100-continue\r\nConnection: close\r\n\r\n";
        out.write(head.getBytes(StandardCharsets.US_ASCII));
        out.flush();
        String asked = in.readLine();
        if (!asked.startsWith("HTTP/1.1 100")) {
            throw new IOException("The form was not asked for: " + asked);
        }
        in.readLine();
        out.write(body, 0, body.length / 2);
        out.flush();
        rest = Arrays.copyOfRange(body, body.length / 2, body.length);
    }

    /** Sends the other half. @return the first line of the answer */
    String send() throws IOException {
        out.write(rest);
        out.flush();
        return in.readLine();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}

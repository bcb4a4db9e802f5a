package patinary;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the back office. */
@SpringBootApplication
public class Patinary {

    public static void main(String[] arguments) {
        SpringApplication.run(Patinary.class, arguments);
    }
}

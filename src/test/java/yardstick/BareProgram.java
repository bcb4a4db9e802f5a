package yardstick;

import java.util.Map;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.provisioning.InMemoryUserDetailsManager;
import org.springframework.security.web.SecurityFilterChain;

/** Starts the bare program with the same settings of store and health as the shop's. */
@SpringBootApplication
public class BareProgram {

    static final String NAME = "Owner";

    /** Of an invented person in a throw-away program. */
    static final String PASSWORD = "six rows and a page";

    /** What the shop's program sets too; its own settings file is not here. */
    private static final Map<String, Object> SETTINGS = Map.of(
            "spring.datasource.url", "jdbc:h2:file:${yardstick.data}/bare;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE",
            "spring.flyway.locations", "classpath:yardstick/migration",
            "spring.thymeleaf.prefix", "classpath:/yardstick/templates/",
            "spring.jpa.open-in-view", "false",
            "spring.jpa.hibernate.ddl-auto", "validate",
            "spring.session.jdbc.initialize-schema", "never",
            "server.compression.enabled", "true",
            "management.endpoints.web.exposure.include", "health");

    public static void main(String[] arguments) {
        SpringApplication program = new SpringApplication(BareProgram.class);
        program.setDefaultProperties(SETTINGS);
        program.run(arguments);
    }

    @Bean
    SecurityFilterChain guard(HttpSecurity http) {
        return http.authorizeHttpRequests(doors -> doors.requestMatchers("/sign-in", "/actuator/health")
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .formLogin(form ->
                        form.loginPage("/sign-in").usernameParameter("name").defaultSuccessUrl("/list", true))
                .logout(Customizer.withDefaults())
                .webAuthn(keys -> keys.rpName("Bare").rpId("localhost").allowedOrigins("http://localhost"))
                .build();
    }

    @Bean
    UserDetailsService people() {
        return new InMemoryUserDetailsManager(User.withUsername(NAME)
                .password("{noop}" + PASSWORD)
                .roles("OWNER")
                .build());
    }
}

package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import patinary.testing.InventedShop;
import patinary.testing.JarProgram;
import patinary.testing.TestDatabase;
import patinary.testing.Visitor;

/**
 * An acknowledged receipt survives the death of the program: the packaged jar takes a form, answers, is killed at once with
 * SIGKILL, starts again, and the receipt is there with its postings, every time, and the sign-in survives too. Three times, or
 * as often as {@code -Dpatinary.kills=200} says.
 */
class CrashIT {

    private static final int KILLS = Integer.getInteger("patinary.kills", 3);

    @TempDir(cleanup = org.junit.jupiter.api.io.CleanupMode.ON_SUCCESS)
    private Path folder;

    @Test
    void whatWasAnsweredIsThereAfterTheProgramWasKilled() throws IOException, InterruptedException {
        List<String> properties = new ArrayList<>(TestDatabase.scratch(folder));
        properties.add("patinary.setup-code=" + TestDatabase.SETUP_CODE);
        Visitor visitor = new Visitor();
        List<UUID> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            try (JarProgram program = JarProgram.start(folder.resolve("program.log"), properties)) {
                visitor.visit(program.port());
                if (kill == 0) {
                    openShop(visitor);
                }
                assertAllThere(visitor, acknowledged);
                acknowledged.add(buy(visitor, kill));
                program.kill();
            }
        }
        try (JarProgram program = JarProgram.start(folder.resolve("program.log"), properties)) {
            visitor.visit(program.port());
            assertAllThere(visitor, acknowledged);
            assertThat(acknowledged).hasSize(KILLS);
        }
    }

    static void openShop(Visitor visitor) throws IOException, InterruptedException {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("code", TestDatabase.SETUP_CODE);
        answers.put("ownerName", InventedShop.OWNER);
        answers.put("password", InventedShop.PASSWORD);
        answers.put("shopName", InventedShop.NAME);
        answers.put("currency", "USD");
        answers.put("taxTable", "plain");
        answers.put("costingMethod", "FIFO");
        answers.put("firstDay", "2025-01-01");
        answers.put("timeZone", "UTC");
        answers.put("next", "later");
        assertThat(visitor.fill("setup", "setup", answers).statusCode()).isEqualTo(303);
        Map<String, String> signIn = Map.of("name", InventedShop.OWNER, "password", InventedShop.PASSWORD);
        assertThat(visitor.fill("sign-in", "sign-in", signIn).statusCode()).isBetween(302, 303);
    }

    private static UUID buy(Visitor visitor, int number) throws IOException, InterruptedException {
        UUID id = UUID.randomUUID();
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("id", id.toString());
        answers.put("day", "OTHER");
        answers.put("date", "2025-03-01");
        answers.put("lines[0].kind", "PIECES");
        answers.put("lines[0].title", "Tin box " + number);
        answers.put("lines[0].price", "4.25");
        answers.put("lines[0].quantity", "1");
        answers.put("tillTotal", "4.25");
        answers.put("paidWith", "OWNER");
        answers.put("action", "save");
        HttpResponse<String> answer = visitor.fill("receipts/new", "receipts", answers);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return id;
    }

    private static void assertAllThere(Visitor visitor, List<UUID> acknowledged)
            throws IOException, InterruptedException {
        for (int number = 0; number < acknowledged.size(); number++) {
            HttpResponse<String> page = visitor.get("receipts/" + acknowledged.get(number));
            assertThat(page.statusCode()).as("receipt %s", number).isEqualTo(200);
            assertThat(page.body()).contains("Tin box " + number, "4.25");
        }
    }
}

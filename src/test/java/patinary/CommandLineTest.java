package patinary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {

    @Test
    void printsAWayInForSomebodyOrForTheOwner() throws Exception {
        assertThat(CommandLine.parse("way-in", "Sam").command()).isEqualTo(CommandLine.Command.WAY_IN);
        assertThat(CommandLine.parse("way-in", "Sam").word()).isEqualTo("Sam");
        assertThat(CommandLine.parse("way-in").word()).isEmpty();
        assertThatThrownBy(() -> CommandLine.parse("way-in", "Sam", "Kim")).isInstanceOf(CommandLine.WrongUse.class);
        assertThatThrownBy(() -> CommandLine.parse("way_in")).isInstanceOf(CommandLine.WrongUse.class);
    }

    @Test
    void servesWithoutACommand() throws CommandLine.WrongUse {
        assertThat(CommandLine.parse().command()).isEqualTo(CommandLine.Command.SERVE);
        assertThat(CommandLine.parse("serve", "--data=/srv/shop", "--port=9090").settings())
                .containsExactly("--patinary.data=/srv/shop", "--server.port=9090");
    }

    @Test
    void servesEncryptedUnderTheNamesGiven() throws CommandLine.WrongUse {
        CommandLine https = CommandLine.parse("https", "--names=workroom.local,192.0.2.10", "--https-port=9443");

        assertThat(https.command()).isEqualTo(CommandLine.Command.HTTPS);
        assertThat(https.settings())
                .containsExactly("--patinary.https.names=workroom.local,192.0.2.10", "--patinary.https.port=9443");
    }

    @Test
    void takesAnArchiveWhereOneIsNeeded() throws CommandLine.WrongUse {
        CommandLine load = CommandLine.parse("--data=x", "load", "shop.zip");

        assertThat(load.command()).isEqualTo(CommandLine.Command.LOAD);
        assertThat(load.word()).isEqualTo("shop.zip");
        assertThat(load.settings()).containsExactly("--patinary.data=x");
    }

    @Test
    void inventsAsManyPiecesAsAskedFor() throws CommandLine.WrongUse {
        CommandLine some = CommandLine.parse("invent", "big.zip", "--pieces=250", "--seed=9");
        CommandLine usual = CommandLine.parse("invent", "big.zip");

        assertThat(some.command()).isEqualTo(CommandLine.Command.INVENT);
        assertThat(some.word()).isEqualTo("big.zip");
        assertThat(some.pieces()).isEqualTo(250);
        assertThat(some.seed()).isEqualTo(9);
        assertThat(usual.pieces()).isEqualTo(20_000);
        assertThat(usual.seed()).isEqualTo(1);
    }

    @Test
    void handsOnTheProgramsOwnSettings() throws CommandLine.WrongUse {
        assertThat(CommandLine.parse("check", "--spring.datasource.url=jdbc:x").settings())
                .containsExactly("--spring.datasource.url=jdbc:x");
    }

    @Test
    void helpsWheneverAskedTo() throws CommandLine.WrongUse {
        assertThat(CommandLine.parse("help").command()).isEqualTo(CommandLine.Command.HELP);
        assertThat(CommandLine.parse("load", "--help").command()).isEqualTo(CommandLine.Command.HELP);
        for (CommandLine.Command command : CommandLine.Command.values()) {
            assertThat(CommandLine.HELP).contains(command.written());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "open",
                "load",
                "https",
                "https --names=",
                "--https-port=many",
                "export",
                "check now",
                "load a b",
                "--port=many",
                "--port=70000",
                "invent",
                "invent big.zip --pieces=0",
                "invent big.zip --pieces=many",
                "invent big.zip --seed=",
                "--port",
                "--data=",
                "--date=x",
                "-x",
                "--server.port"
            })
    void saysWhatItDoesNotUnderstand(String line) {
        assertThatThrownBy(() -> CommandLine.parse(line.split(" ")))
                .isInstanceOf(CommandLine.WrongUse.class)
                .hasMessageMatching(".*[.\\w]");
    }
}

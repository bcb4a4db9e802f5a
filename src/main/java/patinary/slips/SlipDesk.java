package patinary.slips;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Reads the photo of a slip with the optional reading program. */
@Component
public class SlipDesk {

    private final ReadingProgram program;

    SlipDesk(@Value("${patinary.reading.program:tesseract}") String program) {
        this.program = new ReadingProgram(program);
    }

    /** Whether the reading program is there; asked anew each time, so that installing it needs no restart. */
    public boolean isInstalled() {
        return program.isInstalled();
    }

    /** What the photo seems to say; nothing where it could not be read just now. */
    public Optional<Slip> read(Path photo) {
        try {
            BufferedImage picture = ImageIO.read(photo.toFile());
            if (picture == null) {
                return Optional.empty();
            }
            BufferedImage ready = SlipPicture.prepare(picture, EnumSet.allOf(SlipPicture.Step.class));
            return Optional.of(SlipReader.read(WordTable.read(program.read(ready))));
        } catch (IOException failed) {
            return Optional.empty();
        }
    }
}

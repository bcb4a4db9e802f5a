package patinary.phone;

import java.util.List;
import org.springframework.stereotype.Component;

/** A list only tests have. */
@Component
class ProbeList implements PhoneList {

    @Override
    public String name() {
        return "probe";
    }

    @Override
    public Object rows() {
        return List.of(new Row("1", "Oak"), new Row("2", "Larch"));
    }

    record Row(String value, String text) {}
}

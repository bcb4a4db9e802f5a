package patinary.supplies;

import java.util.UUID;

/** A tool that is worn out, lost or broken. The id is made with the form, so that one sent twice is counted once. */
class WornForm {

    public String id = UUID.randomUUID().toString();
    /** How many are left that are not worn. */
    public String left = "0";
    /** SHARE over its uses, or WASTE. */
    public String how = "SHARE";

    static WornForm of(ToolView tool) {
        WornForm form = new WornForm();
        form.left = tool.spare().toPlainString();
        return form;
    }
}

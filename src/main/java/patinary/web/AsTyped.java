package patinary.web;

import java.beans.PropertyEditorSupport;

/** Leaves a text as it was typed. */
class AsTyped extends PropertyEditorSupport {

    @Override
    public void setAsText(String text) {
        setValue(text);
    }
}

package patinary.web;

import org.springframework.beans.propertyeditors.StringTrimmerEditor;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;

/**
 * How every form is read: into public fields, without the spaces around an answer, and with a bound on repeated lines
 * so that no request can make a list of any length.
 */
@ControllerAdvice
class FormBinding {

    private static final int MOST_LINES = 250;

    @InitBinder
    void read(WebDataBinder binder) {
        binder.setAutoGrowCollectionLimit(MOST_LINES);
        binder.initDirectFieldAccess();
        // A password is compared exactly as typed: fields named password are left alone.
        binder.registerCustomEditor(String.class, new StringTrimmerEditor(false));
        binder.registerCustomEditor(String.class, "password", new AsTyped());
    }
}

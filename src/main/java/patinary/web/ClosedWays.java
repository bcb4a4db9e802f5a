package patinary.web;

import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.ITemplateContext;
import org.thymeleaf.dialect.AbstractProcessorDialect;
import org.thymeleaf.model.IProcessableElementTag;
import org.thymeleaf.processor.IProcessor;
import org.thymeleaf.processor.element.AbstractElementTagProcessor;
import org.thymeleaf.processor.element.IElementTagStructureHandler;
import org.thymeleaf.standard.StandardDialect;
import org.thymeleaf.templatemode.TemplateMode;

/**
 * Leaves out of every page what is closed to whoever looks at it: the words of a link stay, a link among buttons goes, and so
 * does a form that could not be sent. A page so need not know who may open what; the doors refuse in any case.
 */
@Component
class ClosedWays extends AbstractProcessorDialect {

    /** After the templates' own attributes have made the address, before they remove something. */
    private static final int AFTER_ATTRIBUTES = 1500;

    private final House house;

    ClosedWays(House house) {
        super("Closed ways", "", StandardDialect.PROCESSOR_PRECEDENCE);
        this.house = house;
    }

    @Override
    public Set<IProcessor> getProcessors(String prefix) {
        return Set.of(new Way("a", "href"), new Way("form", "action"));
    }

    private final class Way extends AbstractElementTagProcessor {

        private final String address;

        Way(String element, String address) {
            super(TemplateMode.HTML, null, element, false, null, false, AFTER_ATTRIBUTES);
            this.address = address;
        }

        @Override
        protected void doProcess(
                ITemplateContext context, IProcessableElementTag tag, IElementTagStructureHandler change) {
            String where = tag.getAttributeValue(address);
            if (where == null || !where.startsWith("/")) {
                return;
            }
            boolean form = address.equals("action");
            String method = form && "post".equals(tag.getAttributeValue("method")) ? "POST" : "GET";
            if (!house.isClosed(method, where.replaceAll("[?#].*", ""))) {
                return;
            }
            if (form || isAmongButtons(context, tag)) {
                change.removeElement();
            } else {
                change.removeTags();
            }
        }

        private boolean isAmongButtons(ITemplateContext context, IProcessableElementTag tag) {
            return has(tag, "button")
                    || has(tag, "main")
                    || has(tag, "touch")
                    || context.getElementStack().stream().anyMatch(around -> has(around, "buttons"));
        }

        private boolean has(IProcessableElementTag tag, String word) {
            String words = tag.getAttributeValue("class");
            return words != null && List.of(words.split(" ")).contains(word);
        }
    }
}

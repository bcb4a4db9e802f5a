package patinary.web;

import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.stereotype.Component;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;

/** Every redirect after a form is a 303, which a browser follows with a plain read. */
@Component
class SeeOther implements BeanPostProcessor {

    @Override
    public Object postProcessAfterInitialization(Object bean, String name) {
        if (bean instanceof ThymeleafViewResolver views) {
            views.setRedirectHttp10Compatible(false);
        }
        return bean;
    }
}

package patinary.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.autoconfigure.WebMvcRegistrations;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.ServletRequestDataBinder;
import org.springframework.web.bind.support.WebBindingInitializer;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.annotation.InitBinderDataBinderFactory;
import org.springframework.web.method.support.InvocableHandlerMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerAdapter;
import org.springframework.web.servlet.mvc.method.annotation.ServletRequestDataBinderFactory;

/**
 * A form is filled by its answers alone. Left to itself the framework takes a field without an answer out of the address or
 * a header of the same name: a refund by a form that lost its own {@code id} would get that of the sale in the address.
 */
@Component
class AnswersAlone implements WebMvcRegistrations {

    @Override
    public RequestMappingHandlerAdapter getRequestMappingHandlerAdapter() {
        return new RequestMappingHandlerAdapter() {

            @Override
            protected InitBinderDataBinderFactory createDataBinderFactory(List<InvocableHandlerMethod> methods) {
                return new Binders(methods, getWebBindingInitializer());
            }
        };
    }

    private static final class Binders extends ServletRequestDataBinderFactory {

        Binders(List<InvocableHandlerMethod> methods, @Nullable WebBindingInitializer initializer) {
            super(methods, initializer);
        }

        @Override
        protected ServletRequestDataBinder createBinderInstance(
                @Nullable Object target, String name, NativeWebRequest request) {
            return new ServletRequestDataBinder(target, name);
        }
    }
}

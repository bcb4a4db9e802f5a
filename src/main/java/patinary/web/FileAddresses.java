package patinary.web;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletRequest;
import jakarta.servlet.ServletResponse;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import java.util.stream.Stream;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

/**
 * Puts the version of a file into its address, for files alone. For every other link of a page all libraries would be searched for a file
 * of that name, which was a quarter of what a page with many links took.
 */
@Configuration(proxyBeanMethods = false)
class FileAddresses {

    @Bean
    FilterRegistrationBean<ResourceUrlEncodingFilter> versionsOfFiles() {
        FilterRegistrationBean<ResourceUrlEncodingFilter> filter = new FilterRegistrationBean<>(new OfFilesAlone());
        filter.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ERROR);
        return filter;
    }

    private static final class OfFilesAlone extends ResourceUrlEncodingFilter {

        @Override
        public void doFilter(ServletRequest request, ServletResponse response, FilterChain chain)
                throws ServletException, IOException {
            String shop = ((HttpServletRequest) request).getContextPath();
            super.doFilter(
                    request,
                    response,
                    (inner, answer) -> chain.doFilter(inner, new Links((HttpServletResponse) answer, shop)));
        }
    }

    private static final class Links extends HttpServletResponseWrapper {

        /** Before every address of the program itself; mostly empty. */
        private final String shop;

        Links(HttpServletResponse response, String shop) {
            super(response);
            this.shop = shop;
        }

        @Override
        public String encodeURL(String address) {
            return Stream.of("/css/", "/js/", "/img/").anyMatch(folder -> address.startsWith(shop + folder))
                    ? super.encodeURL(address)
                    : address;
        }
    }
}

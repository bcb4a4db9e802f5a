package patinary.durable;

import java.io.Serial;
import org.aopalliance.intercept.MethodInterceptor;
import org.aopalliance.intercept.MethodInvocation;
import org.jspecify.annotations.Nullable;
import org.springframework.aop.ProxyMethodInvocation;
import org.springframework.aop.support.DefaultPointcutAdvisor;
import org.springframework.aop.support.Pointcuts;
import org.springframework.aop.support.annotation.AnnotationMatchingPointcut;
import org.springframework.beans.factory.config.BeanDefinition;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Role;
import org.springframework.core.Ordered;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionCallback;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Makes every outermost transaction of the program patient ({@link Patience}), whether a template begins it or the annotation of
 * a method. One that runs within another is left alone: only the whole can be run again.
 */
@Configuration(proxyBeanMethods = false)
class PatientTransactions {

    @Bean
    TransactionTemplate transactionTemplate(PlatformTransactionManager transactions) {
        return new Template(transactions);
    }

    @Bean
    @Role(BeanDefinition.ROLE_INFRASTRUCTURE)
    static DefaultPointcutAdvisor patientMethods() {
        DefaultPointcutAdvisor advisor = new DefaultPointcutAdvisor(
                Pointcuts.union(
                        new AnnotationMatchingPointcut(Transactional.class, true),
                        new AnnotationMatchingPointcut(null, Transactional.class, true)),
                new Methods());
        // Around the transaction itself, which comes last.
        advisor.setOrder(Ordered.LOWEST_PRECEDENCE - 1);
        return advisor;
    }

    private static boolean isOutermost() {
        return !TransactionSynchronizationManager.isActualTransactionActive();
    }

    private static final class Template extends TransactionTemplate {

        @Serial
        private static final long serialVersionUID = 1L;

        Template(PlatformTransactionManager transactions) {
            super(transactions);
        }

        @Override
        public <T extends @Nullable Object> T execute(TransactionCallback<T> action) {
            return isOutermost() ? Patience.run(() -> super.execute(action)) : super.execute(action);
        }
    }

    private static final class Methods implements MethodInterceptor {

        @Override
        public @Nullable Object invoke(MethodInvocation call) throws Throwable {
            if (!isOutermost() || !(call instanceof ProxyMethodInvocation whole)) {
                return call.proceed();
            }
            return Patience.run(() -> whole.invocableClone().proceed());
        }
    }
}

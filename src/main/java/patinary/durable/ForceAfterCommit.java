package patinary.durable;

import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.TransactionExecution;
import org.springframework.transaction.TransactionExecutionListener;
import org.springframework.transaction.support.TransactionOperations;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Forces the embedded store once for every transaction that may have changed something, between its commit and the return of
 * whatever asked for it: so before any answer is written, of a form, a phone's entry, an import or an errand alike. Where
 * that fails, who asked gets the failure and no answer.
 *
 * <p>The signed-in state is left out. It is written with every page that is read; what a power cut takes of it is a sign-in.
 */
@Component
class ForceAfterCommit implements TransactionExecutionListener {

    private static final String SIGNED_IN_STATE = "signed-in state";

    private final EmbeddedDisk disk;

    ForceAfterCommit(EmbeddedDisk disk) {
        this.disk = disk;
    }

    @Override
    public void afterCommit(TransactionExecution transaction, @Nullable Throwable failure) {
        if (failure == null
                && !transaction.isReadOnly()
                && !SIGNED_IN_STATE.equals(transaction.getTransactionName())
                && disk.isUnderTheStore()) {
            disk.force();
        }
    }

    /** Gives the transactions of the signed-in state their name; otherwise they are as its library makes them. */
    @Configuration(proxyBeanMethods = false)
    static class OfSignedInState {

        @Bean(defaultCandidate = false)
        TransactionOperations springSessionTransactionOperations(PlatformTransactionManager transactions) {
            TransactionTemplate own = new TransactionTemplate(transactions);
            own.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
            own.setName(SIGNED_IN_STATE);
            return own;
        }
    }
}

package patinary;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says on the console what is the matter, in place of a page of calls. */
class NewerDataAnalyzer extends AbstractFailureAnalyzer<NewerData> {

    @Override
    protected FailureAnalysis analyze(Throwable rootFailure, NewerData cause) {
        return new FailureAnalysis(cause.getMessage(), "Start the program that was used last, or a newer one.", cause);
    }
}

package patinary;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import jakarta.persistence.Entity;
import java.time.Clock;
import java.util.Set;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;

/** The rules of the house that a compiler does not keep. */
@AnalyzeClasses(packages = "patinary", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule NOTHING_IS_INJECTED_INTO_FIELDS = noFields().should().beAnnotatedWith(Autowired.class);

    @ArchTest
    static final ArchRule CONTROLLERS_ARE_PRIVATE_TO_THEIR_PACKAGE =
            classes().that().areAnnotatedWith(Controller.class).should().bePackagePrivate();

    /** What time it is, is asked of the clock bean, so that a test can say what time it is. */
    @ArchTest
    static final ArchRule TIME_COMES_FROM_THE_CLOCK = noClasses()
            .that()
            .doNotHaveFullyQualifiedName("patinary.shop.ShopClock")
            .should()
            .accessTargetWhere(asksTheMachineForTheTime());

    /** An errand ends when it is done: a backup that the clock begins beside it would lose its database. */
    @ArchTest
    static final ArchRule WHAT_THE_CLOCK_BEGINS_IS_FOR_THE_RUNNING_SHOP = methods()
            .that()
            .areAnnotatedWith(Scheduled.class)
            .should(new ArchCondition<>("be of a class that is only there beside the pages") {

                @Override
                public void check(JavaMethod method, ConditionEvents events) {
                    JavaClass owner = method.getOwner();
                    boolean beside =
                            owner.getEnclosingClass().orElse(owner).isAnnotatedWith(ConditionalOnWebApplication.class);
                    events.add(new SimpleConditionEvent(method, beside, method.getDescription()));
                }
            });

    /** What is thrown as a checked failure leaves half a change behind, unless the transaction is told to take it back. */
    @ArchTest
    static final ArchRule A_BROKEN_FILE_TAKES_THE_WHOLE_CHANGE_BACK = methods()
            .that()
            .arePublic()
            .or()
            .arePackagePrivate()
            .should(new ArchCondition<>("take back what it stored where a checked failure is thrown") {

                @Override
                public void check(JavaMethod method, ConditionEvents events) {
                    Transactional rule = method.tryGetAnnotationOfType(Transactional.class)
                            .or(() -> method.getOwner().tryGetAnnotationOfType(Transactional.class))
                            .orElse(null);
                    boolean checked = method.getThrowsClause().stream()
                            .anyMatch(one -> one.getRawType().isAssignableTo(Exception.class)
                                    && !one.getRawType().isAssignableTo(RuntimeException.class));
                    boolean takesBack = rule == null || rule.readOnly() || !checked || rule.rollbackFor().length > 0;
                    events.add(new SimpleConditionEvent(method, takesBack, method.getDescription()));
                }
            });

    @ArchTest
    static final ArchRule VALUES_KNOW_NO_FRAMEWORK = noClasses()
            .that()
            .resideInAnyPackage("patinary.money..", "patinary.measure..")
            .and()
            .doNotHaveSimpleName("package-info")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.springframework..", "jakarta..", "java.sql..", "javax.sql..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class);

    /** A sum is exact or it is no sum: no binary fractions where money and quantities are counted. */
    @ArchTest
    static final ArchRule MONEY_IS_NEVER_A_BINARY_FRACTION = fields().that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage("patinary.money..", "patinary.measure..", "patinary.ledger..")
            .should()
            .notHaveRawType(double.class)
            .andShould()
            .notHaveRawType(float.class)
            .andShould()
            .notHaveRawType(Double.class);

    @ArchTest
    static final ArchRule SUMS_RETURN_NO_BINARY_FRACTION = ArchRuleDefinition.noMethods()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage("patinary.money..", "patinary.measure..", "patinary.ledger..")
            .should()
            .haveRawReturnType(double.class)
            .orShould()
            .haveRawReturnType(float.class)
            .orShould()
            .haveRawReturnType(Double.class);

    /** The costing itself runs without a database, a clock or a container. */
    @ArchTest
    static final ArchRule COSTING_IS_PURE = noClasses()
            .that()
            .haveFullyQualifiedName("patinary.ledger.Replay")
            .or()
            .haveFullyQualifiedName("patinary.ledger.SupplyBook")
            .or()
            .haveFullyQualifiedName("patinary.ledger.PieceBook")
            .or()
            .haveFullyQualifiedName("patinary.ledger.Journal")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.springframework..", "java.sql..", "javax.sql..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class);

    /**
     * The program asks nobody on the network for anything: no address that somebody types can make it do so. Its database is
     * the drivers' affair; the names of the machine itself are asked for where the shop's own certificate is made.
     */
    @ArchTest
    static final ArchRule NOTHING_IS_ASKED_OF_THE_NETWORK = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.net.URLConnection")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.net.HttpURLConnection")
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net.http..", "javax.net.ssl..", "javax.naming..", "jakarta.mail..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("org\\.springframework\\.web\\.(client|reactive)\\..*")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching(
                    "java\\.net\\.(Socket|DatagramSocket|MulticastSocket)|java\\.nio\\.channels\\..*SocketChannel")
            .orShould()
            .callMethod(java.net.URL.class, "openStream")
            .orShould()
            .callMethod(java.net.URL.class, "openConnection");

    /** Nothing that was kept outside is turned into objects of any class, and nothing typed is run as an expression. */
    @ArchTest
    static final ArchRule NOTHING_FROM_OUTSIDE_IS_RUN = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.io.ObjectInputStream")
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.springframework.expression..",
                    "javax.script..",
                    "javax.xml..",
                    "org.xml.sax..",
                    "org.w3c.dom..")
            .orShould()
            .callMethod(Runtime.class, "exec", String.class);

    /** What a request may fill is a form; an entity would let a request fill anything it has. */
    @ArchTest
    static final ArchRule ENTITIES_ARE_NEVER_READ_FROM_A_REQUEST =
            classes().that().areAnnotatedWith(Controller.class).should(takeNoEntity());

    private static DescribedPredicate<JavaAccess<?>> asksTheMachineForTheTime() {
        Set<String> words = Set.of("now", "currentTimeMillis", "systemUTC", "systemDefaultZone", "system", "nanoTime");
        return new DescribedPredicate<>("asks the machine for the time") {
            @Override
            public boolean test(JavaAccess<?> access) {
                AccessTarget target = access.getTarget();
                String owner = target.getOwner().getName();
                boolean time = owner.startsWith("java.time.") || owner.equals("java.lang.System");
                boolean withClock = target instanceof AccessTarget.MethodCallTarget call
                        && call.getRawParameterTypes().stream().anyMatch(type -> type.isEquivalentTo(Clock.class));
                return time && words.contains(target.getName()) && !withClock;
            }
        };
    }

    private static ArchCondition<JavaClass> takeNoEntity() {
        return new ArchCondition<>("take no entity as a parameter") {
            @Override
            public void check(JavaClass controller, ConditionEvents events) {
                for (JavaMethod method : controller.getMethods()) {
                    // Only these methods are called with what a request carries.
                    boolean asked = method.isMetaAnnotatedWith(RequestMapping.class)
                            || method.isAnnotatedWith(ModelAttribute.class);
                    boolean takes = asked
                            && method.getRawParameterTypes().stream()
                                    .anyMatch(type -> type.isAnnotatedWith(Entity.class));
                    boolean offers = method.isAnnotatedWith(ModelAttribute.class)
                            && method.getRawReturnType().isAnnotatedWith(Entity.class);
                    if (takes || offers) {
                        events.add(SimpleConditionEvent.violated(method, method.getFullName() + " binds an entity"));
                    }
                }
            }
        };
    }
}

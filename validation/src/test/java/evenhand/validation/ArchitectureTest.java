package evenhand.validation;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Each package uses only what stands above it, and the words of the trade name the classes. */
@AnalyzeClasses(
        packages = "evenhand",
        importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureTest.NoTestJar.class})
class ArchitectureTest {
    /** The random cars that the model's tests share are no part of the program. */
    static final class NoTestJar implements ImportOption {
        @Override
        public boolean includes(com.tngtech.archunit.core.importer.Location location) {
            return !location.contains("-tests.jar") && !location.contains("test-classes");
        }
    }

    private static final String[] MODEL = {
        "evenhand.quantity..",
        "evenhand.geometry..",
        "evenhand.linear..",
        "evenhand.tyre..",
        "evenhand.car..",
        "evenhand.catalogue..",
        "evenhand.suspension..",
        "evenhand.load..",
        "evenhand.handsums..",
        "evenhand.turn..",
        "evenhand.straight..",
        "evenhand.level..",
        "evenhand.ride..",
        "evenhand.answers..",
        "evenhand.lowering..",
        "evenhand.advice.."
    };

    /** What steps, in time or along a road, searches or samples stands on a library of mathematics for that. */
    private static final String[] WITH_MATHEMATICS = {
        "evenhand.linkage..",
        "evenhand.structure..",
        "evenhand.road..",
        "evenhand.bump..",
        "evenhand.choice..",
        "evenhand.doubt..",
        "evenhand.roadtest.."
    };

    /** What the commands share: page, options, and the frame of a reply. */
    private static final String[] SHARED_BY_QUESTIONS = {
        "evenhand.terminal.page..", "evenhand.terminal.asked..", "evenhand.terminal.reply.."
    };

    /** Integration in time, with what its interfaces ask for, and of a linear system by the exponential of its matrix. */
    private static final DescribedPredicate<JavaClass> INTEGRATION_IN_TIME = resideInAnyPackage(
                    "org.hipparchus.ode..", "org.hipparchus.analysis..", "org.hipparchus.exception..")
            .or(simpleName("MatrixUtils").or(simpleName("RealMatrix")).and(resideInAPackage("org.hipparchus.linear..")))
            .as("integration in time");

    /** Two libraries of mathematics, and no function that is taken from both. */
    @ArchTest
    static final ArchRule oneLibraryIntegratesInTime = noClasses()
            .should()
            .dependOnClassesThat(resideInAPackage("org.hipparchus..").and(not(INTEGRATION_IN_TIME)));

    @ArchTest
    static final ArchRule theOtherDoesNot = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "org.apache.commons.math3.ode..", "org.apache.commons.math3.analysis.integration.."));

    @ArchTest
    static final ArchRule whatIntegratesInTimeUsesOneLibrary = noClasses()
            .that(DescribedPredicate.describe(
                    "use Hipparchus",
                    one -> one.getDirectDependenciesFromSelf().stream()
                            .anyMatch(
                                    use -> use.getTargetClass().getPackageName().startsWith("org.hipparchus"))))
            .should()
            .dependOnClassesThat(resideInAPackage("org.apache.commons.math3.."));

    @ArchTest
    static final ArchRule quantityStandsOnNothing = usesOnly("quantity");

    @ArchTest
    static final ArchRule equationsStandOnNothing = usesOnly("linear");

    @ArchTest
    static final ArchRule whatLinksDoKnowsNoCar = usesOnly("geometry");

    @ArchTest
    static final ArchRule aTyreKnowsQuantitiesOnly = usesOnly("tyre", "quantity");

    @ArchTest
    static final ArchRule aCarIsBuiltOfTyresLinksAndQuantities = usesOnly("car", "geometry", "tyre", "quantity");

    @ArchTest
    static final ArchRule theCatalogueDescribesTheCar =
            usesOnly("catalogue", "linkage", "geometry", "car", "tyre", "quantity");

    @ArchTest
    static final ArchRule linksMoveByTheCarAlone = usesOnly("linkage", "linear", "geometry", "car");

    @ArchTest
    static final ArchRule suspensionIsTheCarAsTheWheelFeelsIt = usesOnly("suspension", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule aLoadSettlesOnTheSuspension = usesOnly("load", "suspension", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule handSumsUseCarAndSuspension = usesOnly("handsums", "suspension", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule theTurnUsesHandSumsAndSuspension =
            usesOnly("turn", "linear", "handsums", "suspension", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule straightAheadUsesTheSuspensionAndTheTurnsWheels =
            usesOnly("straight", "turn", "linear", "suspension", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule perchesStandOnTheSuspensionAndTheTurnsWheels =
            usesOnly("level", "turn", "linear", "suspension", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule loadsAreStaticsOfStatesThatTurnAndStraightAheadGive =
            usesOnly("structure", "straight", "turn", "suspension", "linkage", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule theRideUsesTheSuspension = usesOnly("ride", "suspension", "geometry", "car", "tyre");

    @ArchTest
    static final ArchRule aRoadKnowsNoCar = usesOnly("road", "quantity");

    @ArchTest
    static final ArchRule aBumpUsesRoadTurnAndSuspension =
            usesOnly("bump", "road", "turn", "suspension", "car", "tyre");

    @ArchTest
    static final ArchRule answersAskTheCarEveryQuestion = usesOnly(
            "answers",
            "structure",
            "linkage",
            "bump",
            "straight",
            "turn",
            "ride",
            "load",
            "handsums",
            "suspension",
            "car",
            "tyre",
            "quantity");

    @ArchTest
    static final ArchRule choosingAsksForAnswersAndNamesChanges =
            usesOnly("choice", "answers", "catalogue", "turn", "car", "quantity");

    @ArchTest
    static final ArchRule doubtAsksForAnswersOfSampledCars =
            usesOnly("doubt", "answers", "catalogue", "turn", "car", "quantity");

    @ArchTest
    static final ArchRule aRoadTestTeachesWhatDoubtDraws =
            usesOnly("roadtest", "doubt", "answers", "ride", "turn", "load", "catalogue", "car", "quantity");

    @ArchTest
    static final ArchRule loweringAsksTheCarAtEachHeight = usesOnly(
            "lowering",
            "answers",
            "linkage",
            "turn",
            "ride",
            "load",
            "handsums",
            "suspension",
            "geometry",
            "car",
            "tyre",
            "quantity");

    @ArchTest
    static final ArchRule adviceChoosesStepsThatLeaveWhatARoadCarNeeds =
            usesOnly("advice", "choice", "lowering", "answers", "catalogue", "turn", "ride", "car", "quantity");

    @ArchTest
    static final ArchRule physicsDoesNotKnowItsDescription = noClasses()
            .that()
            .resideInAnyPackage(
                    "evenhand.linkage..",
                    "evenhand.suspension..",
                    "evenhand.load..",
                    "evenhand.handsums..",
                    "evenhand.turn..",
                    "evenhand.straight..",
                    "evenhand.level..",
                    "evenhand.structure..",
                    "evenhand.ride..",
                    "evenhand.bump..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.catalogue..", "evenhand.quantity..");

    @ArchTest
    static final ArchRule theScenarioKnowsNoWordsAndNoTerminal = noClasses()
            .that()
            .resideInAPackage("evenhand.scenario..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.words..", "evenhand.terminal..");

    @ArchTest
    static final ArchRule wordsKnowNoTerminal = noClasses()
            .that()
            .resideInAPackage("evenhand.words..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("evenhand.terminal..");

    @ArchTest
    static final ArchRule theFormsOfAnswersKnowNoFilesAndNoFaces = noClasses()
            .that()
            .resideInAPackage("evenhand.forms..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "evenhand.scenario..",
                    "evenhand.chart..",
                    "evenhand.drawing..",
                    "evenhand.terminal..",
                    "evenhand.window..",
                    "evenhand.report..");

    @ArchTest
    static final ArchRule theLookOfPicturesDoesNotDependOnWhatTheyShow = noClasses()
            .that()
            .resideInAPackage("evenhand.look..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.words..", "evenhand.chart..", "evenhand.drawing..", "evenhand.answers..");

    @ArchTest
    static final ArchRule chartsAndDrawingsKnowNoFilesAndNoFaces = noClasses()
            .that()
            .resideInAnyPackage("evenhand.chart..", "evenhand.drawing..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.scenario..", "evenhand.terminal..", "evenhand.window..", "evenhand.report..");

    @ArchTest
    static final ArchRule chartsKnowNoDrawings = noClasses()
            .that()
            .resideInAPackage("evenhand.chart..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("evenhand.drawing..");

    @ArchTest
    static final ArchRule drawingsKnowNoCharts = noClasses()
            .that()
            .resideInAPackage("evenhand.drawing..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("evenhand.chart..");

    @ArchTest
    static final ArchRule theReportKnowsNoTerminalAndNoWindow = noClasses()
            .that()
            .resideInAPackage("evenhand.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.terminal..", "evenhand.window..", "evenhand.start..");

    @ArchTest
    static final ArchRule theWindowKnowsNoTerminalAndNoReport = noClasses()
            .that()
            .resideInAPackage("evenhand.window..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.terminal..", "evenhand.report..", "evenhand.start..");

    @ArchTest
    static final ArchRule theTerminalKnowsNoWindow = noClasses()
            .that()
            .resideInAPackage("evenhand.terminal..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.window..", "evenhand.start..", "javax.swing..");

    @ArchTest
    static final ArchRule theDeskAndItsQuestionsNeedNoScreen = noClasses()
            .that()
            .resideInAnyPackage("evenhand.window.desk..", "evenhand.window.question..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.swing..", "java.awt.event..", "com.formdev..", "net.miginfocom..");

    @ArchTest
    static final ArchRule theDeskDoesNotKnowWhichQuestionsThereAre = noClasses()
            .that()
            .resideInAPackage("evenhand.window.desk..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("evenhand.window.question..");

    @ArchTest
    static final ArchRule noPackageUsesOneThatUsesIt =
            slices().matching("evenhand.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule noQuestionOfTheTerminalKnowsAnother = slices().matching("evenhand.terminal.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(DescribedPredicate.alwaysTrue(), resideInAnyPackage(SHARED_BY_QUESTIONS));

    @ArchTest
    static final ArchRule whatQuestionsShareKnowsNoQuestion = noClasses()
            .that()
            .resideInAnyPackage(SHARED_BY_QUESTIONS)
            .should()
            .dependOnClassesThat(
                    resideInAPackage("evenhand.terminal..").and(not(resideInAnyPackage(SHARED_BY_QUESTIONS))));

    @ArchTest
    static final ArchRule wordsOfQuestionsFormNoCircle =
            slices().matching("evenhand.words.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule wordsThatQuestionsShareKnowNoQuestion = noClasses()
            .that()
            .resideInAPackage("evenhand.words")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("evenhand.words.*..");

    @ArchTest
    static final ArchRule theModelKnowsNoFilesNoWindowsAndNoJson = noClasses()
            .that()
            .resideInAnyPackage(MODEL)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio.file..", "java.awt..", "javax.swing..", "com.fasterxml..");

    @ArchTest
    static final ArchRule mathematicsIsAllThatTheRestOfTheModelTakesFromOutside = classes()
            .that()
            .resideInAnyPackage(WITH_MATHEMATICS)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "evenhand..",
                    "java.lang..",
                    "java.util..",
                    "org.hipparchus..",
                    "org.apache.commons.math3..",
                    "org.jspecify.annotations..");

    @ArchTest
    static final ArchRule theModelStandsOnTheJavaLibraryAlone = classes()
            .that()
            .resideInAnyPackage(MODEL)
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("evenhand..", "java..", "org.jspecify.annotations..");

    @ArchTest
    static final ArchRule classesAreNamedAfterThingsOfTheTrade =
            noClasses().should().haveNameMatching(".*(Util|Utils|Manager|Helper|Impl)");

    @ArchTest
    static final ArchRule noPackageIsALumberRoom = noClasses().should().resideInAnyPackage("..util..", "..utils..");

    private static ArchRule usesOnly(String name, String... above) {
        String[] allowed = new String[above.length + 5];
        for (int i = 0; i < above.length; i++) {
            allowed[i] = "evenhand." + above[i] + "..";
        }
        allowed[above.length] = "evenhand." + name + "..";
        allowed[above.length + 1] = "java..";
        allowed[above.length + 2] = "org.jspecify..";
        allowed[above.length + 3] = "org.hipparchus.."; // mathematics: who may, is said above
        allowed[above.length + 4] = "org.apache.commons.math3..";
        return classes()
                .that()
                .resideInAPackage("evenhand." + name + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(allowed);
    }
}

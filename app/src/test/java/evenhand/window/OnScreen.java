package evenhand.window;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** A test that needs a screen; where there is none it is left out, and that is said. */
@Target(ElementType.TYPE)
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(OnScreen.Condition.class)
@interface OnScreen {
    /** Whether there is a screen. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            if (hasScreen()) {
                return ConditionEvaluationResult.enabled("there is a screen");
            }
            String why = "LEFT OUT, as there is no display and no Xvfb: " + context.getDisplayName();
            System.err.println(why);
            return ConditionEvaluationResult.disabled(why);
        }

        private static boolean hasScreen() {
            try {
                if (GraphicsEnvironment.isHeadless()) {
                    return false;
                }
                GraphicsEnvironment.getLocalGraphicsEnvironment().getDefaultScreenDevice();
                return true;
            } catch (AWTError | LinkageError none) {
                return false;
            }
        }
    }
}

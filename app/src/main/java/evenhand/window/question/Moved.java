package evenhand.window.question;

import evenhand.linkage.AxleMotion;
import evenhand.quantity.Dimension;

/** A motion as it is chosen and slid through. */
enum Moved {
    HEAVE(AxleMotion.HEAVE, "bump and droop", "both wheels up", "both wheels up"),
    ROLL(AxleMotion.ROLL, "roll", "right side down", "right side down"),
    ONE_WHEEL(AxleMotion.ONE_WHEEL, "one wheel", "left wheel up", "left wheel up"),
    STEER(AxleMotion.STEER, "steer", "steer to the left", "reference steer to the left");

    final AxleMotion motion;
    final String words;
    final String slide;
    final String axis;

    Moved(AxleMotion motion, String words, String slide, String axis) {
        this.motion = motion;
        this.words = words;
        this.slide = slide;
        this.axis = axis;
    }

    Dimension dimension() {
        return motion.isAngle() ? Dimension.ANGLE : Dimension.LENGTH;
    }
}

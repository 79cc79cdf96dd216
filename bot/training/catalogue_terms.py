"""The closed terms of the catalogue: movement patterns, muscles, joints, equipment, warm-ups."""

from collections.abc import Mapping
from decimal import Decimal
from enum import StrEnum

from bot.training.gym import BAR, BODY, DUMBBELLS, NOTHING, STACK
from bot.training.plan import Region
from bot.training.warmup import LIGHT, MEDIUM, RAMP


class Pattern(StrEnum):
    """What movement an exercise is; the single-joint ones by what the joint does."""

    SQUAT = "squat"
    HINGE = "hinge"
    HORIZONTAL_PUSH = "horizontal push"
    HORIZONTAL_PULL = "horizontal pull"
    VERTICAL_PUSH = "vertical push"
    VERTICAL_PULL = "vertical pull"
    SINGLE_LEG = "single-leg"
    CARRY = "carry"
    TRUNK = "trunk"
    ELBOW_FLEXION = "elbow flexion"
    ELBOW_EXTENSION = "elbow extension"
    SHOULDER_ABDUCTION = "shoulder abduction"
    SHOULDER_FLEXION = "shoulder flexion"
    CHEST_FLY = "chest fly"
    """Of the shoulder, arms drawn together in front."""
    REAR_FLY = "rear fly"
    """Of the shoulder, arms drawn apart to the back."""
    SHOULDER_ROTATION = "shoulder rotation"
    SHOULDER_EXTENSION = "shoulder extension"
    SHOULDER_ELEVATION = "shoulder elevation"
    KNEE_EXTENSION = "knee extension"
    KNEE_FLEXION = "knee flexion"
    CALF = "calf"
    SHIN = "shin"
    HIP_EXTENSION = "hip extension"
    HIP_ABDUCTION = "hip abduction"
    HIP_ADDUCTION = "hip adduction"
    HIP_FLEXION = "hip flexion"
    FOREARM = "forearm"

    @property
    def region(self) -> Region:
        """Where it works."""
        if self in _TRUNK:
            return Region.TRUNK
        return Region.LOWER if self in _LOWER else Region.UPPER

    @property
    def is_small(self) -> bool:
        """Whether it is work of one joint, or of the trunk: not done for very few repetitions."""
        return self not in _LARGE


_LARGE = frozenset(
    {
        Pattern.SQUAT,
        Pattern.HINGE,
        Pattern.HORIZONTAL_PUSH,
        Pattern.HORIZONTAL_PULL,
        Pattern.VERTICAL_PUSH,
        Pattern.VERTICAL_PULL,
        Pattern.SINGLE_LEG,
        Pattern.CARRY,
        Pattern.HIP_EXTENSION,
    }
)
_TRUNK = frozenset({Pattern.TRUNK, Pattern.CARRY})
_LOWER = frozenset(
    {
        Pattern.SQUAT,
        Pattern.HINGE,
        Pattern.SINGLE_LEG,
        Pattern.KNEE_EXTENSION,
        Pattern.KNEE_FLEXION,
        Pattern.CALF,
        Pattern.SHIN,
        Pattern.HIP_EXTENSION,
        Pattern.HIP_ABDUCTION,
        Pattern.HIP_ADDUCTION,
        Pattern.HIP_FLEXION,
    }
)


class Muscle(StrEnum):
    """Muscles as sets are counted by them, in the words of the sample programme."""

    CHEST = "chest"
    BACK = "back"
    """The broad muscle of the back and those between the shoulder blades."""
    TRAPEZIUS = "trapezius"
    SHOULDERS = "shoulders"
    """Front and side."""
    REAR_SHOULDERS = "rear shoulders"
    ROTATOR_CUFF = "rotator cuff"
    BICEPS = "biceps"
    TRICEPS = "triceps"
    FOREARMS = "forearms"
    ABDOMINALS = "abdominals"
    OBLIQUES = "obliques"
    LOWER_BACK = "lower back"
    GLUTES = "glutes"
    QUADRICEPS = "quadriceps"
    HAMSTRINGS = "hamstrings"
    ADDUCTORS = "adductors"
    ABDUCTORS = "abductors"
    HIP_FLEXORS = "hip flexors"
    CALVES = "calves"
    SHINS = "shins"


class Joint(StrEnum):
    """Places that an exercise loads. The wrist stands for hand and grip too, the ankle for the foot."""

    NECK = "neck"
    SHOULDER = "shoulder"
    ELBOW = "elbow"
    WRIST = "wrist"
    UPPER_BACK = "upper back"
    LOWER_BACK = "lower back"
    HIP = "hip"
    KNEE = "knee"
    ANKLE = "ankle"


class Equipment(StrEnum):
    """What loads an exercise, or what else it needs."""

    BAR = "bar"
    HEX_BAR = "hex bar"
    DUMBBELLS = "dumbbells"
    KETTLEBELL = "kettlebell"
    MACHINE = "machine"
    """With a stack."""
    PLATE_MACHINE = "plate machine"
    """Loaded with plates, or a bar on rails."""
    CABLE = "cable"
    BODY_WEIGHT = "body weight"
    BAND = "band"
    NONE = "none"
    SLED = "sled"
    BENCH = "bench"
    RACK = "rack"
    HIGH_BAR = "high bar"
    """To hang from."""
    DIP_BARS = "dip bars"
    BACK_BENCH = "back bench"
    """A bench that holds the legs while the trunk hangs free."""
    BOX = "box"
    """Or a step."""
    STRAPS = "straps"
    """Hung up, or rings."""
    BALL = "ball"
    WHEEL = "wheel"
    SLIDERS = "sliders"

    @property
    def loads(self) -> str:
        """The kind of the client's gym (`bot.training.gym`) that makes its loads.

        Kettlebells go by the dumbbells' ladder; what takes plates goes by the bar's.
        """
        return _LOADS.get(self, NOTHING)


_LOADS: Mapping[Equipment, str] = {
    Equipment.BAR: BAR,
    Equipment.HEX_BAR: BAR,
    Equipment.PLATE_MACHINE: BAR,
    Equipment.SLED: BAR,
    Equipment.DUMBBELLS: DUMBBELLS,
    Equipment.KETTLEBELL: DUMBBELLS,
    Equipment.MACHINE: STACK,
    Equipment.CABLE: STACK,
    Equipment.BODY_WEIGHT: BODY,
}


class WarmUp(StrEnum):
    """How much of a ramp an exercise usually takes before its first work set."""

    LONG = "long"
    MEDIUM = "medium"
    LIGHT = "light"
    NONE = "none"

    @property
    def steps(self) -> tuple[tuple[Decimal, int], ...]:
        """Shares of the work load with repetitions, rising; see `bot.training.warmup` for their source."""
        match self:
            case WarmUp.LONG:
                return RAMP
            case WarmUp.MEDIUM:
                return MEDIUM
            case WarmUp.LIGHT:
                return LIGHT
            case WarmUp.NONE:
                return ()

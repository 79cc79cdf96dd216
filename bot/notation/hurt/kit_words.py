"""What a gym, a room and a day are made of that pops, snaps and collapses and cannot hurt. Common practice, no source.

Left out is what is also a part of the body or of its talk: caps, balls, catches, strings.
"""

from bot.notation.hurt.rows import word_set

KIT = word_set(
    """
    pin pins bolt bolts clip clips spring springs collar collars screw screws hinge hinges rivet rivets washer
    latch lever knob buckle button buttons zip lid cork weld cable cables pulley carabiner handle wheel wheels chain
    door lock locker drawer window fuse bulb light tyre tire speaker plug hose pipe strap straps band bands pedal
    seat seats chair chairs stool stools bench benches table tables shelf shelves roof ceiling tent bed sofa couch
    ladder stand rack racks trolley pram buggy gazebo marquee fence wall shed bridge stage scaffold scaffolding
    backrest upright uprights rig frame step platform deckchair tripod
    deal marriage market business company firm shop plan plans talks government system network economy bank
    """
)
STANDS_ON = word_set("chair chairs stool stools bench benches table tables seat sofa couch bed rack tripod shelf desk")
"""What has legs, arms, feet and a back of its own: `the stool's leg snapped`."""
HAS_PARTS = STANDS_ON | word_set(
    """
    rower bike treadmill stepper elliptical erg machine dumbbell dumbbells barbell kettlebell robot statue lamp doll
    teddy mannequin skeleton puppet toy scarecrow snowman crane digger hammer mallet broom mop brush stereo engine car
    van bus boiler printer laptop tripod fan guitar clock toothbrush shower screw nail
    """
)
"""What has a head, arms or knees of its own: `the rower's arm popped out`, `a dumbbell lost its head`."""
MACHINES = word_set(
    "stack machine speaker speakers pulley cable cables treadmill radiator boiler engine car fridge rower bike sled "
    "ceiling roof rig"
)
"""What makes a noise by itself."""

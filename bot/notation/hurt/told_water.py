"""Rows of signs told in any order: lost control, and dark water. Gathered by us."""

from bot.notation.hurt.rows import word_set
from bot.notation.hurt.told import Told

WATER = (
    Told(
        "control",
        9,
        (
            word_set("wipe wiping wiped"),
            word_set("feel feeling sense felt sensation"),
            word_set("nothing anything don't didn't can't no barely hardly"),
        ),
        word_set("machine down sweat sweaty kit floor"),
    ),
    Told(
        "control",
        6,
        (
            word_set("wee pee peed weed urinated urinate"),
            word_set("no haven't hasn't can't not"),
            word_set("since for"),
            word_set("yesterday night days evening"),
        ),
        word_set("water coffee dark lol haha brown"),
    ),
    Told(
        "control",
        14,
        (
            word_set("trousers shorts leggings pants knickers seat underwear"),
            word_set("soaked drenched wet damp"),
            word_set("control"),
            word_set("no lost losing without not"),
        ),
        word_set("sweat sweaty sweating rain raining water bottle shaker spilled spilt tap laundry wash coffee bar"),
    ),
    Told(
        "control",
        12,
        (word_set("accident"), word_set("loo toilet bathroom pants shorts leggings knickers trousers bed")),
        word_set("car bike work traffic road kid kids son daughter baby dog cat child puppy"),
    ),
    Told(
        "control",
        8,
        (
            word_set("pee wee poo urine bladder bowels bowel piss stool"),
            word_set("can't lost no won't without not never don't didn't doesn't"),
            word_set("control warning noticing notice noticed knowing realising realise coming sensation"),
        ),
        word_set("laughing clear break breaks drinking water good"),
    ),
    Told(
        "control",
        14,
        (
            word_set("trickled trickling leaking leaked leak leaks dribbling dribbled wetting dripping"),
            word_set("feel felt feeling notice noticed know knew knowing realise realised aware"),
            word_set("can't didn't don't not without never doesn't no"),
        ),
        word_set("bottle shaker water pipe roof tap hose sweat sweating nose gas"),
    ),
    Told(
        "control",
        10,
        (
            word_set("bladder bowel bowels pee wee urine poo pipi piss"),
            word_set("can't unable impossible"),
            word_set("hold stop control wait"),
        ),
        word_set("laughing lol haha coffee water break"),
    ),
    Told(
        "control",
        9,
        (word_set("leaked leak leaking"), word_set("can't"), word_set("stop hold control")),
        word_set("bottle shaker water pipe roof tap hose sweat sweating nose gas battery laughing lol haha"),
    ),
    Told(
        "urine",
        9,
        (
            word_set("toilet loo"),
            word_set(
                """
                cola coke brown tea coffee rust rusty red blood bloody dark stout treacle beer mud muddy gravy beetroot
                tar
                """
            ),
            word_set("colour coloured color colored go went water pee wee looks looked bowl shade hue tint"),
        ),
        word_set("painted tiles seat door light lights cup drink drank queue break quick"),
    ),
    Told(
        "control",
        12,
        (
            word_set("accident"),
            word_set("feel felt notice noticed know knew warning"),
            word_set("didn't never not without no"),
        ),
        word_set("car bike work traffic road kid kids son daughter baby dog cat child puppy"),
    ),
    Told(
        "control",
        14,
        (
            word_set("pee wee leak pees weeing peeing"),
            word_set("don't didn't doesn't never can't"),
            word_set("feel feels notice noticed"),
            word_set("it nothing coming anything"),
        ),
        word_set("like good fine clear water"),
    ),
    Told(
        "control",
        11,
        (
            word_set("loo toilet bathroom"),
            word_set("came slipped escaped ran"),
            word_set("out"),
            word_set("just before needed time"),
        ),
        word_set("of queue break water phone"),
    ),
    Told(
        "control",
        9,
        (
            word_set("urge"),
            word_set("pee wee loo toilet urinate poo"),
            word_set("lost no gone nothing without lose losing don't"),
        ),
        word_set("coffee water"),
    ),
    Told(
        "control",
        8,
        (word_set("pee wee urinate"), word_set("nothing"), word_set("comes come came")),
        word_set("dehydrated water"),
    ),
)
"""The rows of lost control, and dark water."""

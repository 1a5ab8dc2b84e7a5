"""Words of questions and of the answers to them, as a thread of messages has them."""

from __future__ import annotations


def _set(text: str) -> frozenset[str]:
    return frozenset(text.split())


#: deny what was asked
NO = _set("no nope nah naw none nil")
#: likewise where no more follows: "not yet", "never"
NOT = _set("not never nothing")
#: behind "no": something of what was asked is there
SAVE = _set("just only but except apart bar besides although though")
#: affirm what was asked
YES = _set("yes yep yeah yup aye")
#: behind "no", begin a statement of its own: "no it's an electric one", "no the stick is dry"
STATES_ITSELF = _set(
    "it its the i ive id we weve he she hes shes they theyre there theres this thats these my our both all "
    "just still same not never nothing none havent hasnt didnt dont doesnt isnt wasnt cant only"
)
#: behind a "no" anywhere, always begin one
OWN_SUBJECT = _set("the its theres ive")
#: behind "no", a statement of its own only with one of ``BEING`` behind it: "no level is fine"
NAMED = _set("level dipstick stick bearings mains rods shells filter pickup strainer screen sender")
BEING = _set("is was are were looks looked")
#: what one looks or listens for: "leaks: no" says that there are none
LOOKED_FOR = _set(
    "leak leaks leaking noise noises noisy knock knocks knocking smoke smokes smoking metal glitter flakes "
    "shavings filings swarf debris sludge water coolant milky foam fuel smell smells ticking tick rattle rattles rattling "
    "clatter whine damage wear scoring blowby drips dripping bits particles vibration tapping rumble overheating"
)
#: behind "no", say no more than how sure it is
NO_MORE = _set(
    "that that's thats i we can could see hear find tell know of at all so far yet noticed seen heard found sir mate "
    "not really ever no never nothing any much lol thankfully luckily thank god thanks have"
)
#: lead a question about what is there or shows; what is left states it
ASKING = (
    "any",
    "got any",
    "is there any",
    "is there a",
    "is there",
    "are there any",
    "are there",
    "was there any",
    "was there a",
    "was there",
    "were there any",
    "were there",
    "does it have any",
    "does it have",
    "does it",
    "does the engine",
    "did it",
    "has it got any",
    "has it got",
    "has it",
    "do you have any",
    "do you hear any",
    "do you hear a",
    "do you hear",
    "do you see any",
    "do you see",
    "can you hear any",
    "can you hear",
    "can you see any",
    "can you see",
    "did you find any",
    "did you find",
    "did you see any",
    "have you found any",
    "have you seen any",
    "does",
    "is",
    "are",
    "was",
    "were",
    "has",
)
#: lead a question about work; only "yes" makes it stated
ASKING_OF_WORK = ("have you", "did you", "has anyone", "did anyone", "youve")
#: name a thing and say nothing of it: "oil level? full"
TOPICS = _set(
    "oil level pressure filter mileage miles hours sender sending unit switch gauge pump pickup strainer screen bearings "
    "relief valve spring dipstick grade weight engine temperature temp cold hot idle idling revs tickover noise noises "
    "filters brand lamp light sump pan"
)
#: lead a question about a thing by its name: "what oil?"
ASKING_WHAT = (
    "what about the",
    "what about",
    "how about the",
    "how about",
    "and the",
    "and",
    "the",
    "what",
    "which",
)
#: a question with one of these is no question about what is there
NO_QUESTION_OF_FACT = _set(
    "should could would might may safe normal possible worth cause causes causing think reckon mean means suggest "
    "ideas idea thoughts anyone anybody someone why how who advice help bad enough reasonable acceptable supposed if or "
    "common guess going not"
)
#: before a colon or a dash, number or name who asks or what is answered
LABELS = _set("q a q1 q2 q3 q4 q5 q6 q7 q8 q9 a1 a2 a3 a4 a5 a6 a7 a8 a9 re ans answer question ad")

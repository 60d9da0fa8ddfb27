#include "app/gui/engine_sentences.h"

#include <QtGlobal>

// What the engine says in whole sentences, so that it can be translated; a test
// finds those that are missing here.
namespace {

[[maybe_unused]] const char* const kSentences[] = {
    QT_TRANSLATE_NOOP("engine",
                      "A cup can be checked again after 1 to 1440 minutes, not "
                      "sooner or later."),
    QT_TRANSLATE_NOOP("engine", "A cup needs a name; say what you call it."),
    QT_TRANSLATE_NOOP("engine", "A film must be 0 to 100 mm thick."),
    QT_TRANSLATE_NOOP(
        "engine",
        "A stick was lifted but no stream could be seen under it; use a "
        "background that differs from the paint, or more light."),
    QT_TRANSLATE_NOOP(
        "engine",
        "A unit needs a name, and one of it must hold 0.001 to 100 mL."),
    QT_TRANSLATE_NOOP("engine",
                      "An addition must lie between 0.001 and 20000 mL."),
    QT_TRANSLATE_NOOP("engine",
                      "Another program has changed this bench meanwhile; look "
                      "at it and try again."),
    QT_TRANSLATE_NOOP("engine",
                      "Between 1 and 20 films of a cup can be asked for."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Camera or tile was moved while the puddle spread; leave both alone."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Clips can be compared only if the camera stays where it is."),
    QT_TRANSLATE_NOOP("engine",
                      "It is not said what was seen; name the fault."),
    QT_TRANSLATE_NOOP("engine",
                      "Loosen the thick paint with some of the cup first, then "
                      "stir it back in."),
    QT_TRANSLATE_NOOP("engine", "Minutes of rest must not be negative."),
    QT_TRANSLATE_NOOP(
        "engine",
        "More than one ribbon was laid, or something stirred or crossed the "
        "paint after it: film one ribbon per clip and leave it alone."),
    QT_TRANSLATE_NOOP("engine",
                      "No ribbon of paint was seen to fade: lay one on the "
                      "paint's own surface, with a lamp or window mirrored in "
                      "it, and film until it is gone."),
    QT_TRANSLATE_NOOP("engine",
                      "No round puddle was found. Film the tile from straight "
                      "above, put the measured paint down in one place, take "
                      "the syringe away and let it spread for ten seconds."),
    QT_TRANSLATE_NOOP("engine",
                      "No session is open; begin one or choose one first."),
    QT_TRANSLATE_NOOP("engine",
                      "No stick was seen to be lifted out of the paint and "
                      "held still; start filming with the stick standing in "
                      "the cup, lift it straight up and hold it."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Nothing happens in this clip: no paint is put on the tile. Start "
        "filming, put down the paint, and let it spread for ten seconds."),
    QT_TRANSLATE_NOOP("engine",
                      "Nothing moves in this clip: film the ribbon being laid "
                      "on the paint and keep filming until it is gone."),
    QT_TRANSLATE_NOOP("engine",
                      "Nothing moves in this clip; film the stick being lifted "
                      "out of the paint."),
    QT_TRANSLATE_NOOP(
        "engine",
        "One more film before adding lets the next addition go further."),
    QT_TRANSLATE_NOOP("engine",
                      "One reading of each only: how evenly the hand repeats "
                      "was taken from what is usual. Test the base coat and "
                      "the cup again for a narrower answer."),
    QT_TRANSLATE_NOOP("engine",
                      "Paint is put down twice in this clip: cut it so that it "
                      "holds one puddle."),
    QT_TRANSLATE_NOOP("engine",
                      "Part of the ribbon stays for good: this paint is too "
                      "stiff to level, loosen it first."),
    QT_TRANSLATE_NOOP("engine",
                      "Parts of the surface level at very different speeds: "
                      "look for a hand's shadow, a crooked ribbon or a skin."),
    QT_TRANSLATE_NOOP("engine",
                      "Something fell or moved on the paint after a pause; the "
                      "levelling is counted from the last of it."),
    QT_TRANSLATE_NOOP("engine",
                      "The base coat is what the others are compared with; it "
                      "has no target of its own."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The camera does not look straight down; the mean radius is taken."),
    QT_TRANSLATE_NOOP("engine",
                      "The camera does not look straight down; the radius is "
                      "taken along the ruler."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The camera or the cup was moved while the ribbon levelled: fix the "
        "camera, leave the cup alone and film it again."),
    QT_TRANSLATE_NOOP("engine",
                      "The camera sends no pictures; check its cable."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The camera shows a still picture; unplug it and plug it in again."),
    QT_TRANSLATE_NOOP("engine",
                      "The camera's clock jumped; film the test again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The camera, the light or something in front of it moved just when the "
        "stream seemed to break; keep all of it still and film again."),
    QT_TRANSLATE_NOOP("engine",
                      "The clip ends before enough of the ribbon is gone: film "
                      "on until the surface is smooth again."),
    QT_TRANSLATE_NOOP("engine",
                      "The clip ends right after the laying: keep filming "
                      "until the surface is smooth again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The clip ends too soon to see how the puddle slows down. Film on for "
        "ten seconds after the syringe is away."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The clip ends too soon: paint is still being put down, or has only "
        "just been. Film on for ten seconds after the syringe is away."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The clip ends while something still moves: keep filming after the "
        "ribbon is laid until the surface is smooth again."),
    QT_TRANSLATE_NOOP("engine", "The clip holds no picture."),
    QT_TRANSLATE_NOOP("engine",
                      "The clip is too short to hold a stream test; film from "
                      "before the lift until the drips."),
    QT_TRANSLATE_NOOP("engine",
                      "The clip is too short: film from before the ribbon is "
                      "laid until the surface is smooth again."),
    QT_TRANSLATE_NOOP("engine",
                      "The cup is too thin and the reserve is no help: stir in "
                      "thicker paint or medium of the same kind, a little at a "
                      "time, and test again; water cannot help."),
    QT_TRANSLATE_NOOP(
        "engine", "The film cannot be written; check the room on the disk."),
    QT_TRANSLATE_NOOP("engine",
                      "The first touch of the paint on the tile was not seen."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The last test does not fit the others; stir, and film it again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The laying of the ribbon is not in the clip: start filming before it "
        "and keep on until the surface is smooth again."),
    QT_TRANSLATE_NOOP("engine", "The match band must lie between 0.02 and 1."),
    QT_TRANSLATE_NOOP("engine", "The measurement was stopped; start it again."),
    QT_TRANSLATE_NOOP("engine",
                      "The moment must lie within the film; give seconds of "
                      "real time since its first frame."),
    QT_TRANSLATE_NOOP("engine",
                      "The moment that was set by hand lies outside the film; "
                      "choose one within it."),
    QT_TRANSLATE_NOOP("engine",
                      "The moment the stick leaves the paint could not be "
                      "seen; start filming with the stick standing in the "
                      "paint and lift it straight up."),
    QT_TRANSLATE_NOOP("engine", "The note is empty."),
    QT_TRANSLATE_NOOP("engine",
                      "The paint fills the picture, so shaking and lamp "
                      "flicker could not be taken out: leave a rim around it."),
    QT_TRANSLATE_NOOP("engine",
                      "The paint is already on the tile when the clip begins: "
                      "start filming first, then put the paint down."),
    QT_TRANSLATE_NOOP("engine",
                      "The paint is so thin that its own swing still carries "
                      "it: the viscosity is a lower bound."),
    QT_TRANSLATE_NOOP("engine",
                      "The paint was moved for far longer than its surface "
                      "takes to settle: lay one short ribbon, without "
                      "stirring, or use the puddle test for paint this thin."),
    QT_TRANSLATE_NOOP("engine",
                      "The picture is black: turn on a lamp, take off the lens "
                      "cap and film again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The picture is black; take the cap off the lens or add light."),
    QT_TRANSLATE_NOOP("engine",
                      "The picture is blurred or empty: nothing in it has an "
                      "edge. Focus on the tile and film again."),
    QT_TRANSLATE_NOOP("engine",
                      "The picture is blurred: bring the paint's surface into "
                      "focus, wipe the lens, and film it again."),
    QT_TRANSLATE_NOOP("engine",
                      "The picture is too blurred or too plain to see a stick; "
                      "focus on the stick and film again."),
    QT_TRANSLATE_NOOP("engine",
                      "The picture is too blurred to see the stream; focus on "
                      "the stick and film again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The picture shows nothing (black, white or covered lens): check the "
        "light and the camera, then film it again."),
    QT_TRANSLATE_NOOP("engine",
                      "The picture stands still: the film is one frozen "
                      "picture. Film again."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle comes to a stop: this paint stands on the "
                      "tile before it can be timed. Use more paint or a "
                      "cleaner tile, or test this cup with the stream."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle creeps a little to one side: check that the "
                      "tile is level."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The puddle creeps to one side as it spreads: the tile is not level. "
        "Level it in both directions and film again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The puddle does not spread as flowing paint left alone does: keep "
        "hands and sticks off it and film again; if it does so every time, "
        "this paint sets too soon for the puddle test."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle does not spread evenly all round; the "
                      "interval is wider for it."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle ends up thinner than a millimetre, where it "
                      "may be about to stop; 5 mL gives a surer viscosity."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The puddle is hardly ever seen whole: take hand and syringe out of "
        "the picture once the paint is down and film on for ten seconds."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle is not round: film from straight above on a "
                      "level, clean tile, with nothing in the paint's way."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle is so small that surface tension helps to "
                      "spread it: use 5 mL for a true viscosity."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle shrinks: the film runs backwards, or "
                      "something draws the paint away. Film again."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle slows down more than flowing paint should: "
                      "it may be about to stop, so the ratio is less sure."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The puddle spreads further on one side than on another: clean the "
        "tile, keep things out of the paint's way, and film again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The puddle touches the edge of the picture; the rest is measured."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The repeats of the same paint lie more than a tenth apart: dip to the "
        "same mark, wait the same time after stirring, and test again."),
    QT_TRANSLATE_NOOP("engine",
                      "The reserve of a cup must lie between 0 and 20000 mL."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The ribbon can hardly be seen: let a lamp or window mirror in the "
        "paint, or come closer, and film it again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The ribbon does not fade steadily: keep hands and shadows out of the "
        "picture, use more light, and film it again."),
    QT_TRANSLATE_NOOP("engine",
                      "The ribbon is gone within a few pictures: this paint is "
                      "too thin for the level test at this frame rate, use the "
                      "puddle test or slow motion."),
    QT_TRANSLATE_NOOP("engine",
                      "The ribbon's fading is ragged, so the result is rough: "
                      "more light or a steadier camera helps."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The room temperature must lie between -20 and 60 degrees Celsius."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The size of the camera's pictures changed; film the test again."),
    QT_TRANSLATE_NOOP("engine",
                      "The smallest step must lie between 0.001 and 100 mL."),
    QT_TRANSLATE_NOOP("engine",
                      "The stick was lifted more than once in this clip; keep "
                      "one test to a clip."),
    QT_TRANSLATE_NOOP("engine",
                      "The stream cannot break before the stick is lifted; set "
                      "the two moments in order."),
    QT_TRANSLATE_NOOP("engine",
                      "The stream had not broken by the end of the clip, or it "
                      "is too faint to tell; film on until it drips, against a "
                      "background that differs from the paint."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The surface changes before the ribbon is laid and rests after it: the "
        "clip seems to run backwards, or the paint had not come to rest."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The surface does not come back to its look from before the ribbon: "
        "something in the picture or the light changed meanwhile."),
    QT_TRANSLATE_NOOP("engine",
                      "The surface was disturbed while it levelled (a hand, a "
                      "second ribbon, a moved cup or camera): lay one ribbon, "
                      "take everything out of the picture and wait."),
    QT_TRANSLATE_NOOP("engine",
                      "The target of a cup must lie between 0.2 and 5."),
    QT_TRANSLATE_NOOP(
        "engine", "The thinner's own ratio must lie between 0.00001 and 100."),
    QT_TRANSLATE_NOOP(
        "engine", "The uncertainty of the volume must lie between 0 and 0.5."),
    QT_TRANSLATE_NOOP("engine",
                      "The volume of a cup must lie between 1 and 20000 mL."),
    QT_TRANSLATE_NOOP(
        "engine", "The volume of the puddle must lie between 0.1 and 100 mL."),
    QT_TRANSLATE_NOOP(
        "engine", "There are two puddles in the picture: film one at a time."),
    QT_TRANSLATE_NOOP("engine",
                      "There is no brand to learn for; say whose paint it is."),
    QT_TRANSLATE_NOOP("engine", "There is no photo; name its file."),
    QT_TRANSLATE_NOOP(
        "engine",
        "There is no place for the brand book; name one with --store."),
    QT_TRANSLATE_NOOP("engine", "There is no scale."),
    QT_TRANSLATE_NOOP(
        "engine",
        "There is no such cup on the bench; look at the list of cups."),
    QT_TRANSLATE_NOOP(
        "engine", "There is no such session; look at the list of sessions."),
    QT_TRANSLATE_NOOP(
        "engine",
        "There is no such test on the bench; look at the list of tests."),
    QT_TRANSLATE_NOOP("engine", "There is nothing to redo."),
    QT_TRANSLATE_NOOP("engine", "There is nothing to undo."),
    QT_TRANSLATE_NOOP("engine",
                      "This cup has no ratio to the base coat or no volume, so "
                      "there is nothing to learn yet."),
    QT_TRANSLATE_NOOP("engine",
                      "This cup has no test after an addition, so there is "
                      "nothing to learn yet; add, stir and test it first."),
    QT_TRANSLATE_NOOP("engine", "This test is set aside already."),
    QT_TRANSLATE_NOOP("engine", "This test was not set aside."),
    QT_TRANSLATE_NOOP("engine",
                      "Two streams run off the stick; dip it straighter or use "
                      "a narrower stick, and film again."),
    QT_TRANSLATE_NOOP("engine",
                      "Two streams seem to run off the stick; dip it "
                      "straighter or use a narrower stick."),
    QT_TRANSLATE_NOOP("engine",
                      "What is round in the picture does not spread: either it "
                      "is no puddle or the paint stopped at once. Use more "
                      "paint, or test this cup with the stream."),
    QT_TRANSLATE_NOOP(
        "engine",
        "What was planned and used must lie between 0.1 mL and 1000 L."),
    QT_TRANSLATE_NOOP("engine",
                      "This water is hardly thinner than the target and cannot "
                      "bring the cup there; use water or a thinner one."),
    QT_TRANSLATE_NOOP(
        "engine",
        "This additive is hardly thinner than the target and cannot bring the "
        "cup there; use water or a thinner one."),
    QT_TRANSLATE_NOOP(
        "engine",
        "This medium is hardly thinner than the target and cannot bring the "
        "cup there; use water or a thinner one."),
};

}  // namespace

namespace flowkin {

const std::vector<const char*>& EngineSentencesWithValues() {
  static const std::vector<const char*> sentences = {
      QT_TRANSLATE_NOOP("engine",
                        "Added water is %1 % of the cup: outside all commonly "
                        "quoted advice (50 %); the binder is spread too thin."),
      QT_TRANSLATE_NOOP("engine",
                        "Added water is %1 % of the cup: more than commonly "
                        "quoted advice allows (30 %); go on with medium."),
      QT_TRANSLATE_NOOP("engine",
                        "Added water is %1 % of the cup: above the 20 % that "
                        "commonly quoted advice calls safe for the film."),
      QT_TRANSLATE_NOOP(
          "engine", "Additive is %1 % of the cup: see what its label allows."),
      QT_TRANSLATE_NOOP("engine",
                        "This cup holds %1 points more added liquid than "
                        "another cup; they will dry and shrink differently."),
      QT_TRANSLATE_NOOP("engine",
                        "This cup holds %1 points less added liquid than "
                        "another cup; they will dry and shrink differently."),
      QT_TRANSLATE_NOOP("engine",
                        "The room is %1 degrees C warmer than when the base "
                        "coat was tested; test the base coat again."),
      QT_TRANSLATE_NOOP("engine",
                        "The room is %1 degrees C colder than when the base "
                        "coat was tested; test the base coat again."),
      QT_TRANSLATE_NOOP(
          "engine", "The base coat was tested %1 hours ago; test it again."),
      QT_TRANSLATE_NOOP("engine",
                        "The cup stood open for %1 minutes and has thickened; "
                        "cover it and test again before adding."),
      QT_TRANSLATE_NOOP("engine",
                        "The test came %1 s after stirring; stir, wait 15 s "
                        "and test, the same for every cup."),
      QT_TRANSLATE_NOOP("engine",
                        "The repair takes %1 mL of unthinned paint, more than "
                        "is kept back; mix more of the same first."),
      QT_TRANSLATE_NOOP("engine",
                        "Another %1 mL of water would pass %2 % of the cup; "
                        "thin on with medium."),
      QT_TRANSLATE_NOOP("engine",
                        "One %1 (%2 mL) is too much at once for this cup; stop "
                        "here, or film it again to know it better."),
      QT_TRANSLATE_NOOP("engine",
                        "A step of %1 mL is too much at once for this cup; "
                        "stop here, or film it again to know it better."),
      QT_TRANSLATE_NOOP(
          "engine",
          "%1 pictures were damaged and partly filled in by the decoder."),
      QT_TRANSLATE_NOOP("engine",
                        "%1 pictures were lost: the file is damaged."),
      QT_TRANSLATE_NOOP("engine",
                        "%1 pictures were left out: their times do not rise or "
                        "jump by minutes."),
      QT_TRANSLATE_NOOP("engine",
                        "One %1 (%2 mL) is too much at once for this cup; "
                        "measure it out with a teaspoon instead."),
      QT_TRANSLATE_NOOP("engine",
                        "A step of %1 mL is too much at once for this cup; "
                        "measure it out with a teaspoon instead."),
      QT_TRANSLATE_NOOP("engine",
                        "One %1 (%2 mL) is too much at once for this cup; "
                        "measure it out with a quarter teaspoon instead."),
      QT_TRANSLATE_NOOP("engine",
                        "A step of %1 mL is too much at once for this cup; "
                        "measure it out with a quarter teaspoon instead."),
      QT_TRANSLATE_NOOP("engine",
                        "One %1 (%2 mL) is too much at once for this cup; "
                        "measure it out with 1 mL marks of a pipette instead."),
      QT_TRANSLATE_NOOP("engine",
                        "A step of %1 mL is too much at once for this cup; "
                        "measure it out with 1 mL marks of a pipette instead."),
      QT_TRANSLATE_NOOP(
          "engine",
          "One %1 (%2 mL) is too much at once for this cup; measure it out "
          "with 0.1 mL marks of a pipette instead."),
      QT_TRANSLATE_NOOP(
          "engine",
          "A step of %1 mL is too much at once for this cup; measure it out "
          "with 0.1 mL marks of a pipette instead."),
      QT_TRANSLATE_NOOP("engine",
                        "One %1 (%2 mL) is too much at once for this cup; "
                        "measure it out with drops instead."),
      QT_TRANSLATE_NOOP("engine",
                        "A step of %1 mL is too much at once for this cup; "
                        "measure it out with drops instead."),
  };
  return sentences;
}

}  // namespace flowkin

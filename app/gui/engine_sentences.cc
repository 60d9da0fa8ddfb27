#include <QtGlobal>

// What the engine says in whole sentences that never change, so that it can be
// translated; a test finds those that are missing here.
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
    QT_TRANSLATE_NOOP("engine",
                      "The camera zoomed, or was moved up or down, while the "
                      "puddle spread: fix camera and zoom and film again."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The camera zoomed a little, or was moved up or down, while the puddle "
        "spread; this was taken out by what lies round the tile."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The moment the stream breaks, the coat on the stick and the drips "
        "tell different ratios of this cup, further apart than chance allows; "
        "the range given was widened. A flow additive or heavy pigment in only "
        "one of the two cups does that, and so does paint that runs thinner "
        "the harder it is pulled: the level test tells how it will settle on "
        "the canvas."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The same films tell different ratios of this cup, further apart than "
        "chance allows; the range given was widened."),
    QT_TRANSLATE_NOOP("engine",
                      "The puddle runs out of the picture: put the paint down "
                      "in the middle, or film from further away."),
    QT_TRANSLATE_NOOP("engine",
                      "The paint hardly stands out from what lies under it: "
                      "put it on a plain tile of another colour."),
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
                      "Something moved over the ribbon, once it was laid, for "
                      "as long as it takes to level: take stick and hand away "
                      "at once, or lay it with less in the way."),
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
    QT_TRANSLATE_NOOP(
        "engine",
        "The size of the puddle jumps after it had slowed down: paint was "
        "added later, or the camera zoomed or was moved up or down. Film one "
        "pour from a fixed camera."),
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
        "The quiet surface before the ribbon is not in the clip, so it cannot "
        "be told whether what mirrors in it stood still: start filming a "
        "second earlier."),
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
    QT_TRANSLATE_NOOP(
        "engine",
        "The ribbon fades within a few pictures and too unevenly for them: "
        "film at 60 pictures a second or more, or in slow motion."),
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
    QT_TRANSLATE_NOOP("engine",
                      "What mirrors in the paint moved or the light changed "
                      "while the ribbon levelled: keep lamps, curtains and "
                      "yourself still and film it again."),
    QT_TRANSLATE_NOOP("engine",
                      "What mirrors in the paint moved while the ribbon "
                      "levelled, so the result is rough: keep lamps, curtains "
                      "and yourself still."),
    QT_TRANSLATE_NOOP(
        "engine",
        "What was planned and used must lie between 0.1 mL and 1000 L."),

    // Names, and sentences with numbers or names in them as %1, %2, ...: see
    // Wording::Engine.
    QT_TRANSLATE_NOOP("engine", "%1 % added water in the wettest cup"),
    QT_TRANSLATE_NOOP("engine",
                      "%1 % added water; limits of %2 to %3 % are commonly "
                      "quoted, none is proven for pours"),
    QT_TRANSLATE_NOOP(
        "engine",
        "%1 % against %2 %; how much is too much nobody has published"),
    QT_TRANSLATE_NOOP("engine", "%1 % humidity"),
    QT_TRANSLATE_NOOP("engine", "%1 minutes of rest"),
    QT_TRANSLATE_NOOP("engine", "%1 minutes since it was stirred"),
    QT_TRANSLATE_NOOP("engine",
                      "%1 minutes since its last test; an open cup dries by a "
                      "few per cent of its flow an hour"),
    QT_TRANSLATE_NOOP("engine", "%1 mm dry"),
    QT_TRANSLATE_NOOP(
        "engine",
        "%1 mm dry; wall paint is asked to bear about %2 mm without cracks"),
    QT_TRANSLATE_NOOP("engine", "%1 mm wet"),
    QT_TRANSLATE_NOOP("engine",
                      "%1 times the base coat (%2 to %3), aimed at %4"),
    QT_TRANSLATE_NOOP("engine", "%1 °C in the room"),
    QT_TRANSLATE_NOOP("engine",
                      "%1 °C; %2 to %3 are the usual room, below %4 the "
                      "binder's lowest film-forming temperature is near"),
    QT_TRANSLATE_NOOP("engine", "'%1' %2 (%3 to %4), aimed at %5"),
    QT_TRANSLATE_NOOP("engine", "'%1' and '%2' a factor of %3 apart"),
    QT_TRANSLATE_NOOP(
        "engine",
        "'%1' flows %2 times as slowly as '%3', both against what they aim at: "
        "where they meet, one may sink or slide."),
    QT_TRANSLATE_NOOP("engine",
                      "'%1' holds much more added water than '%2': it dries "
                      "later and thinner, and parts that dry at another rate "
                      "are told to pull cracks open."),
    QT_TRANSLATE_NOOP("engine",
                      "'%1' is an ink and may start thinner than the base "
                      "coat: it then takes body, not water."),
    QT_TRANSLATE_NOOP("engine",
                      "'%1' is more than half a year old: smell it, strain it, "
                      "and test its flow anew before it counts."),
    QT_TRANSLATE_NOOP("engine",
                      "Water that left-overs hold already is not counted; a "
                      "cup's share of water is what is added to it from now "
                      "on."),
    QT_TRANSLATE_NOOP("engine",
                      "The picture of '%1' that was counted cannot be kept; "
                      "count on a photo instead."),
    QT_TRANSLATE_NOOP("engine", "'%1': its share must be above %2."),
    QT_TRANSLATE_NOOP("engine", "A canvas must be 0 to 500 mm deep."),
    QT_TRANSLATE_NOOP("engine",
                      "A canvas must measure between 10 mm and 10 m each way."),
    QT_TRANSLATE_NOOP("engine", "A cell test takes 0 to 3600 seconds."),
    QT_TRANSLATE_NOOP("engine", "A class has 1 to 500 places."),
    QT_TRANSLATE_NOOP("engine", "A heavy colour lay on a light one."),
    QT_TRANSLATE_NOOP(
        "engine",
        "A jar in the brand book is damaged; restore a backup of it."),
    QT_TRANSLATE_NOOP("engine", "A jar must hold 0.1 mL to 1000 L."),
    QT_TRANSLATE_NOOP("engine", "A name holds at most 200 bytes."),
    QT_TRANSLATE_NOOP("engine",
                      "A price needs the container's volume above 0 and an "
                      "amount of 0 or more."),
    QT_TRANSLATE_NOOP("engine",
                      "Additive to one part of paint must be 0 to 100."),
    QT_TRANSLATE_NOOP("engine", "Air was whipped in."),
    QT_TRANSLATE_NOOP("engine",
                      "Alcohol and solvents catch fire from a spark at room "
                      "temperature: no flame, heat gun or switch near them "
                      "until the room is aired; follow the label."),
    QT_TRANSLATE_NOOP("engine",
                      "Blowing for long makes dizzy: pause, and never draw "
                      "breath through the straw."),
    QT_TRANSLATE_NOOP("engine",
                      "Dry air, a fan or the sun dried the skin too fast."),
    QT_TRANSLATE_NOOP("engine",
                      "Gloves, good air, no food or drink at the bench. Follow "
                      "the label and safety data sheet of every product; ask "
                      "trained people where in doubt."),
    QT_TRANSLATE_NOOP("engine", "Grease or silicone lay between the coats."),
    QT_TRANSLATE_NOOP("engine",
                      "It dried on a slope, so that pools stood deeper."),
    QT_TRANSLATE_NOOP("engine", "It dried on a slope."),
    QT_TRANSLATE_NOOP(
        "engine",
        "It flows %1 times as fast as aimed at: it may run off with the tilt, "
        "slide from what lies under it, or blend to mud."),
    QT_TRANSLATE_NOOP("engine",
                      "It flows %1 times as slowly as aimed at: it may stand "
                      "on its neighbours, sink into them as lumps, or leave a "
                      "thicker film that dries later."),
    QT_TRANSLATE_NOOP("engine",
                      "It has stood since its test and may have thickened: "
                      "stir it and test it again."),
    QT_TRANSLATE_NOOP("engine", "It has stood: stir it before it is poured."),
    QT_TRANSLATE_NOOP("engine",
                      "It is %1 °C colder than the base coat was; its flow "
                      "will change as it comes to the room's temperature."),
    QT_TRANSLATE_NOOP("engine",
                      "It is %1 °C warmer than the base coat was; its flow "
                      "will change as it comes to the room's temperature."),
    QT_TRANSLATE_NOOP("engine",
                      "It may match, but its tests are not exact enough to "
                      "tell: film it once more."),
    QT_TRANSLATE_NOOP("engine", "It needs a name."),
    QT_TRANSLATE_NOOP("engine",
                      "It was poured over a picture that was not dry."),
    QT_TRANSLATE_NOOP("engine", "It was tilted too far or too long."),
    QT_TRANSLATE_NOOP("engine", "It was tilted too far."),
    QT_TRANSLATE_NOOP(
        "engine", "Its tests are not exact enough to tell: film it once more."),
    QT_TRANSLATE_NOOP("engine",
                      "Keep cables of lamp and camera off the table and hands "
                      "dry; mains and water do not go together."),
    QT_TRANSLATE_NOOP("engine", "Layers of unlike flow dried at unlike rates."),
    QT_TRANSLATE_NOOP("engine",
                      "Loosen it with a little medium first, press out the "
                      "lumps, then add the rest."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Mark paint cups and bottles, water bottles too; a container that held "
        "paint is never used for food again. Keep children and animals away."),
    QT_TRANSLATE_NOOP("engine", "May need no water at all."),
    QT_TRANSLATE_NOOP("engine",
                      "More water than any advice allows: the film may be weak "
                      "and hold badly."),
    QT_TRANSLATE_NOOP("engine",
                      "Much water: the binder is spread thin, and the film may "
                      "turn out chalky or weak."),
    QT_TRANSLATE_NOOP("engine", "Neighbours flowed unlike."),
    QT_TRANSLATE_NOOP("engine", "Nobody has measured how it flows."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Often too thin already: mix it into a thicker paint instead."),
    QT_TRANSLATE_NOOP("engine",
                      "On small canvases more runs off: up to %1 L on a square "
                      "metre is told for them (common practice)."),
    QT_TRANSLATE_NOOP("engine", "Opposite colours lay side by side."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Paint and rinse water do not go into drains or ground: let them "
        "settle, use the clear part again, dry the rest. Local rules decide; "
        "colours with heavy metals are hazardous waste."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Powder: raise no dust and wet it at once; some pigments harm when "
        "breathed. A dust mask is no respirator: what is needed stands on the "
        "label or is said by a professional."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Say how it turned out: your own match band is learned from it."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Something was added since its last test, so its flow is not known."),
    QT_TRANSLATE_NOOP("engine",
                      "Stir a little of the medium in first, then the rest."),
    QT_TRANSLATE_NOOP("engine", "Straining was skipped."),
    QT_TRANSLATE_NOOP("engine",
                      "Take a photo a month on: late cracks only show then."),
    QT_TRANSLATE_NOOP("engine", "The activator was too thick."),
    QT_TRANSLATE_NOOP("engine", "The activator was too thin."),
    QT_TRANSLATE_NOOP("engine",
                      "The amounts follow your earlier pours: %1 pours of this "
                      "kind took %2 times what was planned (%3 to %4)."),
    QT_TRANSLATE_NOOP("engine",
                      "The amounts follow your journal: %1 pours of this kind "
                      "took %2 times what was planned (%3 to %4)."),
    QT_TRANSLATE_NOOP("engine", "The colour was thicker than its ground."),
    QT_TRANSLATE_NOOP("engine", "The colour was thinner than its ground."),
    QT_TRANSLATE_NOOP("engine", "The colours were too thin."),
    QT_TRANSLATE_NOOP("engine", "The dry film was bent."),
    QT_TRANSLATE_NOOP("engine",
                      "The factor of the plan must lie between 0.05 and 20."),
    QT_TRANSLATE_NOOP("engine",
                      "The film is thick: it skins over while it is wet below, "
                      "which is the first cause named for crazing."),
    QT_TRANSLATE_NOOP("engine", "The film was thick."),
    QT_TRANSLATE_NOOP("engine", "The lower coat was chalky."),
    QT_TRANSLATE_NOOP("engine",
                      "The mixes rested too short for the bubbles to rise."),
    QT_TRANSLATE_NOOP("engine", "The paint was too thick to level."),
    QT_TRANSLATE_NOOP("engine", "The paint was too thin and ran off."),
    QT_TRANSLATE_NOOP("engine",
                      "The paints under it do not react, though the cup did."),
    QT_TRANSLATE_NOOP("engine", "The reserve must be 0 to 100 %."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The room is cold: it dries slowly and skins over wet paint."),
    QT_TRANSLATE_NOOP("engine",
                      "The room is so cold that the film may not form."),
    QT_TRANSLATE_NOOP("engine", "The room was cold."),
    QT_TRANSLATE_NOOP("engine", "The technique pours nothing."),
    QT_TRANSLATE_NOOP("engine", "The waste must be 0 to 200 %."),
    QT_TRANSLATE_NOOP("engine", "The water must be 0 to 50 %."),
    QT_TRANSLATE_NOOP("engine", "There is no canvas; give its size."),
    QT_TRANSLATE_NOOP(
        "engine", "There is no cup to check; put the cups on the bench first."),
    QT_TRANSLATE_NOOP("engine", "There is no label to print."),
    QT_TRANSLATE_NOOP("engine", "There is no such jar on the shelf."),
    QT_TRANSLATE_NOOP("engine", "There is not so much in this jar."),
    QT_TRANSLATE_NOOP("engine", "There must be 0 to 100 tests of a cup."),
    QT_TRANSLATE_NOOP("engine", "There must be 1 to 1000 canvases of a kind."),
    QT_TRANSLATE_NOOP("engine", "There was oil or grease on the ground."),
    QT_TRANSLATE_NOOP("engine", "There was too little paint."),
    QT_TRANSLATE_NOOP("engine",
                      "They were mixed too much on the way to the canvas."),
    QT_TRANSLATE_NOOP("engine",
                      "Thinner parts dried at another rate and pulled the "
                      "thicker ones open."),
    QT_TRANSLATE_NOOP("engine",
                      "Too few pours to tell how much more or less than "
                      "planned yours take; three or more are needed."),
    QT_TRANSLATE_NOOP("engine", "Too much water spread the binder thin."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Torch or heat gun: nothing that burns or gives off vapour nearby, no "
        "loose sleeves or hair, not over plastic cups, short passes, something "
        "to put out a fire at hand."),
    QT_TRANSLATE_NOOP("engine",
                      "Touch dry about now; leave it level and covered."),
    QT_TRANSLATE_NOOP("engine",
                      "Two people carry a large wet canvas; wet paint on the "
                      "floor is slippery."),
    QT_TRANSLATE_NOOP("engine",
                      "Uncured resin and hardener can make the skin allergic "
                      "for life; thin gloves protect little. Follow the data "
                      "sheet and ask for the gloves it names."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Varnish or resin not before this day, and only if it feels hard and "
        "no longer cool; the varnish's own sheet decides."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Very much water: a chalky, weak film and poor hold are warned of."),
    QT_TRANSLATE_NOOP("engine",
                      "Water is not counted: what you thin with comes on top."),
    QT_TRANSLATE_NOOP(
        "engine",
        "Wet it to a paste first and raise no dust; it settles, so stir before "
        "every test, and its sparkle can mislead the camera."),
    QT_TRANSLATE_NOOP("engine", "added water of every cup"),
    QT_TRANSLATE_NOOP("engine", "bare"),
    QT_TRANSLATE_NOOP("engine", "base of the medium"),
    QT_TRANSLATE_NOOP("engine", "bloom"),
    QT_TRANSLATE_NOOP("engine", "blown"),
    QT_TRANSLATE_NOOP("engine",
                      "blown open on a thick pillow of base, then spun"),
    QT_TRANSLATE_NOOP("engine", "chalky"),
    QT_TRANSLATE_NOOP(
        "engine",
        "colours laid on a wet base and wiped over with an activator"),
    QT_TRANSLATE_NOOP("engine", "cracks"),
    QT_TRANSLATE_NOOP("engine", "crazing"),
    QT_TRANSLATE_NOOP("engine", "flow additive"),
    QT_TRANSLATE_NOOP("engine", "how long ago every cup was tested"),
    QT_TRANSLATE_NOOP(
        "engine", "last test: %1 times the base coat (%2 to %3), aimed at %4"),
    QT_TRANSLATE_NOOP("engine", "lost cells"),
    QT_TRANSLATE_NOOP("engine",
                      "measured ratios; that this happens from %1 to %2 on is "
                      "told in words, nobody has published numbers"),
    QT_TRANSLATE_NOOP("engine", "muddy"),
    QT_TRANSLATE_NOOP("engine", "no test of this cup"),
    QT_TRANSLATE_NOOP("engine", "open"),
    QT_TRANSLATE_NOOP("engine", "open, dirty or flip pour without a wet base"),
    QT_TRANSLATE_NOOP("engine",
                      "paints change by %1 to %2 % a degree (the upper end "
                      "after ASTM D4212)"),
    QT_TRANSLATE_NOOP("engine", "peeling"),
    QT_TRANSLATE_NOOP("engine", "pits"),
    QT_TRANSLATE_NOOP("engine", "ring"),
    QT_TRANSLATE_NOOP("engine", "ring or flip pour over a wet base"),
    QT_TRANSLATE_NOOP("engine", "sag"),
    QT_TRANSLATE_NOOP("engine", "slid"),
    QT_TRANSLATE_NOOP("engine", "sunk"),
    QT_TRANSLATE_NOOP("engine", "swipe"),
    QT_TRANSLATE_NOOP("engine", "temperature of every cup"),
    QT_TRANSLATE_NOOP("engine", "temperature of the room"),
    QT_TRANSLATE_NOOP("engine", "the mixes were not strained"),
    QT_TRANSLATE_NOOP("engine", "the mixes were strained"),
    QT_TRANSLATE_NOOP("engine", "thickness of the film"),
    QT_TRANSLATE_NOOP("engine", "thin colours blown out over a wet base"),
    QT_TRANSLATE_NOOP("engine", "varnish of the medium"),
    QT_TRANSLATE_NOOP(
        "engine",
        "A cup's inner diameters and height must lie between 5 and 2000 mm."),
    QT_TRANSLATE_NOOP("engine", "the room is colder than 18 °C"),
    QT_TRANSLATE_NOOP(
        "engine",
        "below 10 °C the film may not form at all: bring it into the warm"),
    QT_TRANSLATE_NOOP("engine", "the air is damper than 60 %"),
    QT_TRANSLATE_NOOP("engine", "the film is thick"),
    QT_TRANSLATE_NOOP("engine",
                      "Added water is %1 % of the cup: outside all commonly "
                      "quoted advice (%2 %); the binder is spread too thin."),
    QT_TRANSLATE_NOOP("engine",
                      "Added water is %1 % of the cup: more than commonly "
                      "quoted advice allows (%2 %); go on with medium."),
    QT_TRANSLATE_NOOP("engine",
                      "Added water is %1 % of the cup: above the %2 % that "
                      "commonly quoted advice calls safe for the film."),
    QT_TRANSLATE_NOOP(
        "engine", "Additive is %1 % of the cup: see what its label allows."),
    QT_TRANSLATE_NOOP("engine",
                      "This cup holds %1 points more added liquid than another "
                      "cup; they will dry and shrink differently."),
    QT_TRANSLATE_NOOP("engine",
                      "This cup holds %1 points less added liquid than another "
                      "cup; they will dry and shrink differently."),
    QT_TRANSLATE_NOOP("engine",
                      "The room is %1 degrees C warmer than when the base coat "
                      "was tested; test the base coat again."),
    QT_TRANSLATE_NOOP("engine",
                      "The room is %1 degrees C colder than when the base coat "
                      "was tested; test the base coat again."),
    QT_TRANSLATE_NOOP("engine",
                      "The base coat was tested %1 hours ago; test it again."),
    QT_TRANSLATE_NOOP("engine",
                      "The cup stood open for %1 minutes and has thickened; "
                      "cover it and test again before adding."),
    QT_TRANSLATE_NOOP("engine",
                      "The test came %1 s after stirring; stir, wait %2 s and "
                      "test, the same for every cup."),
    QT_TRANSLATE_NOOP("engine",
                      "The repair takes %1 mL of unthinned paint, more than is "
                      "kept back; mix more of the same first."),
    QT_TRANSLATE_NOOP("engine",
                      "Another %1 mL of water would pass %2 % of the cup; thin "
                      "on with medium."),
    QT_TRANSLATE_NOOP("engine", "Of medium, stir in %1 mL and film it again."),
    QT_TRANSLATE_NOOP("engine",
                      "A step of %1 mL is too much at once for this cup; stop "
                      "here, or film it again to know it better."),
    QT_TRANSLATE_NOOP(
        "engine",
        "%1 pictures were damaged and partly filled in by the decoder."),
    QT_TRANSLATE_NOOP("engine", "%1 pictures were lost: the file is damaged."),
    QT_TRANSLATE_NOOP("engine",
                      "%1 pictures were left out: their times do not rise or "
                      "jump by minutes."),
    QT_TRANSLATE_NOOP("engine",
                      "A step of %1 mL is too much at once for this cup; "
                      "measure it out with a teaspoon instead."),
    QT_TRANSLATE_NOOP("engine",
                      "A step of %1 mL is too much at once for this cup; "
                      "measure it out with a quarter teaspoon instead."),
    QT_TRANSLATE_NOOP("engine",
                      "A step of %1 mL is too much at once for this cup; "
                      "measure it out with %2 mL marks of a pipette instead."),
    QT_TRANSLATE_NOOP("engine",
                      "A step of %1 mL is too much at once for this cup; "
                      "measure it out with %2 mL marks of a pipette instead."),
    QT_TRANSLATE_NOOP("engine",
                      "A step of %1 mL is too much at once for this cup; "
                      "measure it out with drops instead."),
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
    QT_TRANSLATE_NOOP("engine", "What was counted must be more than nothing."),
    QT_TRANSLATE_NOOP("engine", "The picture must be in colour."),
    QT_TRANSLATE_NOOP("engine",
                      "The scale must lie between 0.0001 and 10 mm per pixel."),
    QT_TRANSLATE_NOOP("engine",
                      "The scale's uncertainty must lie between 0 and 0.5."),
    QT_TRANSLATE_NOOP("engine",
                      "The cells do not stand out from what surrounds them; "
                      "take the photo in even light and without glare."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The picture could not be worked on; there may not be enough memory."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The pages could not be drawn; there may not be enough memory."),
    QT_TRANSLATE_NOOP("engine",
                      "Only %1 closed cells were found, %2 are needed; show a "
                      "larger piece, or come closer if they are tiny."),
    QT_TRANSLATE_NOOP(
        "engine",
        "'%1' is no picture that can be read; save it as JPEG or PNG."),
    QT_TRANSLATE_NOOP(
        "engine",
        "This label is of pouring medium, which is no cup on the bench."),
    QT_TRANSLATE_NOOP("engine", "There is no label to read."),
    QT_TRANSLATE_NOOP("engine", "A plan holds at most 100 colours."),
    QT_TRANSLATE_NOOP("engine", "'%1' is a folder; name a file in it."),
    QT_TRANSLATE_NOOP("engine",
                      "'%1' cannot be read; check its name and rights."),
    QT_TRANSLATE_NOOP("engine",
                      "The label's role is not known to this program."),
    QT_TRANSLATE_NOOP("engine",
                      "'%1' cannot be written (%2); check the folder and the "
                      "room on the disk."),
    QT_TRANSLATE_NOOP(
        "engine",
        "No code of a label can be read on this photo; take it again from "
        "closer, straight on and sharp, with the whole code and its white rim "
        "in the picture."),
    QT_TRANSLATE_NOOP(
        "engine",
        "The code on this photo is not that of a label of this program; "
        "photograph the label that was printed for the jar."),
    QT_TRANSLATE_NOOP(
        "engine", "The label tells of more water than there is in the cup."),
    QT_TRANSLATE_NOOP("engine", "A ratio must be above 0."),
    QT_TRANSLATE_NOOP(
        "engine",
        "This medium flows faster than the base coat. A thin paint mixed with "
        "it may start too thin: add body, not water."),
    QT_TRANSLATE_NOOP(
        "engine",
        "4:1 and 3:1 are both in use and it matters little which; what matters "
        "is to keep to one. Parts by volume and by weight are not the same."),
    // Names on printed pages.
    QT_TRANSLATE_NOOP("engine", "activator"),
    QT_TRANSLATE_NOOP("engine", "against"),
    QT_TRANSLATE_NOOP("engine", "base coat"),
    QT_TRANSLATE_NOOP("engine", "blob"),
    QT_TRANSLATE_NOOP("engine", "cells"),
    QT_TRANSLATE_NOOP("engine", "colour"),
    QT_TRANSLATE_NOOP("engine", "drowned"),
    QT_TRANSLATE_NOOP("engine", "dry"),
    QT_TRANSLATE_NOOP("engine", "fair"),
    QT_TRANSLATE_NOOP("engine", "fits"),
    QT_TRANSLATE_NOOP("engine", "good"),
    QT_TRANSLATE_NOOP("engine", "lacing"),
    QT_TRANSLATE_NOOP("engine", "later"),
    QT_TRANSLATE_NOOP("engine", "medium"),
    QT_TRANSLATE_NOOP("engine", "none"),
    QT_TRANSLATE_NOOP("engine", "not measured"),
    QT_TRANSLATE_NOOP("engine", "poor"),
    QT_TRANSLATE_NOOP("engine", "wet"),
    QT_TRANSLATE_NOOP("engine", "Paint: follow its label. No food container."),
};

}  // namespace

<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>BoardScreen</name>
        <message>
            <source>Bench</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>New cup</source>
            <translation>Neuer Becher</translation>
        </message>
        <message>
            <source>Base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>Start with the base coat: everything else is compared with it. Stir it, then film how it runs off a stick.</source>
            <translation>Mit der Grundfarbe anfangen: alles andere wird mit ihr verglichen. Umrühren, dann filmen, wie sie vom Stab läuft.</translation>
        </message>
        <message>
            <source>Try it first without paint</source>
            <translation>Erst ohne Farbe ausprobieren</translation>
        </message>
        <message>
            <source>Stirred</source>
            <translation>Gerührt</translation>
        </message>
        <message>
            <source>Next cup</source>
            <translation>Nächster Becher</translation>
        </message>
        <message>
            <source>Change</source>
            <translation>Ändern</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Last check</source>
            <translation>Letzte Prüfung</translation>
        </message>
    </context>
    <context>
        <name>CellPhoto</name>
        <message>
            <source>All files (%1)</source>
            <translation>Alle Dateien (%1)</translation>
        </message>
        <message>
            <source>Put it away</source>
            <translation>Weglegen</translation>
        </message>
        <message>
            <source>Pointed length (mm)</source>
            <translation>Gezeigte Länge (mm)</translation>
        </message>
        <message>
            <source>Length between the two ends, millimetres</source>
            <translation>Länge zwischen den beiden Enden, Millimeter</translation>
        </message>
        <message>
            <source>Or a pixel (mm)</source>
            <translation>Oder ein Pixel (mm)</translation>
        </message>
        <message>
            <source>Size of a pixel, millimetres</source>
            <translation>Größe eines Pixels, Millimeter</translation>
        </message>
        <message>
            <source>How many cells there are of each size</source>
            <translation>Wie viele Zellen es von jeder Größe gibt</translation>
        </message>
        <message>
            <source>Cells by diameter, up to so many millimetres</source>
            <translation>Zellen nach Durchmesser, bis zu so vielen Millimetern</translation>
        </message>
        <message>
            <source>Only x, y, width, height (px)</source>
            <translation>Nur x, y, Breite, Höhe (px)</translation>
        </message>
        <message>
            <source>Point at a part</source>
            <translation>Ausschnitt zeigen</translation>
        </message>
        <message>
            <source>First picture of cells</source>
            <translation>Erstes Bild von Zellen</translation>
        </message>
        <message>
            <source>Second picture of cells</source>
            <translation>Zweites Bild von Zellen</translation>
        </message>
        <message>
            <source>Photos and clips (%1)</source>
            <translation>Fotos und Clips (%1)</translation>
        </message>
        <message>
            <source>Another one …</source>
            <translation>Ein anderes …</translation>
        </message>
        <message>
            <source>Choose photo or clip …</source>
            <translation>Foto oder Clip wählen …</translation>
        </message>
        <message>
            <source>Part of the picture that counts: x, y, width, height, pixels</source>
            <translation>Teil des Bilds, der zählt: x, y, Breite, Höhe, Pixel</translation>
        </message>
        <message>
            <source>Write it down with this picture</source>
            <translation>Mit diesem Bild aufschreiben</translation>
        </message>
    </context>
    <context>
        <name>CellTable</name>
        <message>
            <source>A photo or short clip of the run-down, from straight above: its cells are counted. A second one lets two activators be compared.</source>
            <translation>Ein Foto oder kurzer Clip vom Ablauf, senkrecht von oben: seine Zellen werden gezählt. Ein zweites erlaubt, zwei Aktivatoren zu vergleichen.</translation>
        </message>
    </context>
    <context>
        <name>ClipsScreen</name>
        <message>
            <source>Clips</source>
            <translation>Clips</translation>
        </message>
        <message>
            <source>Clips of one cup</source>
            <translation>Clips eines Bechers</translation>
        </message>
        <message>
            <source>Clips (*.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp)</source>
            <translation>Clips (*.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp)</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Folder that the phone&apos;s clips arrive in</source>
            <translation>Ordner, in dem die Clips vom Telefon ankommen</translation>
        </message>
        <message>
            <source>Drop clips here</source>
            <translation>Clips hier ablegen</translation>
        </message>
        <message>
            <source>One test per clip, the file as the camera made it.</source>
            <translation>Eine Probe je Clip, die Datei so, wie die Kamera sie gemacht hat.</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Welcher Becher</translation>
        </message>
        <message>
            <source>Which test</source>
            <translation>Welche Probe</translation>
        </message>
        <message>
            <source>stream off the stick</source>
            <translation>Strahl vom Stab</translation>
        </message>
        <message>
            <source>ribbon that levels</source>
            <translation>Band, das verläuft</translation>
        </message>
        <message>
            <source>puddle that spreads</source>
            <translation>Pfütze, die sich ausbreitet</translation>
        </message>
        <message>
            <source>Choose clips …</source>
            <translation>Clips wählen …</translation>
        </message>
        <message>
            <source>Stop watching the folder</source>
            <translation>Ordner nicht mehr beobachten</translation>
        </message>
        <message>
            <source>Watch a folder …</source>
            <translation>Ordner beobachten …</translation>
        </message>
        <message>
            <source>Stop all</source>
            <translation>Alle anhalten</translation>
        </message>
        <message>
            <source>Clear the list</source>
            <translation>Liste leeren</translation>
        </message>
        <message>
            <source>Watching %1: new clips appear below.</source>
            <translation>%1 wird beobachtet: neue Clips erscheinen unten.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
    </context>
    <context>
        <name>CupCard</name>
        <message>
            <source>thinner</source>
            <translation>dünner</translation>
        </message>
        <message>
            <source>thicker</source>
            <translation>dicker</translation>
        </message>
        <message>
            <source>next</source>
            <comment>the cup to treat next</comment>
            <translation>nächster</translation>
        </message>
    </context>
    <context>
        <name>CupForm</name>
        <message>
            <source>Name of the cup</source>
            <translation>Name des Bechers</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>Aktivator</translation>
        </message>
        <message>
            <source>How much is in it (%1)</source>
            <translation>Wie viel darin ist (%1)</translation>
        </message>
        <message>
            <source>How much is in it</source>
            <translation>Wie viel darin ist</translation>
        </message>
        <message>
            <source>Brand</source>
            <translation>Marke</translation>
        </message>
        <message>
            <source>Colour</source>
            <translation>Farbton</translation>
        </message>
        <message>
            <source>Swatch</source>
            <translation>Farbfeld</translation>
        </message>
        <message>
            <source>Swatch %1</source>
            <translation>Farbfeld %1</translation>
        </message>
        <message>
            <source>Kept back unthinned (%1)</source>
            <translation>Unverdünnt aufgehoben (%1)</translation>
        </message>
        <message>
            <source>Kept back unthinned</source>
            <translation>Unverdünnt aufgehoben</translation>
        </message>
        <message>
            <source>Wanted flow, 1 = base coat</source>
            <translation>Gewünschter Fluss, 1 = Grundfarbe</translation>
        </message>
        <message>
            <source>Wanted flow</source>
            <translation>Gewünschter Fluss</translation>
        </message>
        <message>
            <source>Thinned with</source>
            <translation>Verdünnt mit</translation>
        </message>
        <message>
            <source>water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>flow additive</source>
            <translation>Fließmittel</translation>
        </message>
        <message>
            <source>pouring medium</source>
            <translation>Gießmedium</translation>
        </message>
        <message>
            <source>Put it on the bench</source>
            <translation>Auf den Tisch stellen</translation>
        </message>
        <message>
            <source>Leave it</source>
            <translation>Lassen</translation>
        </message>
        <message>
            <source>Take it off the bench</source>
            <translation>Vom Tisch nehmen</translation>
        </message>
        <message>
            <source>Code of the label</source>
            <translation>Code des Etiketts</translation>
        </message>
        <message>
            <source>scan or paste it, then Enter</source>
            <translation>scannen oder einfügen, dann Eingabetaste</translation>
        </message>
        <message>
            <source>From a label</source>
            <translation>Vom Etikett</translation>
        </message>
        <message>
            <source>A photo of the label</source>
            <translation>Ein Foto vom Etikett</translation>
        </message>
        <message>
            <source>Photos (%1)</source>
            <translation>Fotos (%1)</translation>
        </message>
        <message>
            <source>All files (%1)</source>
            <translation>Alle Dateien (%1)</translation>
        </message>
        <message>
            <source>A photo of the label …</source>
            <translation>Ein Foto vom Etikett …</translation>
        </message>
        <message numerus="yes">
            <source>There are %n labels on this photo: %1.</source>
            <translation>
                <numerusform>Auf diesem Foto ist %n Etikett: %1.</numerusform>
                <numerusform>Auf diesem Foto sind %n Etiketten: %1.</numerusform>
            </translation>
        </message>
        <message>
            <source>Put all of them on the bench</source>
            <translation>Alle auf den Tisch stellen</translation>
        </message>
    </context>
    <context>
        <name>CurvesScreen</name>
        <message>
            <source>Curves</source>
            <translation>Kurven</translation>
        </message>
        <message>
            <source>Keep the picture as</source>
            <translation>Bild sichern als</translation>
        </message>
        <message>
            <source>What to plot</source>
            <translation>Was zeichnen</translation>
        </message>
        <message>
            <source>the cup&apos;s path</source>
            <translation>der Weg des Bechers</translation>
        </message>
        <message>
            <source>one film</source>
            <translation>ein Film</translation>
        </message>
        <message>
            <source>what a brand does</source>
            <translation>was eine Marke tut</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Welcher Becher</translation>
        </message>
        <message>
            <source>Which film</source>
            <translation>Welcher Film</translation>
        </message>
        <message>
            <source>Which brand</source>
            <translation>Welche Marke</translation>
        </message>
        <message>
            <source>Closer</source>
            <translation>Näher</translation>
        </message>
        <message>
            <source>All of it</source>
            <translation>Alles</translation>
        </message>
        <message>
            <source>Keep as picture …</source>
            <translation>Als Bild sichern …</translation>
        </message>
        <message>
            <source>Farther</source>
            <translation>Weiter weg</translation>
        </message>
        <message>
            <source>match</source>
            <translation>passt</translation>
        </message>
    </context>
    <context>
        <name>DayPage</name>
        <message>
            <source>Causes commonly named, held against that day; none is proven by it.</source>
            <translation>Üblich genannte Ursachen, an diesem Tag gemessen; keine ist damit bewiesen.</translation>
        </message>
    </context>
    <context>
        <name>FilmScreen</name>
        <message>
            <source>Film</source>
            <translation>Filmen</translation>
        </message>
        <message>
            <source>What the camera sees</source>
            <translation>Was die Kamera sieht</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Welcher Becher</translation>
        </message>
        <message>
            <source>no cup yet</source>
            <translation>noch kein Becher</translation>
        </message>
        <message>
            <source>Which camera</source>
            <translation>Welche Kamera</translation>
        </message>
        <message>
            <source>Size of the picture</source>
            <translation>Größe des Bildes</translation>
        </message>
        <message>
            <source>Light and focus held</source>
            <translation>Licht und Schärfe gehalten</translation>
        </message>
        <message>
            <source>Hold light and focus</source>
            <translation>Licht und Schärfe halten</translation>
        </message>
        <message>
            <source>Throw this film away</source>
            <translation>Diesen Film wegwerfen</translation>
        </message>
    </context>
    <context>
        <name>Formats</name>
        <message>
            <source>%1 mL</source>
            <translation>%1 ml</translation>
        </message>
        <message>
            <source>%1 tsp (%2)</source>
            <translation>%1 tsp (%2)</translation>
        </message>
        <message>
            <source>%1 fl oz</source>
            <translation>%1 fl oz</translation>
        </message>
        <message>
            <source>fl oz</source>
            <translation>fl oz</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>ml</translation>
        </message>
        <message>
            <source>%1 °F</source>
            <translation>%1 °F</translation>
        </message>
        <message>
            <source>%1 °C</source>
            <translation>%1 °C</translation>
        </message>
        <message>
            <source>°F</source>
            <translation>°F</translation>
        </message>
        <message>
            <source>°C</source>
            <translation>°C</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>%1 s</source>
            <translation>%1 s</translation>
        </message>
        <message>
            <source>%1 oz</source>
            <translation>%1 oz</translation>
        </message>
        <message>
            <source>%1 g</source>
            <translation>%1 g</translation>
        </message>
        <message>
            <source>in</source>
            <translation>in</translation>
        </message>
        <message>
            <source>cm</source>
            <translation>cm</translation>
        </message>
        <message>
            <source>%1 in</source>
            <translation>%1 in</translation>
        </message>
        <message>
            <source>%1 mm</source>
            <translation>%1 mm</translation>
        </message>
        <message>
            <source>%1 in²</source>
            <translation>%1 in²</translation>
        </message>
        <message>
            <source>%1 cm²</source>
            <translation>%1 cm²</translation>
        </message>
        <message>
            <source>fl oz/ft²</source>
            <translation>fl oz/ft²</translation>
        </message>
        <message>
            <source>mL/m²</source>
            <translation>mL/m²</translation>
        </message>
    </context>
    <context>
        <name>FrameGuide</name>
        <message>
            <source>stick</source>
            <translation>Stab</translation>
        </message>
        <message>
            <source>paint</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>paint, with a lamp mirrored in it</source>
            <translation>Farbe, in der sich eine Lampe spiegelt</translation>
        </message>
        <message>
            <source>puddle</source>
            <translation>Pfütze</translation>
        </message>
        <message>
            <source>ruler</source>
            <translation>Lineal</translation>
        </message>
    </context>
    <context>
        <name>JournalScreen</name>
        <message>
            <source>Journal</source>
            <translation>Tagebuch</translation>
        </message>
        <message>
            <source>A photo of it</source>
            <translation>Ein Foto davon</translation>
        </message>
        <message>
            <source>Find a day by its words</source>
            <translation>Einen Tag an seinen Worten finden</translation>
        </message>
        <message>
            <source>Nothing found.</source>
            <translation>Nichts gefunden.</translation>
        </message>
        <message>
            <source>No day yet. The first cup on the bench begins one.</source>
            <translation>Noch kein Tag. Der erste Becher auf dem Tisch beginnt einen.</translation>
        </message>
        <message>
            <source>Take away</source>
            <translation>Wegnehmen</translation>
        </message>
        <message>
            <source>Lay beside</source>
            <translation>Daneben legen</translation>
        </message>
        <message>
            <source>Write to this day</source>
            <translation>Zu diesem Tag schreiben</translation>
        </message>
        <message>
            <source>Poured</source>
            <translation>Gegossen</translation>
        </message>
        <message>
            <source>Photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>Fault</source>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>How it turned out</source>
            <translation>Wie es wurde</translation>
        </message>
        <message>
            <source>Cell test</source>
            <translation>Zelltest</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Used (%1)</source>
            <translation>Verbraucht (%1)</translation>
        </message>
        <message>
            <source>How much was used</source>
            <translation>Wie viel verbraucht wurde</translation>
        </message>
        <message>
            <source>Humidity (%)</source>
            <translation>Luftfeuchte (%)</translation>
        </message>
        <message>
            <source>Humidity of the room, per cent</source>
            <translation>Luftfeuchte des Raums, Prozent</translation>
        </message>
        <message>
            <source>Mixes rested (min)</source>
            <translation>Ruhezeit (min)</translation>
        </message>
        <message>
            <source>How long the mixes rested, minutes</source>
            <translation>Wie lange die Mischungen ruhten, Minuten</translation>
        </message>
        <message>
            <source>Strained</source>
            <translation>Gesiebt</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>keine Angabe</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>Anything else</source>
            <translation>Sonst noch etwas</translation>
        </message>
        <message>
            <source>Write down the pour</source>
            <translation>Guss aufschreiben</translation>
        </message>
        <message>
            <source>When it was taken</source>
            <translation>Wann es gemacht wurde</translation>
        </message>
        <message>
            <source>wet</source>
            <translation>nass</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>trocken</translation>
        </message>
        <message>
            <source>a month later</source>
            <translation>einen Monat später</translation>
        </message>
        <message>
            <source>Choose the photo …</source>
            <translation>Foto wählen …</translation>
        </message>
        <message>
            <source>What is seen</source>
            <translation>Was zu sehen ist</translation>
        </message>
        <message>
            <source>Where, how much</source>
            <translation>Wo, wie viel</translation>
        </message>
        <message>
            <source>where, how much</source>
            <translation>wo, wie viel</translation>
        </message>
        <message>
            <source>Write it down</source>
            <translation>Aufschreiben</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>why</source>
            <translation>warum</translation>
        </message>
        <message>
            <source>well</source>
            <translation>gut</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>mittel</translation>
        </message>
        <message>
            <source>badly</source>
            <translation>schlecht</translation>
        </message>
        <message>
            <source>What the drop does</source>
            <translation>Was der Tropfen tut</translation>
        </message>
        <message>
            <source>lacing: it works</source>
            <translation>Spitzenmuster: er wirkt</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>sits as a blob: too thick</source>
            <translation>bleibt als Klecks: zu dick</translation>
        </message>
        <message>
            <source>sinks or foams: too thin</source>
            <translation>sinkt oder schäumt: zu dünn</translation>
        </message>
        <message>
            <source>After (s)</source>
            <translation>Nach (s)</translation>
        </message>
        <message>
            <source>Seconds from drop to verdict</source>
            <translation>Sekunden vom Tropfen bis zum Urteil</translation>
        </message>
        <message>
            <source>Activator cup</source>
            <translation>Aktivatorbecher</translation>
        </message>
        <message>
            <source>The note</source>
            <translation>Die Notiz</translation>
        </message>
        <message>
            <source>What is due</source>
            <translation>Was ansteht</translation>
        </message>
        <message>
            <source>What your pours teach</source>
            <translation>Was deine Güsse lehren</translation>
        </message>
        <message>
            <source>Additive to 1 paint</source>
            <translation>Fließmittel auf 1 Farbe</translation>
        </message>
        <message>
            <source>Parts of additive to one part of paint</source>
            <translation>Teile Fließmittel auf einen Teil Farbe</translation>
        </message>
        <message>
            <source>find: name, colour, fault, any word</source>
            <translation>suchen: Name, Farbe, Fehler, Wort</translation>
        </message>
    </context>
    <context>
        <name>LastLook</name>
        <message>
            <source>Holds back.</source>
            <translation>Hält zurück.</translation>
        </message>
        <message>
            <source>Mind.</source>
            <translation>Beachten.</translation>
        </message>
        <message>
            <source>Back to the bench</source>
            <translation>Zurück zum Tisch</translation>
        </message>
        <message>
            <source>Poured: write it down</source>
            <translation>Gegossen: aufschreiben</translation>
        </message>
    </context>
    <context>
        <name>Main</name>
        <message>
            <source>flowkin bench</source>
            <translation>flowkin Arbeitstisch</translation>
        </message>
        <message>
            <source>Bench</source>
            <translation>Tisch</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Filmen</translation>
        </message>
        <message>
            <source>Clips</source>
            <translation>Clips</translation>
        </message>
        <message>
            <source>Look again</source>
            <translation>Ansehen</translation>
        </message>
        <message>
            <source>Curves</source>
            <translation>Kurven</translation>
        </message>
        <message>
            <source>First try</source>
            <translation>Probelauf</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Tagebuch</translation>
        </message>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
    </context>
    <context>
        <name>PageSight</name>
        <message>
            <source>Save as %1</source>
            <translation>Als %1 speichern</translation>
        </message>
        <message>
            <source>Page before</source>
            <translation>Seite davor</translation>
        </message>
        <message>
            <source>Next page</source>
            <translation>Nächste Seite</translation>
        </message>
        <message>
            <source>Whole page</source>
            <translation>Ganze Seite</translation>
        </message>
        <message>
            <source>Larger</source>
            <translation>Größer</translation>
        </message>
        <message>
            <source>Put it away</source>
            <translation>Weglegen</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>The page as it will be printed</source>
            <translation>Die Seite, wie sie gedruckt wird</translation>
        </message>
        <message>
            <source>Print on paper …</source>
            <translation>Auf Papier drucken …</translation>
        </message>
    </context>
    <context>
        <name>PlanScreen</name>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Keep the plan as</source>
            <translation>Plan aufheben als</translation>
        </message>
        <message>
            <source>Canvas</source>
            <translation>Leinwand</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>rectangle</source>
            <translation>Rechteck</translation>
        </message>
        <message>
            <source>round</source>
            <translation>rund</translation>
        </message>
        <message>
            <source>Diameter (%1)</source>
            <translation>Durchmesser (%1)</translation>
        </message>
        <message>
            <source>Length (%1)</source>
            <translation>Länge (%1)</translation>
        </message>
        <message>
            <source>Length or diameter</source>
            <translation>Länge oder Durchmesser</translation>
        </message>
        <message>
            <source>Width (%1)</source>
            <translation>Breite (%1)</translation>
        </message>
        <message>
            <source>Width</source>
            <translation>Breite</translation>
        </message>
        <message>
            <source>Depth (%1)</source>
            <translation>Tiefe (%1)</translation>
        </message>
        <message>
            <source>Depth</source>
            <translation>Tiefe</translation>
        </message>
        <message>
            <source>How many</source>
            <translation>Wie viele</translation>
        </message>
        <message>
            <source>How many canvases</source>
            <translation>Wie viele Leinwände</translation>
        </message>
        <message>
            <source>paint the sides too</source>
            <translation>auch die Seiten bemalen</translation>
        </message>
        <message>
            <source>Technique</source>
            <translation>Technik</translation>
        </message>
        <message>
            <source>Way of pouring</source>
            <translation>Art des Gießens</translation>
        </message>
        <message>
            <source>Base coat (%1)</source>
            <translation>Grundfarbe (%1)</translation>
        </message>
        <message>
            <source>Base coat on the canvas</source>
            <translation>Grundfarbe auf der Leinwand</translation>
        </message>
        <message>
            <source>Colours (%1)</source>
            <translation>Farben (%1)</translation>
        </message>
        <message>
            <source>Colours on the canvas</source>
            <translation>Farben auf der Leinwand</translation>
        </message>
        <message>
            <source>Activator (%1)</source>
            <translation>Aktivator (%1)</translation>
        </message>
        <message>
            <source>Activator on the canvas</source>
            <translation>Aktivator auf der Leinwand</translation>
        </message>
        <message>
            <source>Keep these amounts</source>
            <translation>Diese Mengen behalten</translation>
        </message>
        <message>
            <source>Back to the starting amounts</source>
            <translation>Zurück zu den Anfangsmengen</translation>
        </message>
        <message>
            <source>Colours</source>
            <translation>Farben</translation>
        </message>
        <message>
            <source>Body of %1</source>
            <translation>Körper von %1</translation>
        </message>
        <message>
            <source>parts</source>
            <translation>Teile</translation>
        </message>
        <message>
            <source>Parts of %1</source>
            <translation>Teile von %1</translation>
        </message>
        <message>
            <source>Leave out</source>
            <translation>Weglassen</translation>
        </message>
        <message>
            <source>Leave out %1</source>
            <translation>%1 weglassen</translation>
        </message>
        <message>
            <source>Name of another colour</source>
            <translation>Name einer weiteren Farbe</translation>
        </message>
        <message>
            <source>another colour</source>
            <translation>weitere Farbe</translation>
        </message>
        <message>
            <source>Add it</source>
            <translation>Dazunehmen</translation>
        </message>
        <message>
            <source>Take those of the bench</source>
            <translation>Die vom Tisch nehmen</translation>
        </message>
        <message>
            <source>First mixes, before any water</source>
            <translation>Erste Mischungen, noch ohne Wasser</translation>
        </message>
        <message>
            <source>Pouring medium</source>
            <translation>Gießmedium</translation>
        </message>
        <message>
            <source>Parts of base</source>
            <translation>Teile Basis</translation>
        </message>
        <message>
            <source>Parts of varnish</source>
            <translation>Teile Lack</translation>
        </message>
        <message>
            <source>Measured by</source>
            <translation>Gemessen nach</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>To spare</source>
            <translation>Zugabe und Verlust</translation>
        </message>
        <message>
            <source>Kept back unthinned (%)</source>
            <translation>Unverdünnt aufgehoben (%)</translation>
        </message>
        <message>
            <source>Kept back unthinned, per cent</source>
            <translation>Unverdünnt aufgehoben, Prozent</translation>
        </message>
        <message>
            <source>Lost to cups and sticks (%)</source>
            <translation>Verlust in Bechern (%)</translation>
        </message>
        <message>
            <source>Lost to cups and sticks, per cent</source>
            <translation>Verlust in Bechern und an Stäben, Prozent</translation>
        </message>
        <message>
            <source>Water expected (%)</source>
            <translation>Erwartetes Wasser (%)</translation>
        </message>
        <message>
            <source>Water expected, per cent</source>
            <translation>Erwartetes Wasser, Prozent</translation>
        </message>
        <message>
            <source>Tests of each cup</source>
            <translation>Tests je Becher</translation>
        </message>
        <message>
            <source>To have ready</source>
            <translation>Bereitzustellen</translation>
        </message>
        <message>
            <source>at hand (%1)</source>
            <translation>vorhanden (%1)</translation>
        </message>
        <message>
            <source>At hand of %1</source>
            <translation>Vorhanden von %1</translation>
        </message>
        <message>
            <source>container (%1)</source>
            <translation>Gebinde (%1)</translation>
        </message>
        <message>
            <source>Container of %1</source>
            <translation>Gebinde von %1</translation>
        </message>
        <message>
            <source>its price</source>
            <translation>sein Preis</translation>
        </message>
        <message>
            <source>Price of a container of %1</source>
            <translation>Preis eines Gebindes %1</translation>
        </message>
        <message>
            <source>Left over on the shelf</source>
            <translation>Reste im Regal</translation>
        </message>
        <message>
            <source>use what the book knows: left-overs and your earlier pours</source>
            <translation>nutzen, was das Buch weiß: Reste und deine früheren Güsse</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Aufgebraucht</translation>
        </message>
        <message>
            <source>%1 is gone</source>
            <translation>%1 ist aufgebraucht</translation>
        </message>
        <message>
            <source>What is left over</source>
            <translation>Was übrig ist</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>Aktivator</translation>
        </message>
        <message>
            <source>pouring medium</source>
            <translation>Gießmedium</translation>
        </message>
        <message>
            <source>How much (%1)</source>
            <translation>Wie viel (%1)</translation>
        </message>
        <message>
            <source>How much</source>
            <translation>Wie viel</translation>
        </message>
        <message>
            <source>thinned with water</source>
            <translation>mit Wasser verdünnt</translation>
        </message>
        <message>
            <source>Put it on the shelf</source>
            <translation>Ins Regal stellen</translation>
        </message>
        <message>
            <source>It is not gone</source>
            <translation>Doch nicht aufgebraucht</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Beachten</translation>
        </message>
        <message>
            <source>Keep the plan as a file …</source>
            <translation>Plan als Datei aufheben …</translation>
        </message>
        <message>
            <source>Cup, bottom (%1)</source>
            <translation>Becher, Boden (%1)</translation>
        </message>
        <message>
            <source>Inner diameter of the cup at the bottom</source>
            <translation>Innendurchmesser des Bechers am Boden</translation>
        </message>
        <message>
            <source>Cup, rim (%1)</source>
            <translation>Becher, Rand (%1)</translation>
        </message>
        <message>
            <source>Inner diameter of the cup at the rim</source>
            <translation>Innendurchmesser des Bechers am Rand</translation>
        </message>
        <message>
            <source>Cup, height (%1)</source>
            <translation>Becher, Höhe (%1)</translation>
        </message>
        <message>
            <source>Inner height of the cup</source>
            <translation>Innenhöhe des Bechers</translation>
        </message>
        <message>
            <source>Its flow as tested, 1 = base coat</source>
            <translation>Sein Fluss im Test, 1 = Grundfarbe</translation>
        </message>
        <message>
            <source>Flow of this batch as tested, 1 is the base coat</source>
            <translation>Fluss dieses Ansatzes im Test, 1 ist die Grundfarbe</translation>
        </message>
        <message>
            <source>Flow of the last batch</source>
            <translation>Fluss des letzten Ansatzes</translation>
        </message>
        <message>
            <source>Flow of the last batch as tested, 1 is the base coat</source>
            <translation>Fluss des letzten Ansatzes im Test, 1 ist die Grundfarbe</translation>
        </message>
        <message>
            <source>Put these cups on the bench</source>
            <translation>Diese Becher auf den Tisch stellen</translation>
        </message>
    </context>
    <context>
        <name>PrintScreen</name>
        <message>
            <source>Print</source>
            <translation>Drucken</translation>
        </message>
        <message>
            <source>Where the files go</source>
            <translation>Wohin die Dateien kommen</translation>
        </message>
        <message>
            <source>Written: %1</source>
            <translation>Geschrieben: %1</translation>
        </message>
        <message>
            <source>Open it</source>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Of the day %1</source>
            <translation>Vom Tag %1</translation>
        </message>
        <message>
            <source>Of a day</source>
            <translation>Von einem Tag</translation>
        </message>
        <message>
            <source>The journal&apos;s open day; choose another one there.</source>
            <translation>Der offene Tag des Tagebuchs; dort einen anderen wählen.</translation>
        </message>
        <message>
            <source>Labels for the jars</source>
            <translation>Etiketten für die Gläser</translation>
        </message>
        <message>
            <source>Report with photos</source>
            <translation>Bericht mit Fotos</translation>
        </message>
        <message>
            <source>Of the plan</source>
            <translation>Vom Plan</translation>
        </message>
        <message>
            <source>Sheet for the bench</source>
            <translation>Blatt für den Tisch</translation>
        </message>
        <message>
            <source>Places in the class</source>
            <translation>Plätze im Kurs</translation>
        </message>
        <message>
            <source>What stands on top</source>
            <translation>Was oben steht</translation>
        </message>
        <message>
            <source>Handout for the class</source>
            <translation>Blätter für den Kurs</translation>
        </message>
        <message>
            <source>Of all days</source>
            <translation>Von allen Tagen</translation>
        </message>
        <message>
            <source>Table (CSV)</source>
            <translation>Tabelle (CSV)</translation>
        </message>
        <message>
            <source>Document (JSON)</source>
            <translation>Dokument (JSON)</translation>
        </message>
        <message>
            <source>Choose another folder …</source>
            <translation>Anderen Ordner wählen …</translation>
        </message>
        <message>
            <source>A file of the same name is replaced.</source>
            <translation>Eine Datei gleichen Namens wird ersetzt.</translation>
        </message>
        <message>
            <source>Sent to be printed: %1</source>
            <translation>Zum Drucken geschickt: %1</translation>
        </message>
    </context>
    <context>
        <name>ReviewScreen</name>
        <message>
            <source>Look again</source>
            <translation>Ansehen</translation>
        </message>
        <message>
            <source>Which cup</source>
            <translation>Welcher Becher</translation>
        </message>
        <message>
            <source>Which film</source>
            <translation>Welcher Film</translation>
        </message>
        <message>
            <source>no films yet</source>
            <translation>noch keine Filme</translation>
        </message>
        <message>
            <source>Count it again</source>
            <translation>Wieder zählen</translation>
        </message>
        <message>
            <source>Set this film aside</source>
            <translation>Diesen Film beiseitelegen</translation>
        </message>
        <message>
            <source>The film, with what was found</source>
            <translation>Der Film mit dem, was gefunden wurde</translation>
        </message>
        <message>
            <source>Getting the film …</source>
            <translation>Film wird geholt …</translation>
        </message>
        <message>
            <source>Frame of the film</source>
            <translation>Bild des Films</translation>
        </message>
        <message>
            <source>◂ one frame</source>
            <translation>◂ ein Bild</translation>
        </message>
        <message>
            <source>one frame ▸</source>
            <translation>ein Bild ▸</translation>
        </message>
        <message>
            <source>%1: here</source>
            <translation>%1: hier</translation>
        </message>
    </context>
    <context>
        <name>SettingsScreen</name>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>Language</source>
            <translation>Sprache</translation>
        </message>
        <message>
            <source>as the computer</source>
            <translation>wie der Rechner</translation>
        </message>
        <message>
            <source>Amounts</source>
            <translation>Mengen</translation>
        </message>
        <message>
            <source>millilitres, degrees Celsius</source>
            <translation>Milliliter, Grad Celsius</translation>
        </message>
        <message>
            <source>US teaspoons and ounces, degrees Fahrenheit</source>
            <translation>US-Teelöffel und -Unzen, Grad Fahrenheit</translation>
        </message>
        <message>
            <source>Light or dark</source>
            <translation>Hell oder dunkel</translation>
        </message>
        <message>
            <source>light</source>
            <translation>hell</translation>
        </message>
        <message>
            <source>dark</source>
            <translation>dunkel</translation>
        </message>
        <message>
            <source>Size of everything</source>
            <translation>Größe von allem</translation>
        </message>
        <message>
            <source>Camera</source>
            <translation>Kamera</translation>
        </message>
        <message>
            <source>none found</source>
            <translation>keine gefunden</translation>
        </message>
        <message>
            <source>Picture size</source>
            <translation>Bildgröße</translation>
        </message>
        <message>
            <source>Voice</source>
            <translation>Stimme</translation>
        </message>
        <message>
            <source>say results aloud where a voice is installed</source>
            <translation>Ergebnisse vorlesen, wo eine Stimme installiert ist</translation>
        </message>
        <message>
            <source>Test on this bench</source>
            <translation>Probe auf diesem Tisch</translation>
        </message>
        <message>
            <source>stream off the stick</source>
            <translation>Strahl vom Stab</translation>
        </message>
        <message>
            <source>ribbon that levels</source>
            <translation>Band, das verläuft</translation>
        </message>
        <message>
            <source>puddle that spreads</source>
            <translation>Pfütze, die sich ausbreitet</translation>
        </message>
        <message>
            <source>Water is measured in</source>
            <translation>Wasser wird gemessen in</translation>
        </message>
        <message>
            <source>millilitres, by pipette or syringe</source>
            <translation>Millilitern, mit Pipette oder Spritze</translation>
        </message>
        <message>
            <source>drops of 0.05 mL</source>
            <translation>Tropfen zu 0,05 ml</translation>
        </message>
        <message>
            <source>pump strokes of 0.13 mL</source>
            <translation>Pumpenhüben zu 0,13 ml</translation>
        </message>
        <message>
            <source>Room (%1)</source>
            <translation>Raum (%1)</translation>
        </message>
        <message>
            <source>Room temperature</source>
            <translation>Raumtemperatur</translation>
        </message>
        <message>
            <source>Session</source>
            <translation>Sitzung</translation>
        </message>
        <message>
            <source>none yet</source>
            <translation>noch keine</translation>
        </message>
        <message>
            <source>New session</source>
            <translation>Neue Sitzung</translation>
        </message>
        <message>
            <source>Name of the new session</source>
            <translation>Name der neuen Sitzung</translation>
        </message>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Begin</source>
            <translation>Beginnen</translation>
        </message>
    </context>
    <context>
        <name>TryoutScreen</name>
        <message>
            <source>Leave it</source>
            <translation>Lassen</translation>
        </message>
    </context>
    <context>
        <name>Wording</name>
        <message>
            <source>stream</source>
            <translation>Strahl</translation>
        </message>
        <message>
            <source>ribbon</source>
            <translation>Band</translation>
        </message>
        <message>
            <source>puddle</source>
            <translation>Pfütze</translation>
        </message>
        <message>
            <source>stick lifts</source>
            <translation>Stab hebt ab</translation>
        </message>
        <message>
            <source>stream breaks</source>
            <translation>Strahl reißt ab</translation>
        </message>
        <message>
            <source>ribbon is laid</source>
            <translation>Band ist gelegt</translation>
        </message>
        <message>
            <source>puddle is poured</source>
            <translation>Pfütze ist aufgesetzt</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>Aktivator</translation>
        </message>
        <message>
            <source>the stream</source>
            <translation>den Strahl</translation>
        </message>
        <message>
            <source>the ribbon</source>
            <translation>das Band</translation>
        </message>
        <message>
            <source>the puddle</source>
            <translation>die Pfütze</translation>
        </message>
        <message>
            <source>of water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>of flow additive</source>
            <translation>Fließmittel</translation>
        </message>
        <message>
            <source>of pouring medium</source>
            <translation>Gießmedium</translation>
        </message>
        <message numerus="yes">
            <source>%n drop(s) %1</source>
            <translation>
                <numerusform>%n Tropfen %1</numerusform>
                <numerusform>%n Tropfen %1</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n pump stroke(s) %1</source>
            <translation>
                <numerusform>%n Pumpenhub %1</numerusform>
                <numerusform>%n Pumpenhübe %1</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 × %2 %3</source>
            <translation>%1 × %2 %3</translation>
        </message>
        <message>
            <source>%1 %2</source>
            <translation>%1 %2</translation>
        </message>
        <message>
            <source>The base coat is ready.</source>
            <translation>Die Grundfarbe ist bereit.</translation>
        </message>
        <message>
            <source>It matches. Leave it as it is.</source>
            <translation>Passt. So lassen.</translation>
        </message>
        <message numerus="yes">
            <source>Film %1 %n time(s).</source>
            <translation>
                <numerusform>%n Mal %1 filmen.</numerusform>
                <numerusform>%n Mal %1 filmen.</numerusform>
            </translation>
        </message>
        <message>
            <source>Film %1 once more.</source>
            <translation>Noch einmal %1 filmen.</translation>
        </message>
        <message>
            <source>Stir one minute, wait 15 seconds, film %1.</source>
            <translation>Eine Minute rühren, 15 Sekunden warten, %1 filmen.</translation>
        </message>
        <message>
            <source>Add %1, stir one minute, film again.</source>
            <translation>%1 zugeben, eine Minute rühren, wieder filmen.</translation>
        </message>
        <message>
            <source>Put %1 of the unthinned mix back, stir one minute, film again.</source>
            <translation>%1 der unverdünnten Mischung zurückgeben, eine Minute rühren, wieder filmen.</translation>
        </message>
        <message>
            <source>Too thin: stir in thicker paint of this colour, a little at a time, film again.</source>
            <translation>Zu dünn: dickere Farbe dieses Tons einrühren, immer nur wenig, wieder filmen.</translation>
        </message>
        <message>
            <source>No more water: thin it further with pouring medium.</source>
            <translation>Kein Wasser mehr: mit Gießmedium weiter verdünnen.</translation>
        </message>
        <message>
            <source>Stop here, or film it again to know it better.</source>
            <translation>Hier aufhören oder noch einmal filmen, um es genauer zu wissen.</translation>
        </message>
        <message>
            <source>Measure finer: at most %1 at once.</source>
            <translation>Feiner abmessen: höchstens %1 auf einmal.</translation>
        </message>
        <message>
            <source>This liquid is hardly thinner than the base coat; use another.</source>
            <translation>Diese Flüssigkeit ist kaum dünner als die Grundfarbe; eine andere nehmen.</translation>
        </message>
        <message>
            <source>Say how much is in this cup.</source>
            <translation>Sagen, wie viel in diesem Becher ist.</translation>
        </message>
        <message>
            <source>Film the base coat first.</source>
            <translation>Erst die Grundfarbe filmen.</translation>
        </message>
        <message>
            <source>It has not been filmed yet.</source>
            <translation>Noch nicht gefilmt.</translation>
        </message>
        <message>
            <source>Something was added since the last film.</source>
            <translation>Seit dem letzten Film wurde etwas zugegeben.</translation>
        </message>
        <message>
            <source>A few films together tell more than one.</source>
            <translation>Mehrere Filme zusammen sagen mehr als einer.</translation>
        </message>
        <message>
            <source>The films leave open which side it is on.</source>
            <translation>Die Filme lassen offen, auf welcher Seite er liegt.</translation>
        </message>
        <message>
            <source>The last film does not fit the others.</source>
            <translation>Der letzte Film passt nicht zu den anderen.</translation>
        </message>
        <message>
            <source>Its films and those of the base coat do not compare.</source>
            <translation>Seine Filme und die der Grundfarbe lassen sich nicht vergleichen.</translation>
        </message>
        <message>
            <source>Its last film is old; paint thickens as it stands.</source>
            <translation>Der letzte Film ist alt; Farbe wird im Stehen dicker.</translation>
        </message>
        <message>
            <source>The base coat was filmed more than two hours ago.</source>
            <translation>Die Grundfarbe wurde vor mehr als zwei Stunden gefilmt.</translation>
        </message>
        <message>
            <source>The room has become warmer or colder since the last film.</source>
            <translation>Der Raum ist seit dem letzten Film wärmer oder kälter geworden.</translation>
        </message>
        <message>
            <source>It is thicker than it should be.</source>
            <translation>Dicker, als er sein soll.</translation>
        </message>
        <message>
            <source>It is thinner than it should be.</source>
            <translation>Dünner, als er sein soll.</translation>
        </message>
        <message>
            <source>film again</source>
            <translation>neu filmen</translation>
        </message>
        <message>
            <source>not compared yet</source>
            <translation>noch offen</translation>
        </message>
        <message>
            <source>match</source>
            <translation>passt</translation>
        </message>
        <message>
            <source>thicker</source>
            <translation>dicker</translation>
        </message>
        <message>
            <source>thinner</source>
            <translation>dünner</translation>
        </message>
        <message>
            <source>not sure yet</source>
            <translation>noch nicht sicher</translation>
        </message>
        <message numerus="yes">
            <source>%1: %n film(s)</source>
            <translation>
                <numerusform>%1: %n Film</numerusform>
                <numerusform>%1: %n Filme</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>, %n more</source>
            <translation>
                <numerusform>, noch %n</numerusform>
                <numerusform>, noch %n</numerusform>
            </translation>
        </message>
        <message>
            <source>stream broke after %1</source>
            <translation>Strahl riss nach %1 ab</translation>
        </message>
        <message>
            <source>stream measured</source>
            <translation>Strahl gemessen</translation>
        </message>
        <message>
            <source>ribbon levelled, measured</source>
            <translation>Band verlaufen, gemessen</translation>
        </message>
        <message>
            <source>puddle spread, measured</source>
            <translation>Pfütze ausgebreitet, gemessen</translation>
        </message>
        <message>
            <source>Put the base coat on the bench.</source>
            <translation>Die Grundfarbe auf den Tisch stellen.</translation>
        </message>
        <message>
            <source>The base coat is missing.</source>
            <translation>Die Grundfarbe fehlt.</translation>
        </message>
        <message>
            <source>All match: pour.</source>
            <translation>Alle passen: gießen.</translation>
        </message>
        <message>
            <source>Base coat first: %1</source>
            <translation>Erst die Grundfarbe: %1</translation>
        </message>
        <message>
            <source>%1 holds it back.</source>
            <translation>%1 hält es auf.</translation>
        </message>
        <message>
            <source>Add the first colour.</source>
            <translation>Die erste Farbe dazustellen.</translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n cup(s) match</source>
            <translation>
                <numerusform>%1 von %n Becher passt</numerusform>
                <numerusform>%1 von %n Bechern passen</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 cells on a cm² (%2 to %3), half larger than %4 mm (%5 to %6)</source>
            <translation>%1 Zellen je cm² (%2 bis %3), die Hälfte größer als %4 mm (%5 bis %6)</translation>
        </message>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 bis %3)</translation>
        </message>
        <message>
            <source>was %1</source>
            <comment>its ratio before the last addition</comment>
            <translation>vorher %1</translation>
        </message>
    </context>
    <context>
        <name>engine</name>
        <message>
            <source>A cup can be checked again after 1 to 1440 minutes, not sooner or later.</source>
            <translation>Neu geprüft wird nach 1 bis 1440 Minuten.</translation>
        </message>
        <message>
            <source>A cup needs a name; say what you call it.</source>
            <translation>Ein Becher braucht einen Namen.</translation>
        </message>
        <message>
            <source>A stick was lifted but no stream could be seen under it; use a background that differs from the paint, or more light.</source>
            <translation>Ein Stab wurde gehoben, aber kein Strahl war zu sehen; einen Hintergrund nehmen, der sich von der Farbe abhebt, oder mehr Licht.</translation>
        </message>
        <message>
            <source>A unit needs a name, and one of it must hold 0.001 to 100 mL.</source>
            <translation>Ein Maß braucht einen Namen und fasst 0,001 bis 100 ml.</translation>
        </message>
        <message>
            <source>An addition must lie between 0.001 and 20000 mL.</source>
            <translation>Eine Zugabe liegt zwischen 0,001 und 20000 ml.</translation>
        </message>
        <message>
            <source>Another program has changed this bench meanwhile; look at it and try again.</source>
            <translation>Ein anderes Programm hat diesen Tisch inzwischen geändert; ansehen und noch einmal.</translation>
        </message>
        <message>
            <source>Between 1 and 20 films of a cup can be asked for.</source>
            <translation>Zwischen 1 und 20 Filme eines Bechers lassen sich verlangen.</translation>
        </message>
        <message>
            <source>The camera zoomed, or was moved up or down, while the puddle spread: fix camera and zoom and film again.</source>
            <translation>Die Kamera hat gezoomt oder wurde gehoben oder gesenkt, während die Pfütze lief: Kamera und Zoom feststellen und wieder filmen.</translation>
        </message>
        <message>
            <source>The camera zoomed a little, or was moved up or down, while the puddle spread; this was taken out by what lies round the tile.</source>
            <translation>Die Kamera hat ein wenig gezoomt oder wurde gehoben oder gesenkt, während die Pfütze lief; das wurde anhand der Umgebung der Fliese herausgerechnet.</translation>
        </message>
        <message>
            <source>The moment the stream breaks, the coat on the stick and the drips tell different ratios of this cup, further apart than chance allows; the range given was widened. A flow additive or heavy pigment in only one of the two cups does that, and so does paint that runs thinner the harder it is pulled: the level test tells how it will settle on the canvas.</source>
            <translation>Das Reißen des Strahls, die Farbschicht auf dem Stab und die Tropfen nennen für diesen Becher verschiedene Verhältnisse, weiter auseinander, als der Zufall erlaubt; der angegebene Bereich wurde erweitert. Das kommt von einem Fließmittel oder schwerem Pigment in nur einem der beiden Becher, auch von Farbe, die umso dünner läuft, je stärker sie gezogen wird: ein Film des Bandes sagt, wie sie auf der Leinwand verläuft.</translation>
        </message>
        <message>
            <source>The same films tell different ratios of this cup, further apart than chance allows; the range given was widened.</source>
            <translation>Dieselben Filme nennen für diesen Becher verschiedene Verhältnisse, weiter auseinander, als der Zufall erlaubt; der angegebene Bereich wurde erweitert.</translation>
        </message>
        <message>
            <source>The puddle runs out of the picture: put the paint down in the middle, or film from further away.</source>
            <translation>Die Pfütze läuft aus dem Bild: die Farbe in die Mitte setzen oder von weiter weg filmen.</translation>
        </message>
        <message>
            <source>The paint hardly stands out from what lies under it: put it on a plain tile of another colour.</source>
            <translation>Die Farbe hebt sich kaum von ihrem Untergrund ab: auf eine einfarbige Fliese in anderer Farbe setzen.</translation>
        </message>
        <message>
            <source>Camera or tile was moved while the puddle spread; leave both alone.</source>
            <translation>Kamera oder Fliese wurde beim Ausbreiten bewegt; beide stehen lassen.</translation>
        </message>
        <message>
            <source>Clips can be compared only if the camera stays where it is.</source>
            <translation>Clips lassen sich nur vergleichen, wenn die Kamera stehen bleibt.</translation>
        </message>
        <message>
            <source>Loosen the thick paint with some of the cup first, then stir it back in.</source>
            <translation>Die dicke Farbe erst mit etwas aus dem Becher auflockern, dann einrühren.</translation>
        </message>
        <message>
            <source>More than one ribbon was laid, or something stirred or crossed the paint after it: film one ribbon per clip and leave it alone.</source>
            <translation>Mehr als ein Band wurde gelegt, oder danach hat etwas die Farbe gerührt oder gekreuzt: ein Band je Clip filmen und es in Ruhe lassen.</translation>
        </message>
        <message>
            <source>No ribbon of paint was seen to fade: lay one on the paint&apos;s own surface, with a lamp or window mirrored in it, and film until it is gone.</source>
            <translation>Kein Farbband verlief: eines auf die Farbe selbst legen, mit gespiegelter Lampe oder Fenster, und filmen, bis es weg ist.</translation>
        </message>
        <message>
            <source>No round puddle was found. Film the tile from straight above, put the measured paint down in one place, take the syringe away and let it spread for ten seconds.</source>
            <translation>Keine runde Pfütze gefunden. Die Fliese von genau oben filmen, die abgemessene Farbe an einer Stelle aufsetzen, Spritze weg, zehn Sekunden ausbreiten lassen.</translation>
        </message>
        <message>
            <source>No session is open; begin one or choose one first.</source>
            <translation>Keine Sitzung ist offen; eine beginnen oder wählen.</translation>
        </message>
        <message>
            <source>No stick was seen to be lifted out of the paint and held still; start filming with the stick standing in the cup, lift it straight up and hold it.</source>
            <translation>Kein Stab wurde aus der Farbe gehoben und ruhig gehalten; mit dem Stab im Becher anfangen, gerade hochziehen, halten.</translation>
        </message>
        <message>
            <source>Nothing happens in this clip: no paint is put on the tile. Start filming, put down the paint, and let it spread for ten seconds.</source>
            <translation>In diesem Clip geschieht nichts: es kommt keine Farbe auf die Fliese. Filmen, Farbe aufsetzen, zehn Sekunden ausbreiten lassen.</translation>
        </message>
        <message>
            <source>Nothing moves in this clip: film the ribbon being laid on the paint and keep filming until it is gone.</source>
            <translation>In diesem Clip bewegt sich nichts: filmen, wie das Band gelegt wird, und weiter, bis es weg ist.</translation>
        </message>
        <message>
            <source>Nothing moves in this clip; film the stick being lifted out of the paint.</source>
            <translation>In diesem Clip bewegt sich nichts; filmen, wie der Stab aus der Farbe gehoben wird.</translation>
        </message>
        <message>
            <source>One more film before adding lets the next addition go further.</source>
            <translation>Ein Film mehr vor dem Zugeben erlaubt eine größere Zugabe.</translation>
        </message>
        <message>
            <source>One reading of each only: how evenly the hand repeats was taken from what is usual. Test the base coat and the cup again for a narrower answer.</source>
            <translation>Nur je eine Messung: wie gleichmäßig die Hand ist, wurde vom Üblichen genommen. Grundfarbe und Becher noch einmal proben, dann wird es enger.</translation>
        </message>
        <message>
            <source>Paint is put down twice in this clip: cut it so that it holds one puddle.</source>
            <translation>In diesem Clip wird zweimal Farbe aufgesetzt: so schneiden, dass er eine Pfütze enthält.</translation>
        </message>
        <message>
            <source>Part of the ribbon stays for good: this paint is too stiff to level, loosen it first.</source>
            <translation>Ein Teil des Bandes bleibt stehen: diese Farbe ist zu steif zum Verlaufen, erst auflockern.</translation>
        </message>
        <message>
            <source>Parts of the surface level at very different speeds: look for a hand&apos;s shadow, a crooked ribbon or a skin.</source>
            <translation>Teile der Oberfläche verlaufen sehr verschieden schnell: auf Handschatten, schiefes Band oder Haut achten.</translation>
        </message>
        <message>
            <source>Something fell or moved on the paint after a pause; the levelling is counted from the last of it.</source>
            <translation>Nach einer Pause fiel oder bewegte sich etwas auf der Farbe; gezählt wird ab dem Letzten davon.</translation>
        </message>
        <message>
            <source>Something moved over the ribbon, once it was laid, for as long as it takes to level: take stick and hand away at once, or lay it with less in the way.</source>
            <translation>Nach dem Legen bewegte sich etwas so lange über dem Band, wie es zum Verlaufen braucht: Stab und Hand sofort wegnehmen oder mit weniger davor legen.</translation>
        </message>
        <message>
            <source>The base coat is what the others are compared with; it has no target of its own.</source>
            <translation>Mit der Grundfarbe wird verglichen; sie hat kein eigenes Ziel.</translation>
        </message>
        <message>
            <source>The camera does not look straight down; the mean radius is taken.</source>
            <translation>Die Kamera schaut nicht genau nach unten; der mittlere Radius gilt.</translation>
        </message>
        <message>
            <source>The camera does not look straight down; the radius is taken along the ruler.</source>
            <translation>Die Kamera schaut nicht genau nach unten; der Radius entlang des Lineals gilt.</translation>
        </message>
        <message>
            <source>The camera or the cup was moved while the ribbon levelled: fix the camera, leave the cup alone and film it again.</source>
            <translation>Kamera oder Becher wurde beim Verlaufen bewegt: Kamera befestigen, Becher stehen lassen, wieder filmen.</translation>
        </message>
        <message>
            <source>The camera sends no pictures; check its cable.</source>
            <translation>Die Kamera schickt keine Bilder; Kabel prüfen.</translation>
        </message>
        <message>
            <source>The camera shows a still picture; unplug it and plug it in again.</source>
            <translation>Die Kamera zeigt ein stehendes Bild; abziehen und wieder anstecken.</translation>
        </message>
        <message>
            <source>The camera&apos;s clock jumped; film the test again.</source>
            <translation>Die Uhr der Kamera sprang; die Probe wieder filmen.</translation>
        </message>
        <message>
            <source>The camera, the light or something in front of it moved just when the stream seemed to break; keep all of it still and film again.</source>
            <translation>Kamera, Licht oder etwas davor bewegte sich gerade, als der Strahl abzureißen schien; alles ruhig halten, wieder filmen.</translation>
        </message>
        <message>
            <source>The clip ends before enough of the ribbon is gone: film on until the surface is smooth again.</source>
            <translation>Der Clip endet, bevor genug vom Band weg ist: weiterfilmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The clip ends right after the laying: keep filming until the surface is smooth again.</source>
            <translation>Der Clip endet gleich nach dem Legen: weiterfilmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The clip ends too soon to see how the puddle slows down. Film on for ten seconds after the syringe is away.</source>
            <translation>Der Clip endet zu früh, um zu sehen, wie die Pfütze langsamer wird. Nach der Spritze zehn Sekunden weiterfilmen.</translation>
        </message>
        <message>
            <source>The clip ends too soon: paint is still being put down, or has only just been. Film on for ten seconds after the syringe is away.</source>
            <translation>Der Clip endet zu früh: die Farbe wird noch oder wurde eben erst aufgesetzt. Nach der Spritze zehn Sekunden weiterfilmen.</translation>
        </message>
        <message>
            <source>The clip ends while something still moves: keep filming after the ribbon is laid until the surface is smooth again.</source>
            <translation>Der Clip endet, während sich noch etwas bewegt: nach dem Legen weiterfilmen, bis die Fläche glatt ist.</translation>
        </message>
        <message>
            <source>The clip holds no picture.</source>
            <translation>Der Clip enthält kein Bild.</translation>
        </message>
        <message>
            <source>The clip is too short to hold a stream test; film from before the lift until the drips.</source>
            <translation>Der Clip ist zu kurz; von vor dem Heben bis zu den Tropfen filmen.</translation>
        </message>
        <message>
            <source>The clip is too short: film from before the ribbon is laid until the surface is smooth again.</source>
            <translation>Der Clip ist zu kurz: von vor dem Legen filmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The cup is too thin and the reserve is no help: stir in thicker paint or medium of the same kind, a little at a time, and test again; water cannot help.</source>
            <translation>Der Becher ist zu dünn und die Reserve hilft nicht: dickere Farbe oder Medium derselben Art einrühren, immer nur wenig, wieder proben; Wasser hilft nicht.</translation>
        </message>
        <message>
            <source>The film cannot be written; check the room on the disk.</source>
            <translation>Der Film lässt sich nicht schreiben; Platz auf der Platte prüfen.</translation>
        </message>
        <message>
            <source>The first touch of the paint on the tile was not seen.</source>
            <translation>Die erste Berührung der Farbe mit der Fliese war nicht zu sehen.</translation>
        </message>
        <message>
            <source>The last test does not fit the others; stir, and film it again.</source>
            <translation>Die letzte Probe passt nicht zu den anderen; rühren und wieder filmen.</translation>
        </message>
        <message>
            <source>The laying of the ribbon is not in the clip: start filming before it and keep on until the surface is smooth again.</source>
            <translation>Das Legen des Bandes fehlt im Clip: vorher anfangen und filmen, bis die Fläche wieder glatt ist.</translation>
        </message>
        <message>
            <source>The match band must lie between 0.02 and 1.</source>
            <translation>Das Trefferband liegt zwischen 0,02 und 1.</translation>
        </message>
        <message>
            <source>The measurement was stopped; start it again.</source>
            <translation>Die Messung wurde angehalten; neu beginnen.</translation>
        </message>
        <message>
            <source>The moment must lie within the film; give seconds of real time since its first frame.</source>
            <translation>Der Augenblick muss im Film liegen.</translation>
        </message>
        <message>
            <source>The moment that was set by hand lies outside the film; choose one within it.</source>
            <translation>Der von Hand gesetzte Augenblick liegt außerhalb des Films; einen darin wählen.</translation>
        </message>
        <message>
            <source>The moment the stick leaves the paint could not be seen; start filming with the stick standing in the paint and lift it straight up.</source>
            <translation>Der Augenblick, in dem der Stab die Farbe verlässt, war nicht zu sehen; mit dem Stab in der Farbe anfangen und gerade hochziehen.</translation>
        </message>
        <message>
            <source>The paint fills the picture, so shaking and lamp flicker could not be taken out: leave a rim around it.</source>
            <translation>Die Farbe füllt das Bild, darum ließen sich Wackeln und Flackern nicht herausrechnen: einen Rand lassen.</translation>
        </message>
        <message>
            <source>The paint is already on the tile when the clip begins: start filming first, then put the paint down.</source>
            <translation>Die Farbe ist schon auf der Fliese, wenn der Clip beginnt: erst filmen, dann aufsetzen.</translation>
        </message>
        <message>
            <source>The paint is so thin that its own swing still carries it: the viscosity is a lower bound.</source>
            <translation>Die Farbe ist so dünn, dass ihr Schwung sie noch trägt: die Viskosität ist eine untere Grenze.</translation>
        </message>
        <message>
            <source>The paint was moved for far longer than its surface takes to settle: lay one short ribbon, without stirring, or use the puddle test for paint this thin.</source>
            <translation>Die Farbe wurde viel länger bewegt, als ihre Fläche zum Glätten braucht: ein kurzes Band ohne Rühren legen, oder für so dünne Farbe die Pfütze nehmen.</translation>
        </message>
        <message>
            <source>The picture is black: turn on a lamp, take off the lens cap and film again.</source>
            <translation>Das Bild ist schwarz: Lampe an, Deckel ab, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is black; take the cap off the lens or add light.</source>
            <translation>Das Bild ist schwarz; Deckel ab oder mehr Licht.</translation>
        </message>
        <message>
            <source>The picture is blurred or empty: nothing in it has an edge. Focus on the tile and film again.</source>
            <translation>Das Bild ist unscharf oder leer: nichts hat eine Kante. Auf die Fliese scharfstellen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is blurred: bring the paint&apos;s surface into focus, wipe the lens, and film it again.</source>
            <translation>Das Bild ist unscharf: auf die Farbfläche scharfstellen, Linse wischen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is too blurred or too plain to see a stick; focus on the stick and film again.</source>
            <translation>Das Bild ist zu unscharf oder zu leer für einen Stab; auf den Stab scharfstellen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture is too blurred to see the stream; focus on the stick and film again.</source>
            <translation>Das Bild ist zu unscharf für den Strahl; auf den Stab scharfstellen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture shows nothing (black, white or covered lens): check the light and the camera, then film it again.</source>
            <translation>Das Bild zeigt nichts (schwarz, weiß oder Linse verdeckt): Licht und Kamera prüfen, wieder filmen.</translation>
        </message>
        <message>
            <source>The picture stands still: the film is one frozen picture. Film again.</source>
            <translation>Das Bild steht still: der Film ist ein einziges Bild. Wieder filmen.</translation>
        </message>
        <message>
            <source>The puddle comes to a stop: this paint stands on the tile before it can be timed. Use more paint or a cleaner tile, or test this cup with the stream.</source>
            <translation>Die Pfütze bleibt stehen: diese Farbe hält an, bevor sie zu messen ist. Mehr Farbe oder eine sauberere Fliese nehmen, oder den Strahl.</translation>
        </message>
        <message>
            <source>The puddle creeps a little to one side: check that the tile is level.</source>
            <translation>Die Pfütze kriecht etwas zur Seite: prüfen, ob die Fliese waagrecht liegt.</translation>
        </message>
        <message>
            <source>The puddle creeps to one side as it spreads: the tile is not level. Level it in both directions and film again.</source>
            <translation>Die Pfütze kriecht zur Seite: die Fliese liegt nicht waagrecht. In beiden Richtungen ausrichten, wieder filmen.</translation>
        </message>
        <message>
            <source>The puddle does not spread as flowing paint left alone does: keep hands and sticks off it and film again; if it does so every time, this paint sets too soon for the puddle test.</source>
            <translation>Die Pfütze breitet sich nicht aus wie fließende Farbe, die man lässt: Hände und Stäbe weg, wieder filmen; geschieht es jedes Mal, steift diese Farbe für die Pfütze zu früh an.</translation>
        </message>
        <message>
            <source>The puddle does not spread evenly all round; the interval is wider for it.</source>
            <translation>Die Pfütze breitet sich nicht ringsum gleich aus; der Spielraum ist darum weiter.</translation>
        </message>
        <message>
            <source>The puddle ends up thinner than a millimetre, where it may be about to stop; 5 mL gives a surer viscosity.</source>
            <translation>Die Pfütze wird dünner als ein Millimeter und hält vielleicht bald an; 5 ml geben eine sicherere Viskosität.</translation>
        </message>
        <message>
            <source>The puddle is hardly ever seen whole: take hand and syringe out of the picture once the paint is down and film on for ten seconds.</source>
            <translation>Die Pfütze ist fast nie ganz zu sehen: Hand und Spritze aus dem Bild, sobald die Farbe liegt, und zehn Sekunden weiterfilmen.</translation>
        </message>
        <message>
            <source>The puddle is not round: film from straight above on a level, clean tile, with nothing in the paint&apos;s way.</source>
            <translation>Die Pfütze ist nicht rund: von genau oben filmen, waagrechte, saubere Fliese, nichts im Weg.</translation>
        </message>
        <message>
            <source>The puddle is so small that surface tension helps to spread it: use 5 mL for a true viscosity.</source>
            <translation>Die Pfütze ist so klein, dass die Oberflächenspannung mitzieht: 5 ml für eine wahre Viskosität.</translation>
        </message>
        <message>
            <source>The puddle shrinks: the film runs backwards, or something draws the paint away. Film again.</source>
            <translation>Die Pfütze schrumpft: der Film läuft rückwärts, oder etwas zieht die Farbe weg. Wieder filmen.</translation>
        </message>
        <message>
            <source>The size of the puddle jumps after it had slowed down: paint was added later, or the camera zoomed or was moved up or down. Film one pour from a fixed camera.</source>
            <translation>Die Größe der Pfütze springt, nachdem sie langsamer geworden war: es kam später Farbe dazu, oder die Kamera hat gezoomt oder wurde gehoben oder gesenkt. Einen einzigen Guss mit fester Kamera filmen.</translation>
        </message>
        <message>
            <source>The puddle slows down more than flowing paint should: it may be about to stop, so the ratio is less sure.</source>
            <translation>Die Pfütze wird langsamer, als fließende Farbe sollte: sie hält vielleicht bald an, das Verhältnis ist unsicherer.</translation>
        </message>
        <message>
            <source>The puddle spreads further on one side than on another: clean the tile, keep things out of the paint&apos;s way, and film again.</source>
            <translation>Die Pfütze läuft auf einer Seite weiter: Fliese putzen, nichts im Weg lassen, wieder filmen.</translation>
        </message>
        <message>
            <source>The puddle touches the edge of the picture; the rest is measured.</source>
            <translation>Die Pfütze berührt den Bildrand; der Rest wird gemessen.</translation>
        </message>
        <message>
            <source>The quiet surface before the ribbon is not in the clip, so it cannot be told whether what mirrors in it stood still: start filming a second earlier.</source>
            <translation>Die ruhige Oberfläche vor dem Band fehlt im Film, darum ist nicht zu erkennen, ob Spiegelungen stillstanden: eine Sekunde früher filmen.</translation>
        </message>
        <message>
            <source>The repeats of the same paint lie more than a tenth apart: dip to the same mark, wait the same time after stirring, and test again.</source>
            <translation>Die Wiederholungen derselben Farbe liegen mehr als ein Zehntel auseinander: gleich tief eintauchen, nach dem Rühren gleich lange warten, wieder proben.</translation>
        </message>
        <message>
            <source>The reserve of a cup must lie between 0 and 20000 mL.</source>
            <translation>Die Reserve eines Bechers liegt zwischen 0 und 20000 ml.</translation>
        </message>
        <message>
            <source>The ribbon can hardly be seen: let a lamp or window mirror in the paint, or come closer, and film it again.</source>
            <translation>Das Band ist kaum zu sehen: Lampe oder Fenster in der Farbe spiegeln lassen oder näher heran, wieder filmen.</translation>
        </message>
        <message>
            <source>The ribbon does not fade steadily: keep hands and shadows out of the picture, use more light, and film it again.</source>
            <translation>Das Band verläuft nicht gleichmäßig: Hände und Schatten aus dem Bild, mehr Licht, wieder filmen.</translation>
        </message>
        <message>
            <source>The ribbon fades within a few pictures and too unevenly for them: film at 60 pictures a second or more, or in slow motion.</source>
            <translation>Das Band verläuft in wenigen Bildern und dafür zu ungleichmäßig: mit 60 Bildern je Sekunde oder mehr oder in Zeitlupe filmen.</translation>
        </message>
        <message>
            <source>The ribbon is gone within a few pictures: this paint is too thin for the level test at this frame rate, use the puddle test or slow motion.</source>
            <translation>Das Band ist nach wenigen Bildern weg: für diese Bildrate ist die Farbe zu dünn, Pfütze oder Zeitlupe nehmen.</translation>
        </message>
        <message>
            <source>The ribbon&apos;s fading is ragged, so the result is rough: more light or a steadier camera helps.</source>
            <translation>Das Band verläuft unruhig, das Ergebnis ist grob: mehr Licht oder eine ruhigere Kamera hilft.</translation>
        </message>
        <message>
            <source>The room temperature must lie between -20 and 60 degrees Celsius.</source>
            <translation>Die Raumtemperatur liegt zwischen -20 und 60 Grad Celsius.</translation>
        </message>
        <message>
            <source>The size of the camera&apos;s pictures changed; film the test again.</source>
            <translation>Die Bildgröße der Kamera hat sich geändert; die Probe wieder filmen.</translation>
        </message>
        <message>
            <source>The smallest step must lie between 0.001 and 100 mL.</source>
            <translation>Der kleinste Schritt liegt zwischen 0,001 und 100 ml.</translation>
        </message>
        <message>
            <source>The stick was lifted more than once in this clip; keep one test to a clip.</source>
            <translation>Der Stab wurde in diesem Clip mehrmals gehoben; eine Probe je Clip.</translation>
        </message>
        <message>
            <source>The stream cannot break before the stick is lifted; set the two moments in order.</source>
            <translation>Der Strahl kann nicht abreißen, bevor der Stab gehoben ist; die beiden Augenblicke ordnen.</translation>
        </message>
        <message>
            <source>The stream had not broken by the end of the clip, or it is too faint to tell; film on until it drips, against a background that differs from the paint.</source>
            <translation>Der Strahl war am Ende noch nicht abgerissen oder zu schwach zu sehen; filmen, bis er tropft, vor einem Hintergrund, der sich abhebt.</translation>
        </message>
        <message>
            <source>The surface changes before the ribbon is laid and rests after it: the clip seems to run backwards, or the paint had not come to rest.</source>
            <translation>Die Fläche ändert sich vor dem Legen und ruht danach: der Clip läuft wohl rückwärts, oder die Farbe ruhte noch nicht.</translation>
        </message>
        <message>
            <source>The surface does not come back to its look from before the ribbon: something in the picture or the light changed meanwhile.</source>
            <translation>Die Fläche sieht nicht wieder aus wie vor dem Band: im Bild oder am Licht hat sich etwas geändert.</translation>
        </message>
        <message>
            <source>The surface was disturbed while it levelled (a hand, a second ribbon, a moved cup or camera): lay one ribbon, take everything out of the picture and wait.</source>
            <translation>Die Fläche wurde beim Verlaufen gestört (Hand, zweites Band, Becher oder Kamera bewegt): ein Band legen, alles aus dem Bild nehmen und warten.</translation>
        </message>
        <message>
            <source>The target of a cup must lie between 0.2 and 5.</source>
            <translation>Das Ziel eines Bechers liegt zwischen 0,2 und 5.</translation>
        </message>
        <message>
            <source>The thinner&apos;s own ratio must lie between 0.00001 and 100.</source>
            <translation>Das eigene Verhältnis des Verdünners liegt zwischen 0,00001 und 100.</translation>
        </message>
        <message>
            <source>The uncertainty of the volume must lie between 0 and 0.5.</source>
            <translation>Die Unsicherheit der Menge muss zwischen 0 und 0,5 liegen.</translation>
        </message>
        <message>
            <source>The volume of a cup must lie between 1 and 20000 mL.</source>
            <translation>Die Menge eines Bechers liegt zwischen 1 und 20000 ml.</translation>
        </message>
        <message>
            <source>The volume of the puddle must lie between 0.1 and 100 mL.</source>
            <translation>Die Menge der Pfütze muss zwischen 0,1 und 100 ml liegen.</translation>
        </message>
        <message>
            <source>There are two puddles in the picture: film one at a time.</source>
            <translation>Zwei Pfützen sind im Bild: einzeln filmen.</translation>
        </message>
        <message>
            <source>There is no brand to learn for; say whose paint it is.</source>
            <translation>Keine Marke genannt; sagen, wessen Farbe es ist.</translation>
        </message>
        <message>
            <source>There is no place for the brand book; name one with --store.</source>
            <translation>Kein Platz für das Markenbuch gefunden; mit --store einen nennen.</translation>
        </message>
        <message>
            <source>There is no such cup on the bench; look at the list of cups.</source>
            <translation>Diesen Becher gibt es auf dem Tisch nicht.</translation>
        </message>
        <message>
            <source>There is no such session; look at the list of sessions.</source>
            <translation>Diese Sitzung gibt es nicht.</translation>
        </message>
        <message>
            <source>There is no such test on the bench; look at the list of tests.</source>
            <translation>Diese Probe gibt es auf dem Tisch nicht.</translation>
        </message>
        <message>
            <source>There is nothing to redo.</source>
            <translation>Nichts zu wiederholen.</translation>
        </message>
        <message>
            <source>There is nothing to undo.</source>
            <translation>Nichts rückgängig zu machen.</translation>
        </message>
        <message>
            <source>This cup has no ratio to the base coat or no volume, so there is nothing to learn yet.</source>
            <translation>Dieser Becher hat noch kein Verhältnis zur Grundfarbe oder keine Menge; noch nichts zu lernen.</translation>
        </message>
        <message>
            <source>This cup has no test after an addition, so there is nothing to learn yet; add, stir and test it first.</source>
            <translation>Nach einer Zugabe wurde noch nicht geprobt; erst zugeben, rühren und proben.</translation>
        </message>
        <message>
            <source>This test is set aside already.</source>
            <translation>Diese Probe liegt schon beiseite.</translation>
        </message>
        <message>
            <source>This test was not set aside.</source>
            <translation>Diese Probe lag nicht beiseite.</translation>
        </message>
        <message>
            <source>Two streams run off the stick; dip it straighter or use a narrower stick, and film again.</source>
            <translation>Zwei Strahlen laufen vom Stab; gerader eintauchen oder einen schmaleren nehmen, wieder filmen.</translation>
        </message>
        <message>
            <source>Two streams seem to run off the stick; dip it straighter or use a narrower stick.</source>
            <translation>Zwei Strahlen scheinen vom Stab zu laufen; gerader eintauchen oder einen schmaleren nehmen.</translation>
        </message>
        <message>
            <source>What is round in the picture does not spread: either it is no puddle or the paint stopped at once. Use more paint, or test this cup with the stream.</source>
            <translation>Das Runde im Bild breitet sich nicht aus: keine Pfütze, oder die Farbe blieb sofort stehen. Mehr Farbe nehmen oder den Strahl.</translation>
        </message>
        <message>
            <source>What mirrors in the paint moved or the light changed while the ribbon levelled: keep lamps, curtains and yourself still and film it again.</source>
            <translation>Während das Band verlief, bewegte sich eine Spiegelung in der Farbe oder das Licht änderte sich: Lampen, Vorhänge und sich selbst stillhalten, wieder filmen.</translation>
        </message>
        <message>
            <source>What mirrors in the paint moved while the ribbon levelled, so the result is rough: keep lamps, curtains and yourself still.</source>
            <translation>Während das Band verlief, bewegte sich eine Spiegelung in der Farbe, das Ergebnis ist daher grob: Lampen, Vorhänge und sich selbst stillhalten.</translation>
        </message>
        <message>
            <source>The note is empty.</source>
            <translation>Die Notiz ist leer.</translation>
        </message>
        <message>
            <source>There is no scale.</source>
            <translation>Es gibt keinen Maßstab.</translation>
        </message>
        <message>
            <source>A film must be 0 to 100 mm thick.</source>
            <translation>Ein Farbfilm ist 0 bis 100 mm dick.</translation>
        </message>
        <message>
            <source>It is not said what was seen; name the fault.</source>
            <translation>Nicht gesagt, was zu sehen war; den Fehler nennen.</translation>
        </message>
        <message>
            <source>Minutes of rest must not be negative.</source>
            <translation>Ruheminuten können nicht negativ sein.</translation>
        </message>
        <message>
            <source>There is no photo; name its file.</source>
            <translation>Kein Foto; die Datei nennen.</translation>
        </message>
        <message>
            <source>What was planned and used must lie between 0.1 mL and 1000 L.</source>
            <translation>Geplantes und Verbrauchtes liegt zwischen 0,1 ml und 1000 l.</translation>
        </message>
        <message>
            <source>%1 % added water in the wettest cup</source>
            <translation>%1 % Wasser im wässrigsten Becher</translation>
        </message>
        <message>
            <source>%1 % added water; limits of %2 to %3 % are commonly quoted, none is proven for pours</source>
            <translation>%1 % Wasser zugegeben; üblich genannt werden Grenzen von %2 bis %3 %, keine ist für Güsse belegt</translation>
        </message>
        <message>
            <source>%1 % against %2 %; how much is too much nobody has published</source>
            <translation>%1 % gegen %2 %; wie viel zu viel ist, hat niemand veröffentlicht</translation>
        </message>
        <message>
            <source>%1 % humidity</source>
            <translation>%1 % Luftfeuchte</translation>
        </message>
        <message>
            <source>%1 minutes of rest</source>
            <translation>%1 Minuten Ruhe</translation>
        </message>
        <message>
            <source>%1 minutes since it was stirred</source>
            <translation>%1 Minuten, seit gerührt wurde</translation>
        </message>
        <message>
            <source>%1 minutes since its last test; an open cup dries by a few per cent of its flow an hour</source>
            <translation>%1 Minuten seit dem letzten Test; ein offener Becher verliert einige Prozent seines Fließens in der Stunde</translation>
        </message>
        <message>
            <source>%1 mm dry</source>
            <translation>%1 mm trocken</translation>
        </message>
        <message>
            <source>%1 mm dry; wall paint is asked to bear about %2 mm without cracks</source>
            <translation>%1 mm trocken; von Wandfarbe werden etwa %2 mm ohne Risse verlangt</translation>
        </message>
        <message>
            <source>%1 mm wet</source>
            <translation>%1 mm nass</translation>
        </message>
        <message>
            <source>%1 times the base coat (%2 to %3), aimed at %4</source>
            <translation>das %1-Fache der Grundfarbe (%2 bis %3), Ziel %4</translation>
        </message>
        <message>
            <source>%1 °C in the room</source>
            <translation>%1 °C im Raum</translation>
        </message>
        <message>
            <source>%1 °C; %2 to %3 are the usual room, below %4 the binder&apos;s lowest film-forming temperature is near</source>
            <translation>%1 °C; üblich sind %2 bis %3, unter %4 ist die tiefste Filmbildetemperatur des Bindemittels nahe</translation>
        </message>
        <message>
            <source>&apos;%1&apos; %2 (%3 to %4), aimed at %5</source>
            <translation>„%1“ %2 (%3 bis %4), Ziel %5</translation>
        </message>
        <message>
            <source>&apos;%1&apos; and &apos;%2&apos; a factor of %3 apart</source>
            <translation>„%1“ und „%2“ um den Faktor %3 verschieden</translation>
        </message>
        <message>
            <source>&apos;%1&apos; flows %2 times as slowly as &apos;%3&apos;, both against what they aim at: where they meet, one may sink or slide.</source>
            <translation>„%1“ fließt %2-mal so langsam wie „%3“, beide an ihrem Ziel gemessen: Wo sie sich treffen, kann einer sinken oder rutschen.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; holds much more added water than &apos;%2&apos;: it dries later and thinner, and parts that dry at another rate are told to pull cracks open.</source>
            <translation>„%1“ enthält viel mehr Wasser als „%2“: Er trocknet später und dünner, und ungleich trocknende Stellen sollen Risse aufziehen.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is an ink and may start thinner than the base coat: it then takes body, not water.</source>
            <translation>„%1“ ist eine Tinte und kann dünner beginnen als die Grundfarbe: Dann braucht sie Körper, kein Wasser.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is more than half a year old: smell it, strain it, and test its flow anew before it counts.</source>
            <translation>„%1“ ist über ein halbes Jahr alt: riechen, sieben und das Fließen neu testen, bevor es zählt.</translation>
        </message>
        <message>
            <source>&apos;%1&apos;: its share must be above %2.</source>
            <translation>„%1“: Der Anteil muss über %2 liegen.</translation>
        </message>
        <message>
            <source>A canvas must be 0 to 500 mm deep.</source>
            <translation>Eine Leinwand muss 0 bis 500 mm tief sein.</translation>
        </message>
        <message>
            <source>A canvas must measure between 10 mm and 10 m each way.</source>
            <translation>Eine Leinwand muss zwischen 10 mm und 10 m messen, je Seite.</translation>
        </message>
        <message>
            <source>A cell test takes 0 to 3600 seconds.</source>
            <translation>Ein Zelltest dauert 0 bis 3600 Sekunden.</translation>
        </message>
        <message>
            <source>A class has 1 to 500 places.</source>
            <translation>Ein Kurs hat 1 bis 500 Plätze.</translation>
        </message>
        <message>
            <source>A heavy colour lay on a light one.</source>
            <translation>Eine schwere Farbe lag auf einer leichten.</translation>
        </message>
        <message>
            <source>A jar in the brand book is damaged; restore a backup of it.</source>
            <translation>Ein Glas im Markenbuch ist beschädigt; eine Sicherung zurückspielen.</translation>
        </message>
        <message>
            <source>A jar must hold 0.1 mL to 1000 L.</source>
            <translation>Ein Glas muss 0,1 mL bis 1000 L enthalten.</translation>
        </message>
        <message>
            <source>A name holds at most 200 bytes.</source>
            <translation>Ein Name hat höchstens 200 Bytes.</translation>
        </message>
        <message>
            <source>A price needs the container&apos;s volume above 0 and an amount of 0 or more.</source>
            <translation>Ein Preis braucht ein Gebinde über 0 und einen Betrag von 0 oder mehr.</translation>
        </message>
        <message>
            <source>Additive to one part of paint must be 0 to 100.</source>
            <translation>Fließmittel auf einen Teil Farbe muss 0 bis 100 sein.</translation>
        </message>
        <message>
            <source>Air was whipped in.</source>
            <translation>Luft wurde eingerührt.</translation>
        </message>
        <message>
            <source>Alcohol and solvents catch fire from a spark at room temperature: no flame, heat gun or switch near them until the room is aired; follow the label.</source>
            <translation>Alkohol und Lösemittel entzünden sich bei Raumtemperatur an einem Funken: keine Flamme, Heißluft oder Schalter in der Nähe, bis gelüftet ist; Etikett befolgen.</translation>
        </message>
        <message>
            <source>Blowing for long makes dizzy: pause, and never draw breath through the straw.</source>
            <translation>Langes Blasen macht schwindlig: Pausen machen und nie durch den Halm einatmen.</translation>
        </message>
        <message>
            <source>Dry air, a fan or the sun dried the skin too fast.</source>
            <translation>Trockene Luft, ein Lüfter oder die Sonne trocknete die Haut zu schnell.</translation>
        </message>
        <message>
            <source>Gloves, good air, no food or drink at the bench. Follow the label and safety data sheet of every product; ask trained people where in doubt.</source>
            <translation>Handschuhe, gute Luft, kein Essen und Trinken am Tisch. Etikett und Sicherheitsdatenblatt jedes Produkts befolgen; im Zweifel Fachleute fragen.</translation>
        </message>
        <message>
            <source>Grease or silicone lay between the coats.</source>
            <translation>Zwischen den Schichten war Fett oder Silikon.</translation>
        </message>
        <message>
            <source>It dried on a slope, so that pools stood deeper.</source>
            <translation>Es trocknete schräg, sodass Pfützen tiefer standen.</translation>
        </message>
        <message>
            <source>It dried on a slope.</source>
            <translation>Es trocknete schräg.</translation>
        </message>
        <message>
            <source>It flows %1 times as fast as aimed at: it may run off with the tilt, slide from what lies under it, or blend to mud.</source>
            <translation>Er fließt %1-mal so schnell wie gewünscht: Er kann beim Kippen ablaufen, von seinem Grund rutschen oder zu Matsch verlaufen.</translation>
        </message>
        <message>
            <source>It flows %1 times as slowly as aimed at: it may stand on its neighbours, sink into them as lumps, or leave a thicker film that dries later.</source>
            <translation>Er fließt %1-mal so langsam wie gewünscht: Er kann auf seinen Nachbarn stehen, klumpig in sie sinken oder einen dickeren Film lassen, der später trocknet.</translation>
        </message>
        <message>
            <source>It has stood since its test and may have thickened: stir it and test it again.</source>
            <translation>Er steht seit dem Test und kann dicker geworden sein: umrühren und neu testen.</translation>
        </message>
        <message>
            <source>It has stood: stir it before it is poured.</source>
            <translation>Er hat gestanden: vor dem Gießen umrühren.</translation>
        </message>
        <message>
            <source>It is %1 °C colder than the base coat was; its flow will change as it comes to the room&apos;s temperature.</source>
            <translation>Er ist %1 °C kälter, als die Grundfarbe war; sein Fließen ändert sich, bis er die Raumtemperatur hat.</translation>
        </message>
        <message>
            <source>It is %1 °C warmer than the base coat was; its flow will change as it comes to the room&apos;s temperature.</source>
            <translation>Er ist %1 °C wärmer, als die Grundfarbe war; sein Fließen ändert sich, bis er die Raumtemperatur hat.</translation>
        </message>
        <message>
            <source>It may match, but its tests are not exact enough to tell: film it once more.</source>
            <translation>Er passt vielleicht, aber seine Tests sind nicht genau genug: noch einmal filmen.</translation>
        </message>
        <message>
            <source>It needs a name.</source>
            <translation>Es braucht einen Namen.</translation>
        </message>
        <message>
            <source>It was poured over a picture that was not dry.</source>
            <translation>Es wurde über ein Bild gegossen, das nicht trocken war.</translation>
        </message>
        <message>
            <source>It was tilted too far or too long.</source>
            <translation>Es wurde zu stark oder zu lange gekippt.</translation>
        </message>
        <message>
            <source>It was tilted too far.</source>
            <translation>Es wurde zu stark gekippt.</translation>
        </message>
        <message>
            <source>Its tests are not exact enough to tell: film it once more.</source>
            <translation>Seine Tests sind nicht genau genug: noch einmal filmen.</translation>
        </message>
        <message>
            <source>Keep cables of lamp and camera off the table and hands dry; mains and water do not go together.</source>
            <translation>Kabel von Lampe und Kamera vom Tisch fernhalten, Hände trocken; Netzstrom und Wasser gehören nicht zusammen.</translation>
        </message>
        <message>
            <source>Layers of unlike flow dried at unlike rates.</source>
            <translation>Ungleich fließende Schichten trockneten ungleich schnell.</translation>
        </message>
        <message>
            <source>Loosen it with a little medium first, press out the lumps, then add the rest.</source>
            <translation>Erst mit wenig Medium lösen, Klumpen ausdrücken, dann den Rest zugeben.</translation>
        </message>
        <message>
            <source>Mark paint cups and bottles, water bottles too; a container that held paint is never used for food again. Keep children and animals away.</source>
            <translation>Farbbecher und Flaschen kennzeichnen, auch Wasserflaschen; ein Gefäß, in dem Farbe war, dient nie wieder für Essen. Kinder und Tiere fernhalten.</translation>
        </message>
        <message>
            <source>May need no water at all.</source>
            <translation>Braucht vielleicht gar kein Wasser.</translation>
        </message>
        <message>
            <source>More water than any advice allows: the film may be weak and hold badly.</source>
            <translation>Mehr Wasser, als irgendein Rat erlaubt: Der Film kann schwach sein und schlecht haften.</translation>
        </message>
        <message>
            <source>Much water: the binder is spread thin, and the film may turn out chalky or weak.</source>
            <translation>Viel Wasser: Das Bindemittel ist dünn verteilt, der Film kann kreidig oder schwach werden.</translation>
        </message>
        <message>
            <source>Neighbours flowed unlike.</source>
            <translation>Nachbarn flossen ungleich.</translation>
        </message>
        <message>
            <source>Nobody has measured how it flows.</source>
            <translation>Niemand hat gemessen, wie er fließt.</translation>
        </message>
        <message>
            <source>Often too thin already: mix it into a thicker paint instead.</source>
            <translation>Oft schon zu dünn: lieber in eine dickere Farbe mischen.</translation>
        </message>
        <message>
            <source>On small canvases more runs off: up to %1 L on a square metre is told for them (common practice).</source>
            <translation>Auf kleinen Leinwänden läuft mehr ab: Für sie werden bis zu %1 L je Quadratmeter genannt (übliche Praxis).</translation>
        </message>
        <message>
            <source>Opposite colours lay side by side.</source>
            <translation>Gegenfarben lagen nebeneinander.</translation>
        </message>
        <message>
            <source>Paint and rinse water do not go into drains or ground: let them settle, use the clear part again, dry the rest. Local rules decide; colours with heavy metals are hazardous waste.</source>
            <translation>Farbe und Spülwasser gehören nicht in Abfluss oder Boden: absetzen lassen, den klaren Teil wiederverwenden, den Rest trocknen. Örtliche Regeln entscheiden; Farben mit Schwermetallen sind Sondermüll.</translation>
        </message>
        <message>
            <source>Powder: raise no dust and wet it at once; some pigments harm when breathed. A dust mask is no respirator: what is needed stands on the label or is said by a professional.</source>
            <translation>Pulver: nicht stauben und gleich anfeuchten; manche Pigmente schaden beim Einatmen. Eine Staubmaske ist kein Atemschutz: Was nötig ist, steht auf dem Etikett oder sagt eine Fachperson.</translation>
        </message>
        <message>
            <source>Say how it turned out: your own match band is learned from it.</source>
            <translation>Sagen, wie es geworden ist: Daraus wird gelernt, wie genau deine Bilder es brauchen.</translation>
        </message>
        <message>
            <source>Something was added since its last test, so its flow is not known.</source>
            <translation>Seit dem letzten Test wurde etwas zugegeben; wie er fließt, ist nicht bekannt.</translation>
        </message>
        <message>
            <source>Stir a little of the medium in first, then the rest.</source>
            <translation>Erst ein wenig vom Medium einrühren, dann den Rest.</translation>
        </message>
        <message>
            <source>Straining was skipped.</source>
            <translation>Es wurde nicht gesiebt.</translation>
        </message>
        <message>
            <source>Take a photo a month on: late cracks only show then.</source>
            <translation>Nach einem Monat fotografieren: Späte Risse zeigen sich erst dann.</translation>
        </message>
        <message>
            <source>The activator was too thick.</source>
            <translation>Der Aktivator war zu dick.</translation>
        </message>
        <message>
            <source>The activator was too thin.</source>
            <translation>Der Aktivator war zu dünn.</translation>
        </message>
        <message>
            <source>The amounts follow your earlier pours: %1 pours of this kind took %2 times what was planned (%3 to %4).</source>
            <translation>Die Mengen folgen deinen früheren Güssen: %1 dieser Art brauchten das %2-Fache des Geplanten (%3 bis %4).</translation>
        </message>
        <message>
            <source>The amounts follow your journal: %1 pours of this kind took %2 times what was planned (%3 to %4).</source>
            <translation>Die Mengen folgen deinem Tagebuch: %1 Güsse dieser Art brauchten das %2-Fache des Geplanten (%3 bis %4).</translation>
        </message>
        <message>
            <source>The colour was thicker than its ground.</source>
            <translation>Die Farbe war dicker als ihr Grund.</translation>
        </message>
        <message>
            <source>The colour was thinner than its ground.</source>
            <translation>Die Farbe war dünner als ihr Grund.</translation>
        </message>
        <message>
            <source>The colours were too thin.</source>
            <translation>Die Farben waren zu dünn.</translation>
        </message>
        <message>
            <source>The dry film was bent.</source>
            <translation>Der trockene Film wurde gebogen.</translation>
        </message>
        <message>
            <source>The factor of the plan must lie between 0.05 and 20.</source>
            <translation>Der Faktor des Plans muss zwischen 0,05 und 20 liegen.</translation>
        </message>
        <message>
            <source>The film is thick: it skins over while it is wet below, which is the first cause named for crazing.</source>
            <translation>Der Film ist dick: Er bildet eine Haut, während er darunter nass ist; das ist die erste Ursache, die für gerissene Haut genannt wird.</translation>
        </message>
        <message>
            <source>The film was thick.</source>
            <translation>Der Film war dick.</translation>
        </message>
        <message>
            <source>The lower coat was chalky.</source>
            <translation>Die untere Schicht war kreidig.</translation>
        </message>
        <message>
            <source>The mixes rested too short for the bubbles to rise.</source>
            <translation>Die Mischungen ruhten zu kurz, als dass die Blasen aufsteigen konnten.</translation>
        </message>
        <message>
            <source>The paint was too thick to level.</source>
            <translation>Die Farbe war zu dick, um zu verlaufen.</translation>
        </message>
        <message>
            <source>The paint was too thin and ran off.</source>
            <translation>Die Farbe war zu dünn und lief ab.</translation>
        </message>
        <message>
            <source>The paints under it do not react, though the cup did.</source>
            <translation>Die Farben darunter reagieren nicht, obwohl der Becher es tat.</translation>
        </message>
        <message>
            <source>The reserve must be 0 to 100 %.</source>
            <translation>Die Reserve muss 0 bis 100 % sein.</translation>
        </message>
        <message>
            <source>The room is cold: it dries slowly and skins over wet paint.</source>
            <translation>Der Raum ist kalt: Es trocknet langsam und bildet eine Haut über nasser Farbe.</translation>
        </message>
        <message>
            <source>The room is so cold that the film may not form.</source>
            <translation>Der Raum ist so kalt, dass sich der Film vielleicht nicht bildet.</translation>
        </message>
        <message>
            <source>The room was cold.</source>
            <translation>Der Raum war kalt.</translation>
        </message>
        <message>
            <source>The technique pours nothing.</source>
            <translation>Diese Technik gießt nichts.</translation>
        </message>
        <message>
            <source>The waste must be 0 to 200 %.</source>
            <translation>Der Verlust muss 0 bis 200 % sein.</translation>
        </message>
        <message>
            <source>The water must be 0 to 50 %.</source>
            <translation>Das Wasser muss 0 bis 50 % sein.</translation>
        </message>
        <message>
            <source>There is no canvas; give its size.</source>
            <translation>Es gibt keine Leinwand; ihre Größe angeben.</translation>
        </message>
        <message>
            <source>There is no cup to check; put the cups on the bench first.</source>
            <translation>Es gibt keinen Becher zu prüfen; erst die Becher auf den Tisch stellen.</translation>
        </message>
        <message>
            <source>There is no label to print.</source>
            <translation>Es gibt kein Etikett zu drucken.</translation>
        </message>
        <message>
            <source>There is no such jar on the shelf.</source>
            <translation>Dieses Glas steht nicht im Regal.</translation>
        </message>
        <message>
            <source>There is not so much in this jar.</source>
            <translation>So viel ist nicht in diesem Glas.</translation>
        </message>
        <message>
            <source>There must be 0 to 100 tests of a cup.</source>
            <translation>Es müssen 0 bis 100 Tests je Becher sein.</translation>
        </message>
        <message>
            <source>There must be 1 to 1000 canvases of a kind.</source>
            <translation>Es müssen 1 bis 1000 gleiche Leinwände sein.</translation>
        </message>
        <message>
            <source>There was oil or grease on the ground.</source>
            <translation>Auf dem Grund war Öl oder Fett.</translation>
        </message>
        <message>
            <source>There was too little paint.</source>
            <translation>Es war zu wenig Farbe.</translation>
        </message>
        <message>
            <source>They were mixed too much on the way to the canvas.</source>
            <translation>Sie wurden auf dem Weg zur Leinwand zu sehr vermischt.</translation>
        </message>
        <message>
            <source>Thinner parts dried at another rate and pulled the thicker ones open.</source>
            <translation>Dünnere Stellen trockneten anders und zogen die dickeren auf.</translation>
        </message>
        <message>
            <source>Too few pours to tell how much more or less than planned yours take; three or more are needed.</source>
            <translation>Zu wenige Güsse, um zu sagen, wie viel mehr oder weniger als geplant du brauchst; drei oder mehr sind nötig.</translation>
        </message>
        <message>
            <source>Too much water spread the binder thin.</source>
            <translation>Zu viel Wasser verteilte das Bindemittel zu dünn.</translation>
        </message>
        <message>
            <source>Torch or heat gun: nothing that burns or gives off vapour nearby, no loose sleeves or hair, not over plastic cups, short passes, something to put out a fire at hand.</source>
            <translation>Brenner oder Heißluft: nichts Brennbares oder Dampfendes in der Nähe, keine losen Ärmel oder Haare, nicht über Plastikbechern, kurze Züge, etwas zum Löschen bereit.</translation>
        </message>
        <message>
            <source>Touch dry about now; leave it level and covered.</source>
            <translation>Etwa jetzt griffest; waagrecht und abgedeckt liegen lassen.</translation>
        </message>
        <message>
            <source>Two people carry a large wet canvas; wet paint on the floor is slippery.</source>
            <translation>Eine große nasse Leinwand tragen zwei; nasse Farbe am Boden ist rutschig.</translation>
        </message>
        <message>
            <source>Uncured resin and hardener can make the skin allergic for life; thin gloves protect little. Follow the data sheet and ask for the gloves it names.</source>
            <translation>Unausgehärtetes Harz und Härter können die Haut lebenslang allergisch machen; dünne Handschuhe schützen wenig. Datenblatt befolgen und die genannten Handschuhe verlangen.</translation>
        </message>
        <message>
            <source>Varnish or resin not before this day, and only if it feels hard and no longer cool; the varnish&apos;s own sheet decides.</source>
            <translation>Lack oder Harz nicht vor diesem Tag, und nur wenn es hart und nicht mehr kühl ist; das Blatt des Lacks entscheidet.</translation>
        </message>
        <message>
            <source>Very much water: a chalky, weak film and poor hold are warned of.</source>
            <translation>Sehr viel Wasser: Vor kreidigem, schwachem Film und schlechter Haftung wird gewarnt.</translation>
        </message>
        <message>
            <source>Water is not counted: what you thin with comes on top.</source>
            <translation>Wasser ist nicht mitgezählt: Womit verdünnt wird, kommt dazu.</translation>
        </message>
        <message>
            <source>Wet it to a paste first and raise no dust; it settles, so stir before every test, and its sparkle can mislead the camera.</source>
            <translation>Erst zu einer Paste anfeuchten und nicht stauben; es setzt sich ab, also vor jedem Test rühren, und sein Glitzern kann die Kamera täuschen.</translation>
        </message>
        <message>
            <source>added water of every cup</source>
            <translation>zugegebenes Wasser jedes Bechers</translation>
        </message>
        <message>
            <source>bare</source>
            <translation>Leinwand scheint durch</translation>
        </message>
        <message>
            <source>base of the medium</source>
            <translation>Basis des Mediums</translation>
        </message>
        <message>
            <source>bloom</source>
            <translation>Blüte</translation>
        </message>
        <message>
            <source>blown</source>
            <translation>geblasen</translation>
        </message>
        <message>
            <source>blown open on a thick pillow of base, then spun</source>
            <translation>auf dickem Grundpolster aufgeblasen, dann gedreht</translation>
        </message>
        <message>
            <source>chalky</source>
            <translation>kreidig</translation>
        </message>
        <message>
            <source>colours laid on a wet base and wiped over with an activator</source>
            <translation>Farben auf nassem Grund, mit einem Aktivator überwischt</translation>
        </message>
        <message>
            <source>cracks</source>
            <translation>Risse</translation>
        </message>
        <message>
            <source>crazing</source>
            <translation>gerissene Haut</translation>
        </message>
        <message>
            <source>flow additive</source>
            <translation>Fließmittel</translation>
        </message>
        <message>
            <source>how long ago every cup was tested</source>
            <translation>wie lange der Test jedes Bechers her ist</translation>
        </message>
        <message>
            <source>last test: %1 times the base coat (%2 to %3), aimed at %4</source>
            <translation>letzter Test: das %1-Fache der Grundfarbe (%2 bis %3), Ziel %4</translation>
        </message>
        <message>
            <source>lost cells</source>
            <translation>verlorene Zellen</translation>
        </message>
        <message>
            <source>measured ratios; that this happens from %1 to %2 on is told in words, nobody has published numbers</source>
            <translation>gemessene Verhältnisse; dass es ab %1 bis %2 geschieht, wird erzählt, Zahlen hat niemand veröffentlicht</translation>
        </message>
        <message>
            <source>muddy</source>
            <translation>vermatscht</translation>
        </message>
        <message>
            <source>no test of this cup</source>
            <translation>kein Test dieses Bechers</translation>
        </message>
        <message>
            <source>open</source>
            <translation>offen</translation>
        </message>
        <message>
            <source>open, dirty or flip pour without a wet base</source>
            <translation>offener, gemischter oder gestürzter Guss ohne nassen Grund</translation>
        </message>
        <message>
            <source>paints change by %1 to %2 % a degree (the upper end after ASTM D4212)</source>
            <translation>Farben ändern sich um %1 bis %2 % je Grad (das obere Ende nach ASTM D4212)</translation>
        </message>
        <message>
            <source>peeling</source>
            <translation>löst sich ab</translation>
        </message>
        <message>
            <source>pits</source>
            <translation>Krater</translation>
        </message>
        <message>
            <source>ring</source>
            <translation>Ring</translation>
        </message>
        <message>
            <source>ring or flip pour over a wet base</source>
            <translation>Ring- oder Sturzguss auf nassem Grund</translation>
        </message>
        <message>
            <source>sag</source>
            <translation>Läufer über die Kante</translation>
        </message>
        <message>
            <source>slid</source>
            <translation>abgerutscht</translation>
        </message>
        <message>
            <source>sunk</source>
            <translation>eingesunken</translation>
        </message>
        <message>
            <source>swipe</source>
            <translation>Wischen</translation>
        </message>
        <message>
            <source>temperature of every cup</source>
            <translation>Temperatur jedes Bechers</translation>
        </message>
        <message>
            <source>temperature of the room</source>
            <translation>Temperatur des Raums</translation>
        </message>
        <message>
            <source>the mixes were not strained</source>
            <translation>die Mischungen waren nicht gesiebt</translation>
        </message>
        <message>
            <source>the mixes were strained</source>
            <translation>die Mischungen waren gesiebt</translation>
        </message>
        <message>
            <source>thickness of the film</source>
            <translation>Dicke des Films</translation>
        </message>
        <message>
            <source>thin colours blown out over a wet base</source>
            <translation>dünne Farben, über nassen Grund geblasen</translation>
        </message>
        <message>
            <source>varnish of the medium</source>
            <translation>Lack des Mediums</translation>
        </message>
        <message>
            <source>A cup&apos;s inner diameters and height must lie between 5 and 2000 mm.</source>
            <translation>Innendurchmesser und Höhe eines Bechers müssen zwischen 5 und 2000 mm liegen.</translation>
        </message>
        <message>
            <source>the room is colder than 18 °C</source>
            <translation>der Raum ist kälter als 18 °C</translation>
        </message>
        <message>
            <source>below 10 °C the film may not form at all: bring it into the warm</source>
            <translation>unter 10 °C bildet sich der Film vielleicht gar nicht: ins Warme bringen</translation>
        </message>
        <message>
            <source>the air is damper than 60 %</source>
            <translation>die Luft ist feuchter als 60 %</translation>
        </message>
        <message>
            <source>the film is thick</source>
            <translation>der Film ist dick</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: outside all commonly quoted advice (%2 %); the binder is spread too thin.</source>
            <translation>Zugesetztes Wasser macht %1 % des Bechers aus: außerhalb aller üblichen Ratschläge (%2 %); das Bindemittel ist zu dünn verteilt.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: more than commonly quoted advice allows (%2 %); go on with medium.</source>
            <translation>Zugesetztes Wasser macht %1 % des Bechers aus: mehr als übliche Ratschläge zulassen (%2 %); mit Medium weitermachen.</translation>
        </message>
        <message>
            <source>Added water is %1 % of the cup: above the %2 % that commonly quoted advice calls safe for the film.</source>
            <translation>Zugesetztes Wasser macht %1 % des Bechers aus: über den %2 %, die übliche Ratschläge für den Film sicher nennen.</translation>
        </message>
        <message>
            <source>Additive is %1 % of the cup: see what its label allows.</source>
            <translation>Der Zusatz macht %1 % des Bechers aus: nachsehen, was sein Etikett zulässt.</translation>
        </message>
        <message>
            <source>This cup holds %1 points more added liquid than another cup; they will dry and shrink differently.</source>
            <translation>Dieser Becher enthält %1 Prozentpunkte mehr zugesetzte Flüssigkeit als ein anderer; sie trocknen und schrumpfen verschieden.</translation>
        </message>
        <message>
            <source>This cup holds %1 points less added liquid than another cup; they will dry and shrink differently.</source>
            <translation>Dieser Becher enthält %1 Prozentpunkte weniger zugesetzte Flüssigkeit als ein anderer; sie trocknen und schrumpfen verschieden.</translation>
        </message>
        <message>
            <source>The room is %1 degrees C warmer than when the base coat was tested; test the base coat again.</source>
            <translation>Der Raum ist %1 °C wärmer als beim Test der Grundierung; die Grundierung noch einmal testen.</translation>
        </message>
        <message>
            <source>The room is %1 degrees C colder than when the base coat was tested; test the base coat again.</source>
            <translation>Der Raum ist %1 °C kälter als beim Test der Grundierung; die Grundierung noch einmal testen.</translation>
        </message>
        <message>
            <source>The base coat was tested %1 hours ago; test it again.</source>
            <translation>Die Grundierung wurde vor %1 Stunden getestet; noch einmal testen.</translation>
        </message>
        <message>
            <source>The cup stood open for %1 minutes and has thickened; cover it and test again before adding.</source>
            <translation>Der Becher stand %1 Minuten offen und ist dicker geworden; abdecken und vor der nächsten Zugabe noch einmal testen.</translation>
        </message>
        <message>
            <source>The test came %1 s after stirring; stir, wait %2 s and test, the same for every cup.</source>
            <translation>Der Test kam %1 s nach dem Rühren; rühren, %2 s warten und testen, bei jedem Becher gleich.</translation>
        </message>
        <message>
            <source>The repair takes %1 mL of unthinned paint, more than is kept back; mix more of the same first.</source>
            <translation>Die Rettung braucht %1 mL unverdünnte Farbe, mehr als zurückbehalten ist; erst mehr von derselben mischen.</translation>
        </message>
        <message>
            <source>Another %1 mL of water would pass %2 % of the cup; thin on with medium.</source>
            <translation>Weitere %1 mL Wasser würden %2 % des Bechers überschreiten; mit Medium weiter verdünnen.</translation>
        </message>
        <message>
            <source>Of medium, stir in %1 mL and film it again.</source>
            <translation>Vom Medium %1 mL einrühren und noch einmal filmen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; stop here, or film it again to know it better.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; hier aufhören, oder noch einmal filmen, um es genauer zu wissen.</translation>
        </message>
        <message>
            <source>%1 pictures were damaged and partly filled in by the decoder.</source>
            <translation>%1 Bilder waren beschädigt und wurden beim Lesen teilweise ergänzt.</translation>
        </message>
        <message>
            <source>%1 pictures were lost: the file is damaged.</source>
            <translation>%1 Bilder fehlen: die Datei ist beschädigt.</translation>
        </message>
        <message>
            <source>%1 pictures were left out: their times do not rise or jump by minutes.</source>
            <translation>%1 Bilder wurden ausgelassen: ihre Zeiten steigen nicht oder springen um Minuten.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with a teaspoon instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit einem Teelöffel abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with a quarter teaspoon instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit einem Viertelteelöffel abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with %2 mL marks of a pipette instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit den %2-mL-Strichen einer Pipette abmessen.</translation>
        </message>
        <message>
            <source>A step of %1 mL is too much at once for this cup; measure it out with drops instead.</source>
            <translation>Ein Schritt von %1 mL ist für diesen Becher auf einmal zu viel; stattdessen mit Tropfen abmessen.</translation>
        </message>
        <message>
            <source>This water is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Dieses Wasser ist kaum dünner als das Ziel und kann den Becher nicht dorthin bringen; etwas Dünneres nehmen.</translation>
        </message>
        <message>
            <source>This additive is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Dieser Zusatz ist kaum dünner als das Ziel und kann den Becher nicht dorthin bringen; Wasser oder einen dünneren nehmen.</translation>
        </message>
        <message>
            <source>This medium is hardly thinner than the target and cannot bring the cup there; use water or a thinner one.</source>
            <translation>Dieses Medium ist kaum dünner als das Ziel und kann den Becher nicht dorthin bringen; Wasser oder ein dünneres nehmen.</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>Aktivator</translation>
        </message>
        <message>
            <source>against</source>
            <translation>spricht dagegen</translation>
        </message>
        <message>
            <source>base coat</source>
            <translation>Grundfarbe</translation>
        </message>
        <message>
            <source>blob</source>
            <translation>zu dick, ein Klecks</translation>
        </message>
        <message>
            <source>cells</source>
            <translation>Zellen</translation>
        </message>
        <message>
            <source>colour</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>drowned</source>
            <translation>zu dünn, ertrunken</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>trocken</translation>
        </message>
        <message>
            <source>fair</source>
            <translation>mittel</translation>
        </message>
        <message>
            <source>fits</source>
            <translation>passt</translation>
        </message>
        <message>
            <source>good</source>
            <translation>gut</translation>
        </message>
        <message>
            <source>lacing</source>
            <translation>Spitzenmuster</translation>
        </message>
        <message>
            <source>later</source>
            <translation>später</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>Medium</translation>
        </message>
        <message>
            <source>none</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>poor</source>
            <translation>schlecht</translation>
        </message>
        <message>
            <source>wet</source>
            <translation>nass</translation>
        </message>
        <message>
            <source>Paint: follow its label. No food container.</source>
            <translation>Farbe: ihr Etikett beachten. Kein Gefäß für Essen.</translation>
        </message>
        <message>
            <source>What was counted must be more than nothing.</source>
            <translation>Was gezählt wurde, muss mehr als nichts sein.</translation>
        </message>
        <message>
            <source>The picture must be in colour.</source>
            <translation>Das Bild muss farbig sein.</translation>
        </message>
        <message>
            <source>The scale must lie between 0.0001 and 10 mm per pixel.</source>
            <translation>Der Maßstab muss zwischen 0,0001 und 10 mm je Pixel liegen.</translation>
        </message>
        <message>
            <source>The scale&apos;s uncertainty must lie between 0 and 0.5.</source>
            <translation>Die Unsicherheit des Maßstabs muss zwischen 0 und 0,5 liegen.</translation>
        </message>
        <message>
            <source>The cells do not stand out from what surrounds them; take the photo in even light and without glare.</source>
            <translation>Die Zellen heben sich nicht ab; das Foto bei gleichmäßigem Licht und ohne Spiegelung machen.</translation>
        </message>
        <message>
            <source>The picture could not be worked on; there may not be enough memory.</source>
            <translation>Das Bild ließ sich nicht bearbeiten; vielleicht reicht der Speicher nicht.</translation>
        </message>
        <message>
            <source>The pages could not be drawn; there may not be enough memory.</source>
            <translation>Die Seiten ließen sich nicht zeichnen; vielleicht reicht der Speicher nicht.</translation>
        </message>
        <message>
            <source>Only %1 closed cells were found, %2 are needed; show a larger piece, or come closer if they are tiny.</source>
            <translation>Nur %1 geschlossene Zellen wurden gefunden, %2 sind nötig; ein größeres Stück zeigen oder näher herangehen, wenn sie winzig sind.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no picture that can be read; save it as JPEG or PNG.</source>
            <translation>„%1“ ist kein lesbares Bild; als JPEG oder PNG speichern.</translation>
        </message>
        <message>
            <source>This label is of pouring medium, which is no cup on the bench.</source>
            <translation>Dieses Etikett gehört zu Gießmedium; das ist kein Becher auf dem Tisch.</translation>
        </message>
        <message>
            <source>There is no label to read.</source>
            <translation>Es ist kein Etikett zu lesen.</translation>
        </message>
        <message>
            <source>A plan holds at most 100 colours.</source>
            <translation>Ein Plan fasst höchstens 100 Farben.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is a folder; name a file in it.</source>
            <translation>&apos;%1&apos; ist ein Ordner; eine Datei darin angeben.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; cannot be read; check its name and rights.</source>
            <translation>&apos;%1&apos; lässt sich nicht lesen; Namen und Rechte prüfen.</translation>
        </message>
        <message>
            <source>The label&apos;s role is not known to this program.</source>
            <translation>Was das Etikett bezeichnet, kennt dieses Programm nicht.</translation>
        </message>
        <message>
            <source>The label tells of more water than there is in the cup.</source>
            <translation>Das Etikett nennt mehr Wasser, als im Becher ist.</translation>
        </message>
        <message>
            <source>A ratio must be above 0.</source>
            <translation>Ein Verhältnis muss über 0 liegen.</translation>
        </message>
        <message>
            <source>This medium flows faster than the base coat. A thin paint mixed with it may start too thin: add body, not water.</source>
            <translation>Dieses Medium fließt schneller als die Grundfarbe. Eine dünne Farbe kann damit gleich zu dünn sein: Körper zugeben, nicht Wasser.</translation>
        </message>
        <message>
            <source>4:1 and 3:1 are both in use and it matters little which; what matters is to keep to one. Parts by volume and by weight are not the same.</source>
            <translation>4:1 und 3:1 sind beide gebräuchlich, und es kommt wenig darauf an, welches; wichtig ist, bei einem zu bleiben. Teile nach Volumen und nach Gewicht sind nicht dasselbe.</translation>
        </message>
        <message>
            <source>No code of a label can be read on this photo; take it again from closer, straight on and sharp, with the whole code and its white rim in the picture.</source>
            <translation>Auf diesem Foto ist kein Code eines Etiketts zu lesen; noch einmal von näher aufnehmen, gerade von vorn und scharf, mit dem ganzen Code und seinem weißen Rand im Bild.</translation>
        </message>
        <message>
            <source>The code on this photo is not that of a label of this program; photograph the label that was printed for the jar.</source>
            <translation>Der Code auf diesem Foto gehört zu keinem Etikett dieses Programms; das Etikett fotografieren, das für das Glas gedruckt wurde.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; cannot be written (%2); check the folder and the room on the disk.</source>
            <translation>&apos;%1&apos; lässt sich nicht schreiben (%2); den Ordner und den Platz auf dem Datenträger prüfen.</translation>
        </message>
        <message>
            <source>Water that left-overs hold already is not counted; a cup&apos;s share of water is what is added to it from now on.</source>
            <translation>Wasser, das in Resten schon steckt, ist nicht mitgezählt; der Wasseranteil eines Bechers ist das, was von jetzt an dazukommt.</translation>
        </message>
        <message>
            <source>The picture of &apos;%1&apos; that was counted cannot be kept; count on a photo instead.</source>
            <translation>Das gezählte Bild aus &apos;%1&apos; lässt sich nicht aufheben; stattdessen auf einem Foto zählen.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::BenchBoard</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 bis %3)</translation>
        </message>
        <message>
            <source>%1 water</source>
            <translation>%1 Wasser</translation>
        </message>
        <message>
            <source>stirred just now</source>
            <translation>eben gerührt</translation>
        </message>
        <message numerus="yes">
            <source>stirred %n min ago</source>
            <translation>
                <numerusform>vor %n min gerührt</numerusform>
                <numerusform>vor %n min gerührt</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>stirred %n h ago</source>
            <translation>
                <numerusform>vor %n h gerührt</numerusform>
                <numerusform>vor %n h gerührt</numerusform>
            </translation>
        </message>
        <message>
            <source>re-check due</source>
            <translation>neu prüfen</translation>
        </message>
        <message>
            <source>Film</source>
            <translation>Filmen</translation>
        </message>
        <message>
            <source>To the base coat</source>
            <translation>Zur Grundfarbe</translation>
        </message>
        <message>
            <source>Added</source>
            <translation>Zugegeben</translation>
        </message>
        <message>
            <source>Put back</source>
            <translation>Zurückgegeben</translation>
        </message>
        <message>
            <source>Change the cup</source>
            <translation>Becher ändern</translation>
        </message>
        <message>
            <source>Remember this paint</source>
            <translation>Diese Farbe merken</translation>
        </message>
        <message>
            <source>role</source>
            <translation>Rolle</translation>
        </message>
        <message>
            <source>in the cup now</source>
            <translation>jetzt im Becher</translation>
        </message>
        <message>
            <source>added so far</source>
            <translation>bisher zugegeben</translation>
        </message>
        <message>
            <source>unthinned kept back</source>
            <translation>unverdünnt aufgehoben</translation>
        </message>
        <message>
            <source>wanted</source>
            <translation>gewünscht</translation>
        </message>
        <message>
            <source>should then be</source>
            <translation>sollte dann sein</translation>
        </message>
        <message>
            <source>chance of too thin</source>
            <translation>Gefahr zu dünn</translation>
        </message>
        <message>
            <source>films</source>
            <translation>Filme</translation>
        </message>
        <message>
            <source>Give the cup a name.</source>
            <translation>Dem Becher einen Namen geben.</translation>
        </message>
        <message>
            <source>An amount is a number, such as %1.</source>
            <translation>Eine Menge ist eine Zahl, etwa %1.</translation>
        </message>
        <message>
            <source>What is wanted is a number, 1 for the base coat&apos;s own flow.</source>
            <translation>Gewünscht ist eine Zahl, 1 für den Fluss der Grundfarbe.</translation>
        </message>
        <message>
            <source>%1: %2 added.</source>
            <translation>%1: %2 zugegeben.</translation>
        </message>
        <message>
            <source>say later</source>
            <translation>später sagen</translation>
        </message>
        <message>
            <source>This is not the whole code of a label. Read it again; a hand scanner must be set to the keyboard that is in use.</source>
            <translation>Das ist nicht der ganze Code eines Etiketts. Noch einmal lesen; ein Handscanner muss auf die benutzte Tastatur eingestellt sein.</translation>
        </message>
        <message>
            <source>Mixed on %1.</source>
            <translation>Gemischt am %1.</translation>
        </message>
        <message>
            <source>%1 of water is in it besides; it is written down as added.</source>
            <translation>Dazu kommen %1 Wasser, die schon darin sind; sie werden als zugegeben vermerkt.</translation>
        </message>
        <message>
            <source>activator</source>
            <translation>Aktivator</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Camera</name>
        <message>
            <source>the camera&apos;s own choice</source>
            <translation>wie die Kamera will</translation>
        </message>
        <message>
            <source>%1 × %2, %3 a second</source>
            <translation>%1 × %2, %3 je Sekunde</translation>
        </message>
        <message>
            <source>A camera is there, but this user may not open it; allow access to the camera and come back.</source>
            <translation>Eine Kamera ist da, darf aber nicht geöffnet werden; den Zugriff erlauben und wiederkommen.</translation>
        </message>
        <message>
            <source>No camera found; plug one in, or drop clips from a phone.</source>
            <translation>Keine Kamera gefunden; eine anstecken oder Clips vom Telefon ablegen.</translation>
        </message>
        <message>
            <source>The camera sends no pictures any more; check its cable. Filming goes on as soon as it is back.</source>
            <translation>Die Kamera schickt keine Bilder mehr; Kabel prüfen. Es geht weiter, sobald sie wieder da ist.</translation>
        </message>
        <message>
            <source>Waiting for the camera&apos;s first picture …</source>
            <translation>Warten auf das erste Bild der Kamera …</translation>
        </message>
        <message>
            <source>%1 pictures a second, none lost</source>
            <translation>%1 Bilder je Sekunde, keines verloren</translation>
        </message>
        <message numerus="yes">
            <source>%1 pictures a second, %n lost</source>
            <translation>
                <numerusform>%1 Bilder je Sekunde, %n verloren</numerusform>
                <numerusform>%1 Bilder je Sekunde, %n verloren</numerusform>
            </translation>
        </message>
        <message>
            <source> – more light makes it faster</source>
            <translation> – mehr Licht macht sie schneller</translation>
        </message>
        <message>
            <source>The camera sends no picture; close other programs that use it, or choose another one.</source>
            <translation>Die Kamera sendet kein Bild; andere Programme schließen, die sie benutzen, oder eine andere wählen.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::CameraWorker</name>
        <message>
            <source>This camera&apos;s pictures cannot be read; choose another size in the settings.</source>
            <translation>Die Bilder dieser Kamera sind nicht lesbar; in den Einstellungen eine andere Größe wählen.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::CellRoom</name>
        <message>
            <source>&apos;%1&apos; is no length above 0.</source>
            <translation>„%1“ ist keine Länge über 0.</translation>
        </message>
        <message>
            <source>The two ends lie too close together for a scale.</source>
            <translation>Die beiden Enden liegen für einen Maßstab zu nah beieinander.</translation>
        </message>
        <message>
            <source>Counting …</source>
            <translation>Wird gezählt …</translation>
        </message>
        <message numerus="yes">
            <source>%n whole cell(s) on %1 cm²</source>
            <translation>
                <numerusform>%n ganze Zelle auf %1 cm²</numerusform>
                <numerusform>%n ganze Zellen auf %1 cm²</numerusform>
            </translation>
        </message>
        <message>
            <source>Eight of ten lie between %1 and %2 mm.</source>
            <translation>Acht von zehn liegen zwischen %1 und %2 mm.</translation>
        </message>
        <message>
            <source>Scale: %1 mm to a pixel, good to %2.</source>
            <translation>Maßstab: %1 mm je Pixel, auf %2 genau.</translation>
        </message>
        <message>
            <source>Point at both ends of something of known length, or write the size of a pixel.</source>
            <translation>Auf beide Enden von etwas bekannter Länge zeigen oder die Größe eines Pixels schreiben.</translation>
        </message>
        <message>
            <source>The second has more cells:</source>
            <translation>Das zweite hat mehr Zellen:</translation>
        </message>
        <message>
            <source>The second has fewer cells:</source>
            <translation>Das zweite hat weniger Zellen:</translation>
        </message>
        <message>
            <source>They are alike:</source>
            <translation>Sie sind gleich:</translation>
        </message>
        <message>
            <source>These photos cannot tell which has more:</source>
            <translation>Diese Fotos sagen nicht, welches mehr hat:</translation>
        </message>
        <message>
            <source>%1 times as many (%2 to %3), %4 times as large (%5 to %6).</source>
            <translation>%1-mal so viele (%2 bis %3), %4-mal so groß (%5 bis %6).</translation>
        </message>
        <message>
            <source>A part is four whole numbers: x, y, width, height.</source>
            <translation>Ein Ausschnitt sind vier ganze Zahlen: x, y, Breite, Höhe.</translation>
        </message>
        <message>
            <source>This part does not lie on the photo.</source>
            <translation>Dieser Ausschnitt liegt nicht auf dem Foto.</translation>
        </message>
        <message>
            <source>Point at two opposite corners of the part.</source>
            <translation>Auf zwei gegenüberliegende Ecken des Ausschnitts zeigen.</translation>
        </message>
        <message>
            <source>Reading …</source>
            <translation>Wird gelesen …</translation>
        </message>
        <message>
            <source>The picture at %1 s of the clip.</source>
            <translation>Das Bild bei %1 s des Clips.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::ClipQueue</name>
        <message>
            <source>waiting</source>
            <translation>wartet</translation>
        </message>
        <message>
            <source>measuring</source>
            <translation>wird gemessen</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>gemessen</translation>
        </message>
        <message>
            <source>measured – whose is it?</source>
            <translation>gemessen – welcher Becher?</translation>
        </message>
        <message>
            <source>no answer</source>
            <translation>keine Antwort</translation>
        </message>
        <message>
            <source>cannot be read</source>
            <translation>nicht lesbar</translation>
        </message>
        <message>
            <source>stopped</source>
            <translation>angehalten</translation>
        </message>
        <message numerus="yes">
            <source>measuring, %n clip(s) to go</source>
            <translation>
                <numerusform>wird gemessen, noch %n Clip</numerusform>
                <numerusform>wird gemessen, noch %n Clips</numerusform>
            </translation>
        </message>
        <message>
            <source>measured – its session is not open</source>
            <translation>gemessen – seine Sitzung ist nicht geöffnet</translation>
        </message>
    </context>
    <context>
        <name>flowkin::ClipReview</name>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>%1 (set aside)</source>
            <translation>%1 (beiseite)</translation>
        </message>
        <message>
            <source>%1 (no answer)</source>
            <translation>%1 (keine Antwort)</translation>
        </message>
        <message>
            <source>%1 (by hand)</source>
            <translation>%1 (von Hand)</translation>
        </message>
        <message>
            <source>not found</source>
            <translation>nicht gefunden</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Curves</name>
        <message>
            <source>film %1, %2</source>
            <translation>Film %1, %2</translation>
        </message>
        <message>
            <source>Nothing to plot yet.</source>
            <translation>Noch nichts zu zeichnen.</translation>
        </message>
        <message>
            <source>This test is told by its events, not by a curve; look at the film again to see them.</source>
            <translation>Diese Probe zeigt sich an ihren Ereignissen, nicht an einer Kurve; den Film noch einmal ansehen.</translation>
        </message>
        <message>
            <source>seconds since the start of the test</source>
            <translation>Sekunden seit Beginn der Probe</translation>
        </message>
        <message>
            <source>relief that is left</source>
            <translation>übriges Relief</translation>
        </message>
        <message>
            <source>radius of the puddle, %1</source>
            <translation>Radius der Pfütze, %1</translation>
        </message>
        <message>
            <source>added to the cup, mL</source>
            <translation>dem Becher zugegeben, ml</translation>
        </message>
        <message>
            <source>times as thick as the base coat</source>
            <translation>mal so dick wie die Grundfarbe</translation>
        </message>
        <message>
            <source>mL of water in 100 mL of paint, 0 = flows like the base coat</source>
            <translation>ml Wasser in 100 ml Farbe, 0 = fließt wie die Grundfarbe</translation>
        </message>
        <message>
            <source>No brand has been learned yet: remember a paint once its cup matches.</source>
            <translation>Noch keine Marke gelernt: eine Farbe merken, sobald ihr Becher passt.</translation>
        </message>
        <message>
            <source>%1, film %2</source>
            <translation>%1, Film %2</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>gesehen</translation>
        </message>
        <message>
            <source>95 of 100 lie here</source>
            <translation>95 von 100 liegen hier</translation>
        </message>
        <message>
            <source>There is no cup on the bench yet.</source>
            <translation>Es steht noch kein Becher auf dem Tisch.</translation>
        </message>
        <message>
            <source>The base coat is what others are compared with; choose another cup.</source>
            <translation>Mit der Grundfarbe werden die anderen verglichen; einen anderen Becher wählen.</translation>
        </message>
        <message>
            <source>Film this cup and the base coat first.</source>
            <translation>Erst diesen Becher und die Grundfarbe filmen.</translation>
        </message>
        <message>
            <source>Say how much is in the cup; its path counts from there.</source>
            <translation>Sagen, wie viel im Becher ist; von da an zählt sein Weg.</translation>
        </message>
        <message>
            <source>measured, with 95 % interval</source>
            <translation>gemessen, mit 95-%-Bereich</translation>
        </message>
        <message>
            <source>likeliest path</source>
            <translation>wahrscheinlichster Weg</translation>
        </message>
        <message>
            <source>95 of 100 paths lie here</source>
            <translation>hier liegen 95 von 100 Wegen</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>gemessen</translation>
        </message>
        <message>
            <source>share of the stream that is left</source>
            <translation>Anteil des Strahls, der noch da ist</translation>
        </message>
        <message>
            <source>it broke here</source>
            <translation>hier riss er ab</translation>
        </message>
        <message>
            <source>its fading, as measured</source>
            <translation>sein Verschwinden, wie gemessen</translation>
        </message>
        <message>
            <source>its spreading, as measured</source>
            <translation>sein Ausbreiten, wie gemessen</translation>
        </message>
    </context>
    <context>
        <name>flowkin::FilmStand</name>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The folder of films is full; close old sessions.</source>
            <translation>Der Ordner der Filme ist voll; alte Sitzungen schließen.</translation>
        </message>
        <message>
            <source>Stopped</source>
            <translation>Angehalten</translation>
        </message>
        <message>
            <source>No picture</source>
            <translation>Kein Bild</translation>
        </message>
        <message>
            <source>Test runs</source>
            <translation>Probe läuft</translation>
        </message>
        <message>
            <source>Filming</source>
            <translation>Filmt</translation>
        </message>
        <message>
            <source>No cup yet</source>
            <translation>Noch kein Becher</translation>
        </message>
        <message>
            <source>Ready</source>
            <translation>Bereit</translation>
        </message>
        <message>
            <source>Measuring</source>
            <translation>Misst</translation>
        </message>
        <message>
            <source>Enough films</source>
            <translation>Genug Filme</translation>
        </message>
        <message>
            <source>Name the base coat on the bench first.</source>
            <translation>Zuerst die Grundfarbe auf dem Tisch benennen.</translation>
        </message>
        <message>
            <source>Hold the stick still until it only drips.</source>
            <translation>Den Stab still halten, bis es nur noch tropft.</translation>
        </message>
        <message>
            <source>Leave it alone until the paint is smooth.</source>
            <translation>In Ruhe lassen, bis die Farbe glatt ist.</translation>
        </message>
        <message>
            <source>Leave it alone for ten seconds.</source>
            <translation>Zehn Sekunden in Ruhe lassen.</translation>
        </message>
        <message>
            <source>Stand the stick in the paint, lift it straight up, hold it.</source>
            <translation>Den Stab in die Farbe stellen, gerade hochheben, halten.</translation>
        </message>
        <message>
            <source>The picture stands still; look after the camera.</source>
            <translation>Das Bild steht still; nach der Kamera sehen.</translation>
        </message>
        <message>
            <source>More light.</source>
            <translation>Mehr Licht.</translation>
        </message>
        <message>
            <source>Too bright: turn the lamp away.</source>
            <translation>Zu hell: die Lampe wegdrehen.</translation>
        </message>
        <message>
            <source>The camera is slow; more light makes it faster.</source>
            <translation>Die Kamera ist langsam; mehr Licht macht sie schneller.</translation>
        </message>
        <message>
            <source>Hold still: the whole picture moves.</source>
            <translation>Still halten: das ganze Bild bewegt sich.</translation>
        </message>
        <message>
            <source>Not sharp: focus on the test.</source>
            <translation>Unscharf: auf die Probe scharf stellen.</translation>
        </message>
        <message>
            <source>The stick is not in view.</source>
            <translation>Der Stab ist nicht im Bild.</translation>
        </message>
        <message numerus="yes">
            <source>%1: %n more</source>
            <translation>
                <numerusform>%1: noch %n</numerusform>
                <numerusform>%1: noch %n</numerusform>
            </translation>
        </message>
        <message>
            <source>%1: no more</source>
            <translation>%1: fertig</translation>
        </message>
        <message>
            <source>Wait</source>
            <translation>Warten</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>End this film</source>
            <translation>Diesen Film beenden</translation>
        </message>
        <message>
            <source>Film now</source>
            <translation>Jetzt filmen</translation>
        </message>
        <message>
            <source>Next cup</source>
            <translation>Nächster Becher</translation>
        </message>
        <message>
            <source>To the bench</source>
            <translation>Zum Tisch</translation>
        </message>
        <message>
            <source>See that a lamp is mirrored in the paint. Lay one ribbon on it and take the stick away.</source>
            <translation>Darauf achten, dass sich eine Lampe in der Farbe spiegelt. Ein Band darauf legen und den Stab wegnehmen.</translation>
        </message>
        <message>
            <source>Put the paint down in one go, as much every time, and take the hand away.</source>
            <translation>Die Farbe in einem Zug absetzen, jedes Mal gleich viel, und die Hand wegnehmen.</translation>
        </message>
        <message>
            <source>No ruler is made out: lay one with millimetres beside it, or leave the camera where it is for every cup.</source>
            <translation>Kein Lineal zu erkennen: eines mit Millimetern daneben legen oder die Kamera für alle Becher stehen lassen.</translation>
        </message>
        <message>
            <source>%1: %2, %3</source>
            <translation>%1: %2, %3</translation>
        </message>
    </context>
    <context>
        <name>flowkin::JournalReader</name>
        <message numerus="yes">
            <source>%n pour(s)</source>
            <translation>
                <numerusform>%n Guss</numerusform>
                <numerusform>%n Güsse</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n judged</source>
            <translation>
                <numerusform>%n beurteilt</numerusform>
                <numerusform>%n beurteilt</numerusform>
            </translation>
        </message>
        <message>
            <source>Your pictures bear a mismatch of about %1 (%2 to %3).</source>
            <translation>Deine Bilder vertragen eine Abweichung von etwa %1 (%2 bis %3).</translation>
        </message>
        <message>
            <source>How large a mismatch your pictures bear: too few pours to tell.</source>
            <translation>Wie viel Abweichung deine Bilder vertragen: zu wenige Güsse, um es zu sagen.</translation>
        </message>
        <message>
            <source>good pours lay at %1 (%2 to %3) of the base coat.</source>
            <translation>gute Güsse lagen beim %1-Fachen (%2 bis %3) der Grundfarbe.</translation>
        </message>
        <message>
            <source>too few pours to tell.</source>
            <translation>zu wenige Güsse, um es zu sagen.</translation>
        </message>
        <message>
            <source>you use %1 times what is planned (%2 to %3).</source>
            <translation>du brauchst das %1-Fache des Geplanten (%2 bis %3).</translation>
        </message>
        <message>
            <source>planned against used: too few pours to tell.</source>
            <translation>geplant gegen verbraucht: zu wenige Güsse, um es zu sagen.</translation>
        </message>
        <message>
            <source>no cup of this day</source>
            <translation>kein Becher dieses Tages</translation>
        </message>
        <message>
            <source>As planned now: %1, %2</source>
            <translation>Wie jetzt geplant: %1, %2</translation>
        </message>
        <message>
            <source>room %1</source>
            <translation>Raum %1</translation>
        </message>
        <message>
            <source>%1 humidity</source>
            <translation>%1 Luftfeuchte</translation>
        </message>
        <message>
            <source>poured %1</source>
            <translation>gegossen %1</translation>
        </message>
        <message>
            <source>planned %1</source>
            <translation>geplant %1</translation>
        </message>
        <message>
            <source>used %1</source>
            <translation>verbraucht %1</translation>
        </message>
        <message>
            <source>%1 wet</source>
            <translation>%1 nass</translation>
        </message>
        <message>
            <source>%1 dry</source>
            <translation>%1 trocken</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>%1 (%2 to %3), aimed at %4</source>
            <translation>%1 (%2 bis %3), Ziel %4</translation>
        </message>
        <message>
            <source>%1 water</source>
            <translation>%1 Wasser</translation>
        </message>
        <message numerus="yes">
            <source>%n film(s)</source>
            <translation>
                <numerusform>%n Film</numerusform>
                <numerusform>%n Filme</numerusform>
            </translation>
        </message>
        <message>
            <source>It turned out well.</source>
            <translation>Es wurde gut.</translation>
        </message>
        <message>
            <source>It turned out fair.</source>
            <translation>Es wurde mittel.</translation>
        </message>
        <message>
            <source>It turned out badly.</source>
            <translation>Es wurde schlecht.</translation>
        </message>
        <message>
            <source>%1: the photo is not found</source>
            <translation>%1: das Foto ist nicht zu finden</translation>
        </message>
        <message>
            <source>wet</source>
            <translation>nass</translation>
        </message>
        <message>
            <source>dry</source>
            <translation>trocken</translation>
        </message>
        <message>
            <source>later</source>
            <translation>später</translation>
        </message>
        <message>
            <source>cells</source>
            <translation>Zellen</translation>
        </message>
        <message>
            <source>cell test: lacing</source>
            <translation>Zelltest: Spitzenmuster</translation>
        </message>
        <message>
            <source>cell test: nothing happens</source>
            <translation>Zelltest: nichts geschieht</translation>
        </message>
        <message>
            <source>cell test: too thick, a blob</source>
            <translation>Zelltest: zu dick, ein Klecks</translation>
        </message>
        <message>
            <source>cell test: too thin, drowned</source>
            <translation>Zelltest: zu dünn, ertrunken</translation>
        </message>
        <message>
            <source>after %1 s</source>
            <translation>nach %1 s</translation>
        </message>
        <message>
            <source>fits</source>
            <translation>passt dazu</translation>
        </message>
        <message>
            <source>speaks against it</source>
            <translation>spricht dagegen</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no number.</source>
            <translation>„%1“ ist keine Zahl.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>1 paint to %1 additive</source>
            <translation>1 Farbe auf %1 Fließmittel</translation>
        </message>
    </context>
    <context>
        <name>flowkin::LastCheck</name>
        <message>
            <source>Nothing measured holds the pour back.</source>
            <translation>Nichts Gemessenes hält den Guss zurück.</translation>
        </message>
        <message>
            <source>Do not pour yet.</source>
            <translation>Noch nicht gießen.</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>gemessen</translation>
        </message>
        <message>
            <source>follows from what was measured</source>
            <translation>folgt aus dem Gemessenen</translation>
        </message>
        <message>
            <source>told by many, published by none</source>
            <translation>viele sagen es, niemand hat es veröffentlicht</translation>
        </message>
        <message>
            <source>Not known: %1.</source>
            <translation>Nicht bekannt: %1.</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Planner</name>
        <message>
            <source>Add a colour first, or take those of the bench.</source>
            <translation>Erst eine Farbe dazunehmen, oder die vom Tisch.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no number.</source>
            <translation>„%1“ ist keine Zahl.</translation>
        </message>
        <message>
            <source>&apos;%1&apos; is no whole number.</source>
            <translation>„%1“ ist keine ganze Zahl.</translation>
        </message>
        <message>
            <source>heavy body</source>
            <translation>pastos</translation>
        </message>
        <message>
            <source>soft body</source>
            <translation>weich</translation>
        </message>
        <message>
            <source>fluid</source>
            <translation>flüssig</translation>
        </message>
        <message>
            <source>ink</source>
            <translation>Tinte</translation>
        </message>
        <message>
            <source>powder</source>
            <translation>Pulver</translation>
        </message>
        <message>
            <source>%1 of paint on %2: %3 wet, %4 dry.</source>
            <translation>%1 Farbe auf %2: %3 nass, %4 trocken.</translation>
        </message>
        <message numerus="yes">
            <source>From your own pours: %n so far, which took %1 times what was planned (%2 to %3).</source>
            <translation>
                <numerusform>Aus deinen Güssen: %n bisher, er brauchte das %1-Fache des Geplanten (%2 bis %3).</numerusform>
                <numerusform>Aus deinen Güssen: %n bisher, sie brauchten das %1-Fache des Geplanten (%2 bis %3).</numerusform>
            </translation>
        </message>
        <message>
            <source>Your own amounts for this technique.</source>
            <translation>Deine eigenen Mengen für diese Technik.</translation>
        </message>
        <message>
            <source>Our guess to begin with; change it as you know better.</source>
            <translation>Unsere Schätzung für den Anfang; ändern, wer es besser weiß.</translation>
        </message>
        <message numerus="yes">
            <source>Too few pours to tell how much yours take: %n of three.</source>
            <translation>
                <numerusform>Zu wenige Güsse, um zu sagen, wie viel deine brauchen: %n von drei.</numerusform>
                <numerusform>Zu wenige Güsse, um zu sagen, wie viel deine brauchen: %n von drei.</numerusform>
            </translation>
        </message>
        <message>
            <source>The film stays while you tilt.</source>
            <translation>Der Film bleibt beim Kippen liegen.</translation>
        </message>
        <message>
            <source>While you tilt, %1 to %2 of it run off: the more, the thinner the paint.</source>
            <translation>Beim Kippen laufen %1 bis %2 davon ab: je dünner die Farbe, desto mehr.</translation>
        </message>
        <message>
            <source>Too much: more than half of it runs off a tilted canvas.</source>
            <translation>Zu viel: Mehr als die Hälfte läuft von einer gekippten Leinwand.</translation>
        </message>
        <message>
            <source>%1 of %2 (%3)</source>
            <translation>%1 %2 (%3)</translation>
        </message>
        <message>
            <source>paint</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>Medium</translation>
        </message>
        <message>
            <source>flow additive</source>
            <translation>Fließmittel</translation>
        </message>
        <message>
            <source>%1 from the shelf</source>
            <translation>%1 aus dem Regal</translation>
        </message>
        <message>
            <source>keep %1 back unthinned</source>
            <translation>%1 unverdünnt aufheben</translation>
        </message>
        <message>
            <source>Make %1: %2 of base (%3) and %4 of varnish (%5).</source>
            <translation>%1 machen: %2 Basis (%3) und %4 Lack (%5).</translation>
        </message>
        <message>
            <source>%1 more come from the shelf.</source>
            <translation>%1 weitere kommen aus dem Regal.</translation>
        </message>
        <message>
            <source>Fold it, strain it, let it rest, and test it once like a cup.</source>
            <translation>Unterheben, sieben, ruhen lassen und einmal wie einen Becher testen.</translation>
        </message>
        <message>
            <source>buy %1</source>
            <translation>%1 kaufen</translation>
        </message>
        <message>
            <source>enough</source>
            <translation>reicht</translation>
        </message>
        <message numerus="yes">
            <source>buy %n container(s) for %1</source>
            <translation>
                <numerusform>%n Gebinde für %1 kaufen</numerusform>
                <numerusform>%n Gebinde für %1 kaufen</numerusform>
            </translation>
        </message>
        <message>
            <source>%1 (%2)</source>
            <translation>%1 (%2)</translation>
        </message>
        <message>
            <source>A picture costs %1 in paint.</source>
            <translation>Ein Bild kostet %1 an Farbe.</translation>
        </message>
        <message>
            <source>What a picture costs is known once every supply has a container and a price.</source>
            <translation>Was ein Bild kostet, steht fest, sobald alles ein Gebinde und einen Preis hat.</translation>
        </message>
        <message>
            <source>keeps until %1</source>
            <translation>hält bis %1</translation>
        </message>
        <message>
            <source>use it first, by %1</source>
            <translation>zuerst verbrauchen, bis %1</translation>
        </message>
        <message>
            <source>overdue: smell, strain and test it, or throw it away</source>
            <translation>überfällig: riechen, sieben und testen, oder wegwerfen</translation>
        </message>
        <message>
            <source>This cup holds only %1: take a larger one, or make it in turns.</source>
            <translation>Dieser Becher fasst nur %1: einen größeren nehmen oder in mehreren Gängen machen.</translation>
        </message>
        <message>
            <source>In this cup: base up to %1 %3, then varnish up to %2 %3, measured inside from the bottom.</source>
            <translation>In diesem Becher: Basis bis %1 %3, dann Lack bis %2 %3, innen vom Boden gemessen.</translation>
        </message>
        <message>
            <source>Bubbles of %1 need at least %2 to %3 minutes to rise, the thicker the longer; small ones hours.</source>
            <translation>Blasen von %1 brauchen mindestens %2 bis %3 Minuten zum Aufsteigen, je dicker, desto länger; kleine Stunden.</translation>
        </message>
        <message>
            <source>%1 (%2): %3, %4</source>
            <translation>%1 (%2): %3, %4</translation>
        </message>
        <message>
            <source>By its own flow a usual cup, %1 of it medium, starts %2 times as thick as with the last batch (%3 to %4).</source>
            <translation>Durch seinen eigenen Fluss ist ein üblicher Becher, zu %1 Medium, am Anfang %2-mal so dick wie mit dem letzten Ansatz (%3 bis %4).</translation>
        </message>
    </context>
    <context>
        <name>flowkin::PrintRoom</name>
        <message numerus="yes">
            <source>%n photo(s) could not be read and are left out.</source>
            <translation>
                <numerusform>%n Foto war nicht zu lesen und fehlt.</numerusform>
                <numerusform>%n Fotos waren nicht zu lesen und fehlen.</numerusform>
            </translation>
        </message>
        <message>
            <source>The printer does not take the pages; save them as a file and open it.</source>
            <translation>Der Drucker nimmt die Seiten nicht an; als Datei speichern und diese öffnen.</translation>
        </message>
        <message>
            <source>No printer is set up on this computer; save the pages as a file and print it elsewhere.</source>
            <translation>Auf diesem Rechner ist kein Drucker eingerichtet; die Seiten als Datei sichern und anderswo drucken.</translation>
        </message>
    </context>
    <context>
        <name>flowkin::Tryout</name>
        <message>
            <source>First try with sample clips</source>
            <translation>Probelauf mit Beispielclips</translation>
        </message>
        <message>
            <source>The sample clips are not installed.</source>
            <translation>Die Beispielclips sind nicht installiert.</translation>
        </message>
        <message>
            <source>One round without paint, two minutes</source>
            <translation>Eine Runde ohne Farbe, zwei Minuten</translation>
        </message>
        <message>
            <source>Three films of the base coat are measured …</source>
            <translation>Drei Filme der Grundfarbe werden gemessen …</translation>
        </message>
        <message>
            <source>The base coat is known.</source>
            <translation>Die Grundfarbe ist bekannt.</translation>
        </message>
        <message>
            <source>A film of the cup Basalt is measured …</source>
            <translation>Ein Film des Bechers Basalt wird gemessen …</translation>
        </message>
        <message>
            <source>The water is written down.</source>
            <translation>Das Wasser ist notiert.</translation>
        </message>
        <message>
            <source>A film of the cup Lagoon is measured …</source>
            <translation>Ein Film des Bechers Lagoon wird gemessen …</translation>
        </message>
        <message>
            <source>A film of the cup Gullfeather is measured …</source>
            <translation>Ein Film des Bechers Gullfeather wird gemessen …</translation>
        </message>
        <message>
            <source>The sample clips show a stick lifted out of paint, the stream running off it and breaking. You will see how a cup is compared with the base coat and what is said about it. Nothing is asked of you but one button.</source>
            <translation>Die Beispielclips zeigen einen Stab, der aus der Farbe gezogen wird, und den Strahl, der davon abläuft und abreißt. So wird ein Becher mit der Grundfarbe verglichen, und das wird dazu gesagt. Zu tun ist nichts als ein Knopf.</translation>
        </message>
        <message>
            <source>Every cup is compared with the base coat. Three films tell how evenly the hand repeats.</source>
            <translation>Jeder Becher wird mit der Grundfarbe verglichen. Drei Filme zeigen, wie gleichmäßig die Hand wiederholt.</translation>
        </message>
        <message>
            <source>On the bench, the bar between two ends shows what the film allows, the bead above it the best guess, the gate in the middle a match. This cup lies on the thick side. The first addition is small on purpose: water cannot be taken out again.</source>
            <translation>Auf dem Tisch zeigt der Balken zwischen zwei Enden, was der Film zulässt, die Perle darüber die beste Schätzung, das Tor in der Mitte den Treffer. Dieser Becher liegt auf der dicken Seite. Die erste Zugabe ist mit Absicht klein: Wasser lässt sich nicht wieder herausnehmen.</translation>
        </message>
        <message>
            <source>Stirred one minute, the cup would now be filmed again, and so on until it matches. The next cup shows what that looks like near the end.</source>
            <translation>Eine Minute gerührt, würde der Becher jetzt wieder gefilmt, und so weiter, bis er passt. Der nächste Becher zeigt, wie das gegen Ende aussieht.</translation>
        </message>
        <message>
            <source>This cup is close. One film leaves open which side it is on, so no water is added on it; a second or third film decides.</source>
            <translation>Dieser Becher ist nah dran. Ein Film lässt offen, auf welcher Seite er liegt, darum kommt darauf kein Wasser; ein zweiter oder dritter Film entscheidet.</translation>
        </message>
        <message>
            <source>All cups stand on the bench now. The line at the top says whether everything may be poured, and if not, which cup holds it back. Your own bench is untouched; this round keeps to a session of its own.</source>
            <translation>Alle Becher stehen jetzt auf dem Tisch. Die Zeile oben sagt, ob alles gegossen werden darf, und wenn nicht, welcher Becher es aufhält. Der eigene Tisch bleibt unberührt; diese Runde hat eine eigene Sitzung.</translation>
        </message>
        <message>
            <source>Film the base coat</source>
            <translation>Grundfarbe filmen</translation>
        </message>
        <message>
            <source>Film a cup</source>
            <translation>Einen Becher filmen</translation>
        </message>
        <message>
            <source>Added</source>
            <translation>Zugegeben</translation>
        </message>
        <message>
            <source>Film the next cup</source>
            <translation>Den nächsten Becher filmen</translation>
        </message>
        <message>
            <source>One more cup</source>
            <translation>Noch ein Becher</translation>
        </message>
        <message>
            <source>To the bench</source>
            <translation>Zum Tisch</translation>
        </message>
    </context>
    <context>
        <name>page</name>
        <message>
            <source>%1 (%2 to %3)</source>
            <translation>%1 (%2 bis %3)</translation>
        </message>
        <message>
            <source>water %1</source>
            <translation>Wasser %1</translation>
        </message>
        <message>
            <source>flow %1</source>
            <translation>Fließen %1</translation>
        </message>
        <message>
            <source>to the base coat of %1</source>
            <translation>zur Grundfarbe vom %1</translation>
        </message>
        <message>
            <source>at %1</source>
            <translation>bei %1</translation>
        </message>
        <message>
            <source>mixed %1.</source>
            <translation>gemischt %1.</translation>
        </message>
        <message>
            <source>%1 (activator)</source>
            <translation>%1 (Aktivator)</translation>
        </message>
        <message>
            <source>cup</source>
            <translation>Becher</translation>
        </message>
        <message>
            <source>paint</source>
            <translation>Farbe</translation>
        </message>
        <message>
            <source>medium</source>
            <translation>Medium</translation>
        </message>
        <message>
            <source>additive</source>
            <translation>Zusatz</translation>
        </message>
        <message>
            <source>mix</source>
            <translation>Mischung</translation>
        </message>
        <message>
            <source>keep back</source>
            <translation>aufheben</translation>
        </message>
        <message>
            <source>Make %1 of medium: %2 (%3) of base and %4 (%5) of varnish. Fold it, strain it, let it rest.</source>
            <translation>%1 Medium machen: %2 (%3) Basis und %4 (%5) Lack. Unterheben, sieben, ruhen lassen.</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Achtung</translation>
        </message>
        <message>
            <source>%1: flow against the base coat, test by test</source>
            <translation>%1: Fließen gegen die Grundfarbe, Test für Test</translation>
        </message>
        <message>
            <source>%1 added</source>
            <translation>%1 zugegeben</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiketten</translation>
        </message>
        <message>
            <source>Bench sheet</source>
            <translation>Blatt für den Tisch</translation>
        </message>
        <message>
            <source>Bench sheet: %1</source>
            <translation>Blatt für den Tisch: %1</translation>
        </message>
        <message>
            <source>Pictures: %1; %2 painted, %3 on the canvas, %4 wet, %5 dry.</source>
            <translation>Bilder: %1; %2 bemalt, %3 auf der Leinwand, %4 nass, %5 trocken.</translation>
        </message>
        <message>
            <source>First mixes</source>
            <translation>Erste Mischungen</translation>
        </message>
        <message>
            <source>At the bench</source>
            <translation>Am Tisch</translation>
        </message>
        <message>
            <source>water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>match, time</source>
            <translation>passt, Uhrzeit</translation>
        </message>
        <message>
            <source>Room ______ %1   humidity ______ %   rested ______ min   strained yes / no   date ____________</source>
            <translation>Raum ______ %1   Luftfeuchte ______ %   geruht ______ min   gesiebt ja / nein   Tag ____________</translation>
        </message>
        <message>
            <source>To have ready</source>
            <translation>Bereitzulegen</translation>
        </message>
        <message>
            <source>what</source>
            <translation>was</translation>
        </message>
        <message>
            <source>volume</source>
            <translation>Volumen</translation>
        </message>
        <message>
            <source>weight</source>
            <translation>Gewicht</translation>
        </message>
        <message>
            <source>to buy</source>
            <translation>zu kaufen</translation>
        </message>
        <message>
            <source>Class</source>
            <translation>Kurs</translation>
        </message>
        <message>
            <source>Class: %1</source>
            <translation>Kurs: %1</translation>
        </message>
        <message>
            <source>Places: %1, one base coat for all; %2.</source>
            <translation>Plätze: %1, eine Grundfarbe für alle; %2.</translation>
        </message>
        <message>
            <source>The whole batch</source>
            <translation>Alles zusammen</translation>
        </message>
        <message>
            <source>At each place</source>
            <translation>An jedem Platz</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>Cover the table; tape the back of the canvas; set it on cups and level it.</source>
            <translation>Den Tisch abdecken; die Leinwand hinten abkleben; auf Becher stellen und ausrichten.</translation>
        </message>
        <message>
            <source>Stir your cups slowly. Lift the stick and compare with the base coat: does it run as fast?</source>
            <translation>Die Becher langsam rühren. Den Stab heben und mit der Grundfarbe vergleichen: Läuft es so schnell?</translation>
        </message>
        <message>
            <source>Slower: ask before adding water; then a few drops, stir, compare again. Faster: stir in some of what was kept back.</source>
            <translation>Langsamer: vor dem Wasser fragen; dann ein paar Tropfen, rühren, wieder vergleichen. Schneller: etwas vom Aufgehobenen einrühren.</translation>
        </message>
        <message>
            <source>As fast as the base coat: stop. Write down the drops.</source>
            <translation>So schnell wie die Grundfarbe: aufhören. Die Tropfen aufschreiben.</translation>
        </message>
        <message>
            <source>Lay the wet base, pour, tilt slowly to all corners.</source>
            <translation>Den nassen Grund legen, gießen, langsam in alle Ecken kippen.</translation>
        </message>
        <message>
            <source>Photograph it wet. Leave it level, covered, without draught.</source>
            <translation>Nass fotografieren. Waagerecht, abgedeckt und ohne Zug liegen lassen.</translation>
        </message>
        <message>
            <source>Your cups</source>
            <translation>Deine Becher</translation>
        </message>
        <message>
            <source>slower / as fast / faster</source>
            <translation>langsamer / gleich / schneller</translation>
        </message>
        <message>
            <source>drops added</source>
            <translation>Tropfen zugegeben</translation>
        </message>
        <message>
            <source>as fast now?</source>
            <translation>jetzt so schnell?</translation>
        </message>
        <message>
            <source>room %1</source>
            <translation>Raum %1</translation>
        </message>
        <message>
            <source>%1 humidity</source>
            <translation>%1 Luftfeuchte</translation>
        </message>
        <message>
            <source>judged %1</source>
            <translation>beurteilt: %1</translation>
        </message>
        <message>
            <source>Cups</source>
            <translation>Becher</translation>
        </message>
        <message>
            <source>1 (reference)</source>
            <translation>1 (Vergleich)</translation>
        </message>
        <message>
            <source>not measured</source>
            <translation>nicht gemessen</translation>
        </message>
        <message>
            <source>%1, before the last addition</source>
            <translation>%1, vor der letzten Zugabe</translation>
        </message>
        <message>
            <source>flow to the base coat (95 %)</source>
            <translation>Fließen zur Grundfarbe (95 %)</translation>
        </message>
        <message>
            <source>target</source>
            <translation>Ziel</translation>
        </message>
        <message>
            <source>added</source>
            <translation>dazu</translation>
        </message>
        <message>
            <source>Pour</source>
            <translation>Guss</translation>
        </message>
        <message>
            <source>planned %1</source>
            <translation>geplant %1</translation>
        </message>
        <message>
            <source>used %1</source>
            <translation>verbraucht %1</translation>
        </message>
        <message>
            <source>%1 wet</source>
            <translation>%1 nass</translation>
        </message>
        <message>
            <source>%1 dry</source>
            <translation>%1 trocken</translation>
        </message>
        <message>
            <source>Cell tests</source>
            <translation>Zelltests</translation>
        </message>
        <message>
            <source>seen</source>
            <translation>gesehen</translation>
        </message>
        <message>
            <source>after</source>
            <translation>nach</translation>
        </message>
        <message>
            <source>paint : additive</source>
            <translation>Farbe : Zusatz</translation>
        </message>
        <message>
            <source>flow</source>
            <translation>Fließen</translation>
        </message>
        <message>
            <source>remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Seen on it</source>
            <translation>Darauf zu sehen</translation>
        </message>
        <message>
            <source>Causes are those commonly named, held against what was measured that day; none is proven by it.</source>
            <translation>Ursachen, wie sie gewöhnlich genannt werden, verglichen mit dem, was an dem Tag gemessen wurde; bewiesen ist damit keine.</translation>
        </message>
        <message>
            <source>fault</source>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>cause</source>
            <translation>Ursache</translation>
        </message>
        <message>
            <source>that day</source>
            <translation>an dem Tag</translation>
        </message>
        <message>
            <source>measured</source>
            <translation>gemessen</translation>
        </message>
        <message>
            <source>Notes</source>
            <translation>Notizen</translation>
        </message>
        <message>
            <source>cell test, %1</source>
            <translation>Zelltest, %1</translation>
        </message>
        <message>
            <source>%1 mL</source>
            <translation>%1 ml</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 on a cm², half larger than %2 mm</source>
            <translation>%1 je cm², die Hälfte größer als %2 mm</translation>
        </message>
    </context>
</TS>
